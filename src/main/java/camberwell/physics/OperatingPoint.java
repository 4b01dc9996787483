package camberwell.physics;

/**
 * What the car is asked to do, held for as long as it takes to settle.
 *
 * @param speed speed, m/s, above 0
 * @param lateral lateral acceleration along the car's y axis, m/s², positive in a left turn
 * @param longitudinal longitudinal acceleration along the car's x axis, m/s², negative under braking
 */
public record OperatingPoint(double speed, double lateral, double longitudinal) {

    /** Refuses a car at rest and what is not a number. */
    public OperatingPoint {
        if (!(speed > 0.0 && Double.isFinite(speed + lateral + longitudinal))) {
            throw new IllegalArgumentException("an operating point needs a positive speed and finite accelerations");
        }
    }

    /** Radius of the turn, m, positive to the left; infinite straight ahead. */
    public double radius() {
        return speed * speed / lateral;
    }

    /** Yaw rate of the steady turn, rad/s. */
    public double yawRate() {
        return lateral / speed;
    }
}
