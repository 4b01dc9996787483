package camberwell.observe;

import java.util.Arrays;
import java.util.Collection;

/** Figures that a few bad values do not move. */
final class Robust {

    /** Turns a median absolute deviation into a standard deviation of normally distributed values. */
    static final double PER_MAD = 1.4826;

    private Robust() {
    }

    /** The median; not a number of nothing. */
    static double median(double... values) {
        double[] sorted = Arrays.stream(values).filter(value -> !Double.isNaN(value)).sorted().toArray();
        int n = sorted.length;
        return n == 0 ? Double.NaN : (sorted[(n - 1) / 2] + sorted[n / 2]) / 2;
    }

    static double median(Collection<Double> values) {
        return median(values.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The standard deviation as the median absolute deviation gives it. */
    static double deviation(double... values) {
        double middle = median(values);
        return PER_MAD * median(Arrays.stream(values).map(value -> Math.abs(value - middle)).toArray());
    }

    /** The value that a share of the values does not exceed. */
    static double percentile(double[] values, double share) {
        double[] sorted = Arrays.stream(values).filter(value -> !Double.isNaN(value)).sorted().toArray();
        return sorted.length == 0 ? Double.NaN : sorted[(int) Math.min(sorted.length - 1, sorted.length * share)];
    }

    /** Slope and height of the line through the median of all slopes between two points (P. K. Sen, 1968). */
    static double[] line(double[] x, double[] y) {
        double[] slopes = new double[x.length * (x.length - 1) / 2];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int k = i + 1; k < x.length; k++) {
                if (x[k] != x[i]) {
                    slopes[count++] = (y[k] - y[i]) / (x[k] - x[i]);
                }
            }
        }
        double slope = count == 0 ? 0 : median(Arrays.copyOf(slopes, count));
        double[] rest = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            rest[i] = y[i] - slope * x[i];
        }
        return new double[] {slope, median(rest)};
    }
}
