package camberwell.report;

import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.explain.Comparison;
import camberwell.explain.Derived;
import camberwell.explain.Ground;
import camberwell.explain.How;
import camberwell.explain.Reasoning;
import camberwell.explain.Silent;
import camberwell.explain.Step;
import camberwell.explain.Sum;
import camberwell.explain.WhyNot;
import camberwell.fact.Finding;
import camberwell.fact.Premise;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Line;
import camberwell.language.RuleText;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Explanations as text for a screen. Rules are quoted as they were written. */
public final class ExplainText {

    /** Rules shown in full that would have found something; the rest are counted. */
    private static final int MOST_FINDERS = 2;
    private static final int MOST_RULES = 4;

    private final Notes notes;
    private final int mostRules;
    private final int mostFinders;

    /** @param all whether to show every silent rule and every finder of what was not found, not only the nearest */
    public ExplainText(Notes notes, boolean all) {
        this.notes = notes;
        this.mostRules = all ? Integer.MAX_VALUE : MOST_RULES;
        this.mostFinders = all ? Integer.MAX_VALUE : MOST_FINDERS;
    }

    /** Writes how a change was arrived at, from what was typed to its place in the advice. */
    public void how(Reasoning reasoning, How how, Page page) {
        page.heading("How \"" + how.change().id() + "\" came about");
        how.ranked().ifPresentOrElse(ranked -> page.paragraph(0, "Number " + ranked.rank() + " of "
                + reasoning.advice().changes().size() + ". " + Words.sentence(Words.move(ranked)) + "."),
                () -> page.paragraph(0, "It is not advised"
                        + how.withheld().map(withheld -> ": " + withheld.reason()).orElse("") + "."));
        if (!how.typed().isEmpty()) {
            page.heading("What was typed");
        }
        for (Premise premise : how.typed()) {
            page.point(0, premise.statement() + " [" + reasoning.place(premise).orElse("") + "]"
                    + (premise.certainty() < 1 ? ", certainty " + Words.two(premise.certainty()) : ""));
        }
        for (Derived derived : how.findings()) {
            page.heading(derived.finding() + ": " + certainty(derived.sum().certainty()));
            page.paragraph(0, notes.get(derived.finding())
                    .fitting(reasoning.advice().circumstances()).statement());
            sum(derived.sum(), page);
        }
        page.heading("Hence " + how.change().id() + ": " + certainty(how.sum().certainty()));
        sum(how.sum(), page);
        how.ranked().ifPresent(ranked -> score(ranked, page));
        page.heading(how.note().title() + ", from the note");
        page.paragraph(0, how.note().ways().get(how.change().direction()).rationale());
        prose(how.note(), page);
    }

    /** Writes why a change is not advised. */
    public void whyNot(WhyNot why, Page page) {
        page.heading("Why not \"" + why.change().id() + "\"?");
        why.reasons().forEach(reason -> page.point(0, Words.sentence(reason)));
        if (!why.withholding().isEmpty()) {
            page.heading("Held back by");
            why.withholding().forEach(step -> step(step, page));
        }
        if (!why.sum().steps().isEmpty() || why.sum().learned().isPresent()) {
            page.heading("What the rules say for it and against it: " + certainty(why.sum().certainty()));
            sum(why.sum(), page);
        }
        if (!why.silent().isEmpty()) {
            page.heading("Rules that would propose it and do not apply here");
            why.silent().stream().limit(mostRules).forEach(rule -> silent(rule, 0, page));
            if (why.silent().size() > mostRules) {
                page.blank().paragraph(0, why.silent().size() - mostRules + " more rules lack still more; --all shows "
                        + "them.");
            }
        }
        if (!why.gone().isEmpty()) {
            page.heading("Rules that propose it and are out of use");
            why.gone().forEach(gone -> page.point(0, "\"" + gone.rule().name() + "\""
                    + gone.rule().standing().id().map(id -> " (" + id + ")").orElse("") + ": " + gone.fate()));
        }
    }

    /** Writes two pieces of advice side by side, or on a narrow screen one below the other. */
    public void compare(Comparison comparison, List<String> assumed, Page page) {
        page.heading("If " + String.join(" and ", assumed));
        page.row("", "as it is", "then");
        page.heading("Changes");
        for (Comparison.ChangeRow row : comparison.changes()) {
            page.row(Words.sentence(Words.change(row.change())), cell(row.before(), row.withheldBefore().isPresent()),
                    cell(row.after(), row.withheldAfter().isPresent()));
        }
        page.heading("What is going on");
        for (Comparison.FindingRow row : comparison.findings()) {
            page.row(notes.get(row.finding()).title(), certaintyOrDash(row.before()), certaintyOrDash(row.after()));
        }
        page.heading("For the driver");
        page.row("Drive first", comparison.before().drivingFirst() ? "yes" : "no",
                comparison.after().drivingFirst() ? "yes" : "no");
        List<String> before = comparison.before().driving().stream().map(driving -> driving.note().title()).toList();
        List<String> after = comparison.after().driving().stream().map(driving -> driving.note().title()).toList();
        before.forEach(title -> page.row(title, "yes", after.contains(title) ? "yes" : "-"));
        after.stream().filter(title -> !before.contains(title)).forEach(title -> page.row(title, "-", "yes"));
    }

    private static String cell(Optional<RankedChange> ranked, boolean withheld) {
        return ranked.map(there -> there.rank() + ". " + Words.size(there)).orElse(withheld ? "held back" : "-");
    }

    private static String certaintyOrDash(double certainty) {
        return certainty > 0 ? certainty(certainty) : "-";
    }

