package camberwell.upkeep;

import camberwell.fact.Finding;
import camberwell.language.Asked;
import camberwell.language.Condition;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Whether what a rule asks and what the rules ask that find what it asks for can be so at once. Each finding is looked at
 * by itself, so that what is called dead is dead; two findings that exclude each other stay unseen.
 */
final class Chains {

    private static final int DEEPEST = 6;
    /** So many rules are looked at for one; then it is taken to be alive. */
    private static final int MOST_STEPS = 5_000;

    private final Map<String, List<RuleText>> finders = new HashMap<>();
    private final Map<String, List<Asked>> asks;
    private int steps;

    /** @param asks what each rule asks, by its name */
    Chains(List<RuleText> rules, Map<String, List<Asked>> asks) {
        this.asks = asks;
        for (RuleText rule : rules) {
            for (Statement statement : rule.statements()) {
                if (statement instanceof Statement.Find find) {
                    finders.computeIfAbsent(find.finding(), key -> new ArrayList<>()).add(rule);
                }
            }
        }
    }

    /** A finding that {@code rule} asks for and that nothing finds where the rest of what it asks is so. */
    Optional<String> deadEnd(RuleText rule) {
        steps = 0;
        Optional<Map<String, Asked>> world = with(Map.of(), rule);
        return world.flatMap(so -> asked(rule).stream().filter(finding -> finders.containsKey(finding))
                .filter(finding -> !possible(finding, so, Set.of(), 0)).findFirst());
    }

    private boolean possible(String finding, Map<String, Asked> world, Set<String> above, int depth) {
        if (depth > DEEPEST || above.contains(finding) || steps > MOST_STEPS) {
            return true;
        }
        Set<String> through = new HashSet<>(above);
        through.add(finding);
        for (RuleText finder : finders.getOrDefault(finding, List.of())) {
            steps++;
            Optional<Map<String, Asked>> both = with(world, finder);
            if (both.isPresent() && asked(finder).stream()
                    .allMatch(deeper -> possible(deeper, both.get(), through, depth + 1))) {
                return true;
            }
        }
        return false;
    }

    /** The findings that a rule asks to be likely. */
    private static List<String> asked(RuleText rule) {
        return rule.conditions().stream().map(Condition::question)
                .filter(question -> question.isAbout(Finding.KIND) && !question.negative())
                .map(question -> question.word("finding").orElseThrow()).toList();
    }

    /** What is so of the one car, the one day and the one set of readings when {@code rule} fires too; empty if nothing. */
    Optional<Map<String, Asked>> with(Map<String, Asked> world, RuleText rule) {
        Map<String, Asked> both = new HashMap<>(world);
        for (Asked asked : asks.get(rule.name())) {
            if (asked.ofCar() || asked.ofDay() || asked.ofReadings()) {
                Asked merged = both.merge(asked.about(), asked, Asked::and);
                if (merged.nothing()) {
                    return Optional.empty();
                }
            }
        }
        return Optional.of(both);
    }
}
