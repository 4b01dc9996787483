package camberwell.physics;

/**
 * The Magic Formula of 1987: E. Bakker, L. Nyborg, H. B. Pacejka, "Tyre Modelling for Use in Vehicle Dynamics
 * Studies", SAE 870421, lateral force with its camber terms. The paper's coefficients are in kilonewtons and degrees;
 * the methods here take newtons and radians. Valid from about 2 to 8 kN. The signs of the camber terms depend on an
 * axis system that the transcriptions do not agree on; here camber and slip that reinforce have the same sign.
 *
 * @param a1 load dependence of the peak, N/kN²
 * @param a2 peak, N/kN
 * @param a3 stiffness, N/deg
 * @param a4 stiffness, phase
 * @param a5 stiffness, 1/kN
 * @param a6 curvature, 1/kN²
 * @param a7 curvature, 1/kN
 * @param a8 curvature
 * @param a9 horizontal shift from camber, deg/deg
 * @param a10 vertical shift from camber, N/kN²/deg
 * @param a11 vertical shift from camber, N/kN/deg
 * @param a12 loss of stiffness from camber, 1/deg
 */
public record Bakker1987(double a1, double a2, double a3, double a4, double a5, double a6, double a7, double a8,
        double a9, double a10, double a11, double a12) implements MagicFormula {

    /** The car tyre of the paper's table 2. */
    public static final Bakker1987 PUBLISHED = new Bakker1987(-22.1, 1011.0, 1078.0, 1.82, 0.208, 0.0, -0.354, 0.707,
            0.028, 0.0, 14.8, 0.022);

    private static final double SHAPE = 1.30;

    @Override
    public void factors(double load, double lean, double[] into) {
        into[0] = 1.0;
        into[1] = SHAPE;
        into[2] = 0.0;
        into[3] = 0.0;
        into[4] = 0.0;
        into[5] = 0.0;
        if (!(load > 0.0)) {
            return;
        }
        double kilonewtons = load / 1000.0;
        double degrees = Math.toDegrees(lean);
        double d = Math.max(0.0, (a1 * kilonewtons + a2) * kilonewtons);
        double stiffness = a3 * Math.sin(a4 * Math.atan(a5 * kilonewtons));
        double e = (a6 * kilonewtons + a7) * kilonewtons + a8;
        double b = d > 0.0 ? stiffness / (SHAPE * d) * Math.max(0.1, 1.0 - a12 * Math.abs(degrees)) : 1.0;
        into[0] = Math.toDegrees(b);
        into[2] = d;
        into[3] = e;
        into[4] = Math.toRadians(a9 * degrees);
        into[5] = (a10 * kilonewtons + a11) * kilonewtons * degrees;
    }
}
