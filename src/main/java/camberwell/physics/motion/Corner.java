package camberwell.physics.motion;

import java.util.List;

/**
 * One corner by a driver: braking in a straight line, then into the bend with the brakes coming off, round it, and out
 * of it on the power.
 */
public final class Corner implements Manoeuvre {

    /** How long each piece takes at the speed of the corner, s. */
    private static final double BRAKES = 1.0;
    private static final double IN = 0.8;
    private static final double ROUND = 1.3;
    private static final double OUT = 1.1;
    private static final double AWAY = 0.5;
    private static final double MOST_TIME = 12.0;

    private final Course course;
    private final Pace pace;
    private final double first;
    private final List<Part> parts;

    /**
     * @param speed in the corner, m/s
     * @param demand what the driver asks of the tyres; the radius follows
     */
    public Corner(double speed, Pace.Demand demand) {
        double curvature = demand.lateral() / (speed * speed);
        // Most of the braking is done before the bend, the rest on what the cornering leaves.
        first = speed + (0.8 * BRAKES + 0.5 * IN) * demand.braking();
        double in = BRAKES * (first + speed) / 2.0;
        double round = in + IN * speed;
        double out = round + ROUND * speed;
        double away = out + OUT * speed;
        double end = away + AWAY * speed;
        course = new Course(new double[] {in, round, out, away}, new double[] {0.0, curvature, curvature, 0.0});
        pace = Pace.of(course, demand, first, AWAY * speed);
        parts = List.of(new Part(Phase.BRAKING, Channel.DISTANCE, 0.0, in),
                new Part(Phase.ENTRY, Channel.DISTANCE, in, round + 0.15 * speed),
                new Part(Phase.MID_CORNER, Channel.DISTANCE, round + 0.35 * speed, out),
                new Part(Phase.EXIT, Channel.DISTANCE, out, end));
    }

    @Override
    public History drive(MovingCar car) {
        Motion motion = new Motion(car, course, first, new Driver(car, pace));
        return History.of(motion, MOST_TIME, parts.get(parts.size() - 1).to(), Motion.STEP);
    }

    @Override
    public List<Part> parts() {
        return parts;
    }
}
