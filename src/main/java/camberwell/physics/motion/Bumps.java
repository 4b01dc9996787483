package camberwell.physics.motion;

import java.util.List;

/**
 * A straight with bumps: waves of several lengths together, of which the left wheels meet other ones than the right
 * wheels. The amplitudes fall with the wavelength's shortness, as those of roads do (ISO 8608, from memory); the
 * phases are fixed, so that every car meets the same road.
 *
 * @param speed m/s
 * @param roughness scale of the heights: 1 is a poor track, about 4 mm for a wave of ten metres
 */
public record Bumps(double speed, double roughness) implements Manoeuvre {

    private static final double[] LENGTH = {17.0, 11.3, 7.1, 4.7, 3.1, 2.3, 1.6};
    private static final double HEIGHT = 0.0004;
    private static final double LASTS = 4.0;

    @Override
    public History drive(MovingCar car) {
        Driver driver = new Driver(car, Pace.steady(speed));
        double wheelbase = car.vehicle().wheelbase();
        Input over = new Input() {
            @Override
            public void sense(double time, Motion motion) {
                driver.sense(time, motion);
            }

            @Override
            public void at(double time, Controls controls) {
                driver.at(time, controls);
                double front = speed * time;
                for (int wheel = 0; wheel < 4; wheel++) {
                    controls.road[wheel] = road(wheel < 2 ? front : front - wheelbase, wheel & 1);
                }
            }
        };
        return History.of(new Motion(car, Course.STRAIGHT, speed, over), LASTS, Double.POSITIVE_INFINITY,
                Motion.STEP);
    }

    private double road(double way, int side) {
        if (way <= 0.0) {
            return 0.0;
        }
        double height = 0.0;
        for (int i = 0; i < LENGTH.length; i++) {
            double turn = 2.0 * Math.PI * way / LENGTH[i];
            height += LENGTH[i] * Math.sin(turn + (side == 0 ? 1.7 : 4.1) * i);
        }
        return roughness * HEIGHT * height * Math.min(1.0, way / 20.0);
    }

    @Override
    public List<Part> parts() {
        return List.of(new Part(Phase.STRAIGHT, Channel.TIME, 1.0, LASTS));
    }
}
