package camberwell.upkeep;

import camberwell.advice.Weights;
import camberwell.fact.Setup;
import camberwell.language.Asked;
import camberwell.language.Check;
import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.Names;
import camberwell.language.RuleGraph;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import camberwell.pack.RuleSet;
import camberwell.problem.Problem;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;

/**
 * Looks for what is wrong with rules that can each be read: what contradicts itself, says nothing new, or leads
 * nowhere. It compares what conditions ask and what conclusions say, and fires nothing.
 */
public final class RuleCheck {

    private final RuleSet set;
    private final Names names;
    private final Set<String> alwaysShown;
    private final UnaryOperator<String> fileOfNote;
    private final List<RuleText> all;
    private final Map<String, List<Asked>> asks = new HashMap<>();
    private final Map<String, List<Statement>> says = new HashMap<>();
    private final Map<String, Integer> place = new HashMap<>();
    private final Weights weights;
    private final Chains chains;
    private final List<Problem> problems = new ArrayList<>();

    /**
     * @param alwaysShown names of notes that are shown without a rule asking for them
     * @param fileOfNote the file of a note, by its name
     * @param weights with the certainties from which on something is advised
     */
    public RuleCheck(RuleSet set, Names names, Set<String> alwaysShown, UnaryOperator<String> fileOfNote, Weights weights) {
        this.set = set;
        this.weights = weights;
        this.names = names;
        this.alwaysShown = alwaysShown;
        this.fileOfNote = fileOfNote;
        this.all = List.copyOf(set.rules().values());
        for (RuleText rule : all) {
            asks.put(rule.name(), Asked.together(rule));
            says.put(rule.name(), rule.statements());
            place.put(rule.name(), place.size());
        }
        this.chains = new Chains(all, asks);
    }

    /** Every problem of the built-in rules, file by file from top to bottom. */
    public List<Problem> builtIn() {
        problems.clear();
        problems.addAll(set.builtInProblems());
        problems.addAll(RuleGraph.of(all).circles(all));
        check(all, names.all(), set.builtInProblems().isEmpty());
        return sorted();
    }

    /**
     * Every problem of the rule folders, alone and together with the built-in rules.
     *
     * @param notes the names of the folders' own notes
     * @param whole whether all files of the folders could be read
     */
    public List<Problem> packs(Collection<String> notes, boolean whole) {
        problems.clear();
        problems.addAll(set.packProblems());
        check(set.packRules(), notes, whole && problems.isEmpty());
        return sorted();
    }

    private List<Problem> sorted() {
        return problems.stream().distinct().sorted().toList();
    }

    /** @param whole whether every rule could be read: who else finds or asks what is not known otherwise */
    private void check(List<RuleText> subjects, Collection<String> notes, boolean whole) {
        Set<String> subject = new HashSet<>();
        subjects.forEach(rule -> subject.add(rule.name()));
        for (RuleText rule : subjects) {
            Optional<String> why = neverFires(rule);
            why.ifPresent(reason -> problem(rule, Check.NEVER_FIRES, "the rule \"" + rule.name()
                    + "\" can never fire: " + reason));
            if (why.isEmpty() && whole && !set.hasDrools()) {
                chains.deadEnd(rule).ifPresent(finding -> problem(rule, Check.DEAD_CHAIN, "the rule \"" + rule.name()
                        + "\" can never fire: \"" + finding + "\" is only found where something else that it asks is "
                        + "not so"));
            }
            twice(rule);
            lacks(rule);
            opposites(rule, rule);
        }
        for (List<RuleText> alike : byConclusionTopic().values()) {
            for (RuleText one : alike) {
                for (RuleText other : alike) {
                    if (one != other && (subject.contains(one.name()) || subject.contains(other.name()))) {
                        covered(one, other, subject);
                        complement(one, other, subject);
                        if (before(one, other) && sameEvidence(one, other)) {
                            boolean later = subject.contains(other.name());
                            opposites(later ? other : one, later ? one : other);
                        }
                    }
                }
            }
        }
        if (whole && !set.hasDrools()) {
            problems.addAll(new LooseEnds(all, alwaysShown, fileOfNote).of(subjects, notes));
            little(subjects);
        }
    }

