package camberwell.channel;

/**
 * The regression through the origin of the lateral acceleration on speed times yaw rate.
 *
 * @param slope of the line; 0 where there is nothing to draw one through
 * @param correlation from -1 to 1, about the origin
 */
record Fit(double slope, double correlation) {

    /** Times the mean distance from the line beyond which a car slides rather than travels. */
    private static final double FAR = 2.0;

    /** @param alike the correlation from which on two channels go together */
    static Fit of(float[] speed, float[] yaw, float[] side, int size, double alike) {
        Fit all = of(sums(speed, yaw, side, size));
        if (all.goes(alike) || all.slope == 0) {
            return all;
        }
        // A car that slides about turns otherwise than it travels: what lies far from the line is left out once.
        Fit held = of(sums(speed, yaw, near(speed, yaw, side, size, all.slope), size));
        return held.goes(alike) ? held : all;
    }

    private static Fit of(double[] sums) {
        double both = Math.sqrt(sums[0] * sums[2]);
        return new Fit(sums[0] > 0 ? sums[1] / sums[0] : 0, both > 0 ? sums[1] / both : 0);
    }

    /** Whether the two go together. */
    boolean goes(double alike) {
        return Math.abs(correlation) >= alike;
    }

    /** The samples of {@code side} within so many times the mean distance from a line; the others are none. */
    private static float[] near(float[] speed, float[] yaw, float[] side, int size, double slope) {
        double sum = 0;
        int count = 0;
        for (int i = 0; i < size; i++) {
            double off = Math.abs(side[i] - slope * speed[i] * yaw[i]);
            if (!Double.isNaN(off)) {
                sum += off;
                count++;
            }
        }
        double most = FAR * sum / Math.max(1, count);
        float[] kept = new float[size];
        for (int i = 0; i < size; i++) {
            kept[i] = Math.abs(side[i] - slope * speed[i] * yaw[i]) <= most ? side[i] : Float.NaN;
        }
        return kept;
    }

    /** Sums of squares and products of speed times yaw rate and of the lateral acceleration. */
    static double[] sums(float[] speed, float[] yaw, float[] side, int size) {
        double[] sums = new double[3];
        for (int i = 0; i < size; i++) {
            double x = (double) speed[i] * yaw[i];
            if (!Double.isNaN(x * side[i])) {
                sums[0] += x * x;
                sums[1] += x * side[i];
                sums[2] += (double) side[i] * side[i];
            }
        }
        return sums;
    }

    /** How a channel goes with the steering times speed, or times speed squared, -1 to 1. */
    static double withSteering(Log log, Kind kind, boolean squared) {
        float[] speed = log.samples(Kind.SPEED);
        float[] steering = log.samples(Kind.STEERING);
        float[] values = log.samples(kind);
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = 0; i < log.size(); i++) {
            double x = steering[i] * speed[i] * (squared ? speed[i] : 1);
            if (!Double.isNaN(x * values[i])) {
                xx += x * x;
                xy += x * values[i];
                yy += (double) values[i] * values[i];
            }
        }
        return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
    }
}
