package camberwell.physics;

/**
 * The Magic Formula at one load and lean: {@code D sin(C atan(x - E (x - atan x))) + Sv} with
 * {@code x = B (slip + Sh)} (E. Bakker, L. Nyborg, H. B. Pacejka, SAE 870421, 1987).
 *
 * @param b stiffness factor, 1/rad, above 0
 * @param c shape factor, above 1, so that there is a peak
 * @param d peak factor, N, not negative
 * @param e curvature factor, below 1
 * @param horizontalShift Sh, rad
 * @param verticalShift Sv, N
 */
public record MagicCurve(double b, double c, double d, double e, double horizontalShift, double verticalShift) {

    private static final int NEWTON_STEPS = 30;

    /**
     * Lateral force.
     *
     * @param slip slip angle, rad
     * @return force to the left, N
     */
    public double force(double slip) {
        double x = b * (slip + horizontalShift);
        return d * Math.sin(c * Math.atan(x - e * (x - Math.atan(x)))) + verticalShift;
    }

    /**
     * Slope of the force.
     *
     * @param slip slip angle, rad
     * @return N/rad; the cornering stiffness {@code B C D} where {@code slip + Sh} is zero
     */
    public double slope(double slip) {
        double x = b * (slip + horizontalShift);
        double u = x - e * (x - Math.atan(x));
        double inner = 1.0 - e + e / (1.0 + x * x);
        return d * Math.cos(c * Math.atan(u)) * c / (1.0 + u * u) * inner * b;
    }

    /** Largest force to the left, N. */
    public double peak() {
        return d + verticalShift;
    }

    /** Cornering stiffness {@code B C D}, N/rad. */
    public double stiffness() {
        return b * c * d;
    }

    /** Slip angle of the largest force to the left, rad. */
    public double peakSlip() {
        return peakArgument(c, e) / b - horizontalShift;
    }

    /** The {@code x} at which the sine reaches one: the root of {@code x - E (x - atan x) = tan(pi / 2C)}. */
    private static double peakArgument(double c, double e) {
        double target = Math.tan(Math.PI / (2.0 * c));
        double x = target;
        for (int i = 0; i < NEWTON_STEPS; i++) {
            double step = (x - e * (x - Math.atan(x)) - target) / (1.0 - e + e / (1.0 + x * x));
            x -= step;
            if (Math.abs(step) < 1e-10 * target) {
                break;
            }
        }
        return x;
    }
}
