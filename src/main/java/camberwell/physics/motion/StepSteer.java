package camberwell.physics.motion;

import java.util.List;

/**
 * Step steer, ISO 7401 (contents seen, values from memory): straight at 80 km/h, then the front wheels are turned in a
 * tenth of a second and held. Time zero is at half the steer.
 *
 * @param speed m/s
 * @param steer of the front wheels, rad
 */
public record StepSteer(double speed, double steer) implements Manoeuvre {

    /** The standard's speed, m/s. */
    public static final double SPEED = 80.0 / 3.6;
    private static final double RAMP = 0.1;
    private static final double LASTS = 3.0;

    @Override
    public History drive(MovingCar car) {
        Pedals pedals = new Pedals(car);
        Input input = new Input() {
            @Override
            public void sense(double time, Motion motion) {
                pedals.hold(motion, speed);
            }

            @Override
            public void at(double time, Controls controls) {
                controls.steer = steer * Math.max(0.0, Math.min(1.0, time / RAMP + 0.5));
                pedals.at(controls);
            }
        };
        Motion motion = new Motion(car, Course.STRAIGHT, speed, input);
        motion.startAt(-RAMP / 2.0);
        return History.of(motion, LASTS, Double.POSITIVE_INFINITY, Motion.STEP);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part(Phase.ENTRY, Channel.TIME, 0.0, 0.6), new Part(Phase.MID_CORNER, Channel.TIME, 1.5,
                LASTS));
    }
}
