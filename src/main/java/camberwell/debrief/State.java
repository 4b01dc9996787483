package camberwell.debrief;

import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The case as far as it is known.
 *
 * @param known what was answered, be it with {@code unknown}; without what is told of one complaint
 * @param details the same for each complaint, in the order of the case's reports
 */
record State(Case run, Set<Field> known, List<Set<Field>> details) {

    private static final Set<Phase> CORNER = EnumSet.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT);

    /**
     * Where a debrief of {@code run} starts. What a file says that is also what is taken when nothing is said (a clear
     * complaint, on every lap) may have been said by nobody, and stays open.
     *
     * @param carKnown whether the case's car is one that somebody chose
     */
    static State of(Case run, boolean carKnown) {
        Set<Field> known = EnumSet.noneOf(Field.class);
        if (carKnown) {
            known.add(Field.CAR);
            known.add(Field.DRIVE);
        }
        if (run.car().simulated().isPresent()) {
            known.add(Field.SIMULATOR);
        }
        if (!run.reports().isEmpty()) {
            known.add(Field.DOING);
        }
        if (run.conditions().said().isPresent()) {
            known.add(Field.SURFACE);
        }
        if (run.conditions().track().isPresent()) {
            known.add(Field.TRACK);
        }
        if (run.conditions().turns() != Turn.BOTH) {
            known.add(Field.CIRCUIT);
        }
        if (!run.tyres().isEmpty()) {
            known.add(Field.TYRES);
        }
        List<Set<Field>> details = run.reports().stream().map(State::told).toList();
        run.talked().answered().forEach(answered -> remember(answered, known, details));
        return new State(run, known, details);
    }

    /** Where a debrief starts that goes on from an earlier run: its complaints are told, and what became of them is open. */
    static State after(Case begun) {
        State state = of(begun, true);
        Set<Field> known = EnumSet.copyOf(state.known);
        if (begun.driven().changed().isEmpty()) {
            known.add(Field.CARRIED);
        }
        List<Set<Field>> details = new ArrayList<>();
        for (Set<Field> told : state.details) {
            Set<Field> carried = EnumSet.of(Field.CARRIED, Field.SEVERITY, Field.OCCURRENCE);
            carried.addAll(told);
            details.add(carried);
        }
        return new State(begun, known, List.copyOf(details));
    }

    private static Set<Field> told(Report report) {
        Set<Field> told = EnumSet.noneOf(Field.class);
        report.phase().ifPresent(phase -> told.add(Field.PHASE));
        report.speed().ifPresent(speed -> told.add(Field.SPEED));
        report.corner().ifPresent(corner -> told.add(Field.CORNER));
        report.where().ifPresent(where -> told.add(Field.WHERE));
        report.since().ifPresent(since -> told.add(Field.SINCE));
        report.turn().ifPresent(turn -> told.add(Field.TURN));
        if (report.severity() != Severity.CLEAR) {
            told.add(Field.SEVERITY);
        }
        if (report.occurrence() != Occurrence.EVERY_LAP) {
            told.add(Field.OCCURRENCE);
        }
        return told;
    }

    /** Whether that is answered. */
    boolean knows(Topic topic) {
        if (topic.own().isPresent()) {
            return topic.own().get().closed(run);
        }
        if (topic.field() == Field.CHANGED || topic.field() == Field.CAME) {
            return !(topic.field() == Field.CHANGED ? known : details.get(topic.complaint())).contains(Field.CARRIED);
        }
        return topic.field().ofComplaint() || topic.field() == Field.DOUBT
                ? details.get(topic.complaint()).contains(topic.field()) : known.contains(topic.field());
    }

    /** What need not be asked again, and cannot be seen from the case: a question's word, after a complaint's number. */
    List<String> answered() {
        State seen = of(run.withAnswered(List.of()), false);
        List<String> answered = new ArrayList<>(PackQuestion.passed(run.talked().answered()));
        known.stream().filter(field -> field != Field.CAR && field != Field.DRIVE && field != Field.CARRIED
                && !seen.known.contains(field))
                .forEach(field -> answered.add(field.id()));
        for (int i = 0; i < details.size(); i++) {
            for (Field field : details.get(i)) {
                if (field != Field.CARRIED && !seen.details.get(i).contains(field)) {
                    answered.add(i + 1 + " " + field.id());
                }
            }
        }
        return answered;
    }

    private static void remember(String answered, Set<Field> known, List<Set<Field>> details) {
        for (Field field : Field.values()) {
            if (answered.equals(field.id())) {
                known.add(field);
            }
            for (int i = 0; i < details.size(); i++) {
                if (answered.equals(i + 1 + " " + field.id())) {
                    details.get(i).add(field);
                }
            }
        }
    }

    /** What was not said, and is taken for what is most likely. */
    Taken taken() {
        Set<Field> all = EnumSet.noneOf(Field.class);
        Set<Field> otherwise = EnumSet.noneOf(Field.class);
        for (Field field : Field.TAKEN) {
            long told = details.stream().filter(of -> of.contains(field)).count();
            if (field.ofComplaint() ? told < details.size() : !known.contains(field)) {
                (field.ofComplaint() && told > 0 ? otherwise : all).add(field);
            }
        }
        return new Taken(all, otherwise);
    }

    /** What is known after one more answer. */
    State with(Topic topic, Answer answer) {
        if (answer instanceof Answer.InWords words) {
            return DriversWords.heard(this, topic, words.heard());
        }
        if (answer instanceof Answer.Corrected corrected) {
            return Corrections.corrected(this, topic.complaint(), corrected.groups());
        }
        if (answer instanceof Answer.Chosen chosen) {
            return Settled.decided(this, topic, chosen.choice());
        }
        if (topic.own().isPresent()) {
            return new State(topic.own().get().answered(run, answer), known, details);
        }
        if (topic.field() == Field.ELSE) {
            return allTaken();
        }
        if (topic.field() == Field.CHANGED) {
            Set<Field> more = EnumSet.copyOf(known);
            more.remove(Field.CARRIED);
            return new State(answer instanceof Answer.Changed changed ? Settled.changed(run, changed.settings()) : run, more,
                    details);
        }
        if (topic.field() == Field.CAME) {
            return Settled.came(this, topic.complaint(),
                    answer instanceof Answer.Said said ? (Came) said.groups().get(0).get(0) : null);
        }
        if (topic.field().ofComplaint()) {
            return withDetail(topic, answer);
        }
        Set<Field> more = EnumSet.copyOf(known);
        if (topic.field().isAsked()) {
            more.add(topic.field());
        }
        if (answer instanceof Answer.OfCar) {
            more.add(Field.DRIVE);
        }
        if (topic.field() == Field.DOING) {
            return new State(run, more, details).and(answer instanceof Answer.Said said
                    ? said.groups() : List.of());
        }
        return new State(apply(topic.field(), answer), more, details);
    }

    /** What is known with these complaints besides, each a symptom and what narrows it. */
    State and(List<List<Word>> groups) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> told = new ArrayList<>(details);
        for (List<Word> group : groups) {
            Report report = Report.of((Symptom) group.stream().filter(Symptom.class::isInstance).findFirst()
                    .orElseThrow());
            List<Word> rest = group.stream().filter(word -> !(word instanceof Symptom)).toList();
            reports.add(ReportWords.detailed(report, rest));
            told.add(ReportWords.fields(rest));
        }
        return new State(run.withReports(reports), known, List.copyOf(told));
    }

    private Case apply(Field field, Answer answer) {
        if (answer instanceof Answer.OfCar chosen) {
            // That it was a simulator may have been said before the kind of car.
            return run.ofCar(run.car().simulated().map(chosen.car()::withSimulator).orElse(chosen.car()), Optional.empty());
        }
        if (answer instanceof Answer.Read read) {
            Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
            tyres.putAll(run.tyres());
            read.tyres().forEach((wheel, tyre) -> tyres.merge(wheel, tyre, TyreReading::with));
            return run.withTyres(tyres);
        }
        if (answer instanceof Answer.OfRun told) {
            Background known = run.background();
            Case day = told.air().map(air -> run.withConditions(run.conditions().withAir(air))).orElse(run);
            return day.withBackground(new Background(known.stint().with(told.stint()), known.pupil().with(told.pupil()),
                    known.answers(), known.comment()));
        }
        if (answer instanceof Answer.Measured measured) {
            return run.withConditions(run.conditions().withTrack(measured.quantity()));
        }
        if (answer instanceof Answer.Either either && field == Field.SIMULATOR) {
            return run.withCar(run.car().withSimulator(either.yes()));
        }
        if (answer instanceof Answer.Said said) {
            Word word = said.groups().get(0).get(0);
            return run.withConditions(field == Field.SURFACE ? run.conditions().withSurface((Surface) word)
                    : run.conditions().withTurns((Turn) word));
        }
        return run;
    }

    /** The same with all that nobody said taken for what is most likely. */
    State allTaken() {
        Set<Field> more = EnumSet.of(Field.ELSE, Field.SURFACE);
        more.addAll(known);
        List<Set<Field>> told = new ArrayList<>();
        for (Set<Field> each : details) {
            Set<Field> fields = EnumSet.copyOf(Field.TAKEN);
            fields.addAll(each);
            told.add(fields);
        }
        return new State(run, more, List.copyOf(told));
    }

    /** The complaints that an answer is of: its own, and of one that is there the whole corner through all of its phases. */
    List<Integer> answeredBy(Topic topic) {
        Report asked = run.reports().get(topic.complaint());
        List<Integer> corner = new ArrayList<>();
        for (int i = 0; topic.field() == Field.SPEED && i < details.size(); i++) {
            Optional<Phase> phase = run.reports().get(i).phase();
            if (phase.filter(CORNER::contains).isPresent() && !details.get(i).contains(Field.SPEED)
                    && ReportWords.detailed(asked, List.of(phase.get())).equals(run.reports().get(i))) {
                corner.add(i);
            }
        }
        return corner.size() == CORNER.size() ? corner : List.of(topic.complaint());
    }

    private State withDetail(Topic topic, Answer answer) {
        State state = this;
        List<Integer> complaints = answeredBy(topic);
        for (int i = complaints.size() - 1; i >= 0; i--) {
            state = state.withOwnDetail(new Topic(topic.field(), complaints.get(i)), answer);
        }
        return state;
    }

    /** A complaint in two phases, or in two kinds of corner, becomes two complaints. */
    private State withOwnDetail(Topic topic, Answer answer) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> more = new ArrayList<>();
        details.forEach(each -> more.add(EnumSet.copyOf(each)));
        Report report = reports.remove(topic.complaint());
        Set<Field> before = more.remove(topic.complaint());
        List<List<Word>> groups = answer instanceof Answer.Said said ? said.groups() : List.of(List.of());
        for (int i = 0; i < groups.size(); i++) {
            Set<Field> told = EnumSet.of(topic.field());
            told.addAll(before);
            told.addAll(answer instanceof Answer.Said ? ReportWords.fields(groups.get(i)) : topic.field().alongside());
            reports.add(topic.complaint() + i, ReportWords.detailed(report, groups.get(i)));
            more.add(topic.complaint() + i, told);
        }
        return new State(run.withReports(reports), known, List.copyOf(more));
    }
}
