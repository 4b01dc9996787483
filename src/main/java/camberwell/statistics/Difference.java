package camberwell.statistics;

import org.hipparchus.distribution.continuous.TDistribution;

/**
 * A difference that was estimated from a sample: B less A.
 *
 * @param estimate in the unit of the observations
 * @param standardError of it, at least 0
 * @param degreesOfFreedom of Student's distribution, positive; a fraction after Welch
 */
public record Difference(double estimate, double standardError, double degreesOfFreedom) {

    /**
     * The confidence interval.
     *
     * @param level in (0, 1): 0.95 for the usual one
     */
    public Interval interval(double level) {
        double reach = student().inverseCumulativeProbability((1 + level) / 2) * standardError;
        return new Interval(estimate - reach, estimate + reach);
    }

    /** The chance that B is less than A, with a flat prior. */
    public double chanceLess() {
        return standardError == 0 ? estimate < 0 ? 1 : estimate > 0 ? 0 : 0.5
                : student().cumulativeProbability(-estimate / standardError);
    }

    /** The two-sided p value of no difference. */
    public double pValue() {
        return 2 * Math.min(chanceLess(), 1 - chanceLess());
    }

    private TDistribution student() {
        return new TDistribution(degreesOfFreedom);
    }

    /**
     * Of two samples of unequal variance (B. L. Welch, Biometrika 34, 1947; NIST/SEMATECH e-Handbook 7.3.1). On numbers
     * from which a trend was taken that they showed themselves it is too sure.
     *
     * @throws IllegalArgumentException if a sample has fewer than two numbers
     */
    public static Difference welch(double[] a, double[] b) {
        if (a.length < 2 || b.length < 2) {
            throw new IllegalArgumentException("a sample of fewer than two has no scatter");
        }
        double u = variance(a) / a.length;
        double w = variance(b) / b.length;
        double freedom = u + w == 0 ? a.length + b.length - 2
                : (u + w) * (u + w) / (u * u / (a.length - 1) + w * w / (b.length - 1));
        return new Difference(mean(b) - mean(a), Math.sqrt(u + w), freedom);
    }

    static double mean(double[] sample) {
        double sum = 0;
        for (double each : sample) {
            sum += each - sample[0];
        }
        return sample[0] + sum / sample.length;
    }

    private static double variance(double[] sample) {
        double mean = mean(sample);
        double sum = 0;
        for (double each : sample) {
            sum += (each - mean) * (each - mean);
        }
        return sum / (sample.length - 1);
    }
}
