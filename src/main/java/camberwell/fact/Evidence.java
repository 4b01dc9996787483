package camberwell.fact;

import java.util.List;

/** One rule's word for a finding (positive) or against it (negative). */
public record Evidence(String finding, double certainty, String rule, List<Premise> premises) implements Conclusion {

    @Override
    public String about() {
        return finding;
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Evidence evidence && Conclusion.sameWord(this, evidence) && finding.equals(evidence.finding);
    }
}
