package camberwell.model;

import camberwell.physics.CornerPhase;
import camberwell.physics.CorneringLimit;
import camberwell.physics.Equilibrium;
import camberwell.physics.HandlingModel;
import camberwell.physics.OperatingPoint;
import camberwell.physics.VehicleModel;
import java.util.ArrayList;
import java.util.List;

/**
 * The steer angle that a car needs over the lateral acceleration, at one speed: the understeer characteristic of the
 * constant-speed test of ISO 4138. Where it rises above the line of the turn alone the car understeers.
 *
 * @param speed m/s
 * @param wheelbase m
 * @param limit the most that the car can corner, m/s²
 * @param points from straight ahead to the limit; what has no equilibrium is left out
 */
public record Characteristic(double speed, double wheelbase, CorneringLimit limit, List<Point> points) {

    private static final int STEPS = 48;
    private static final double TO_THE_LIMIT = 0.995;

    /**
     * One point of it.
     *
     * @param lateral lateral acceleration, m/s²
     * @param steer mean steer angle of the front wheels, rad
     */
    public record Point(double lateral, double steer) {
    }

    /**
     * The characteristic of a car.
     *
     * @param car the car
     * @param phase part of the corner
     * @param speed m/s, above 0
     * @param longitudinal longitudinal acceleration held meanwhile, m/s²
     */
    public static Characteristic of(CarModel car, CornerPhase phase, double speed, double longitudinal) {
        VehicleModel vehicle = car.vehicle(phase);
        CorneringLimit limit = HandlingModel.limit(vehicle, speed, longitudinal);
        List<Point> points = new ArrayList<>();
        for (int step = 0; step <= STEPS; step++) {
            double lateral = TO_THE_LIMIT * limit.lateral() * step / STEPS;
            if (HandlingModel.solveQuickly(vehicle, new OperatingPoint(speed, lateral, longitudinal))
                    instanceof Equilibrium held) {
                points.add(new Point(lateral, held.steer()));
            }
        }
        return new Characteristic(speed, vehicle.wheelbase(), limit, List.copyOf(points));
    }

    /** Steer of the turn alone, {@code L/R}: what a neutral car needs, rad. */
    public double turn(double lateral) {
        return wheelbase * lateral / (speed * speed);
    }
}
