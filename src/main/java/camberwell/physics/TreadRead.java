package camberwell.physics;

/**
 * Numbers from the tread temperatures of one tyre, and how clear each reading is.
 *
 * <p>Clearness is a ramp from 0 (a healthy deviation, nothing to act on) to 1 (nobody would argue), not a threshold:
 * one kelvin must not tip the advice. Camber is judged by inner less outer, pressure by the middle less the mean of
 * the edges. Sources of the limits: a spread of at most 20 °F (11 K) across one tyre (Northstar Motorsports tech
 * tips); readings within 5 to 10 °F (3 to 6 K) mean that the pressure is about right (Finish Line Racing); an inner
 * edge a few kelvin hotter is healthy, because the straights heat it (common practice, no source with a number). The
 * end of each ramp is common practice, no source. The camber readings hold for a tyre on the loaded side.
 *
 * @param inner temperature of the inner edge, °C
 * @param middle temperature of the middle, °C
 * @param outer temperature of the outer edge, °C
 */
public record TreadRead(double inner, double middle, double outer) {

    /** Inner less outer up to which the tyre is healthy, K. */
    public static final double INNER_HOT_STARTS = 8.0;
    /** Inner less outer from which too much negative camber is certain, K. */
    public static final double INNER_HOT_FULL = 18.0;
    /** Outer less inner above which the tyre asks for more negative camber, K. */
    public static final double OUTER_HOT_STARTS = 0.0;
    /** Outer less inner from which too little negative camber is certain, K. */
    public static final double OUTER_HOT_FULL = 8.0;
    /** Middle less the edges' mean, either way, up to which the pressure is about right, K. */
    public static final double MIDDLE_STARTS = 3.0;
    /** Middle less the edges' mean, either way, from which the reading is certain, K. */
    public static final double MIDDLE_FULL = 8.0;

    /** Refuses what no probe shows. */
    public TreadRead {
        if (!Double.isFinite(inner) || !Double.isFinite(middle) || !Double.isFinite(outer)) {
            throw new IllegalArgumentException("tread temperatures must be finite, are "
                    + inner + "/" + middle + "/" + outer);
        }
    }

    /** Mean of the three readings, °C. */
    public double mean() {
        return (inner + middle + outer) / 3.0;
    }

    /** Hottest less coldest of the three readings, K, never negative. */
    public double spread() {
        return Math.max(inner, Math.max(middle, outer)) - Math.min(inner, Math.min(middle, outer));
    }

    /** Inner less outer edge, K; positive when the inner edge is the hotter one. */
    public double innerMinusOuter() {
        return inner - outer;
    }

    /** Middle less the mean of the edges, K; positive when the middle is hotter (over-inflated). */
    public double middleMinusEdges() {
        return middle - (inner + outer) / 2.0;
    }

    /** How clearly the inner edge says "too much negative camber", 0 to 1. */
    public double innerHotClearness() {
        return ramp(innerMinusOuter(), INNER_HOT_STARTS, INNER_HOT_FULL);
    }

    /** How clearly the outer edge says "too little negative camber", 0 to 1. */
    public double outerHotClearness() {
        return ramp(-innerMinusOuter(), OUTER_HOT_STARTS, OUTER_HOT_FULL);
    }

    /** How clearly a hot middle says "over-inflated", 0 to 1. */
    public double middleHotClearness() {
        return ramp(middleMinusEdges(), MIDDLE_STARTS, MIDDLE_FULL);
    }

    /** How clearly a cool middle says "under-inflated", 0 to 1. */
    public double middleCoolClearness() {
        return ramp(-middleMinusEdges(), MIDDLE_STARTS, MIDDLE_FULL);
    }

    /** From 0 at {@code start} to 1 at {@code full}, and no further either way. */
    public static double ramp(double value, double start, double full) {
        return Math.max(0.0, Math.min(1.0, (value - start) / (full - start)));
    }
}
