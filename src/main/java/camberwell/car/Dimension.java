package camberwell.car;

import camberwell.units.Measure;
import camberwell.units.Unit;
import camberwell.vocabulary.Word;

/** A dimension of the car that the handling model reads, with the range that is plausible for a car. */
public enum Dimension implements Word {
    WHEELBASE("wheelbase", Unit.METRE, 1.2, 4.5),
    MASS("mass", Unit.KILOGRAM, 200, 4000),
    FRONT_WEIGHT("front-weight", Unit.PERCENT, 25, 75),
    CG_HEIGHT("cg-height", Unit.METRE, 0.15, 1.0),
    FRONT_TRACK("front-track", Unit.METRE, 0.9, 2.2),
    REAR_TRACK("rear-track", Unit.METRE, 0.9, 2.2),
    FRONT_ROLL_CENTRE("front-roll-centre", Unit.METRE, -0.3, 0.6),
    REAR_ROLL_CENTRE("rear-roll-centre", Unit.METRE, -0.3, 0.6),
    /** Spring rate seen at the wheel, without the bar. */
    FRONT_WHEEL_RATE("front-wheel-rate", Unit.NEWTON_PER_MILLIMETRE, 5, 400),
    REAR_WHEEL_RATE("rear-wheel-rate", Unit.NEWTON_PER_MILLIMETRE, 5, 400),
    /** Vertical rate of one tyre at its pressure. */
    FRONT_TYRE_RATE("front-tyre-rate", Unit.NEWTON_PER_MILLIMETRE, 60, 600),
    REAR_TYRE_RATE("rear-tyre-rate", Unit.NEWTON_PER_MILLIMETRE, 60, 600),
    /** Roll stiffness of the bar at its present setting. */
    FRONT_BAR("front-bar", Unit.NEWTON_METRE_PER_DEGREE, 0, 6000),
    REAR_BAR("rear-bar", Unit.NEWTON_METRE_PER_DEGREE, 0, 6000),
    /** What one step of the bar adds. */
    FRONT_BAR_STEP("front-bar-step", Unit.NEWTON_METRE_PER_DEGREE, 0, 1500),
    REAR_BAR_STEP("rear-bar-step", Unit.NEWTON_METRE_PER_DEGREE, 0, 1500),
    /** Unsprung mass of the whole axle. */
    FRONT_UNSPRUNG("front-unsprung", Unit.KILOGRAM, 10, 300),
    REAR_UNSPRUNG("rear-unsprung", Unit.KILOGRAM, 10, 300),
    /** Share of the body's roll that a wheel keeps upright: 0 % leans with the body, 100 % stays upright. */
    FRONT_CAMBER_RECOVERY("front-camber-recovery", Unit.PERCENT, -20, 120),
    REAR_CAMBER_RECOVERY("rear-camber-recovery", Unit.PERCENT, -20, 120),
    /** What the front brakes give of the braking force when both lines are at the same pressure. */
    FRONT_BRAKES("front-brakes", Unit.PERCENT, 30, 90),
    KINGPIN_INCLINATION("kingpin-inclination", Unit.DEGREE, 0, 25),
    /** Downforce on the axle at 200 km/h. */
    FRONT_DOWNFORCE("front-downforce", Unit.NEWTON, -1000, 15000),
    REAR_DOWNFORCE("rear-downforce", Unit.NEWTON, -1000, 15000),
    /** What one step of the wing adds on its axle at 200 km/h. */
    FRONT_WING_STEP("front-wing-step", Unit.NEWTON, 0, 2000),
    REAR_WING_STEP("rear-wing-step", Unit.NEWTON, 0, 2000),
    /** Peak friction of the tyres against the reference road tyre of the model. */
    TYRE_GRIP("tyre-grip", Unit.PERCENT, 50, 250),
    /** Share of the drive torque that goes to the front axle; 0 or 100 where one axle is driven. */
    FRONT_DRIVE("front-drive", Unit.PERCENT, 0, 100),
    /** Torque that the differential can hold between its wheels on the power. */
    DIFFERENTIAL_LOCK("differential-lock", Unit.NEWTON_METRE, 0, 3000),
    /** What one step of the differential adds. */
    DIFFERENTIAL_STEP("differential-step", Unit.NEWTON_METRE, 0, 500);

    private final String id;
    private final Unit unit;
    private final double least;
    private final double most;

    Dimension(String id, Unit unit, double least, double most) {
        this.id = id;
        this.unit = unit;
        this.least = least;
        this.most = most;
    }

    @Override
    public String id() {
        return id;
    }

    /** The unit of the plausible range; a file may use any unit of the same dimension. */
    public Unit unit() {
        return unit;
    }

    /** What it may be in a car's file. */
    public Measure measure() {
        return Measure.in("the " + spoken(), unit, least, most);
    }

    /** Least plausible value, in {@link #unit()}. */
    public double least() {
        return least;
    }

    /** Greatest plausible value, in {@link #unit()}. */
    public double most() {
        return most;
    }
}
