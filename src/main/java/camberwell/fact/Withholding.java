package camberwell.fact;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;

/**
 * One rule's word that a change has to wait.
 *
 * @param change the change, or empty for every balance change
 */
public record Withholding(Optional<Change> change, double certainty, String rule, List<Premise> premises)
        implements Conclusion {

    /** Whether {@code other} has to wait for it. */
    public boolean holds(Change other) {
        return change.map(other::equals).orElse(isBalance(other.adjuster()));
    }

    /** Whether an adjuster serves the car's balance rather than the tyre. */
    public static boolean isBalance(Adjuster adjuster) {
        return !adjuster.adjustment().ofTyre();
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }
}
