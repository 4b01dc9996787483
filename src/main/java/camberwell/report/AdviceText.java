package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.Complaint;
import camberwell.advice.Conflict;
import camberwell.advice.DrivingAdvice;
import camberwell.advice.Experience;
import camberwell.advice.Learned;
import camberwell.advice.Predicted;
import camberwell.advice.Predictions;
import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.advice.Size;
import camberwell.advice.Withheld;
import camberwell.car.Car;
import camberwell.fact.Finding;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.run.Report;
import camberwell.vocabulary.Audience;
import camberwell.vocabulary.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Advice as text for a screen, down to the width of a phone. */
public final class AdviceText {

    private static final int MOST_HELPS = 3;
    private static final int MOST_COSTS = 3;

    /** Findings shown to a club driver; an engineer sees all. */
    private static final int MOST_FINDINGS = 4;
    private static final int MOST_DRIVING = 2;

    private final Notes notes;
    private final boolean engineer;
    private final int top;
    private final boolean terms;
    private List<String> beside = List.of();
    private Voices voices = Voices.NONE;

    /**
     * @param audience club, or engineer for every finding, rule and term; for newcomers there is {@link NewcomerText}
     * @param top how many changes to show
     * @param terms whether to show every term of the score to a club driver too
     */
    public AdviceText(Notes notes, Audience audience, int top, boolean terms) {
        this.notes = notes;
        this.engineer = audience == Audience.ENGINEER;
        this.top = top;
        this.terms = terms || engineer;
    }

    /** Text for a club driver. */
    public AdviceText(Notes notes, int top, boolean terms) {
        this(notes, Audience.CLUB, top, terms);
    }

    /** The same, where {@code explain} needs these options too to come to the same advice. */
    public AdviceText beside(List<String> options) {
        beside = List.copyOf(options);
        return this;
    }

    /** The same, with what the authors of rule folders say. */
    public AdviceText with(Voices others) {
        voices = others;
        return this;
    }

    /** Writes {@code advice} on {@code page}. */
    public void write(Advice advice, Page page) {
        page.heading(advice.run().title());
        page.paragraph(0, Words.carAndDay(advice.run()));
        if (advice.run().car().drive().isEmpty()) {
            page.paragraph(0, Words.UNKNOWN_DRIVE);
        }
        advice.halt().ifPresent(caution -> {
            page.heading("Stop: " + Words.sentence(caution.title()));
            page.paragraph(0, caution.statement());
        });
        HeardText.write(advice.run(), page);
        findings(advice, page);
        doubts(advice.doubts(), page);
        if (advice.drivingFirst()) {
            driving("First, for the driver", advice.driving(), page);
        }
        if (advice.changes().isEmpty()) {
            page.heading(nothing(advice));
        } else {
            page.heading(advice.halt().isPresent() ? "Only when that is done"
                    : advice.changes().size() == 1 ? "One change" : "Change one thing at a time, in this order");
            Predictions predictions = advice.predictions();
            advice.changes().stream().limit(top).forEach(change ->
                    change(change, predictions, advice.experience(), page));
            if (advice.changes().size() > top) {
                page.blank().paragraph(0, advice.changes().size() - top + " more with --top "
                        + advice.changes().size());
            }
        }
        if (!advice.drivingFirst()) {
            driving("For the driver", advice.driving(), page);
        }
        conflicts(advice.conflicts(), advice.run().car(), page);
        withheld(advice.withheld(), advice.experience(), page);
        unanswered(advice, page);
        if (!advice.changes().isEmpty() && !advice.run().source().equals("-")) {
            List<String> words = new ArrayList<>(List.of("camberwell", "explain", advice.run().source(),
                    "--change", advice.changes().get(0).change().id()));
            words.addAll(beside);
            page.heading("How the first one came about").command(words.toArray(String[]::new));
        }
        if (advice.cautions().size() > (advice.halt().isPresent() ? 1 : 0)) {
            page.heading("Before you touch the car");
            // Whoever has changed this car before has read the general ones in full.
            boolean again = !advice.run().earlier().isEmpty() || !advice.run().tried().isEmpty();
            advice.cautions().stream().filter(caution -> !advice.halt().map(Note::name).equals(Optional.of(caution.name())))
                    .forEach(caution -> page.point(0, again && caution.goesWithChanges() && !caution.plain().isBlank()
                            ? caution.plain() : caution.statement()));
        }
    }

