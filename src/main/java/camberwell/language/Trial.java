package camberwell.language;

import camberwell.fact.Premise;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * A condition held against facts, sentence by sentence. Drools only says which rules fire; this says why one stays
 * silent.
 *
 * @param condition what is asked
 * @param matches the facts that are as asked, in their order
 * @param nearest of the facts that the first sentence holds of, the one that the fewest dashes fail on
 * @param failed the sentences that do not hold of {@code nearest}; the first sentence alone where there is none
 */
public record Trial(Condition condition, List<Premise> matches, Optional<Premise> nearest, List<Line> failed) {

    /** Holds {@code condition} against {@code facts}. */
    public static Trial of(Condition condition, Collection<? extends Premise> facts) {
        Question head = condition.head().question();
        List<Question> narrowings = condition.narrowings().stream().map(Line::question).toList();
        List<Premise> matches = new ArrayList<>();
        Premise nearest = null;
        List<Line> failed = List.of(condition.head());
        for (Premise fact : facts) {
            if (!head.holdsOf(fact)) {
                continue;
            }
            List<Line> failing = new ArrayList<>();
            for (int i = 0; i < narrowings.size(); i++) {
                if (!narrowings.get(i).holdsOf(fact)) {
                    failing.add(condition.narrowings().get(i));
                }
            }
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
}
