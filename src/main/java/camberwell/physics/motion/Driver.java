package camberwell.physics.motion;

import camberwell.physics.CornerPhase;
import camberwell.physics.VehicleModel;

/**
 * A driver: steers along a course that he sees a moment ahead, follows its pace with throttle and brake, steers
 * against a slide, adds no more lock once the front tyres are past their peak, and eases a foot that spins or locks a
 * wheel. Preview with feedback of offset, direction and yaw rate: a linear driver of the usual sort (M. Abe, Vehicle
 * Handling Dynamics, ch. 10, from memory); the figures are common practice, no source.
 */
public final class Driver implements Input {

    /** How far ahead he looks, s. */
    private static final double PREVIEW = 0.12;
    /** His arms' lag, s, and how fast the front wheels can be steered, rad/s. */
    private static final double ARMS = 0.06;
    private static final double FASTEST = 1.2;
    private static final double MOST_LOCK = 0.6;
    /** How sharply he comes back to the course, rad/s, and how damped. */
    private static final double EAGER = 3.2;
    private static final double DAMPED = 0.9;
    private static final double YAW = 0.9;
    /** Front slip, over that of the peak, beyond which more lock is no use. */
    private static final double PAST_PEAK = 1.25;
    private static final double FEET = 0.06;
    private static final double CATCHES_UP = 1.5;
    private static final double OVERRUN = CornerPhase.OVERRUN;
    private static final double EASES_FROM = 0.85;
    private static final double LEAST_FOOT = 0.25;

    private final Pace pace;
    private final VehicleModel vehicle;
    private final double gradient;
    private final double peakSlip;
    private double steer;
    private double steering;
    private double pedals;
    private double pressing;
    private double begun;

    /**
     * @param car the car that he knows
     * @param pace how fast he goes
     */
    public Driver(MovingCar car, Pace pace) {
        this.pace = pace;
        this.vehicle = car.vehicle();
        this.gradient = Math.max(0.0, vehicle.bicycle().understeerGradient());
        double load = vehicle.mass() * VehicleModel.GRAVITY * vehicle.frontWeightFraction() / 2.0;
        this.peakSlip = vehicle.front().tyre().at(load, 0.0).peakSlip();
    }

    @Override
    public void sense(double time, Motion motion) {
        steer = steerAt(time);
        pedals = pedalsAt(time);
        begun = time;
        steering = Math.max(-FASTEST, Math.min(FASTEST, (wantedSteer(motion) - steer) / ARMS));
        pressing = (wantedAcceleration(motion) - pedals) / FEET;
    }

    private double wantedSteer(Motion motion) {
        double speed = Math.max(Dynamics.SLOWEST, motion.speed());
        double perCurvature = vehicle.wheelbase() + gradient * speed * speed;
        double direction = motion.courseAngle() + motion.sideslip();
        double back = EAGER * EAGER * motion.offset() + 2.0 * DAMPED * EAGER * speed * Math.sin(direction);
        double yaw = motion.yawRate() - speed * motion.curvature(0.0);
        double wanted = perCurvature * (motion.curvature(PREVIEW * speed) - back / (speed * speed)
                - YAW * yaw / speed);
        double frontGoes = Math.atan(Math.tan(motion.sideslip())
                + motion.yawRate() * vehicle.cgToFront() / speed);
        double most = PAST_PEAK * peakSlip;
        return Math.max(-MOST_LOCK, Math.min(MOST_LOCK,
                Math.max(frontGoes - most, Math.min(frontGoes + most, wanted))));
    }

    private double wantedAcceleration(Motion motion) {
        double speed = motion.speed();
        double place = motion.distance();
        double wanted = pace.acceleration(place + FEET * speed)
                + CATCHES_UP * (pace.speed(place) - speed);
        double spins = 0.0;
        double locks = 0.0;
        for (int wheel = 0; wheel < 4; wheel++) {
            if (motion.load(wheel) > 0.0) {
                spins = Math.max(spins, motion.saturationAlong(wheel));
                locks = Math.max(locks, -motion.saturationAlong(wheel));
            }
        }
        return wanted > 0.0 ? wanted * foot(spins) : wanted * foot(locks);
    }

    private static double foot(double used) {
        return Math.max(LEAST_FOOT, 1.0 - Math.max(0.0, used - EASES_FROM));
    }

    private double steerAt(double time) {
        return steer + steering * (time - begun);
    }

    private double pedalsAt(double time) {
        return pedals + pressing * (time - begun);
    }

    @Override
    public void at(double time, Controls controls) {
        controls.steer = steerAt(time);
        double force = vehicle.mass() * pedalsAt(time);
        double overrun = -OVERRUN * vehicle.mass();
        controls.drive = vehicle.wheelRadius() * Math.max(force, overrun);
        controls.brake = vehicle.wheelRadius() * Math.max(0.0, overrun - force);
    }
}