    private static String nothing(Advice advice) {
        if (advice.halt().isPresent()) {
            return "No change to the car before that is done.";
        }
        if (!advice.doubts().isEmpty() && advice.complaints().isEmpty()) {
            return "No change is asked for, but see what was read.";
        }
        if (advice.complaints().isEmpty()) {
            if (advice.run().heard().filter(heard -> !heard.refused().isEmpty()).isPresent()) {
                return "Nothing was understood that a change could help. Say it in other words.";
            }
            return "Nothing asks for a change. Leave the car as it is.";
        }
        return advice.withheld().isEmpty() && advice.driving().isEmpty()
                ? "Not enough to name a change. " + Unanswered.more(advice)
                : "No change to the car for now." + (advice.run().tyres().isEmpty() && !advice.run().tried().isEmpty()
                        ? " Read treads and pressures straight after the next run: they tell where to go on."
                        : Unanswered.open(advice));
    }

    private void findings(Advice advice, Page page) {
        List<Finding> findings = advice.findings();
        if (findings.isEmpty()) {
            return;
        }
        page.heading("What is going on");
        int shown = engineer ? findings.size() : Math.min(MOST_FINDINGS, findings.size());
        for (Finding finding : findings.subList(0, shown)) {
            page.point(0, notes.get(finding.id()).fitting(advice.circumstances()).statement() + " ("
                    + Words.certainty(finding.certainty()) + ", "
                    + Words.two(finding.certainty()) + (engineer ? "; " + finding.id() : "") + ")");
        }
        if (shown < findings.size()) {
            page.paragraph(0, findings.size() - shown + " less certain; --for engineer shows them.");
        }
    }

    /** Where the readings contradict each other. */
    static void doubts(List<String> doubts, Page page) {
        if (!doubts.isEmpty()) {
            page.heading("Read again before you trust it");
            doubts.forEach(doubt -> page.point(0, Words.sentence(doubt)));
        }
    }

    private void change(RankedChange change, Predictions predictions, Experience experience, Page page) {
        page.heading(change.rank() + ". " + Words.sentence(Words.move(change)));
        List<Size.WheelSize> wheels = Words.wheelsDiffer(change.size()) ? change.size().wheels() : List.of();
        for (Size.WheelSize wheel : wheels) {
            page.labelled(3, Words.sentence(wheel.wheel().spoken()), Words.size(change, wheel));
        }
        // The reason of the rule that decided; of a pack's rule, with whose it is.
        List<String> heard = voices.of(change.rules());
        if (heard.stream().noneMatch(words -> words.startsWith(change.why()))) {
            page.labelled(3, "Why", change.why());
        }
        heard.forEach(words -> page.labelled(3, "Why", words));
        if (!change.firstBy().isEmpty()) {
            List<String> packs = voices.packs(change.firstBy());
            page.labelled(3, "First", "put before the others by the rule \"" + String.join("\", \"", change.firstBy()) + "\""
                    + (packs.isEmpty() ? "" : " (" + String.join(", ", packs) + ")"));
        }
        if (!change.why().equals(change.way().rationale())) {
            page.labelled(3, "Behind it", change.way().rationale());
        }
        experience.of(change.change()).ifPresent(learned -> page.labelled(3, "Tried", Words.learned(learned)));
        if (!change.score().helps().isEmpty()) {
            page.labelled(3, "Helps", change.score().helps().stream().limit(MOST_HELPS)
                    .map(help -> help.complaint().text()).collect(Collectors.joining("; ")));
        }
        if (!change.score().costs().isEmpty()) {
            page.labelled(3, "Costs", costs(change.score()));
        }
        change.size().computation().forEach(line -> page.labelled(3, "Size", line));
        predictions.of(change).ifPresent(predicted ->
                model(change, predicted, page));
        page.labelled(3, "Watch", change.way().watch());
        page.labelled(3, "Put back", change.way().putBack());
        if (engineer) {
            change.rules().forEach(rule -> page.labelled(3, "Rule", rule));
        }
        if (terms) {
            page.labelled(3, "Score", Words.score(change.score()));
        }
    }

