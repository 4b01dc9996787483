package camberwell.statistics;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;

/** How many laps it takes to see a difference, and what a number of laps can show. */
public final class SampleSize {

    /** The usual chance of a false alarm, both ways together. */
    public static final double ALARM = 0.05;
    /** The usual chance to see a difference that is there. */
    public static final double POWER = 0.8;
    private static final int FEWEST = 2;
    private static final int MOST = 10_000;

    private SampleSize() {
    }

    /**
     * Laps for each of two stints: the least n with n ≥ 2 (t(1-α/2, 2n-2) + t(1-β, 2n-2))² (s/δ)² (NIST/SEMATECH
     * e-Handbook 7.2.2.2, with Student's distribution for the normal one, raised until it holds).
     *
     * @param difference δ over the scatter s of a lap, positive
     * @param power the chance to see it, in (0, 1)
     * @return from 2 to 10 000, where it stops
     */
    public static int laps(double difference, double power) {
        NormalDistribution normal = new NormalDistribution();
        double z = normal.inverseCumulativeProbability(1 - ALARM / 2) + normal.inverseCumulativeProbability(power);
        int n = (int) Math.min(MOST, Math.max(FEWEST, Math.floor(2 * z * z / (difference * difference))));
        while (n < MOST && n < 2 * square(quantiles(n, power)) / square(difference)) {
            n++;
        }
        return n;
    }

    /**
     * The least difference that {@code laps} in each of two stints show, over the scatter of a lap.
     *
     * @param laps of each, at least 2
     */
    public static double seen(int laps, double power) {
        return quantiles(laps, power) * Math.sqrt(2.0 / laps);
    }

    private static double quantiles(int laps, double power) {
        TDistribution student = new TDistribution(2.0 * laps - 2);
        return student.inverseCumulativeProbability(1 - ALARM / 2) + student.inverseCumulativeProbability(power);
    }

    private static double square(double number) {
        return number * number;
    }
}
