package camberwell.upkeep;

import camberwell.fact.Finding;
import camberwell.language.Check;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.Question;
import camberwell.language.RuleGraph;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.problem.Problem;
import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/** Findings that nobody asks for or nobody finds, and notes that no rule leads to. */
final class LooseEnds {

    private final List<RuleText> everything;
    private final Set<String> alwaysShown;
    private final UnaryOperator<String> fileOfNote;
    private final List<Problem> problems = new ArrayList<>();

    /** @param everything all rules; one that could not be read would be missed */
    LooseEnds(List<RuleText> everything, Set<String> alwaysShown, UnaryOperator<String> fileOfNote) {
        this.everything = everything;
        this.alwaysShown = alwaysShown;
        this.fileOfNote = fileOfNote;
    }

    /** Those of {@code subjects}, and those of {@code notes}. */
    List<Problem> of(List<RuleText> subjects, Collection<String> notes) {
        findings(subjects);
        unreachable(notes);
        return problems;
    }

    private void findings(List<RuleText> subjects) {
        Set<String> found = new TreeSet<>();
        Set<String> asked = new TreeSet<>();
        for (RuleText rule : everything) {
            rule.statements().stream().filter(Statement.Find.class::isInstance)
                    .forEach(statement -> found.add(statement.aboutFinding().orElseThrow()));
            asked.addAll(RuleGraph.asked(rule));
        }
        Set<String> told = new HashSet<>();
        for (RuleText rule : subjects) {
            for (Condition condition : rule.conditions()) {
                Question question = condition.head().question();
                if (question.isAbout(Finding.KIND)) {
                    nothingConcludes(rule, condition.head(), question.word("finding").orElseThrow(), found, told);
                }
            }
            for (Line line : rule.conclusions()) {
                if (line.statement() instanceof Statement.SpeakAgainst against) {
                    nothingConcludes(rule, line, against.finding(), found, told);
                } else if (line.statement() instanceof Statement.Find find && !find.alone() && !asked.contains(find.finding())
                        && told.add("unused " + find.finding())) {
                    problems.add(Problem.error(rule.file(), line.line(), line.column(), Check.LEADS_NOWHERE.told("the finding \""
                            + find.finding() + "\" leads nowhere: no rule asks for it")));
                }
            }
        }
    }

    private void nothingConcludes(RuleText rule, Line line, String finding, Set<String> found, Set<String> told) {
        if (!found.contains(finding) && told.add(finding)) {
            problems.add(Problem.error(rule.file(), line.line(), line.column(),
                    Check.NOBODY_FINDS.told("no rule finds \"" + finding + "\""), Nearest.to(finding, found)));
        }
    }

    private void unreachable(Collection<String> notes) {
        Set<String> reached = new HashSet<>(alwaysShown);
        for (RuleText rule : everything) {
            reached.add(rule.note());
            rule.statements().forEach(statement -> reached.addAll(statement.notes()));
        }
        for (String note : new TreeSet<>(notes)) {
            if (!reached.contains(note)) {
                problems.add(Problem.error(fileOfNote.apply(note), 1, 1,
                        Check.NO_WAY_TO.told("no rule leads to the note \"" + note + "\"")));
            }
        }
    }
}
