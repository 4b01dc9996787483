package camberwell.physics;

/**
 * A tyre's lateral force by the Magic Formula, in one set of coefficients or another.
 *
 * <p>Signs are clean, whatever the coefficient file says: a positive slip angle gives a force to the left, and a
 * positive lean (the wheel's top leans left) pushes left too. Slip angle is the wheel's heading less its direction of
 * travel. Lean is camber for a left wheel and its negative for a right one; negative camber leans the outer wheel
 * into the turn, where lean and slip reinforce each other.
 */
public sealed interface MagicFormula permits Bakker1987, Pac2002 {

    /**
     * Longitudinal over lateral peak friction, for the friction ellipse. The 1987 tables (SAE 870421) give 1.14 at
     * 2 kN to 1.17 at 8 kN.
     */
    double LONGITUDINAL_GRIP = 1.15;

    /**
     * The force curve of the tyre at a load and a lean.
     *
     * @param load vertical load, N; a wheel in the air (0 or less) has a curve of zero force
     * @param lean lean of the wheel's top to the left, rad
     * @return force over slip angle
     */
    default MagicCurve at(double load, double lean) {
        double[] factor = new double[FACTORS];
        factors(load, lean, factor);
        return new MagicCurve(factor[0], factor[1], factor[2], factor[3], factor[4], factor[5]);
    }

    /** How many factors a curve has. */
    int FACTORS = 6;

    /**
     * The factors of {@link #at}, without a new object for them.
     *
     * @param load vertical load, N
     * @param lean lean of the wheel's top to the left, rad
     * @param into filled with B, C, D, E, horizontal and vertical shift, as in {@link MagicCurve}
     */
    void factors(double load, double lean, double[] into);

    /**
     * Lateral force of the free-rolling tyre.
     *
     * @param slip slip angle, rad
     * @param load vertical load, N
     * @param lean lean of the wheel's top to the left, rad
     * @return force to the left, N
     */
    default double lateralForce(double slip, double load, double lean) {
        return at(load, lean).force(slip);
    }

    /**
     * Cornering stiffness of the upright tyre at zero slip.
     *
     * @param load vertical load, N
     * @return N/rad
     */
    default double corneringStiffness(double load) {
        return at(load, 0.0).stiffness();
    }

    /**
     * Peak lateral friction of the upright tyre.
     *
     * @param load vertical load, N, above 0
     * @return lateral force over load
     */
    default double peakFriction(double load) {
        return at(load, 0.0).peak() / load;
    }

    /**
     * What longitudinal force leaves of the lateral one: the friction ellipse
     * {@code sqrt(1 - (Fx / (LONGITUDINAL_GRIP D))^2)}.
     *
     * @param longitudinal drive or brake force, N
     * @param curve the tyre at its load and lean
     * @return factor from 0 to 1
     */
    static double ellipse(double longitudinal, MagicCurve curve) {
        if (longitudinal == 0.0) {
            return 1.0;
        }
        double limit = LONGITUDINAL_GRIP * curve.d();
        double used = longitudinal / limit;
        return limit > 0.0 && Math.abs(used) < 1.0 ? Math.sqrt(1.0 - used * used) : 0.0;
    }
}
