package camberwell.language;

import camberwell.fact.Premise;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A condition held against facts, sentence by sentence. Drools only says which rules fire; why one stays silent is
 * asked of the very methods that the dictionary's DRL calls on the facts.
 *
 * @param condition what is asked
 * @param matches the facts that are as asked, in their order
 * @param nearest of the facts that the first sentence holds of, the one that the fewest dashes fail on
 * @param failed the sentences that do not hold of {@code nearest}; the first sentence alone where there is none
 */
public record Trial(Condition condition, List<Premise> matches, Optional<Premise> nearest, List<Line> failed) {

    private static final Pattern FACT = Pattern.compile("(?:not )?(\\w+)\\((.*)\\)");
    private static final Pattern CALL = Pattern.compile("(\\w+)\\(([^()]*)\\)");
    private static final Pattern LEAST = Pattern.compile("certainty >= ([0-9.]+)");
    private static final Pattern ARGUMENT = Pattern.compile("\"([^\"]*)\"|([0-9.]+)");

    /** Holds {@code condition} against {@code facts}. */
    public static Trial of(Condition condition, Collection<? extends Premise> facts) {
        String type = type(condition);
        List<Premise> matches = new ArrayList<>();
        Premise nearest = null;
        List<Line> failed = List.of(condition.head());
        for (Premise fact : facts) {
            if (!fact.getClass().getSimpleName().equals(type) || !holds(condition.head(), fact)) {
                continue;
            }
            List<Line> failing = condition.narrowings().stream().filter(line -> !holds(line, fact)).toList();
            if (failing.isEmpty()) {
                matches.add(fact);
            }
            if (nearest == null || failing.size() < failed.size()) {
                nearest = fact;
                failed = failing;
            }
        }
        return new Trial(condition, List.copyOf(matches), Optional.ofNullable(nearest), failed);
    }

    /** Whether the condition is met: some fact is as asked, or none where it asks that something is not so. */
    public boolean holds() {
        return condition.negative() == matches.isEmpty();
    }

    /** The kind of fact that a condition asks about, by the simple name of its class. */
    public static String type(Condition condition) {
        Matcher fact = FACT.matcher(condition.head().sentence().drl());
        if (!fact.matches()) {
            throw new IllegalArgumentException("no pattern on one fact: " + condition.head().sentence().drl());
        }
        return fact.group(1);
    }

    /** Whether one sentence, without the dashes under it, holds of {@code fact}. */
    static boolean holds(Line line, Premise fact) {
        String drl = line.sentence().drl();
        for (Map.Entry<String, String> word : line.words().entrySet()) {
            drl = drl.replace("{" + word.getKey() + "}", word.getValue());
        }
        Matcher pattern = FACT.matcher(drl);
        String constraints = !line.sentence().narrowing() && pattern.matches() ? pattern.group(2) : drl;
        Matcher least = LEAST.matcher(constraints);
        boolean holds = !least.find() || fact.certainty() >= Double.parseDouble(least.group(1));
        Matcher call = CALL.matcher(constraints);
        while (call.find()) {
            holds &= ask(fact, call.group(1), call.group(2));
        }
        return holds;
    }

    private static boolean ask(Premise fact, String name, String written) {
        List<Object> arguments = new ArrayList<>();
        Matcher argument = ARGUMENT.matcher(written);
        while (argument.find()) {
            arguments.add(argument.group(1) != null ? argument.group(1) : Double.valueOf(argument.group(2)));
        }
        for (Method method : fact.getClass().getMethods()) {
            if (method.getName().equals(name) && method.getParameterCount() == arguments.size()) {
                try {
                    return (boolean) method.invoke(fact, arguments.toArray());
                } catch (IllegalAccessException | InvocationTargetException e) {
                    throw new IllegalStateException(name, e);
                }
            }
        }
        throw new IllegalStateException("no fact answers " + name + "(" + written + ")");
    }
}