    private Optional<String> neverFires(RuleText rule) {
        List<Asked> asked = asks.get(rule.name());
        for (Asked one : asked) {
            if (one.nothing()) {
                List<String> lines = clash(rule, one);
                return Optional.of(lines.size() == 1 ? "nothing is \"" + lines.get(0) + "\""
                        : "\"" + lines.get(0) + "\" and \"" + lines.get(1) + "\" exclude each other");
            }
        }
        for (Asked negative : asked) {
            for (Asked positive : asked) {
                if (!positive.negative() && negative.negative() && positive.facts(negative)) {
                    return Optional.of("\"" + text(rule, positive) + "\" and \"" + text(rule, negative)
                            + "\" exclude each other");
                }
            }
        }
        return Optional.empty();
    }

    private static String text(RuleText rule, Asked asked) {
        return rule.conditions().stream().filter(condition -> Asked.of(condition).equals(asked)).findFirst()
                .orElseThrow().text();
    }

    /** The two conditions that exclude each other; one, when its own narrowings do. */
    private static List<String> clash(RuleText rule, Asked impossible) {
        List<Condition> about = rule.conditions().stream()
                .filter(condition -> Asked.of(condition).about().equals(impossible.about())).toList();
        for (Condition condition : about) {
            if (Asked.of(condition).nothing()) {
                return List.of(condition.text());
            }
        }
        for (Condition one : about) {
            for (Condition other : about) {
                if (Asked.of(one).and(Asked.of(other)).nothing()) {
                    return List.of(one.text(), other.text());
                }
            }
        }
        return List.of(about.get(0).text(), about.get(about.size() - 1).text());
    }

    /** Rules that conclude about the same thing, by the thing: only those need to be held against each other. */
    private Map<String, List<RuleText>> byConclusionTopic() {
        Map<String, List<RuleText>> topics = new HashMap<>();
        for (RuleText rule : all) {
            Set<String> of = new TreeSet<>();
            rule.statements().forEach(statement -> of.add(topic(statement)));
            of.forEach(topic -> topics.computeIfAbsent(topic, key -> new ArrayList<>()).add(rule));
        }
        return topics;
    }

    private static String topic(Statement statement) {
        return statement.aboutChange().map(change -> change.adjuster().note())
                .or(statement::aboutFinding).orElseGet(() -> statement.getClass().getSimpleName() + statement.notes());
    }

    /** Whether whenever {@code one} fires {@code other} fires too. */
    private boolean implies(RuleText one, RuleText other) {
        List<Asked> given = asks.get(one.name());
        for (Asked wanted : asks.get(other.name())) {
            if (!asksWithin(given, wanted)) {
                return false;
            }
        }
        return true;
    }

    private static boolean asksWithin(List<Asked> given, Asked wanted) {
        for (Asked asked : given) {
            if (asked.within(wanted)) {
                return true;
            }
        }
        return false;
    }

    private boolean before(RuleText one, RuleText other) {
        return place.get(one.name()) < place.get(other.name());
    }

    private boolean sameEvidence(RuleText one, RuleText other) {
        return implies(one, other) && implies(other, one);
    }

    /**
     * Certainties add up, so a rule that asks for more may say the same again with a certainty of its own: what it
     * asks for in addition is further evidence. With the very same certainty it is held to be a copy; on the
     * same evidence any certainty would count that evidence twice.
     */
    private void covered(RuleText narrow, RuleText wide, Set<String> subject) {
        // What is said is compared first: that is quick, and seldom the same.
        if (!says(narrow, wide, false) || !implies(narrow, wide)) {
            return;
        }
        boolean alike = implies(wide, narrow);
        if (!alike && !says(narrow, wide, true) || alike && before(narrow, wide) && subject.contains(wide.name())) {
            return;
        }
        problem(subject.contains(narrow.name()) ? narrow : wide, Check.COVERED, "the rule \"" + narrow.name()
                + "\" is covered by \""
                + wide.name() + "\" (" + wide.file() + ":" + wide.line() + "), which says the same on "
                + (alike ? "the same" : "less") + " evidence");
    }

