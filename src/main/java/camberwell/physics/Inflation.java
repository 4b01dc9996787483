package camberwell.physics;

/**
 * What more or less air makes of a tyre, about the pressure that its figures are for.
 *
 * <p>The forms are those of the Magic Formula with inflation pressure (I. J. M. Besselink, A. J. C. Schmeitz and H. B.
 * Pacejka, Vehicle System Dynamics 48, supplement 1, 2010): with {@code dp} the change over the pressure itself, the
 * vertical rate goes with {@code 1 + PFZ1 dp}, the cornering stiffness with {@code 1 + PPY1 dp} and its load with
 * {@code 1 + PPY2 dp}, the friction with {@code 1 + PPY3 dp}. The sizes are from memory of published sets, which agree on
 * the signs of the vertical rate and of the friction; on that of the cornering stiffness they agree for a loaded tyre only
 * (its carcass is stiffer; the shorter contact takes it back under a light load: T. D. Gillespie, Fundamentals of Vehicle
 * Dynamics, ch. 10, from memory). A tyre far from its best pressure does otherwise: the friction falls on both sides of it.
 *
 * @param change of the gauge pressure over the gauge pressure that the tyre's figures are for, from -0.5 to 1
 */
public record Inflation(double change) {

    /** The pressure that the tyre's figures are for. */
    public static final Inflation NOMINAL = new Inflation(0);

    private static final double VERTICAL_RATE = 0.7;
    private static final double STIFFNESS = 0.35;
    private static final double STIFFEST_AT = 0.35;
    private static final double FRICTION = -0.15;
    /** Rolling loss goes with a power of the pressure (the form of SAE J2452; -0.4 for a car tyre, from memory). */
    private static final double ROLLING_LOSS = -0.4;

    /** Refuses what no tyre is filled to. */
    public Inflation {
        if (!(change >= -0.5 && change <= 1.0)) {
            throw new IllegalArgumentException("a change of pressure by " + change + " of itself is none that is made");
        }
    }

    /** Vertical rate over that at the nominal pressure. */
    public double verticalRate() {
        return 1.0 + VERTICAL_RATE * change;
    }

    /** Heat of flexing, and drag of rolling, over that at the nominal pressure. */
    public double rollingLoss() {
        return Math.pow(1.0 + change, ROLLING_LOSS);
    }

    /**
     * Length of the contact over that at the nominal pressure, about which the tyre's own trail goes: load over pressure
     * and width (brush model: trail a third of half of it; H. B. Pacejka, Tire and Vehicle Dynamics, ch. 3, from memory).
     */
    public double contactLength() {
        return 1.0 / (1.0 + change);
    }

    /** A tyre at that pressure. */
    public Pac2002 of(Pac2002 tyre) {
        return change == 0.0 ? tyre : new Pac2002(tyre.nominalLoad(), tyre.pcy1(), tyre.pdy1(), tyre.pdy2(), tyre.pdy3(),
                tyre.pey1(), tyre.pky1(), tyre.pky2() * (1.0 + STIFFEST_AT * change), tyre.pky3(), tyre.phy3(), tyre.pvy3(),
                tyre.pvy4(), tyre.friction() * (1.0 + FRICTION * change), tyre.stiffness() * (1.0 + STIFFNESS * change));
    }
}
