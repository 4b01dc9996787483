package camberwell.debrief;

import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
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
     * complaint, on every lap, a dry track) may have been said by nobody, and stays open.
     *
     * @param carKnown whether the case's car is one that somebody chose
     */
    static State of(Case run, boolean carKnown) {
        Set<Field> known = EnumSet.noneOf(Field.class);
        if (carKnown) {
            known.add(Field.CAR);
            known.add(Field.DRIVE);
        }
        if (!run.reports().isEmpty()) {
            known.add(Field.DOING);
        }
        if (run.conditions().surface() != Surface.DRY) {
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
        return new State(run, known, run.reports().stream().map(State::told).toList());
    }

    private static Set<Field> told(Report report) {
        Set<Field> told = EnumSet.noneOf(Field.class);
        report.phase().ifPresent(phase -> told.add(Field.PHASE));
        report.speed().ifPresent(speed -> told.add(Field.SPEED));
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
        return topic.field().ofComplaint() ? details.get(topic.complaint()).contains(topic.field())
                : known.contains(topic.field());
    }

    /** What is known after one more answer. */
    State with(Topic topic, Answer answer) {
        if (topic.field().ofComplaint()) {
            return withDetail(topic, answer);
        }
        Set<Field> more = EnumSet.of(topic.field());
        more.addAll(known);
        if (answer instanceof Answer.OfCar) {
            more.add(Field.DRIVE);
        }
        if (topic.field() == Field.DOING) {
            List<Report> reports = new ArrayList<>();
            List<Set<Field>> told = new ArrayList<>();
            if (answer instanceof Answer.Said said) {
                for (List<Word> group : said.groups()) {
                    Report report = Report.of((Symptom) group.stream().filter(Symptom.class::isInstance).findFirst()
                            .orElseThrow());
                    List<Word> rest = group.stream().filter(word -> !(word instanceof Symptom)).toList();
                    reports.add(detailed(report, Field.DOING, rest));
                    told.add(fields(Field.DOING, rest));
                }
            }
            return new State(run.withReports(reports), more, told);
        }
        return new State(apply(topic.field(), answer), more, details);
    }

    private Case apply(Field field, Answer answer) {
        if (answer instanceof Answer.OfCar chosen) {
            return new Case(run.title(), run.source(), chosen.car(), run.conditions(), run.tyres(), run.reports(),
                    run.earlier());
        }
        if (answer instanceof Answer.Read read) {
            return run.withTyres(read.tyres());
        }
        if (answer instanceof Answer.Measured measured) {
            return withConditions(run.conditions().surface(), Optional.of(measured.quantity()),
                    run.conditions().turns());
        }
        if (answer instanceof Answer.Said said) {
            Word word = said.groups().get(0).get(0);
            return field == Field.SURFACE
                    ? withConditions((Surface) word, run.conditions().track(), run.conditions().turns())
                    : withConditions(run.conditions().surface(), run.conditions().track(), (Turn) word);
        }
        return run;
    }

    private Case withConditions(Surface surface, Optional<Quantity> track, Turn turns) {
        Conditions day = run.conditions();
        return run.withConditions(new Conditions(surface, day.air(), track, day.coldTyres(), day.altitude(), turns));
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
            told.addAll(answer instanceof Answer.Said ? fields(topic.field(), groups.get(i))
                    : topic.field().alongside());
            reports.add(topic.complaint() + i, detailed(report, topic.field(), groups.get(i)));
            more.add(topic.complaint() + i, told);
        }
        if (topic.field() == Field.TURN && reports.get(topic.complaint()).turn().filter(Turn::oneSided).isEmpty()) {
            // Where one thing happens in turns both ways the car is much the same on both sides: asking once will do.
            more.forEach(each -> each.add(Field.TURN));
        }
        return new State(run.withReports(reports), known, List.copyOf(more));
    }

    private static Set<Field> fields(Field asked, List<Word> words) {
        Set<Field> fields = EnumSet.noneOf(Field.class);
        words.forEach(word -> fields.add(asked.of(word)));
        return fields;
    }

    private static Report detailed(Report report, Field asked, List<Word> words) {
        Report detailed = report;
        for (Word word : words) {
            detailed = detailed(detailed, asked.of(word), word);
        }
        return detailed;
    }

    private static Report detailed(Report it, Field field, Word word) {
        return switch (field) {
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
            default -> throw new IllegalArgumentException(field + " is not told of a complaint");
        };
    }
}
