package camberwell.physics;

/** Newton's method on the couplings, its slopes by differences and its steps halved until they help. */
final class Newton {

    /** Three unknowns, and three figures that are nought where they fit. */
    interface Unknowns {

        /** Works out how far off each of the three figures is. */
        void follow();

        /** How far off they are; the same array after every {@link #follow}. */
        double[] off();

        /** Moves the unknowns by a part of a step, each scaled to about one. */
        void move(double[] step, double part);
    }

    /** How far off a figure may be to count as nought. */
    static final double TOLERANCE = 1e-10;

    private static final int STEPS = 15;
    private static final int HALVINGS = 5;
    private static final double DIFFERENCE = 1e-6;

    private final Unknowns unknowns;
    private final double[][] slope = new double[3][3];
    private final double[] here = new double[3];
    private final double[] step = new double[3];

    Newton(Unknowns unknowns) {
        this.unknowns = unknowns;
    }

    /** Settles from where the unknowns stand; false if it does not, with them left near where it would. */
    boolean settle() {
        for (int i = 0; i < STEPS; i++) {
            if (largest(unknowns.off()) < TOLERANCE) {
                return true;
            }
            System.arraycopy(unknowns.off(), 0, here, 0, 3);
            if (!findStep() || !follows()) {
                return false;
            }
        }
        return false;
    }

    private boolean findStep() {
        for (int j = 0; j < 3; j++) {
            for (int k = 0; k < 3; k++) {
                step[k] = k == j ? DIFFERENCE : 0.0;
            }
            unknowns.move(step, 1.0);
            unknowns.follow();
            for (int k = 0; k < 3; k++) {
                slope[k][j] = (unknowns.off()[k] - here[k]) / DIFFERENCE;
            }
            unknowns.move(step, -1.0);
        }
        double[] a = slope[0];
        double[] b = slope[1];
        double[] c = slope[2];
        double volume = determinant(a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]);
        step[0] = -determinant(here[0], here[1], here[2], a[1], b[1], c[1], a[2], b[2], c[2]) / volume;
        step[1] = -determinant(a[0], b[0], c[0], here[0], here[1], here[2], a[2], b[2], c[2]) / volume;
        step[2] = -determinant(a[0], b[0], c[0], a[1], b[1], c[1], here[0], here[1], here[2]) / volume;
        return Double.isFinite(largest(step));
    }

    private boolean follows() {
        double part = Math.min(1.0, Broyden.LONGEST_STEP / largest(step));
        for (int i = 0; i < HALVINGS; i++) {
            unknowns.move(step, part);
            unknowns.follow();
            if (largest(unknowns.off()) < largest(here)) {
                return true;
            }
            unknowns.move(step, -part);
            part /= 2.0;
        }
        unknowns.follow();
        return false;
    }

    /** The largest of three figures, whatever its sign. */
    static double largest(double[] of) {
        return Math.max(Math.abs(of[0]), Math.max(Math.abs(of[1]), Math.abs(of[2])));
    }

    private static double determinant(double a, double b, double c, double d, double e, double f, double g,
            double h, double i) {
        return a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
    }
}
