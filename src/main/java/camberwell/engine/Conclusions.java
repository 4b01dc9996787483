package camberwell.engine;

import camberwell.fact.Caution;
import camberwell.fact.Driving;
import camberwell.fact.Finding;
import camberwell.fact.Preference;
import camberwell.fact.Proposal;
import camberwell.fact.Withholding;
import java.util.List;

/** Everything that the rules concluded, each list in an order that depends on nothing but its content. */
public record Conclusions(List<Finding> findings, List<Proposal> proposals, List<Preference> preferences,
        List<Withholding> withholdings,
        List<Driving> driving, List<Caution> cautions) {
}
