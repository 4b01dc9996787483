package camberwell.physics;

/** What stands at each of the four wheels of a car in a left turn, while its equilibrium is looked for. Left is inner. */
final class FourWheels {

    static final int FRONT_LEFT = 0;
    static final int FRONT_RIGHT = 1;
    static final int REAR_LEFT = 2;
    static final int REAR_RIGHT = 3;

    /** Vertical load, N. */
    final double[] load = new double[4];
    /** Inclination angle of ISO 8855, rad. */
    final double[] lean = new double[4];
    /** N, forward. */
    final double[] longitudinalForce = new double[4];
    /** Part of the lateral force that the longitudinal one leaves. */
    final double[] ellipse = new double[4];
    /** The tyre at that load and inclination. */
    final MagicCurve[] curve = new MagicCurve[4];

    /** Longitudinal force that the wheel can take, N. */
    double grip(int wheel) {
        return MagicFormula.LONGITUDINAL_GRIP * curve[wheel].d();
    }

    /** The lateral force of a wheel at a slip angle in rad, N. */
    double lateralForce(int wheel, double slip) {
        return ellipse[wheel] * curve[wheel].force(slip);
    }

    /** Part of what the tyre can do that it does, of 1. */
    double utilisation(int wheel, double lateralForce) {
        MagicCurve tyre = curve[wheel];
        double peak = lateralForce >= 0.0 ? tyre.peak() : tyre.d() - tyre.verticalShift();
        if (!(tyre.d() > 0.0 && peak > 0.0)) {
            return 0.0;
        }
        return Math.min(1.0, Math.hypot(lateralForce / peak, longitudinalForce[wheel] / grip(wheel)));
    }

    /**
     * Values of the four wheels by their places.
     *
     * @param side negative where the turn is a right one, whose left and right are changed over
     * @param sign by what each is multiplied
     */
    static Wheels placed(double[] value, double side, double sign) {
        return side > 0.0
                ? new Wheels(sign * value[FRONT_LEFT], sign * value[FRONT_RIGHT], sign * value[REAR_LEFT],
                        sign * value[REAR_RIGHT])
                : new Wheels(sign * value[FRONT_RIGHT], sign * value[FRONT_LEFT], sign * value[REAR_RIGHT],
                        sign * value[REAR_LEFT]);
    }
}
