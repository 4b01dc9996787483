package camberwell.statistics;

import java.util.Arrays;

/** Estimates that a few wild numbers do not move. */
public final class Robust {

    /** The median absolute deviation of a normal distribution, in standard deviations. */
    private static final double NORMAL_MAD = 0.6745;

    private Robust() {
    }

    /** The middle number, or the mean of the two in the middle. @throws IllegalArgumentException if there is none */
    public static double median(double... numbers) {
        if (numbers.length == 0) {
            throw new IllegalArgumentException("no numbers, no median");
        }
        double[] sorted = numbers.clone();
        Arrays.sort(sorted);
        int middle = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /** The median distance from the median. */
    public static double medianDeviation(double... numbers) {
        double middle = median(numbers);
        return median(Arrays.stream(numbers).map(number -> Math.abs(number - middle)).toArray());
    }

    /**
     * The median of the slopes between all pairs (P. K. Sen, J. Am. Stat. Assoc. 63, 1968); 0 where all {@code x} are
     * one.
     */
    public static double slope(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = i + 1; j < x.length; j++) {
                if (x[i] != x[j]) {
                    slopes[count++] = (y[j] - y[i]) / (x[j] - x[i]);
                }
            }
        }
        return count == 0 ? 0 : median(Arrays.copyOf(slopes, count));
    }

    /**
     * How far each number lies from the median, in standard deviations as they would be without the wild ones: M =
     * 0.6745 (x - median) / MAD (B. Iglewicz and D. C. Hoaglin, "How to Detect and Handle Outliers", 1993; NIST/SEMATECH
     * e-Handbook 1.3.5.17).
     *
     * @param least the least deviation that is believed: the step of the instrument
     */
    public static double[] scores(double[] numbers, double least) {
        double middle = median(numbers);
        double deviation = Math.max(medianDeviation(numbers), least);
        return Arrays.stream(numbers).map(number -> NORMAL_MAD * (number - middle) / deviation).toArray();
    }

    /** Correlation of each number with the one before it, in [-1, 1]; 0 of fewer than three. */
    public static double lagOne(double[] residuals) {
        double mean = residuals.length < 3 ? 0 : Difference.mean(residuals);
        double product = 0;
        double square = 0;
        for (int i = 0; i < residuals.length; i++) {
            square += (residuals[i] - mean) * (residuals[i] - mean);
            product += i == 0 ? 0 : (residuals[i] - mean) * (residuals[i - 1] - mean);
        }
        return residuals.length < 3 || square == 0 ? 0 : product / square;
    }

    /** How many independent numbers {@code count} are worth that follow each other with that correlation. */
    public static double independent(double count, double lagOne) {
        return lagOne <= 0 ? count : count * (1 - lagOne) / (1 + lagOne);
    }
}
