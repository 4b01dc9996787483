package camberwell.physics.motion;

import camberwell.physics.CornerPhase;
import java.util.List;

/**
 * A steady turn in which the pedals change while the steering wheel is held: braking (ISO 7975), the throttle closed
 * (ISO 9816), the throttle opened (no standard known), or nothing (the steady circle of ISO 4138); scopes seen, values
 * from memory. A driver brings the car into the turn first; at time zero he keeps his hands still.
 *
 * @param what what is done
 * @param radius of the turn, m
 * @param speed m/s
 * @param change longitudinal acceleration that the pedals ask for, m/s²
 * @param steered whether the driver goes on steering along the turn instead
 */
public record InATurn(Kind what, double radius, double speed, double change, boolean steered) implements Manoeuvre {

    private static final double COMES_IN = 4.0;
    private static final double LASTS = 3.0;
    /** What the car does of itself, before it has turned away, s. */
    private static final double SHOWS = 1.0;

    /** What is done in the turn. */
    public enum Kind {
        STEADY(Phase.MID_CORNER, 0.1),
        BRAKING(Phase.ENTRY, 0.2),
        POWER_OFF(Phase.LIFT_OFF, 0.1),
        POWER_ON(Phase.EXIT, 0.3);

        private final Phase phase;
        private final double ramp;

        Kind(Phase phase, double ramp) {
            this.phase = phase;
            this.ramp = ramp;
        }
    }

    @Override
    public History drive(MovingCar car) {
        return drive(car, LASTS);
    }

    @Override
    public History driveParts(MovingCar car) {
        return drive(car, SHOWS + History.INTERVAL);
    }

    private History drive(MovingCar car, double until) {
        double straight = 0.3 * speed;
        double bend = straight + 1.2 * speed;
        Course course = new Course(new double[] {straight, bend}, new double[] {0.0, 1.0 / radius});
        Driver driver = new Driver(car, Pace.steady(speed));
        Motion motion = new Motion(car, course, speed, driver);
        motion.startAt(-COMES_IN);
        while (motion.time() < -Motion.STEP / 2.0) {
            motion.step();
        }
        motion.look();
        motion.handTo(new Held(car, driver, motion.steer(), motion.drive()));
        return History.of(motion, until, Double.POSITIVE_INFINITY, Motion.STEP);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part(what.phase, Channel.TIME, 0.0, SHOWS));
    }

    /** Pedals that change, and a wheel that is held or not. */
    private final class Held implements Input {

        private final MovingCar car;
        private final Driver driver;
        private final double steer;
        private final double drive;

        Held(MovingCar car, Driver driver, double steer, double drive) {
            this.car = car;
            this.driver = driver;
            this.steer = steer;
            this.drive = drive;
        }

        @Override
        public void sense(double time, Motion motion) {
            driver.sense(time, motion);
        }

        @Override
        public void at(double time, Controls controls) {
            driver.at(time, controls);
            if (!steered) {
                controls.steer = steer;
            }
            if (what == Kind.STEADY) {
                return;
            }
            double metresPerTorque = car.vehicle().mass() * car.vehicle().wheelRadius();
            double part = Math.max(0.0, Math.min(1.0, time / what.ramp));
            double torque = drive + part * (metresPerTorque * change - drive);
            double overrun = -metresPerTorque * CornerPhase.OVERRUN;
            controls.drive = Math.max(torque, overrun);
            controls.brake = Math.max(0.0, overrun - torque);
        }
    }
}
