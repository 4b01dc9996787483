package camberwell.vocabulary;

import java.util.List;
import java.util.Optional;

/** What can be changed on a car. Only the adjusters that a car lists can be changed on it. */
public enum Adjuster implements Word {
    FRONT_TOE("front-toe", Kind.TOE),
    REAR_TOE("rear-toe", Kind.TOE),
    FRONT_CAMBER("front-camber", Kind.CAMBER),
    REAR_CAMBER("rear-camber", Kind.CAMBER),
    CASTER("caster", Kind.CASTER),
    FRONT_PRESSURE("front-pressure", Kind.PRESSURE),
    REAR_PRESSURE("rear-pressure", Kind.PRESSURE),
    FRONT_LEFT_PRESSURE("front-left-pressure", Kind.PRESSURE),
    FRONT_RIGHT_PRESSURE("front-right-pressure", Kind.PRESSURE),
    REAR_LEFT_PRESSURE("rear-left-pressure", Kind.PRESSURE),
    REAR_RIGHT_PRESSURE("rear-right-pressure", Kind.PRESSURE),
    FRONT_ANTI_ROLL_BAR("front-anti-roll-bar", Kind.STIFFNESS),
    REAR_ANTI_ROLL_BAR("rear-anti-roll-bar", Kind.STIFFNESS),
    FRONT_SPRINGS("front-springs", Kind.STIFFNESS),
    REAR_SPRINGS("rear-springs", Kind.STIFFNESS),
    FRONT_BUMP("front-bump", Kind.STIFFNESS),
    FRONT_REBOUND("front-rebound", Kind.STIFFNESS),
    REAR_BUMP("rear-bump", Kind.STIFFNESS),
    REAR_REBOUND("rear-rebound", Kind.STIFFNESS),
    FRONT_RIDE_HEIGHT("front-ride-height", Kind.HEIGHT),
    REAR_RIDE_HEIGHT("rear-ride-height", Kind.HEIGHT),
    FRONT_WING("front-wing", Kind.WING),
    REAR_WING("rear-wing", Kind.WING),
    BRAKE_BIAS("brake-bias", Kind.BRAKE_BIAS),
    DIFFERENTIAL_PRELOAD("differential-preload", Kind.DIFFERENTIAL),
    DIFFERENTIAL_POWER("differential-power", Kind.DIFFERENTIAL),
    DIFFERENTIAL_COAST("differential-coast", Kind.DIFFERENTIAL);

    /** What sort of adjuster it is, with its two directions: first the one that lowers its number. */
    public enum Kind {
        TOE(Direction.TOE_OUT, Direction.TOE_IN),
        CAMBER(Direction.MORE_NEGATIVE, Direction.LESS_NEGATIVE),
        CASTER(Direction.LESS, Direction.MORE),
        PRESSURE(Direction.LOWER, Direction.HIGHER),
        STIFFNESS(Direction.SOFTER, Direction.STIFFER),
        HEIGHT(Direction.LOWER, Direction.HIGHER),
        WING(Direction.LESS, Direction.MORE),
        BRAKE_BIAS(Direction.REARWARD, Direction.FORWARD),
        DIFFERENTIAL(Direction.LESS, Direction.MORE);

        private final List<Direction> directions;

        Kind(Direction lowers, Direction raises) {
            directions = List.of(lowers, raises);
        }

        /** The two directions, first the one that lowers the number. */
        public List<Direction> directions() {
            return directions;
        }

        /** Whether it acts on the tyre itself, so that it is looked at before the car's balance. */
        public boolean ofTyre() {
            return this == PRESSURE || this == CAMBER || this == TOE;
        }
    }

    private final String id;
    private final Kind kind;

    Adjuster(String id, Kind kind) {
        this.id = id;
        this.kind = kind;
    }

    @Override
    public String id() {
        return id;
    }

    /** What sort of adjuster it is. */
    public Kind kind() {
        return kind;
    }

    /** The two directions it moves in, first the one that lowers its number. */
    public List<Direction> directions() {
        return kind.directions();
    }

    /** The axle it acts on, where it acts on one. */
    public Optional<Axle> axle() {
        return id.startsWith("front") ? Optional.of(Axle.FRONT)
                : id.startsWith("rear") ? Optional.of(Axle.REAR) : Optional.empty();
    }

    /** The wheel whose pressure it is, where it is one wheel's. */
    public Optional<Wheel> wheel() {
        return kind == Kind.PRESSURE ? Word.find(Wheel.class, id.replace("-pressure", "")) : Optional.empty();
    }

    /** The pressure adjuster of a whole axle. */
    public static Adjuster pressureOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_PRESSURE : REAR_PRESSURE;
    }

    /** The pressure adjuster of one wheel. */
    public static Adjuster pressureOf(Wheel wheel) {
        return Word.of(Adjuster.class, wheel.id() + "-pressure");
    }

    /** The camber adjuster of an axle. */
    public static Adjuster camberOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_CAMBER : REAR_CAMBER;
    }

    /** The toe adjuster of an axle. */
    public static Adjuster toeOf(Axle axle) {
        return axle == Axle.FRONT ? FRONT_TOE : REAR_TOE;
    }

    /** The knowledge note that tells of this adjuster: one wheel's pressure is told of with its axle's. */
    public String note() {
        return wheel().map(wheel -> pressureOf(wheel.axle()).id).orElse(id);
    }
}
