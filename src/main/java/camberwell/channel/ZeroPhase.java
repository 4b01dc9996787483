package camberwell.channel;

import java.util.Arrays;

/**
 * A low-pass filter that shifts no phase: a second-order Butterworth filter by the bilinear transform, run forwards and
 * backwards. The cut-off is where both passes together are 3 dB down, as in D. A. Winter, Biomechanics and Motor Control
 * of Human Movement, p. 69 (at second hand): each pass is cut off higher by (√2 - 1)^-¼ = 1/0.802243. Ends are extended
 * oddly, and each pass starts settled.
 */
final class ZeroPhase {

    private static final double BOTH_PASSES = Math.pow(Math.sqrt(2) - 1, 0.25);
    private static final int EXTENSION = 9;

    private final double b0;
    private final double b1;
    private final double a1;
    private final double a2;

    /**
     * @param rate samples a second, Hz
     * @param cutOff frequency at which the result is 3 dB down, Hz, under half the rate
     */
    ZeroPhase(double rate, double cutOff) {
        double w = Math.tan(Math.PI * cutOff / rate) / BOTH_PASSES;
        double n = 1 / (1 + Math.sqrt(2) * w + w * w);
        b0 = n * w * w;
        b1 = 2 * b0;
        a1 = 2 * n * (w * w - 1);
        a2 = n * (1 - Math.sqrt(2) * w + w * w);
    }

    /** The coefficients b0, b1, b2, a1 and a2 of one pass. */
    double[] coefficients() {
        return new double[] {b0, b1, b0, a1, a2};
    }

    /** Filters each stretch of numbers in {@code samples} by itself; what is not a number stays so. */
    void smooth(double[] samples, int length) {
        int from = 0;
        while (from < length) {
            while (from < length && Double.isNaN(samples[from])) {
                from++;
            }
            int to = from;
            while (to < length && !Double.isNaN(samples[to])) {
                to++;
            }
            if (to - from > 1) {
                stretch(samples, from, to);
            }
            from = to;
        }
    }

    private void stretch(double[] samples, int from, int to) {
        int extra = Math.min(EXTENSION, to - from - 1);
        double[] extended = new double[to - from + 2 * extra];
        for (int i = 0; i < extra; i++) {
            extended[i] = 2 * samples[from] - samples[from + extra - i];
            extended[extended.length - 1 - i] = 2 * samples[to - 1] - samples[to - 1 - extra + i];
        }
        System.arraycopy(samples, from, extended, extra, to - from);
        pass(extended);
        reverse(extended);
        pass(extended);
        reverse(extended);
        System.arraycopy(extended, extra, samples, from, to - from);
    }

    /** One pass in direct form II transposed, from the state that the first sample settles to. */
    private void pass(double[] x) {
        double first = x[0];
        double z2 = (b0 - a2) * first;
        double z1 = (1 - b0) * first;
        for (int i = 0; i < x.length; i++) {
            double in = x[i];
            double out = b0 * in + z1;
            z1 = b1 * in - a1 * out + z2;
            z2 = b0 * in - a2 * out;
            x[i] = out;
        }
    }

    private static void reverse(double[] x) {
        for (int i = 0, k = x.length - 1; i < k; i++, k--) {
            double kept = x[i];
            x[i] = x[k];
            x[k] = kept;
        }
    }

    /** A filtered copy. */
    double[] smoothed(double... samples) {
        double[] copy = Arrays.copyOf(samples, samples.length);
        smooth(copy, copy.length);
        return copy;
    }
}
