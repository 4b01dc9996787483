package camberwell.physics.motion;

import camberwell.physics.AxleModel;
import camberwell.physics.VehicleModel;

/**
 * One car as it moves: its state at a time, and steps forward. A step of {@link #STEP} is within 1e-5 of a quarter of
 * it in every acceleration. Not to be shared between threads.
 */
public final class Motion {

    /** s. */
    public static final double STEP = 0.001;

    private final Dynamics dynamics;
    private final RungeKutta method = new RungeKutta(State.SIZE);
    private final Controls controls = new Controls();
    private final double[] state = new double[State.SIZE];
    private final double[] scratch = new double[State.SIZE];
    private final RungeKutta.Rates rates = this::rates;
    private Input input;
    private double time;

    /**
     * A car that runs straight, settled under its downforce.
     *
     * @param car the car
     * @param course what distances and offsets are measured on
     * @param speed m/s, above 0
     * @param input what is done to it
     */
    public Motion(MovingCar car, Course course, double speed, Input input) {
        this.dynamics = new Dynamics(car);
        this.input = input;
        dynamics.follow(course);
        state[State.SPEED] = speed;
        VehicleModel vehicle = car.vehicle();
        for (int i = 0; i < 4; i++) {
            state[State.SPIN + i] = speed / vehicle.wheelRadius();
        }
        settle(car, speed);
        look();
    }

    /** Heave and pitch under the downforce, in closed form. */
    private void settle(MovingCar car, double speed) {
        VehicleModel vehicle = car.vehicle();
        double[] sunk = new double[2];
        for (int end = 0; end < 2; end++) {
            AxleModel axle = car.axle(2 * end);
            double pressed = axle.downforce() * speed * speed / 2.0;
            double onTyre = pressed / axle.tyreRate();
            state[State.WHEEL + 2 * end] = -onTyre;
            state[State.WHEEL + 2 * end + 1] = -onTyre;
            sunk[end] = onTyre + (axle.wheelRate() > 0.0 ? pressed / axle.wheelRate() : 0.0);
        }
        double pitch = (sunk[0] - sunk[1]) / vehicle.wheelbase();
        state[State.PITCH] = pitch;
        state[State.HEAVE] = -sunk[0] + (vehicle.cgToFront() - car.sprungAhead()) * pitch;
    }

    /** Puts the car on another course, at its beginning, with what it does unchanged. */
    public void follow(Course course, double offset, double angle) {
        dynamics.follow(course);
        state[State.DISTANCE] = 0.0;
        state[State.OFFSET] = offset;
        state[State.COURSE] = angle;
    }

    /** Gives the car into other hands. */
    public void handTo(Input other) {
        input = other;
    }

    /** Sets the clock, s. */
    public void startAt(double seconds) {
        time = seconds;
    }

    /** One step forward. */
    public void step() {
        step(STEP);
    }

    /** One step forward, of a length in seconds. */
    void step(double seconds) {
        input.sense(time, this);
        method.step(rates, time, seconds, state);
        time += seconds;
    }

    private void rates(double at, double[] from, double[] into) {
        input.at(at, controls);
        dynamics.rates(from, controls, into);
    }

    /** Brings forces, slips and accelerations up to the present state; after a step they are a hair older. */
    void look() {
        rates(time, state, scratch);
    }

    /** s. */
    public double time() {
        return time;
    }

    /** The car. */
    public MovingCar car() {
        return dynamics.car;
    }

    /** Way along the course, m. */
    public double distance() {
        return state[State.DISTANCE];
    }

    /** Distance to the left of the course, m. */
    public double offset() {
        return state[State.OFFSET];
    }

    /** Heading less that of the course, rad, positive to the left. */
    public double courseAngle() {
        return state[State.COURSE];
    }

    /** Curvature of the course where the car is, 1/m. */
    public double curvature(double ahead) {
        return dynamics.course().curvature(state[State.DISTANCE] + ahead);
    }

    /** Speed along the car, m/s. */
    public double speed() {
        return state[State.SPEED];
    }

    /** Yaw rate, rad/s. */
    public double yawRate() {
        return state[State.YAW_RATE];
    }

    /** Sideslip angle at the centre of gravity, rad, positive when the car moves to the left of its nose. */
    public double sideslip() {
        return Math.atan2(state[State.SWAY], state[State.SPEED]);
    }

    /** Roll of the body, rad. */
    public double roll() {
        return state[State.ROLL];
    }

    /** Pitch of the body, rad. */
    public double pitch() {
        return state[State.PITCH];
    }

    /** Lateral acceleration along the car's y axis, m/s². */
    public double lateral() {
        return dynamics.lateral;
    }

    /** Longitudinal acceleration along the car's x axis, m/s². */
    public double longitudinal() {
        return dynamics.longitudinal;
    }

    /** Vertical acceleration of the body, m/s². */
    public double vertical() {
        return dynamics.vertical;
    }

    /** Steer of the front wheels, rad. */
    public double steer() {
        return controls.steer;
    }

    /** Torque of the engine at the wheels, N m. */
    public double drive() {
        return controls.drive;
    }

    /** Torque of the brakes, N m. */
    public double brake() {
        return controls.brake;
    }

    /** Load of a tyre, N. */
    public double load(int wheel) {
        return dynamics.load[wheel];
    }

    /** Slip angle of a wheel, rad. */
    public double slip(int wheel) {
        return dynamics.slip[wheel];
    }

    /** Longitudinal slip of a wheel, -1 when locked. */
    public double longitudinalSlip(int wheel) {
        return dynamics.kappa[wheel];
    }

    /** Slip of a wheel over that of its tyre's peak, across and along together. */
    public double saturation(int wheel) {
        return Math.hypot(dynamics.useAcross(wheel), dynamics.useAlong(wheel));
    }

    /** Slip of a wheel over that of its tyre's peak, along it alone: below -1 it locks, above 1 it spins. */
    public double saturationAlong(int wheel) {
        return dynamics.useAlong(wheel);
    }

    /** Force of a tyre across its wheel, N. */
    public double across(int wheel) {
        return dynamics.across[wheel];
    }

    /** Force of a tyre along its wheel, N. */
    public double along(int wheel) {
        return dynamics.along[wheel];
    }

    /** How far a wheel has come up towards the body from where it stands at rest, m. */
    public double travel(int wheel) {
        return dynamics.compression[wheel];
    }

    /** Speed of a wheel about its axle, rad/s. */
    public double spin(int wheel) {
        return state[State.SPIN + wheel];
    }

    /** The raw state; for measuring balances of energy. */
    double[] state() {
        return state;
    }
}
