package camberwell.upkeep;

import camberwell.advice.Weights;
import camberwell.fact.Certainty;
import camberwell.fact.Conclusion;
import camberwell.fact.Finding;
import camberwell.language.Asked;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.language.Statement;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * How certain a conclusion can become at most: the rule's own word, with every other rule that says the same and can fire beside
 * it, each as sure as what it stands on can be. Where that stays under the threshold at which anything follows, no case brings it
 * to act.
 */
final class Reach {

    /** So many sets of rules are looked at for one conclusion; then all of them are taken to go together. */
    private static final int MOST_SETS = 2_000;
    private static final double HAIR = 1e-9;

    private final Chains chains;
    private final Weights weights;
    private final Map<String, List<RuleText>> speakers = new HashMap<>();
    /** From what certainty on somebody asks for a finding; that at which it is told where nobody does. */
    private final Map<String, Double> askedFrom = new HashMap<>();
    private final Map<String, Double> findings = new HashMap<>();
    private final Set<String> open = new HashSet<>();
    private int sets;

    /** @param chains of the same rules */
    Reach(List<RuleText> rules, Chains chains, Weights weights) {
        this.chains = chains;
        this.weights = weights;
        for (RuleText rule : rules) {
            for (Statement statement : rule.statements()) {
                topic(statement).ifPresent(topic -> speakers.computeIfAbsent(topic, key -> new ArrayList<>()).add(rule));
            }
            for (Condition condition : rule.conditions()) {
                Question question = condition.question();
                if (question.isAbout(Finding.KIND)) {
                    askedFrom.merge(question.word("finding").orElseThrow(),
                            Math.nextUp(question.passing("certainty").orElseThrow().above()),
                            Math::min);
                }
            }
        }
    }

    /** What a conclusion adds to, where it speaks for it and a threshold stands before it. */
    private static Optional<String> topic(Statement statement) {
        return statement instanceof Statement.Find find ? Optional.of("find " + find.finding())
                : statement instanceof Statement.Propose propose ? Optional.of("propose " + propose.change())
                : statement instanceof Statement.Advise advise ? Optional.of("advise " + advise.driving()) : Optional.empty();
    }

    /** Why what {@code rule} says can never act; empty where it can. */
    Optional<String> neverActs(RuleText rule, Statement statement) {
        Optional<String> topic = topic(statement);
        double from = threshold(statement);
        if (topic.isEmpty() || statement.certainty() * premises(rule) >= from - HAIR) {
            return Optional.empty();
        }
        double most = most(topic.get(), Optional.of(rule));
        return most >= from - HAIR ? Optional.empty() : Optional.of("with all that can speak for it beside, it comes to "
                + figure(most) + ", and " + what(statement) + " from " + figure(from) + " on");
    }

    private double threshold(Statement statement) {
        return statement instanceof Statement.Find find ? askedFrom.getOrDefault(find.finding(), Finding.LIKELY)
                : statement instanceof Statement.Advise ? weights.leastDriving() : weights.leastCertainty();
    }

    private static String what(Statement statement) {
        return statement instanceof Statement.Find ? "a finding counts" : statement instanceof Statement.Advise ? "advice is told"
                : "a change is advised";
    }

    private static String figure(double certainty) {
        return String.format(Locale.ROOT, "%.2f", Math.floor(certainty * 100 + HAIR) / 100);
    }

    /** The certainty of the least certain finding that a rule asks for, at its most certain. */
    private double premises(RuleText rule) {
        double least = 1;
        for (Condition condition : rule.conditions()) {
            if (condition.question().isAbout(Finding.KIND) && !condition.question().negative()) {
                least = Math.min(least, finding(condition.question().word("finding").orElseThrow()));
            }
        }
        return least;
    }

    private double finding(String finding) {
        Double known = findings.get(finding);
        if (known != null) {
            return known;
        }
        if (!speakers.containsKey("find " + finding) || !open.add(finding)) {
            return 1;
        }
        double most = most("find " + finding, Optional.empty());
        open.remove(finding);
        findings.put(finding, most);
        return most;
    }

    private record Voice(RuleText rule, double certainty) {
    }

    /** The certainty that rules which can fire together give a conclusion at most; {@code with} is one of them. */
    private double most(String topic, Optional<RuleText> with) {
        List<Voice> voices = new ArrayList<>();
        for (RuleText rule : speakers.getOrDefault(topic, List.of())) {
            double surest = rule.statements().stream().filter(statement -> topic(statement).equals(Optional.of(topic)))
                    .mapToDouble(Statement::certainty).max().orElse(0);
            voices.add(new Voice(rule, surest * premises(rule)));
        }
        voices.sort(Comparator.comparing((Voice voice) -> with.isEmpty() || voice.rule() != with.get())
                .thenComparing(voice -> -voice.certainty()));
        sets = 0;
        return most(voices, 0, Map.of(), Set.of(), 0, with.isPresent());
    }

    private double most(List<Voice> voices, int from, Map<String, Asked> world, Set<String> heard, double so, boolean first) {
        if (from == voices.size()) {
            return so;
        }
        Voice next = voices.get(from);
        String name = Conclusion.voice(next.rule().name());
        Optional<Map<String, Asked>> both = heard.contains(name) ? Optional.empty() : chains.with(world, next.rule());
        sets++;
        double taken = 0;
        if (both.isPresent()) {
            Set<String> more = new HashSet<>(heard);
            more.add(name);
            taken = most(voices, from + 1, both.get(), more, Certainty.combine(so, next.certainty()), false);
        }
        return both.isPresent() && (first || sets > MOST_SETS) ? taken
                : Math.max(taken, most(voices, from + 1, world, heard, so, false));
    }
}
