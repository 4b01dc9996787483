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
        Fit all = of(speed, yaw, side, size);
        if (all.goes(alike) || all.slope == 0) {
            return all;
        }
        // A car that slides about turns otherwise than it travels: what lies far from the line is left out once.
        Fit held = of(speed, yaw, near(speed, yaw, side, size, all.slope), size);
        return held.goes(alike) ? held : all;
    }

    private static Fit of(float[] speed, float[] yaw, float[] side, int size) {
        Sums sums = new Sums();
        for (int i = 0; i < size; i++) {
            sums.add((double) speed[i] * yaw[i], side[i]);
        }
        return new Fit(sums.slope(), sums.correlation());
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

    /** How a channel goes with the steering times speed, or times speed squared, -1 to 1. */
    static double withSteering(Log log, Kind kind, boolean squared) {
        float[] speed = log.samples(Kind.SPEED);
        float[] steering = log.samples(Kind.STEERING);
        float[] values = log.samples(kind);
        Sums sums = new Sums();
        for (int i = 0; i < log.size(); i++) {
            sums.add(steering[i] * speed[i] * (squared ? speed[i] : 1), values[i]);
        }
        return sums.correlation();
    }
}
