package camberwell.debrief;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
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
            return hear(topic, words.heard());
        }
        if (answer instanceof Answer.Chosen chosen) {
            return decided(topic, chosen.choice());
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
            return new State(answer instanceof Answer.Changed changed ? changed(changed.settings()) : run, more, details);
        }
        if (topic.field() == Field.CAME) {
            return came(topic.complaint(), answer instanceof Answer.Said said ? (Came) said.groups().get(0).get(0) : null);
        }
        if (topic.field().ofComplaint()) {
            return withDetail(topic, answer);
        }
        Set<Field> more = EnumSet.of(topic.field());
        more.addAll(known);
        if (answer instanceof Answer.OfCar) {
            more.add(Field.DRIVE);
        }
        if (topic.field() == Field.DOING) {
            return new State(run.withReports(List.of()), more, List.of()).add(answer instanceof Answer.Said said
                    ? said.groups() : List.of());
        }
        return new State(apply(topic.field(), answer), more, details);
    }

    private State add(List<List<Word>> groups) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> told = new ArrayList<>(details);
        for (List<Word> group : groups) {
            Report report = Report.of((Symptom) group.stream().filter(Symptom.class::isInstance).findFirst()
                    .orElseThrow());
            List<Word> rest = group.stream().filter(word -> !(word instanceof Symptom)).toList();
            reports.add(detailed(report, rest));
            told.add(fields(rest));
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

    /** What is understood of a driver's own words, whatever was asked. */
    private State hear(Topic topic, Heard heard) {
        State state = this;
        if (heard.surface().isPresent()) {
            Set<Field> more = EnumSet.of(Field.SURFACE);
            more.addAll(known);
            state = new State(run.withConditions(run.conditions().withSurface(heard.surface().get())), more, details);
        }
        for (Told told : heard.told()) {
            state = state.tell(told);
        }
        for (Word word : heard.loose()) {
            state = state.loose(topic, word, Reply.ofEach(heard.said()));
        }
        Set<Field> more = EnumSet.copyOf(state.known);
        if (!heard.told().isEmpty() || topic.field() == Field.DOING || topic.field() == Field.LOOK) {
            more.add(topic.field() == Field.LOOK ? Field.LOOK : Field.DOING);
        }
        State said = new State(state.run, more, state.details);
        // To "anything else?" more complaints are no end yet; corrections are.
        return topic.field() == Field.ELSE && said.details.size() == details.size() ? said.allTaken() : said;
    }

    /** Adds a complaint, or what is new of one that is there. */
    private State tell(Told told) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> more = new ArrayList<>(details);
        boolean there = false;
        for (int i = 0; i < reports.size(); i++) {
            if (reports.get(i).symptom() == told.symptom() && goesWith(told, i)) {
                there = true;
                reports.set(i, detailed(reports.get(i), told.words()));
                Set<Field> fields = EnumSet.noneOf(Field.class);
                fields.addAll(more.get(i));
                fields.addAll(fields(told.words()));
                more.set(i, fields);
            }
        }
        State state = new State(run.withReports(reports), known, List.copyOf(more));
        List<Word> group = new ArrayList<>(List.of(told.symptom()));
        group.addAll(told.words());
        return there ? state : state.add(List.of(group));
    }

    /** Whether what was told may be of that complaint: the same place, or one of them not said. */
    private boolean goesWith(Told told, int complaint) {
        for (Word word : told.words()) {
            Field field = Field.telling(word);
            if (!Field.TAKEN.contains(field) && details.get(complaint).contains(field)
                    && !detailed(run.reports().get(complaint), List.of(word)).equals(run.reports().get(complaint))) {
                return false;
            }
        }
        return true;
    }

    /**
     * A word that was said of no complaint: of the one that was asked about, or else of all that lack it.
     *
     * @param each whether it was said of each of them
     */
    private State loose(Topic topic, Word word, boolean each) {
        Field field = Field.telling(word);
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> more = new ArrayList<>(details);
        for (int i = 0; i < reports.size(); i++) {
            boolean here = topic.field().ofComplaint() && topic.complaint() == i;
            boolean asked = here || each
                    || !topic.field().ofComplaint() && (Field.TAKEN.contains(field) || i == reports.size() - 1);
            if (asked && (here || !more.get(i).contains(field))) {
                reports.set(i, detailed(reports.get(i), List.of(word)));
                Set<Field> fields = EnumSet.of(field);
                fields.addAll(more.get(i));
                more.set(i, fields);
            }
        }
        return new State(run.withReports(reports), known, List.copyOf(more));
    }

    /** The same with all that nobody said taken for what is most likely. */
    private State allTaken() {
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

    private Case changed(Earlier.Changed changed) {
        Driven driven = run.driven();
        Case set = changed.made().isEmpty() ? run : run.withSetup(changed.settings());
        return set.withDriven(new Driven(driven.sheet(), changed.made(), driven.laps(), driven.verdict(), driven.judged()));
    }

    /** A complaint of the run before, with what became of it; null where nobody knows. */
    private State came(int complaint, Came came) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> more = new ArrayList<>(details);
        Set<Field> told = EnumSet.copyOf(more.get(complaint));
        told.remove(Field.CARRIED);
        more.set(complaint, told);
        Report report = reports.get(complaint);
        List<Tried> judged = new ArrayList<>(run.driven().judged());
        if (came != null) {
            Tried.On on = new Tried.On(Optional.of(report.symptom()), report.where(), report.phase(), report.speed());
            run.driven().changed().forEach(made -> judged.add(new Tried(made.change(), made.moved(), came.outcome(), on,
                    Tried.Trial.UNNOTED)));
            reports.set(complaint, detailed(report, List.of(came.severity(report))));
        }
        Set<Field> all = EnumSet.copyOf(known);
        if (came == Came.GONE) {
            reports.remove(complaint);
            more.remove(complaint);
            if (reports.isEmpty()) {
                // All is gone that there was: whether there is something new is not known yet.
                all.remove(Field.DOING);
            }
        }
        return new State(run.withReports(reports).withDriven(run.driven().withJudged(judged)), all, List.copyOf(more));
    }

    private State decided(Topic topic, Doubt.Choice choice) {
        List<Set<Field>> more = new ArrayList<>(details);
        Set<Field> fields = EnumSet.of(Field.DOUBT);
        fields.addAll(more.get(topic.complaint()));
        more.set(topic.complaint(), fields);
        Optional<Doubt> doubt = Doubt.in(run, run.reports().get(topic.complaint()));
        if (choice == Doubt.Choice.FIGURES) {
            List<Report> reports = new ArrayList<>(run.reports());
            reports.remove(topic.complaint());
            more.remove(topic.complaint());
            return new State(run.withReports(reports), known, List.copyOf(more));
        }
        if (choice == Doubt.Choice.COMPLAINT && doubt.flatMap(Doubt::shown).isPresent()) {
            List<Report> reports = new ArrayList<>(run.reports());
            int shown = reports.indexOf(doubt.get().shown().get());
            reports.remove(shown);
            more.remove(shown);
            return new State(run.withReports(reports), known, List.copyOf(more));
        }
        if (choice == Doubt.Choice.COMPLAINT && doubt.isPresent()) {
            Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
            tyres.putAll(run.tyres());
            tyres.keySet().removeIf(wheel -> Optional.of(wheel.axle()).equals(doubt.get().axle()));
            return new State(run.withTyres(tyres), known, List.copyOf(more));
        }
        return new State(run, known, List.copyOf(more));
    }

    /** A complaint in two phases, or in two kinds of corner, becomes two complaints. */
    private State withDetail(Topic topic, Answer answer) {
        List<Report> reports = new ArrayList<>(run.reports());
        List<Set<Field>> more = new ArrayList<>();
        details.forEach(each -> more.add(EnumSet.copyOf(each)));
        Report report = reports.remove(topic.complaint());
        Set<Field> before = more.remove(topic.complaint());
        List<List<Word>> groups = answer instanceof Answer.Said said ? said.groups() : List.of(List.of());
        for (int i = 0; i < groups.size(); i++) {
            Set<Field> told = EnumSet.of(topic.field());
            told.addAll(before);
            told.addAll(answer instanceof Answer.Said ? fields(groups.get(i)) : topic.field().alongside());
            reports.add(topic.complaint() + i, detailed(report, groups.get(i)));
            more.add(topic.complaint() + i, told);
        }
        return new State(run.withReports(reports), known, List.copyOf(more));
    }

    private static Set<Field> fields(List<Word> words) {
        Set<Field> fields = EnumSet.noneOf(Field.class);
        words.forEach(word -> fields.add(Field.telling(word)));
        return fields;
    }

    private static Report detailed(Report report, List<Word> words) {
        Report detailed = report;
        for (Word word : words) {
            Optional<CornerKind> corner = detailed.corner();
            Report more = detailed(detailed, word);
            detailed = word instanceof CornerKind ? more : corner.map(more::withCorner).orElse(more);
        }
        return report.measured().map(detailed::withMeasured).orElse(detailed);
    }

    private static Report detailed(Report it, Word word) {
        return switch (Field.telling(word)) {
            case PHASE -> new Report(it.symptom(), it.where(), Optional.of((Phase) word), it.speed(), it.severity(),
                    it.occurrence(), it.since(), it.turn());
            case SPEED -> new Report(it.symptom(), it.where(), it.phase(), Optional.of((CornerSpeed) word),
                    it.severity(), it.occurrence(), it.since(), it.turn());
            case WHERE -> new Report(it.symptom(), Optional.of((Place) word), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), it.since(), it.turn());
            case SINCE -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), Optional.of((Since) word), it.turn());
            case SEVERITY -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), (Severity) word,
                    it.occurrence(), it.since(), it.turn());
            case OCCURRENCE -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    (Occurrence) word, it.since(), it.turn());
            case TURN -> new Report(it.symptom(), it.where(), it.phase(), it.speed(), it.severity(),
                    it.occurrence(), it.since(), Optional.of((Turn) word));
            case CORNER -> it.withCorner((CornerKind) word);
            default -> throw new IllegalArgumentException(word.id() + " is not told of a complaint");
        };
    }
}
