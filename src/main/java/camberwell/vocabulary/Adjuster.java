package camberwell.vocabulary;

import camberwell.units.Measure;
import camberwell.units.Unit;
import java.util.List;
import java.util.Optional;

/** What can be changed on a car. Only the adjusters that a car lists can be changed on it. */
public enum Adjuster implements Word {
    FRONT_TOE("front-toe", Adjustment.TOE, Axle.FRONT, Typical.of(-0.1, -0.3, 0.2, 0.05, Unit.DEGREE)),
    REAR_TOE("rear-toe", Adjustment.TOE, Axle.REAR, Typical.of(0.2, 0, 0.4, 0.05, Unit.DEGREE)),
    FRONT_CAMBER("front-camber", Adjustment.CAMBER, Axle.FRONT),
    REAR_CAMBER("rear-camber", Adjustment.CAMBER, Axle.REAR),
    FRONT_LEFT_CAMBER("front-left-camber", Adjustment.CAMBER, Wheel.FRONT_LEFT),
    FRONT_RIGHT_CAMBER("front-right-camber", Adjustment.CAMBER, Wheel.FRONT_RIGHT),
    REAR_LEFT_CAMBER("rear-left-camber", Adjustment.CAMBER, Wheel.REAR_LEFT),
    REAR_RIGHT_CAMBER("rear-right-camber", Adjustment.CAMBER, Wheel.REAR_RIGHT),
    CASTER(Adjustment.CASTER),
    FRONT_PRESSURE("front-pressure", Adjustment.PRESSURE, Axle.FRONT),
    REAR_PRESSURE("rear-pressure", Adjustment.PRESSURE, Axle.REAR),
    FRONT_LEFT_PRESSURE("front-left-pressure", Adjustment.PRESSURE, Wheel.FRONT_LEFT),
    FRONT_RIGHT_PRESSURE("front-right-pressure", Adjustment.PRESSURE, Wheel.FRONT_RIGHT),
    REAR_LEFT_PRESSURE("rear-left-pressure", Adjustment.PRESSURE, Wheel.REAR_LEFT),
    REAR_RIGHT_PRESSURE("rear-right-pressure", Adjustment.PRESSURE, Wheel.REAR_RIGHT),
    FRONT_ANTI_ROLL_BAR("front-anti-roll-bar", Adjustment.ANTI_ROLL_BAR, Axle.FRONT),
    REAR_ANTI_ROLL_BAR("rear-anti-roll-bar", Adjustment.ANTI_ROLL_BAR, Axle.REAR),
    FRONT_SPRINGS("front-springs", Adjustment.SPRINGS, Axle.FRONT),
    REAR_SPRINGS("rear-springs", Adjustment.SPRINGS, Axle.REAR),
    FRONT_BUMP("front-bump", Adjustment.BUMP, Axle.FRONT),
    FRONT_REBOUND("front-rebound", Adjustment.REBOUND, Axle.FRONT),
    REAR_BUMP("rear-bump", Adjustment.BUMP, Axle.REAR),
    REAR_REBOUND("rear-rebound", Adjustment.REBOUND, Axle.REAR),
    FRONT_RIDE_HEIGHT("front-ride-height", Adjustment.RIDE_HEIGHT, Axle.FRONT),
    REAR_RIDE_HEIGHT("rear-ride-height", Adjustment.RIDE_HEIGHT, Axle.REAR),
    FRONT_WING("front-wing", Adjustment.WING, Axle.FRONT),
    REAR_WING("rear-wing", Adjustment.WING, Axle.REAR),
    BRAKE_BIAS(Adjustment.BRAKE_BIAS),
    DIFFERENTIAL_PRELOAD(Adjustment.DIFFERENTIAL_PRELOAD),
    DIFFERENTIAL_POWER(Adjustment.DIFFERENTIAL_POWER),
    DIFFERENTIAL_COAST(Adjustment.DIFFERENTIAL_COAST);

    /** What sort of adjuster it is, where bars, springs and dampers are one sort. */
    public enum Kind {
        TOE, CAMBER, CASTER, PRESSURE, STIFFNESS, HEIGHT, WING, BRAKE_BIAS, DIFFERENTIAL
    }

    private final String id;
    private final Adjustment adjustment;
    private final Optional<Axle> axle;
    private final Optional<Wheel> wheel;
    private final Typical typical;

    Adjuster(Adjustment ofTheCar) {
        this(ofTheCar.id(), ofTheCar, Optional.empty(), Optional.empty(), ofTheCar.typical());
    }

    Adjuster(String id, Adjustment adjustment, Axle axle) {
        this(id, adjustment, axle, adjustment.typical());
    }