    /** Writes a note's prose and sources. */
    static void prose(Note note, Page page) {
        for (String paragraph : note.prose().strip().split("\\n\\s*\\n")) {
            page.blank().paragraph(0, paragraph);
        }
        note.contested().ifPresent(contested -> page.blank().paragraph(0, "Where people differ: " + contested));
        page.blank();
        note.sources().forEach(source -> page.labelled(0, "Source", source));
    }

    private static void sum(Sum sum, Page page) {
        sum.steps().forEach(step -> step(step, page));
        sum.learned().ifPresent(learned -> learned(learned, page));
        if (!sum.joined().isEmpty()) {
            page.blank().paragraph(0, "Together (EMYCIN):");
            sum.joined().forEach(joined -> page.paragraph(2, joined(joined)));
        }
    }

    private static void learned(Learned learned, Page page) {
        page.blank().paragraph(0, Learned.RULE);
        page.paragraph(2, "tried " + learned.text());
        page.point(6, learned.undo() ? "judged worse, so the way back is worth " + Words.two(learned.evidence())
                : learned.evidence() == 0 ? "says nothing for this case, or against it"
                : "moves the certainty from " + Words.two(learned.before()) + " to " + Words.two(learned.after())
                        + ", as one witness of " + Words.two(learned.evidence()) + " would");
    }

    /** How two certainties become one. */
    static String joined(Sum.Joined joined) {
        double first = joined.first();
        double second = joined.second();
        String result = " = " + Words.two(joined.result());
        if (first > 0 && second > 0) {
            return Words.two(first) + " + " + Words.two(second) + " - " + Words.two(first) + " x " + Words.two(second)
                    + result;
        }
        String sum = Words.two(first) + (second < 0 ? " - " : " + ") + Words.two(Math.abs(second));
        return first < 0 && second < 0
                ? sum + " + " + Words.two(-first) + " x " + Words.two(-second) + result
                : "(" + sum + ") / (1 - " + Words.two(Math.min(Math.abs(first), Math.abs(second))) + ")" + result;
    }

    private static void step(Step step, Page page) {
        RuleText rule = step.rule();
        title(rule, 0, page);
        page.paragraph(2, rule.because());
        for (Ground ground : step.grounds()) {
            page.paragraph(4, ground.condition().head().text());
            ground.condition().narrowings().forEach(dash -> page.paragraph(4, dash.text()));
            page.point(6, ground.observed() + ground.premise().filter(premise -> premise.certainty() < 1
                    && !(premise instanceof Finding)).map(premise -> ", certainty " + Words.two(premise.certainty()))
                    .orElse(""));
        }
        page.paragraph(2, "then " + step.conclusion().text());
        page.point(6, Words.two(step.strength()) + " x " + Words.two(step.least()) + " = "
                + Words.two(step.certainty()));
    }

    private static void title(RuleText rule, int indent, Page page) {
        page.blank().paragraph(indent, "\"" + rule.name() + "\" (" + rule.standing().id().map(id -> id + ", ").orElse("")
                + rule.file() + ":" + rule.line() + (rule.standing().trial() ? ", on trial" : "") + ")");
    }

    private void silent(Silent silent, int indent, Page page) {
        title(silent.rule(), indent, page);
        for (Silent.Asked asked : silent.asked()) {
            for (Silent.Sentence sentence : asked.sentences()) {
                sentence(sentence, indent + 2, page);
            }
            asked.doubt().ifPresent(doubt -> doubt(doubt, indent + 8, page));
        }
    }

    private static void sentence(Silent.Sentence sentence, int indent, Page page) {
        Line line = sentence.line();
        boolean untold = !sentence.held() && sentence.observed().isEmpty();
        page.paragraph(indent, (untold ? "      " : sentence.held() ? "holds " : "fails ") + line.text());
        if (!sentence.held() && !untold) {
            page.point(indent + 6, sentence.observed());
        }
    }

    private void doubt(Silent.Doubt doubt, int indent, Page page) {
        doubt.sum().steps().forEach(step -> page.point(indent, "\"" + step.rule().name() + "\" "
                + (step.certainty() < 0 ? "speaks against it with " : "gives it only ")
                + Words.two(step.certainty())));
        for (Silent finder : doubt.silent().subList(0, Math.min(mostFinders, doubt.silent().size()))) {
            page.point(indent, "\"" + finder.rule().name() + "\" would find it, but "
                    + finder.failed().stream().map(sentence -> "\"" + sentence.line().text() + "\" fails: "
                    + sentence.observed()).collect(Collectors.joining("; ")));
        }
        if (doubt.silent().size() > mostFinders) {
            page.point(indent, doubt.silent().size() - mostFinders + " more would find it, and lack as much or more; "
                    + "--all shows them");
        }
    }

    private static String certainty(double certainty) {
        return certainty < Finding.LIKELY ? "certainty " + Words.two(certainty)
                : Words.certainty(certainty) + ", " + Words.two(certainty);
    }

    private static void score(RankedChange ranked, Page page) {
        page.heading("Its place in the ranking");
        page.paragraph(0, "Score " + Words.score(ranked.score()) + ".");
        ranked.score().helps().forEach(help -> page.point(0, "helps: " + help.complaint().text() + " ("
                + Words.signed(help.effect()) + " of 3, worth " + Words.two(help.complaint().weight()) + ")"));
        ranked.score().costs().forEach(cost -> page.point(0, "costs: " + cost.told() + " ("
                + Words.signed(cost.effect()) + " of 3)"));
        ranked.size().computation().forEach(line -> page.point(0, "size: " + line));
    }
}
