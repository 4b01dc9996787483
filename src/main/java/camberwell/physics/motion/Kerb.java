package camberwell.physics.motion;

import java.util.List;

/**
 * A kerb under the inner wheels of a steady turn, first the front one and then the rear one: a haversine in the road
 * (no standard known).
 *
 * @param radius of the turn, m; infinite for a straight
 * @param speed m/s
 * @param height of the kerb, m
 * @param length of it, m
 */
public record Kerb(double radius, double speed, double height, double length) implements Manoeuvre {

    private static final double COMES_IN = 3.5;
    private static final double LASTS = 1.5;

    @Override
    public History drive(MovingCar car) {
        double curvature = 1.0 / radius;
        Course course = curvature == 0.0 ? Course.STRAIGHT
                : new Course(new double[] {0.3 * speed, 1.5 * speed}, new double[] {0.0, curvature});
        Driver driver = new Driver(car, Pace.steady(speed));
        double lag = car.vehicle().wheelbase() / speed;
        Input over = new Input() {
            @Override
            public void sense(double time, Motion motion) {
                driver.sense(time, motion);
            }

            @Override
            public void at(double time, Controls controls) {
                driver.at(time, controls);
                controls.road[0] = road(time);
                controls.road[2] = road(time - lag);
            }
        };
        Motion motion = new Motion(car, course, speed, over);
        motion.startAt(-COMES_IN);
        while (motion.time() < -Motion.STEP / 2.0) {
            motion.step();
        }
        return History.of(motion, LASTS, Double.POSITIVE_INFINITY, Motion.STEP);
    }

    private double road(double time) {
        double part = time * speed / length;
        return part > 0.0 && part < 1.0 ? height * 0.5 * (1.0 - Math.cos(2.0 * Math.PI * part)) : 0.0;
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part(Phase.KERBS, Channel.TIME, 0.0, 1.0));
    }
}
