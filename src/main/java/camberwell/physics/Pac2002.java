package camberwell.physics;

/**
 * Lateral force by the PAC2002 coefficients (H. B. Pacejka, Tire and Vehicle Dynamics, 2002, ch. 4; the subset of
 * terms that open coefficient files give). The shifts of an upright tyre (ply steer, conicity) are left out, so that
 * a left turn mirrors a right one. Coefficients keep their published signs; the methods have the clean signs of
 * {@link MagicFormula}.
 *
 * @param nominalLoad FNOMIN times LFZO, N, above 0
 * @param pcy1 shape factor, above 1
 * @param pdy1 peak friction at nominal load
 * @param pdy2 change of peak friction with load; negative is load sensitivity
 * @param pdy3 loss of peak friction with the square of camber, 1/rad²; some fitted files have it negative, a gain
 * @param pey1 curvature, below 1
 * @param pky1 largest cornering stiffness over nominal load, 1/rad; negative in the files
 * @param pky2 load, over nominal load, at the largest cornering stiffness
 * @param pky3 loss of cornering stiffness with camber, 1/rad
 * @param phy3 horizontal shift from camber
 * @param pvy3 vertical shift from camber over load, 1/rad; negative in the files
 * @param pvy4 change of {@code pvy3} with load
 * @param friction scale of friction and camber thrust (LMUY): 1 as fitted, more for a slick, less for a wet road
 * @param stiffness scale of cornering stiffness (LKY)
 */
public record Pac2002(double nominalLoad, double pcy1, double pdy1, double pdy2, double pdy3, double pey1, double pky1,
        double pky2, double pky3, double phy3, double pvy3, double pvy4, double friction, double stiffness)
        implements MagicFormula {

    /** Coefficients of a 245/40R18 road tyre (Project Chrono, BSD 3-clause). Its camber has no optimum. */
    public static final Pac2002 ROAD_245_40R18 = new Pac2002(3928.5, 1.3507, 1.0489, -0.18033, -2.8821, -0.00747,
            -21.92, 2.0012, -0.0248, 0.0314, -0.3293, -0.6955, 1.0, 1.0);

    /** Coefficients of a 265/70R18 road tyre (Project Chrono, BSD 3-clause). */
    public static final Pac2002 ROAD_265_70R18 = new Pac2002(7043.5, 1.3223, 1.0141, -0.12274, -1.0426, -0.6377,
            -19.797, 1.7999, 0.0095, 0.0441, -0.0929, -0.2791, 1.0, 1.0);

    /** Coefficients of a 185/80R14 road tyre (Project Chrono, BSD 3-clause). */
    public static final Pac2002 ROAD_185_80R14 = new Pac2002(3800.0, 1.4675, 0.94002, -0.17669, -0.6960, 0.0040,
            -12.536, 1.3856, -0.9334, 0.0376, -0.3817, -0.0331, 1.0, 1.0);

    /** Load of an outer wheel in a corner, over its load at rest. */
    public static final double OUTER = 1.5;

    /** Far outside the fitted loads the polynomials must still not turn the tyre round. */
    private static final double LEAST_PART = 0.3;

    /** Refuses coefficients with which the formula has no peak or no sense. */
    public Pac2002 {
        if (!(nominalLoad > 0.0 && pcy1 > 1.0 && pcy1 < 2.0 && pdy1 > 0.0 && pey1 < 1.0 && pky1 < 0.0 && pky2 > 0.0
                && friction > 0.0 && stiffness > 0.0)) {
            throw new IllegalArgumentException("a tyre needs a positive load and friction, 1 < PCY1 < 2, PEY1 < 1, "
                    + "PKY1 < 0 and PKY2 > 0");
        }
        if (!Double.isFinite(pdy2 + pdy3 + pky3 + phy3 + pvy3 + pvy4 + friction + stiffness + pky1 + pky2 + pey1
                + pdy1 + nominalLoad)) {
            throw new IllegalArgumentException("every coefficient of a tyre must be finite");
        }
    }

    /**
     * A tyre for a handling model where no coefficients are known: the 245/40R18's shape and load sensitivity about
     * the car's own wheel load, its camber thrust, which grows faster than the load, and a friction that falls off so
     * as to have an optimum of camber on the outer wheel, at {@link #OUTER} of the load. The optimum is where
     * {@code d/dlean [mu (1 - PDY3 lean²) - (PVY3 + PVY4 dfz) lean]} is zero. An axle's optimum is at less static
     * camber than the loaded tyre's, because the inner tyre pays.
     *
     * @param nominalLoad static wheel load, N
     * @param friction peak friction at that load; about 1.05 for a road tyre, 1.4 for a slick (common practice)
     * @param stiffness cornering stiffness relative to the road tyre's
     * @param optimumLean camber to the road at which a loaded tyre grips most, magnitude, rad; two to four degrees for
     *     a radial (common practice, no source)
     * @return the tyre
     */
    public static Pac2002 normalised(double nominalLoad, double friction, double stiffness, double optimumLean) {
        if (!(optimumLean > 0.0)) {
            throw new IllegalArgumentException("optimum lean must be positive, is " + optimumLean + " rad");
        }
        Pac2002 road = ROAD_245_40R18;
        double excess = OUTER - 1.0;
        double loss = -(road.pvy3 + road.pvy4 * excess)
                / (2.0 * (road.pdy1 + road.pdy2 * excess) * optimumLean);
        return new Pac2002(nominalLoad, road.pcy1, road.pdy1, road.pdy2, loss, road.pey1, road.pky1, road.pky2,
                road.pky3, road.phy3, road.pvy3, road.pvy4, friction / road.pdy1, stiffness);
    }

    /** The same tyre on a surface, or of a compound, with {@code factor} times the friction. */
    public Pac2002 withFriction(double factor) {
        return new Pac2002(nominalLoad, pcy1, pdy1, pdy2, pdy3, pey1, pky1, pky2, pky3, phy3, pvy3, pvy4, factor,
                stiffness);
    }

    @Override
    public void factors(double load, double lean, double[] into) {
        if (!(load > 0.0)) {
            fill(into, 1.0, pcy1, 0.0, pey1, 0.0, 0.0);
            return;
        }
        double excess = (load - nominalLoad) / nominalLoad;
        double mu = Math.max(LEAST_PART * pdy1, pdy1 + pdy2 * excess)
                * Math.max(LEAST_PART, 1.0 - pdy3 * lean * lean) * friction;
        double d = mu * load;
        double part = load / (pky2 * nominalLoad);
        // The formula's sin(2 atan x).
        double slope = -pky1 * nominalLoad * 2.0 * part / (1.0 + part * part)
                * Math.max(LEAST_PART, 1.0 - pky3 * Math.abs(lean)) * stiffness;
        // Lightly loaded tyres would push the other way.
        double pull = pvy3 < 0.0 ? Math.min(0.0, pvy3 + pvy4 * excess) : pvy3 + pvy4 * excess;
        double thrust = -pull * lean * load * friction;
        fill(into, slope / (pcy1 * d), pcy1, d, pey1, phy3 * lean, thrust);
    }

    private static void fill(double[] into, double b, double c, double d, double e, double horizontal,
            double vertical) {
        into[0] = b;
        into[1] = c;
        into[2] = d;
        into[3] = e;
        into[4] = horizontal;
        into[5] = vertical;
    }
}
