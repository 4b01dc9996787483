package camberwell.language;

import camberwell.fact.Finding;
import camberwell.problem.Problem;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/** Which finding leads to which other, and by what rule. */
public final class RuleGraph {

    private final Map<String, List<Step>> steps = new TreeMap<>();

    private record Step(String from, String to, RuleText rule) {
    }

    private RuleGraph() {
    }

    /** What those rules find, and what they ask for that others find. */
    public static RuleGraph of(Collection<RuleText> rules) {
        RuleGraph graph = new RuleGraph();
        for (RuleText rule : rules) {
            for (String from : asked(rule)) {
                for (String to : concluded(rule)) {
                    graph.steps.computeIfAbsent(from, key -> new ArrayList<>()).add(new Step(from, to, rule));
                }
            }
        }
        return graph;
    }

    /** The findings that a rule asks for. */
    public static List<String> asked(RuleText rule) {
        return rule.conditions().stream().map(condition -> condition.head().question())
                .filter(question -> question.isAbout(Finding.KIND))
                .map(question -> question.word("finding").orElseThrow()).distinct().toList();
    }

    /** The findings that a rule finds or speaks against. */
    static List<String> concluded(RuleText rule) {
        return rule.statements().stream().flatMap(statement -> statement.aboutFinding().stream()).distinct().toList();
    }

    /** One problem for each circle that goes through one of {@code suspects}; at the suspect. */
    public List<Problem> circles(List<RuleText> suspects) {
        List<Problem> problems = new ArrayList<>();
        Set<Set<String>> told = new HashSet<>();
        Set<String> wanted = new HashSet<>();
        suspects.forEach(rule -> wanted.add(rule.name()));
        for (List<Step> starts : steps.values()) {
            for (Step start : starts) {
                if (!wanted.contains(start.rule().name())) {
                    continue;
                }
                List<Step> circle = backTo(start);
                Set<String> through = new HashSet<>();
                circle.forEach(step -> through.add(step.from()));
                if (!circle.isEmpty() && told.add(through)) {
                    problems.add(problem(circle));
                }
            }
        }
        return problems;
    }

    private static Problem problem(List<Step> circle) {
        StringBuilder way = new StringBuilder(circle.get(0).from());
        circle.forEach(step -> way.append(" -> ").append(step.to()).append(" (\"").append(step.rule().name())
                .append("\")"));
        RuleText rule = circle.get(0).rule();
        return Problem.error(rule.file(), rule.line(), 1, Check.CIRCLE.told("these rules go round in circles: " + way));
    }

    /** The shortest way that begins with {@code start} and ends where it begins; empty when there is none. */
    private List<Step> backTo(Step start) {
        Map<String, Step> cameBy = new HashMap<>();
        Deque<String> open = new ArrayDeque<>(List.of(start.to()));
        cameBy.put(start.to(), start);
        while (!open.isEmpty()) {
            String at = open.poll();
            if (at.equals(start.from())) {
                List<Step> circle = new ArrayList<>();
                for (Step step = cameBy.get(at); step != start; step = cameBy.get(step.from())) {
                    circle.add(0, step);
                }
                circle.add(0, start);
                return circle;
            }
            for (Step step : steps.getOrDefault(at, List.of())) {
                if (cameBy.putIfAbsent(step.to(), step) == null) {
                    open.add(step.to());
                }
            }
        }
        return List.of();
    }
}
