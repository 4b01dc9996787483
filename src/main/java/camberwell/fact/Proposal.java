package camberwell.fact;

import camberwell.vocabulary.Change;
import java.util.List;

/** One rule's word for a change (positive) or against it (negative). */
public record Proposal(Change change, double certainty, String rule, List<Premise> premises) implements Conclusion {

    @Override
    public int hashCode() {
        return rule.hashCode();
    }
}
