package camberwell.report;

import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.explain.Reasoning;
import camberwell.explain.WhyNot;
import camberwell.knowledge.Note;
import camberwell.language.RuleText;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** A quiz on a screen: the case, and after the learner's answer the engine's. */
public final class QuizText {

    private static final int MOST_CHANGES = 3;

    private final Map<String, RuleText> rules;

    /** @param rules by their names */
    public QuizText(Map<String, RuleText> rules) {
        this.rules = rules;
    }

    /** Writes what a learner is shown. */
    public void question(Case run, Page page) {
        page.heading(run.title());
        page.paragraph(0, Words.carAndDay(run));
        page.heading("The driver reports");
        run.reports().forEach(report -> page.point(0, report.text()));
        if (run.reports().isEmpty()) {
            page.paragraph(0, "Nothing.");
        }
        if (!run.tyres().isEmpty()) {
            page.heading("The tyres: inner, middle, outer; hot pressure");
            run.tyres().forEach((wheel, tyre) -> page.labelled(2, wheel.id(), tyre(tyre)));
            run.car().tyres().forEach((axle, spec) -> page.paragraph(0, axle.id() + " tyres: "
                    + spec.windowLow().flatMap(low -> spec.windowHigh().map(high -> "window " + low + " to " + high))
                    .orElse("window not known") + spec.hotTarget().map(target -> ", hot target " + target)
                    .orElse("")));
        }
        page.heading("What can be changed");
        page.paragraph(0, run.car().adjusters().keySet().stream().map(Adjuster::id).collect(Collectors.joining(", ")));
    }

    private static String tyre(TyreReading tyre) {
        return plain(tyre.inner()) + ", " + plain(tyre.middle()) + ", " + plain(tyre.outer()) + "; "
                + tyre.hotPressure().map(hot -> hot.text(hot.unit() == Unit.BAR ? 2 : 1)).orElse("not read");
    }

    private static String plain(Optional<Quantity> quantity) {
        return quantity.map(Quantity::toString).orElse("not read");
    }

    /** Writes what the learner's change would have done, and what stands against it where it is not advised. */
    public void answer(Change change, WhyNot why, Score worth, Note note, Page page) {
        page.heading("Your change: " + Words.change(change));
        why.reasons().stream().limit(2).forEach(reason -> page.paragraph(0, Words.sentence(reason) + "."));
        if (why.sum().steps().isEmpty()) {
            why.silent().stream().limit(1).flatMap(silent -> silent.failed().stream()).limit(1).forEach(sentence ->
                    page.paragraph(0, "The rule that comes nearest asks that \"" + sentence.line().text() + "\", and "
                            + sentence.observed() + "."));
        }
        page.blank().paragraph(0, note.ways().get(change.direction()).rationale());
        worth.helps().forEach(help -> page.point(0, "it helps " + help.complaint().text() + " ("
                + Words.signed(help.effect()) + " of 3)"));
        worth.costs().forEach(cost -> page.point(0, "it " + cost.told() + " ("
                + Words.signed(cost.effect()) + " of 3)"));
        if (worth.helps().isEmpty()) {
            page.point(0, "it helps none of what is complained of");
        }
    }

    /** Writes what the engine would do, and why. */
    public void engine(Reasoning reasoning, Page page) {
        page.heading("Camberwell would change, one at a time");
        for (RankedChange change : reasoning.advice().changes().stream().limit(MOST_CHANGES).toList()) {
            page.paragraph(0, change.rank() + ". " + Words.sentence(Words.move(change)));
            change.rules().stream().limit(1).forEach(rule -> page.labelled(3, "Why", rules.get(rule).because()));
            page.labelled(3, "Watch", change.way().watch());
        }
        reasoning.advice().driving().stream().limit(1).forEach(driving ->
                page.paragraph(0, (reasoning.advice().drivingFirst() ? "Before that, for the driver: "
                        : "For the driver: ") + driving.note().statement()));
    }
}
