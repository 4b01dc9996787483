package camberwell.physics.motion;

/** What is written down of a run. */
public enum Channel {
    /** s. */
    TIME,
    /** Way along the course, m. */
    DISTANCE,
    /** Distance to the left of the course, m. */
    OFFSET,
    /** Steer of the front wheels, rad. */
    STEER,
    /** Steer beyond that of the turn itself: mean front less mean rear slip angle, rad; positive understeers. */
    UNDERSTEER,
    /** Speed along the car, m/s. */
    SPEED,
    /** Sideslip angle at the centre of gravity, rad. */
    SIDESLIP,
    /** rad/s. */
    YAW_RATE,
    /** m/s². */
    LATERAL,
    /** m/s². */
    LONGITUDINAL,
    /** Acceleration of the body upwards, m/s². */
    VERTICAL,
    /** rad. */
    ROLL,
    /** rad. */
    PITCH,
    /** Torque of the engine at the wheels, N m. */
    DRIVE,
    /** Torque of the brakes, N m. */
    BRAKE,
    /** Slip of the front tyres over that of their peak, weighted with their loads. */
    FRONT_SATURATION,
    /** The same at the rear. */
    REAR_SATURATION,
    /** Slip along the wheel over that of the peak, of the front wheel that brakes hardest; positive when it brakes. */
    FRONT_LOCKING,
    /** The same at the rear. */
    REAR_LOCKING,
    /** Slip along the wheel over that of the peak, of the driven wheel that spins most. */
    SPINNING,
    /** Speed of the right driven wheel less that of the left one, m/s. */
    WHEEL_SPEED_DIFFERENCE,
    /** Torque about the steering axes of the front wheels, by their side forces, N m. */
    STEERING_TORQUE,
    /** How far the front wheel that is pressed in most has come up from where it stands at rest, m. */
    FRONT_TRAVEL,
    /** The same at the rear. */
    REAR_TRAVEL,
    /** Sliding power of the front tyres, W. */
    FRONT_SCRUB,
    /** The same at the rear. */
    REAR_SCRUB,
    /** Loads, N. */
    LOAD_FRONT_LEFT, LOAD_FRONT_RIGHT, LOAD_REAR_LEFT, LOAD_REAR_RIGHT;

    private static final Channel[] ALL = values();

    static int count() {
        return ALL.length;
    }

    /** Load of a wheel. */
    public static Channel load(int wheel) {
        return ALL[LOAD_FRONT_LEFT.ordinal() + wheel];
    }
}
