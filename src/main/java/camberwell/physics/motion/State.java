package camberwell.physics.motion;

/**
 * Places in the state of the moving car. Heights are those above the static position; wheels are front left, front
 * right, rear left, rear right.
 */
final class State {

    /** Way along the course, m; straight ahead where there is none. */
    static final int DISTANCE = 0;
    /** Distance to the left of the course, m. */
    static final int OFFSET = 1;
    /** Heading of the car less that of the course, rad, to the left. */
    static final int COURSE = 2;
    /** Speed of the centre of gravity along the car, m/s. */
    static final int SPEED = 3;
    /** Its speed to the left, m/s. */
    static final int SWAY = 4;
    /** rad/s, to the left. */
    static final int YAW_RATE = 5;
    /** Height of the body's centre of gravity, m. */
    static final int HEAVE = 6;
    /** rad, right side down. */
    static final int ROLL = 7;
    /** rad, nose down. */
    static final int PITCH = 8;
    static final int HEAVE_RATE = 9;
    static final int ROLL_RATE = 10;
    static final int PITCH_RATE = 11;
    /** Speed of each wheel about its axle, rad/s. */
    static final int SPIN = 12;
    /** Slip angle that each tyre answers, rad. */
    static final int LAG_ACROSS = 16;
    /** Longitudinal slip that each tyre answers. */
    static final int LAG_ALONG = 20;
    /** Height of each wheel, m. */
    static final int WHEEL = 24;
    static final int WHEEL_RATE = 28;
    static final int SIZE = 32;

    private State() {
    }
}
