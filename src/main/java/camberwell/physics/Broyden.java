package camberwell.physics;

/**
 * Broyden's method in three unknowns for a map near its fixed point (C. G. Broyden, Mathematics of Computation 19,
 * 1965), with the inverse Jacobian updated in place. Steps are capped, since far from the fixed point a secant is a
 * poor guide.
 */
final class Broyden {

    private static final int SIZE = 3;
    static final double LONGEST_STEP = 0.2;

    /** The step to take, set by {@link #step(double, double, double)}. */
    final double[] step = new double[SIZE];

    private final double[][] inverse = new double[SIZE][SIZE];
    private final double[] off = new double[SIZE];
    private final double[] change = new double[SIZE];
    private final double[] mapped = new double[SIZE];
    private final double[] row = new double[SIZE];
    private boolean started;

    /** Forgets what was learnt; the first step will be that of the plain iteration. */
    void restart() {
        started = false;
        for (int i = 0; i < SIZE; i++) {
            for (int j = 0; j < SIZE; j++) {
                inverse[i][j] = i == j ? -1.0 : 0.0;
            }
        }
    }

    /** Computes the next step from how far the map moves each unknown. */
    void step(double first, double second, double third) {
        change[0] = first - off[0];
        change[1] = second - off[1];
        change[2] = third - off[2];
        off[0] = first;
        off[1] = second;
        off[2] = third;
        if (started) {
            learn();
        }
        started = true;
        double longest = 0.0;
        for (int i = 0; i < SIZE; i++) {
            step[i] = -(inverse[i][0] * off[0] + inverse[i][1] * off[1] + inverse[i][2] * off[2]);
            longest = Math.max(longest, Math.abs(step[i]));
        }
        if (longest > LONGEST_STEP) {
            for (int i = 0; i < SIZE; i++) {
                step[i] *= LONGEST_STEP / longest;
            }
        }
    }

    private void learn() {
        double along = 0.0;
        for (int i = 0; i < SIZE; i++) {
            mapped[i] = inverse[i][0] * change[0] + inverse[i][1] * change[1] + inverse[i][2] * change[2];
            row[i] = step[0] * inverse[0][i] + step[1] * inverse[1][i] + step[2] * inverse[2][i];
            along += step[i] * mapped[i];
        }
        if (Math.abs(along) < 1e-300) {
            return;
        }
        for (int i = 0; i < SIZE; i++) {
            double part = (step[i] - mapped[i]) / along;
            for (int j = 0; j < SIZE; j++) {
                inverse[i][j] += part * row[j];
            }
        }
    }
}
