package camberwell.fact;

import camberwell.units.Unit;
import java.util.List;

/**
 * What the rules find to be the case, with all that speaks for and against it.
 *
 * @param id the name of its knowledge note
 * @param certainty the combined certainty of {@code evidence}, in [-1, 1]
 * @param evidence what it rests on, sorted by rule
 */
public record Finding(String id, double certainty, List<Evidence> evidence) implements Premise {

    /** Above this a premise counts as true (EMYCIN: B. G. Buchanan, E. H. Shortliffe, 1984). */
    public static final double LIKELY = 0.2;

    /** What a finding can be asked. */
    public static final Kind KIND = new Kind("Finding", false, List.of(Attribute.named("finding"),
            Attribute.number("certainty", Unit.POSITION)));

    /** The finding that follows from all evidence about it. */
    public static Finding from(String id, List<Evidence> evidence) {
        List<Evidence> sorted = evidence.stream().sorted(Conclusion.ORDER).toList();
        return new Finding(id, Certainty.ofRules(sorted), sorted);
    }

    @Override
    public Kind kind() {
        return KIND;
    }

    @Override
    public String word(String attribute) {
        if (attribute.equals("finding")) {
            return id;
        }
        throw unasked(attribute);
    }

    @Override
    public double number(String attribute) {
        if (attribute.equals("certainty")) {
            return certainty;
        }
        throw unasked(attribute);
    }

    @Override
    public String says(String attribute) {
        return switch (attribute) {
            case "finding" -> id;
            case "certainty" -> "found with certainty " + certainty;
            default -> throw unasked(attribute);
        };
    }

    /** Whether it is more than a suspicion. */
    public boolean likely() {
        return certainty >= LIKELY;
    }

    /** Without the evidence: what follows from a finding is hashed with it, over and over. */
    @Override
    public int hashCode() {
        return 31 * id.hashCode() + Double.hashCode(certainty);
    }

    @Override
    public boolean equals(Object other) {
        return this == other || other instanceof Finding finding && id.equals(finding.id)
                && Double.compare(certainty, finding.certainty) == 0 && evidence.equals(finding.evidence);
    }

    @Override
    public String statement() {
        return id;
    }
}
