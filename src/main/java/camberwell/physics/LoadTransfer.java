package camberwell.physics;

/**
 * Load that moves between the wheels when the car corners, brakes or pulls.
 *
 * <p>Lateral transfer is that of one sprung mass on a roll axis (W. F. and D. L. Milliken, Race Car Vehicle Dynamics,
 * SAE, 1995, ch. 16 and 18): a geometric part through the roll centre, an elastic part through springs and bars, and
 * the unsprung mass's own. The split of roll stiffness moves the elastic part between the axles, and the tyres' load
 * sensitivity makes balance of it. Two things go beyond the source where they are asked for: the moment of the leaning
 * mass (T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, ch. 6), and tyres that give, in series with
 * springs and bar.
 */
public final class LoadTransfer {

    private LoadTransfer() {
    }

    /**
     * One axle's share in the roll.
     *
     * @param sprungMass sprung mass that the axle carries, kg
     * @param track track width, m
     * @param rollCentreHeight roll-centre height, m
     * @param rollStiffness roll stiffness, springs and bar together, N m/rad
     * @param unsprungMass unsprung mass of the axle, kg
     * @param unsprungHeight height of the unsprung mass, m
     * @param tyreRollStiffness roll stiffness of the tyres, N m/rad; infinite where they do not give
     */
    public record Axle(double sprungMass, double track, double rollCentreHeight, double rollStiffness,
            double unsprungMass, double unsprungHeight, double tyreRollStiffness) {

        /** On tyres that do not give. */
        public Axle(double sprungMass, double track, double rollCentreHeight, double rollStiffness,
                double unsprungMass, double unsprungHeight) {
            this(sprungMass, track, rollCentreHeight, rollStiffness, unsprungMass, unsprungHeight,
                    Double.POSITIVE_INFINITY);
        }

        /** Roll stiffness of springs and bar on the tyres, N m/rad. */
        double inSeries() {
            return rollStiffness / (1.0 + rollStiffness / tyreRollStiffness);
        }

        private double geometric(double lateral) {
            return sprungMass * lateral * rollCentreHeight / track;
        }

        private double unsprung(double lateral) {
            return unsprungMass * lateral * unsprungHeight / track;
        }

        /** Roll of the axle on its tyres by what does not pass through the springs, rad. */
        private double onTyres(double lateral) {
            return (geometric(lateral) + unsprung(lateral)) * track / tyreRollStiffness;
        }
    }

    /**
     * Load that leaves one wheel of an axle and arrives on the other, N, by path; positive onto the right wheel.
     *
     * @param geometric through the roll centre
     * @param elastic through springs and bar
     * @param unsprung from the unsprung mass
     */
    public record Part(double geometric, double elastic, double unsprung) {

        /** All paths together, N. */
        public double total() {
            return geometric + elastic + unsprung;
        }
    }

    /**
     * Lateral transfer of the whole car.
     *
     * @param front front axle
     * @param rear rear axle
     * @param roll roll angle of the body, rad, positive to the right (in a left turn)
     * @param frontTravel part of the roll that the front springs see, the tyres giving the rest, rad
     * @param rearTravel the same at the rear, rad
     */
    public record Lateral(Part front, Part rear, double roll, double frontTravel, double rearTravel) {

        /** Front part of the whole transfer, 0 to 1; one half where nothing is transferred. */
        public double frontShare() {
            double sum = front.total() + rear.total();
            return sum == 0.0 ? 0.5 : front.total() / sum;
        }
    }

    /**
     * Lateral load transfer without the moment of the leaning mass, as in the source.
     *
     * @param front front axle
     * @param rear rear axle
     * @param sprungHeight height of the sprung mass's centre of gravity, m
     * @param lateral lateral acceleration, m/s², positive in a left turn
     * @return transfer and roll
     * @throws IllegalArgumentException where the car has no roll stiffness
     */
    public static Lateral lateral(Axle front, Axle rear, double sprungHeight, double lateral) {
        return lateral(front, rear, sprungHeight, lateral, 0.0);
    }

    /**
     * Lateral load transfer.
     *
     * @param front front axle
     * @param rear rear axle
     * @param sprungHeight height of the sprung mass's centre of gravity, m
     * @param lateral lateral acceleration, m/s², positive in a left turn
     * @param gravity with which the leaning mass pulls, m/s²; 0 leaves its moment out
     * @return transfer and roll
     * @throws IllegalArgumentException where the roll stiffness does not hold the car up
     */
    public static Lateral lateral(Axle front, Axle rear, double sprungHeight, double lateral, double gravity) {
        double stiffness = front.inSeries() + rear.inSeries();
        double mass = front.sprungMass() + rear.sprungMass();
        double momentOfAxis = front.sprungMass() * front.rollCentreHeight()
                + rear.sprungMass() * rear.rollCentreHeight();
        double arm = mass * sprungHeight - momentOfAxis;
        double upright = stiffness - gravity * arm;
        if (!(upright > 0.0)) {
            throw new IllegalArgumentException("roll stiffness must hold the car up, is " + stiffness + " N m/rad");
        }
        double roll = (lateral * arm + front.inSeries() * front.onTyres(lateral)
                + rear.inSeries() * rear.onTyres(lateral)) / upright;
        double frontTravel = travel(front, roll, lateral);
        double rearTravel = travel(rear, roll, lateral);
        return new Lateral(part(front, frontTravel, lateral), part(rear, rearTravel, lateral), roll, frontTravel,
                rearTravel);
    }

    /**
     * Load that leaves the front axle for the rear one.
     *
     * @param mass mass, kg
     * @param cgHeight height of the centre of gravity, m
     * @param wheelbase wheelbase, m
     * @param longitudinal longitudinal acceleration, m/s², negative under braking
     * @return load moved rearward, N; negative under braking
     */
    public static double longitudinal(double mass, double cgHeight, double wheelbase, double longitudinal) {
        return mass * longitudinal * cgHeight / wheelbase;
    }

    /**
     * Roll stiffness of an axle's springs: {@code k t² / 2}.
     *
     * @param wheelRate spring rate at the wheel, N/m
     * @param track track width, m
     * @return N m/rad
     */
    public static double springRollStiffness(double wheelRate, double track) {
        return wheelRate * track * track / 2.0;
    }

    private static double travel(Axle axle, double roll, double lateral) {
        return (roll - axle.onTyres(lateral)) / (1.0 + axle.rollStiffness() / axle.tyreRollStiffness());
    }

    private static Part part(Axle axle, double travel, double lateral) {
        return new Part(axle.geometric(lateral), axle.rollStiffness() * travel / axle.track(),
                axle.unsprung(lateral));
    }
}
