package camberwell.upkeep;

import camberwell.fact.Finding;
import camberwell.fact.Reported;
import camberwell.knowledge.Effect;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.pack.RuleSet;
import camberwell.problem.Problem;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Proposals that come to little: the score of a change is what its note says that it does for the complaints, so that a rule
 * which proposes it for another complaint is heard and ranked last. Nothing is wrong with such a rule; its author wants to know.
 */
public final class Worth {

    private static final int DEEPEST = 5;

    private final RuleSet set;
    private final Notes notes;
    private final Map<String, List<RuleText>> finders = new HashMap<>();
    private final List<RuleText> subjects;

    /** @param notes with the effects that packs add */
    public Worth(RuleSet set, Notes notes) {
        this.set = set;
        this.notes = notes;
        this.subjects = set.packRules();
        for (RuleText rule : set.rules().values()) {
            rule.statements().stream().filter(Statement.Find.class::isInstance).forEach(found -> finders.computeIfAbsent(
                    found.aboutFinding().orElseThrow(), key -> new ArrayList<>()).add(rule));
        }
    }

    /** A warning for each proposal of a pack whose note names no good that it does to anything that the rule is about. */
    public List<Problem> warnings() {
        List<Problem> warnings = new ArrayList<>();
        for (RuleText rule : subjects) {
            for (Line line : rule.conclusions()) {
                if (line.statement() instanceof Statement.Propose propose) {
                    why(rule, propose.change()).ifPresent(message ->
                            warnings.add(new Problem(rule.file(), line.line(), line.column(),
                            message, Optional.empty(), true, "")));
                }
            }
        }
        return warnings.stream().distinct().sorted().toList();
    }

    private Optional<String> why(RuleText rule, Change change) {
        Set<String> about = new TreeSet<>();
        boolean first = rule.statements().stream().anyMatch(said -> said instanceof Statement.First put
                && put.change().equals(change));
        if (first || !complaints(rule, about, 0) || about.isEmpty()) {
            return Optional.empty();
        }
        Note.Way way = notes.get(change.adjuster().note()).ways().get(change.direction());
        List<Effect> effects = way == null ? List.of() : way.effects().stream()
                .filter(effect -> about.contains(effect.on().id())).toList();
        if (effects.stream().anyMatch(effect -> effect.effect() > 0)) {
            return Optional.empty();
        }
        boolean worse = effects.stream().anyMatch(effect -> effect.effect() < 0);
        return Optional.of("the note \"" + change.adjuster().note() + "\" "
                + (worse ? "says that " + change.id() + " makes it worse: "
                : "names nothing that " + change.id() + " does for ") + spoken(about)
                + (worse ? contrary(change, about) : ", so that the change comes last")
                + "; state it in a note of your own, in the helped-by of a word of your own, or put the change first");
    }

    /** The surest of the rules that propose the contrary for one of those complaints: the two would hold each other up. */
    private String contrary(Change change, Set<String> about) {
        RuleText surest = null;
        double certainty = 0;
        for (RuleText other : set.rules().values()) {
            for (Statement said : other.statements()) {
                if (said instanceof Statement.Propose propose && propose.change().equals(change.opposite())
                        && propose.certainty() > certainty && speaksOf(other, about)) {
                    surest = other;
                    certainty = propose.certainty();
                }
            }
        }
        return surest == null ? "" : ", and \"" + surest.name() + "\" (" + surest.file() + ":" + surest.line()
                + ") proposes the contrary with certainty " + certainty;
    }

    private boolean speaksOf(RuleText rule, Set<String> about) {
        Set<String> its = new TreeSet<>();
        complaints(rule, its, 0);
        return its.stream().anyMatch(about::contains);
    }

    private static String spoken(Collection<String> symptoms) {
        return String.join(", ", symptoms);
    }

    /**
     * Gathers the complaints that a rule stands on; false where it also stands on what was read, which every change may answer
     * to.
     */
    private boolean complaints(RuleText rule, Set<String> about, int depth) {
        for (Condition condition : rule.conditions()) {
            Question question = condition.question();
            if (question.negative()) {
                continue;
            }
            if (question.isAbout(Reported.KIND)) {
                question.passing("symptom").ifPresent(passing -> about.addAll(passing.words()));
            } else if (question.isAbout(Finding.KIND)) {
                for (RuleText finder : depth < DEEPEST ? finders.getOrDefault(question.word("finding").orElseThrow(), List.of())
                        : List.<RuleText>of()) {
                    if (!complaints(finder, about, depth + 1)) {
                        return false;
                    }
                }
            } else if (!ofCircumstances(question)) {
                return false;
            }
        }
        return true;
    }

    /** Whether a condition only says when: the car, the day, the run, but no figure that was read. */
    private static boolean ofCircumstances(Question question) {
        return question.asks().stream().noneMatch(ask -> ask.attribute().name().contains(":")
                || ask.attribute().name().equals("shows")
                || ask.attribute().name().equals("instrument"));
    }
}
