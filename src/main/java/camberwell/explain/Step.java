package camberwell.explain;

import camberwell.language.Line;
import camberwell.language.RuleText;
import java.util.List;

/**
 * A rule that fired.
 *
 * @param rule as it was written
 * @param conclusion the sentence in it that concludes what is explained
 * @param strength the rule's own, negative where it speaks against
 * @param least the smallest certainty of what it rests on
 * @param grounds what it rests on, in the order of its sentences
 */
public record Step(RuleText rule, Line conclusion, double strength, double least, List<Ground> grounds) {

    /** Copies the list. */
    public Step {
        grounds = List.copyOf(grounds);
    }

    /** What this rule says by itself. */
    public double certainty() {
        return strength * least;
    }
}
