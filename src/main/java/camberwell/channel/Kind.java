package camberwell.channel;

import camberwell.vocabulary.Word;
import java.util.EnumSet;
import java.util.Set;

/** What a column of a log can hold. */
public enum Kind implements Word {
    TIME("time", Treatment.CLOCK, Scale.TIME),
    LAP("lap", Treatment.HOLD, Scale.RATIO),
    /** Time since the lap began: it falls back where the next one begins. */
    LAP_TIME("lap-time", Treatment.HOLD, Scale.TIME),
    DISTANCE("distance", Treatment.HOLD, Scale.LENGTH),
    SPEED("speed", Treatment.SMOOTH, Scale.SPEED),
    /** Steering-wheel angle; of the road wheels where that is what is logged. */
    STEERING("steering", Treatment.SMOOTH, Scale.ANGLE, Scale.RATIO),
    LATERAL_ACCELERATION("lateral-acceleration", Treatment.SMOOTH, Scale.ACCELERATION),
    LONGITUDINAL_ACCELERATION("longitudinal-acceleration", Treatment.SMOOTH, Scale.ACCELERATION),
    VERTICAL_ACCELERATION("vertical-acceleration", Treatment.PEAK, Scale.ACCELERATION),
    YAW_RATE("yaw-rate", Treatment.SMOOTH, Scale.ANGULAR_RATE),
    THROTTLE("throttle", Treatment.QUICK, Scale.RATIO),
    BRAKE("brake", Treatment.QUICK, Scale.RATIO, Scale.PRESSURE, Scale.FORCE),
    LATITUDE("latitude", Treatment.POSITION, Scale.ANGLE),
    LONGITUDE("longitude", Treatment.POSITION, Scale.ANGLE),
    /** Position in a plane, towards the east or along any axis. */
    POSITION_X("position-x", Treatment.POSITION, Scale.LENGTH),
    /** Position in a plane, towards the north or to the left of x. */
    POSITION_Y("position-y", Treatment.POSITION, Scale.LENGTH),
    WHEEL_SPEED("wheel-speed", Treatment.QUICK, Scale.SPEED, Scale.ANGULAR_RATE),
    DAMPER("damper", Treatment.TRAVEL, Scale.LENGTH),
    RIDE_HEIGHT("ride-height", Treatment.TRAVEL, Scale.LENGTH),
    /** Temperature of the tread, where one sensor reads all of it. */
    TREAD("tread", Treatment.QUICK, Scale.TEMPERATURE),
    TREAD_INNER("tread-inner", Treatment.QUICK, Scale.TEMPERATURE),
    TREAD_MIDDLE("tread-middle", Treatment.QUICK, Scale.TEMPERATURE),
    TREAD_OUTER("tread-outer", Treatment.QUICK, Scale.TEMPERATURE),
    TYRE_PRESSURE("tyre-pressure", Treatment.QUICK, Scale.PRESSURE);

    /** How its samples are brought onto the common clock. */
    enum Treatment {
        /** It is the clock. */
        CLOCK,
        /** The latest value holds; never smoothed. */
        HOLD,
        /** Interpolated, then low-passed without a shift of phase. */
        SMOOTH,
        /** Interpolated only: what it shows may last a tenth of a second. */
        QUICK,
        /** As {@link #QUICK}, as metres from where the log begins. */
        POSITION,
        /** Of the samples that become one, the one farthest from standard gravity stays. */
        PEAK,
        /** As {@link #QUICK}; its greatest rate is kept beside it. */
        TRAVEL
    }

    private final String id;
    private final Treatment treatment;
    private final Set<Scale> scales;

    Kind(String id, Treatment treatment, Scale first, Scale... others) {
        this.id = id;
        this.treatment = treatment;
        this.scales = EnumSet.of(first, others);
    }

    @Override
    public String id() {
        return id;
    }

    Treatment treatment() {
        return treatment;
    }

    /** What it can be measured in; the first is the usual one. */
    public Set<Scale> scales() {
        return scales;
    }

    /** The scale that it has where nothing says otherwise. */
    Scale usual() {
        return this == STEERING ? Scale.ANGLE : this == WHEEL_SPEED ? Scale.SPEED : this == BRAKE ? Scale.RATIO
                : scales.iterator().next();
    }

    /** More than any sensor of a car reads, in whatever unit loggers write: judgement, no source. */
    double most() {
        return switch (this) {
            case TIME, LAP, LAP_TIME -> Double.MAX_VALUE;
            case DISTANCE, LATITUDE, LONGITUDE, POSITION_X, POSITION_Y -> 1e9;
            case BRAKE, TYRE_PRESSURE -> 1e8;
            case DAMPER, RIDE_HEIGHT -> 1e5;
            case STEERING, LATERAL_ACCELERATION, LONGITUDINAL_ACCELERATION, VERTICAL_ACCELERATION, YAW_RATE, THROTTLE, SPEED,
                    WHEEL_SPEED, TREAD, TREAD_INNER, TREAD_MIDDLE, TREAD_OUTER -> 3000;
        };
    }

    /** Whether there is one for each wheel or axle. */
    public boolean ofPlace() {
        return compareTo(WHEEL_SPEED) >= 0;
    }
}
