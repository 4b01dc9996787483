package camberwell.fact;

import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;

/**
 * One rule's word for a change (positive) or against it (negative).
 *
 * @param amount how far it goes, where the rule says so
 */
public record Proposal(Change change, double certainty, String rule, List<Premise> premises, Optional<Amount> amount)
        implements Conclusion {

    /** One that leaves it to the car how far the change goes. */
    public Proposal(Change change, double certainty, String rule, List<Premise> premises) {
        this(change, certainty, rule, premises, Optional.empty());
    }

    @Override
    public String about() {
        return change.id();
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Proposal proposal && Conclusion.sameWord(this, proposal) && change.equals(proposal.change)
                && amount.equals(proposal.amount);
    }
}
