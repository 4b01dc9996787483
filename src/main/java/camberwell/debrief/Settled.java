package camberwell.debrief;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Takes in what settles something: what was changed since the run before, what came of it, which of two witnesses is right. */
final class Settled {

    private Settled() {
    }

    /** The case with what was changed since the run before. */
    static Case changed(Case run, Earlier.Changed changed) {
        Driven driven = run.driven();
        Case set = changed.made().isEmpty() ? run : run.withSetup(changed.settings());
        return set.withDriven(new Driven(driven.sheet(), changed.made(), driven.laps(), driven.verdict(), driven.judged()));
    }

    /** A complaint of the run before, with what became of it; null where nobody knows. */
    static State came(State before, int complaint, Came came) {
        List<Report> reports = new ArrayList<>(before.run().reports());
        List<Set<Field>> more = new ArrayList<>(before.details());
        Set<Field> told = EnumSet.copyOf(more.get(complaint));
        told.remove(Field.CARRIED);
        more.set(complaint, told);
        Report report = reports.get(complaint);
        List<Tried> judged = new ArrayList<>(before.run().driven().judged());
        if (came != null) {
            Tried.On on = new Tried.On(Optional.of(report.symptom()), report.where(), report.phase(), report.speed());
            before.run().driven().changed().forEach(made -> judged.add(new Tried(made.change(), made.moved(), came.outcome(), on,
                    Tried.Trial.UNNOTED)));
            reports.set(complaint, ReportWords.detailed(report, List.of(came.severity(report))));
        }
        Set<Field> all = EnumSet.copyOf(before.known());
        if (came == Came.GONE) {
            reports.remove(complaint);
            more.remove(complaint);
            if (reports.isEmpty()) {
                // All is gone that there was: whether there is something new is not known yet.
                all.remove(Field.DOING);
            }
        }
        return new State(before.run().withReports(reports).withDriven(before.run().driven().withJudged(judged)), all,
                List.copyOf(more));
    }

    /** What is known once it is said which of two things that do not go together is right. */
    static State decided(State before, Topic topic, Doubt.Choice choice) {
        List<Set<Field>> more = new ArrayList<>(before.details());
        Set<Field> fields = EnumSet.of(Field.DOUBT);
        fields.addAll(more.get(topic.complaint()));
        more.set(topic.complaint(), fields);
        Optional<Doubt> doubt = Doubt.in(before.run(), before.run().reports().get(topic.complaint()));
        if (choice == Doubt.Choice.FIGURES) {
            List<Report> reports = new ArrayList<>(before.run().reports());
            reports.remove(topic.complaint());
            more.remove(topic.complaint());
            return new State(before.run().withReports(reports), before.known(), List.copyOf(more));
        }
        if (choice == Doubt.Choice.COMPLAINT && doubt.flatMap(Doubt::shown).isPresent()) {
            List<Report> reports = new ArrayList<>(before.run().reports());
            int shown = reports.indexOf(doubt.get().shown().get());
            reports.remove(shown);
            more.remove(shown);
            return new State(before.run().withReports(reports), before.known(), List.copyOf(more));
        }
        if (choice == Doubt.Choice.COMPLAINT && doubt.isPresent()) {
            Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
            tyres.putAll(before.run().tyres());
            tyres.keySet().removeIf(wheel -> Optional.of(wheel.axle()).equals(doubt.get().axle()));
            return new State(before.run().withTyres(tyres), before.known(), List.copyOf(more));
        }
        return new State(before.run(), before.known(), List.copyOf(more));
    }
}
