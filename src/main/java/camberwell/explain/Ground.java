package camberwell.explain;

import camberwell.fact.Premise;
import camberwell.language.Condition;
import java.util.Optional;

/**
 * A condition of a rule that fired, and what it rests on.
 *
 * @param condition as it was written
 * @param premise the fact that is as asked; empty where the rule asks that something is not so
 * @param observed what there is, in words
 */
public record Ground(Condition condition, Optional<Premise> premise, String observed) {
}
