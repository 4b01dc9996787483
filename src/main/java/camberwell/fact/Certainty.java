package camberwell.fact;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;

/**
 * Certainty factors in [-1, 1], combined as in EMYCIN (B. G. Buchanan, E. H. Shortliffe, eds, "Rule-Based Expert
 * Systems", Addison-Wesley, 1984, ch. 10-12). Not the difference of belief and disbelief of 1975.
 */
public final class Certainty {

    /** Certainties are kept this far from total, so that for and against can always be weighed. */
    private static final double NEARLY_ONE = 0.999;

    private Certainty() {
    }

    /**
     * Two certainties about the same thing: agreement strengthens, disagreement weakens. Commutative and associative.
     *
     * @throws IllegalArgumentException if one is outside [-1, 1], or one is 1 and the other -1, which no rule resolves
     */
    public static double combine(double x, double y) {
        if (!(Math.abs(x) <= 1 && Math.abs(y) <= 1)) {
            throw new IllegalArgumentException("certainties must lie in [-1, 1]: " + x + ", " + y);
        }
        if (x * y == -1) {
            throw new IllegalArgumentException("certainly true and certainly false at once");
        }
        if (x > 0 && y > 0) {
            return x + y - x * y;
        }
        if (x < 0 && y < 0) {
            return x + y + x * y;
        }
        return (x + y) / (1 - Math.min(Math.abs(x), Math.abs(y)));
    }

    /**
     * The certainty that several conclusions give together. One rule speaks once, through its strongest match: the
     * same complaint in three corners is not three witnesses, nor are the ways through conditions of which one will do.
     */
    public static double ofRules(Collection<? extends Conclusion> conclusions) {
        Map<String, Double> strongest = new TreeMap<>();
        for (Conclusion conclusion : conclusions) {
            strongest.merge(Conclusion.voice(conclusion.rule()), conclusion.certainty(),
                    (one, other) -> Math.abs(other) > Math.abs(one) ? other : one);
        }
        double total = 0;
        for (double certainty : strongest.values()) {
            total = combine(total, Math.max(-NEARLY_ONE, Math.min(NEARLY_ONE, certainty)));
        }
        return Math.rint(total * 1e9) / 1e9;
    }
}