    /** Whether all that {@code one} says {@code other} says too, with or without regard to the certainty. */
    private boolean says(RuleText one, RuleText other, boolean withCertainty) {
        List<Statement> said = says.get(other.name());
        for (Statement statement : says.get(one.name())) {
            if (!says(said, statement, withCertainty)) {
                return false;
            }
        }
        return true;
    }

    private static boolean says(List<Statement> said, Statement statement, boolean withCertainty) {
        for (Statement candidate : said) {
            if (candidate.saysSameAs(statement) && (!withCertainty || candidate.certainty() == statement.certainty())) {
                return true;
            }
        }
        return false;
    }

    private void complement(RuleText forIt, RuleText against, Set<String> subject) {
        for (Statement said : says.get(against.name())) {
            if (said instanceof Statement.SpeakAgainst denied && says.get(forIt.name()).stream().anyMatch(statement ->
                    statement instanceof Statement.Find find && find.finding().equals(denied.finding()))) {
                Complements.of(forIt, against, asks.get(forIt.name())).ifPresent(condition -> problem(
                        subject.contains(against.name()) ? against : forIt, Check.COMPLEMENT, "the rule \"" + against.name()
                        + "\" takes \"" + condition.text() + "\" for evidence against \"" + denied.finding() + "\", of which \""
                        + forIt.name() + "\" (" + forIt.file() + ":" + forIt.line() + ") takes the contrary for evidence: "
                        + "no measurement speaks against itself; name the other witness that it contradicts"));
            }
        }
    }

    /** Conclusions of which nothing ever follows. */
    private void little(List<RuleText> subjects) {
        Reach reach = new Reach(all, chains, weights);
        for (RuleText rule : subjects) {
            for (Line line : rule.conclusions()) {
                reach.neverActs(rule, line.statement()).ifPresent(why -> problem(rule, line, Check.NEVER_ACTS,
                        "\"" + line.text() + "\" never acts: " + why));
            }
        }
    }

    private void opposites(RuleText rule, RuleText other) {
        for (Line one : rule.conclusions()) {
            for (Line two : other.conclusions()) {
                if (one.statement().isOppositeOf(two.statement()) && (rule != other || one.line() < two.line())) {
                    problem(rule, one, rule == other ? Check.SAYS_BOTH : Check.OPPOSITE, rule == other
                            ? "the rule \"" + rule.name() + "\" says both \"" + one.text() + "\" and \"" + two.text()
                            + "\"" : "\"" + one.text() + "\" is the opposite of what \"" + other.name() + "\" ("
                            + other.file() + ":" + two.line() + ") says on the same evidence: \"" + two.text() + "\"");
                }
            }
        }
    }

    /** A condition that another one of the rule is already. */
    private void twice(RuleText rule) {
        List<Condition> conditions = rule.conditions();
        for (int i = 1; i < conditions.size(); i++) {
            for (int before = 0; before < i; before++) {
                if (conditions.get(i).question().sameAs(conditions.get(before).question())) {
                    problem(rule, conditions.get(i).head(), Check.TWICE, "the rule \"" + rule.name() + "\" asks twice: "
                            + conditions.get(i).text());
                    break;
                }
            }
        }
    }

    /** A change of what the rule asks the car not to have. */
    private void lacks(RuleText rule) {
        for (Line line : rule.conclusions()) {
            Optional<String> adjustable = line.statement() instanceof Statement.Propose propose
                    ? Optional.of(Setup.adjustable(propose.change().adjuster())) : Optional.empty();
            boolean lacking = adjustable.isPresent() && rule.conditions().stream().map(Condition::question)
                    .anyMatch(question -> question.isAbout(Setup.KIND)
                    && question.passing(adjustable.get()).filter(passing -> !passing.lets("yes")).isPresent());
            if (lacking) {
                problem(rule, line, Check.LACKS, "the rule \"" + rule.name() + "\" proposes what it asks the car not to "
                        + "have: " + line.text());
            }
        }
    }

    private void problem(RuleText rule, Check check, String message) {
        problems.add(Problem.error(rule.file(), rule.line(), 1, check.told(message)));
    }

    private void problem(RuleText rule, Line line, Check check, String message) {
        problems.add(Problem.error(rule.file(), line.line(), line.column(), check.told(message)));
    }
}