    /** Where the model does not show what the rule claims, the reader is told why the rule is believed. */
    private static void model(RankedChange change, Predicted predicted, Page page) {
        page.labelled(3, "Model", PredictionText.line(predicted, change.change().adjuster()));
        if (predicted.agrees().filter(agrees -> !agrees).isPresent()) {
            Complaint claimed = predicted.claimed().orElseThrow();
            page.labelled(3, "But", change.note().differences().stream().filter(difference -> difference.explains(
                    change.change().direction(), claimed.symptom(), claimed.phase().map(Set::of).orElse(Set.of())))
                    .map(Note.Difference::because).findFirst().orElse("the model knows a steady turn alone, and a tyre "
                    + "that is not this one. Where the two differ the rule goes by practice: one step, and the next run "
                    + "decides."));
        }
    }

    private static String costs(Score score) {
        return score.costs().stream().limit(MOST_COSTS).map(Score.Cost::told).collect(Collectors.joining("; "));
    }

    private void driving(String heading, List<DrivingAdvice> driving, Page page) {
        if (driving.isEmpty()) {
            return;
        }
        page.heading(heading);
        int shown = engineer ? driving.size() : Math.min(MOST_DRIVING, driving.size());
        for (DrivingAdvice advice : driving.subList(0, shown)) {
            page.point(0, advice.note().statement());
            Note.Practice practice = advice.note().practice().orElseThrow();
            voices.of(advice.rules()).forEach(words -> page.labelled(2, "Why", words));
            page.labelled(2, "Try", practice.tryNext());
            page.labelled(2, "Feel", practice.feel());
            page.labelled(2, "Car or you", practice.carOrDriver());
            if (engineer) {
                advice.rules().forEach(rule -> page.labelled(2, "Rule", rule));
            }
        }
    }

    private static void conflicts(List<Conflict> conflicts, Car car, Page page) {
        if (!conflicts.isEmpty()) {
            page.heading("What pulls both ways");
            conflicts.forEach(conflict -> page.point(0, Words.sentence(conflict.statement()) + "." + (conflict.ofRules()
                    ? " One of the two is wrong here, or lacks a condition." : levers(conflict, car))));
        }
    }

    /** Those levers of a conflict that the car has. */
    private static String levers(Conflict conflict, Car car) {
        List<String> there = conflict.changes().stream().filter(change -> car.has(change.adjuster())).map(Words::change).toList();
        return there.isEmpty() ? "" : (there.size() > 1 ? " These help the one and harm the other: "
                : " This helps the one and harms the other: ") + String.join(", ", there);
    }

    private static void unanswered(Advice advice, Page page) {
        List<Report> nothing = Unanswered.in(advice);
        if (!nothing.isEmpty()) {
            page.heading("Without an answer");
            nothing.forEach(report -> page.point(0, Words.sentence(report.text()) + ": "
                    + Unanswered.of(advice, report).orElse("nothing that I know of speaks to this")));
        }
    }

    private static void withheld(List<Withheld> withheld, Experience experience, Page page) {
        if (!withheld.isEmpty()) {
            page.heading("Not now");
            withheld.forEach(change -> page.point(0, Words.sentence(Words.change(change.change())) + ": "
                    + change.reason() + experience.of(change.change()).map(learned ->
                            (change.reason().startsWith("tried") ? "" : tried(learned))
                                    + Words.shift(learned)).orElse("")));
        }
    }

    /** What came of a change that is held back for another reason; that it helped is told as what speaks for it. */
    private static String tried(Learned learned) {
        return learned.outcome() == Outcome.BETTER ? "; though when tried " + learned.text().replaceFirst(": ", ", ")
                : "; tried " + learned.text();
    }
}