    Adjuster(String id, Adjustment adjustment, Axle axle, Typical typical) {
        this(id, adjustment, Optional.of(axle), Optional.empty(), typical);
    }

    Adjuster(String id, Adjustment adjustment, Wheel wheel) {
        this(id, adjustment, Optional.of(wheel.axle()), Optional.of(wheel), adjustment.typical());
    }

    Adjuster(String id, Adjustment adjustment, Optional<Axle> axle, Optional<Wheel> wheel, Typical typical) {
        this.id = id;
        this.adjustment = adjustment;
        this.axle = axle;
        this.wheel = wheel;
        this.typical = typical;
    }

    @Override
    public String id() {
        return id;
    }

    /** What it adjusts. */
    public Adjustment adjustment() {
        return adjustment;
    }

    /** What sort of adjuster it is. */
    public Kind kind() {
        return switch (adjustment) {
            case TOE -> Kind.TOE;
            case CAMBER -> Kind.CAMBER;
            case CASTER -> Kind.CASTER;
            case PRESSURE -> Kind.PRESSURE;
            case ANTI_ROLL_BAR, SPRINGS, BUMP, REBOUND -> Kind.STIFFNESS;
            case RIDE_HEIGHT -> Kind.HEIGHT;
            case WING -> Kind.WING;
            case BRAKE_BIAS -> Kind.BRAKE_BIAS;
            case DIFFERENTIAL_PRELOAD, DIFFERENTIAL_POWER, DIFFERENTIAL_COAST -> Kind.DIFFERENTIAL;
        };
    }

    /** The two directions it moves in, first the one that lowers its number. */
    public List<Direction> directions() {
        return adjustment.directions();
    }

    /** The axle it acts on, where it acts on one. */
    public Optional<Axle> axle() {
        return axle;
    }

    /** The wheel whose pressure or camber it is, where it is one wheel's. */
    public Optional<Wheel> wheel() {
        return wheel;
    }

    /** What a setting of it may be: its units, and the plausible range in each. */
    public Measure measure() {
        return adjustment.measure(this);
    }

    /** What a setting of it may be on a car whose file counts it in clicks. */
    public Measure clicks() {
        return adjustment.clicks(this);
    }

    /** How it stands on a made-up car. */
    public Typical typical() {
        return typical;
    }

    /** The adjuster of {@code adjustment} that sets a whole axle, if there is one. */
    public static Optional<Adjuster> of(Adjustment adjustment, Axle axle) {
        for (Adjuster adjuster : values()) {
            if (adjuster.adjustment == adjustment && adjuster.wheel.isEmpty()
                    && adjuster.axle.isPresent() && adjuster.axle.get() == axle) {
                return Optional.of(adjuster);
            }
        }
        return Optional.empty();
    }

    /** The pressure adjuster of a whole axle. */
    public static Adjuster pressureOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_PRESSURE : REAR_PRESSURE;
    }

    /** The pressure adjuster of one wheel. */
    public static Adjuster pressureOf(Wheel wheel) {
        return switch (wheel) {
            case FRONT_LEFT -> FRONT_LEFT_PRESSURE;
            case FRONT_RIGHT -> FRONT_RIGHT_PRESSURE;
            case REAR_LEFT -> REAR_LEFT_PRESSURE;
            case REAR_RIGHT -> REAR_RIGHT_PRESSURE;
        };
    }

    /** The adjuster of the same thing that sets both wheels of the axle; itself, where it is not one wheel's. */
    public Adjuster ofBothWheels() {
        return wheel.isEmpty() ? this : of(adjustment, wheel.get().axle()).orElseThrow();
    }

    /** The adjuster of the same thing at one wheel of the axle. Only pressure and camber have them. */
    public Adjuster ofWheel(Wheel one) {
        return adjustment == Adjustment.PRESSURE ? pressureOf(one) : camberOf(one);
    }

    /** The camber adjuster of one wheel. */
    public static Adjuster camberOf(Wheel wheel) {
        return switch (wheel) {
            case FRONT_LEFT -> FRONT_LEFT_CAMBER;
            case FRONT_RIGHT -> FRONT_RIGHT_CAMBER;
            case REAR_LEFT -> REAR_LEFT_CAMBER;
            case REAR_RIGHT -> REAR_RIGHT_CAMBER;
        };
    }

    /** The camber adjuster of an axle. */
    public static Adjuster camberOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_CAMBER : REAR_CAMBER;
    }

    /** The toe adjuster of an axle. */
    public static Adjuster toeOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_TOE : REAR_TOE;
    }

    /** The knowledge note that tells of this adjuster: one wheel's pressure or camber is told of with its axle's. */
    public String note() {
        return ofBothWheels().id;
    }
}
