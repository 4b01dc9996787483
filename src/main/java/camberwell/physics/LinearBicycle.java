package camberwell.physics;

import java.util.OptionalDouble;

/**
 * The bicycle model at small angles: understeer gradient, the two speeds that go with its sign, and the gains.
 *
 * <p>Formulas as in T. D. Gillespie, Fundamentals of Vehicle Dynamics, SAE, 1992, ch. 6, and J. Y. Wong, Theory of
 * Ground Vehicles, Wiley, ch. 5. Texts differ in units: here the understeer gradient is in rad per m/s², and
 * stiffness is that of an axle, both tyres together.
 *
 * @param mass mass, kg
 * @param cgToFront distance from the centre of gravity to the front axle, m
 * @param cgToRear distance from the centre of gravity to the rear axle, m
 * @param frontStiffness cornering stiffness of the front axle, N/rad
 * @param rearStiffness cornering stiffness of the rear axle, N/rad
 */
public record LinearBicycle(double mass, double cgToFront, double cgToRear, double frontStiffness,
        double rearStiffness) {

    /** Standard gravity to the precision that the textbooks use, m/s². */
    public static final double GRAVITY = 9.81;

    /** What a driver would call the car. */
    public enum Balance { UNDERSTEER, NEUTRAL, OVERSTEER }

    /** Refuses a car that is no car. */
    public LinearBicycle {
        if (!(mass > 0.0 && cgToFront > 0.0 && cgToRear > 0.0 && frontStiffness > 0.0 && rearStiffness > 0.0)) {
            throw new IllegalArgumentException("mass, distances and stiffnesses must be positive");
        }
    }

    /** Wheelbase, m. */
    public double wheelbase() {
        return cgToFront + cgToRear;
    }

    /** Understeer gradient, rad per m/s²; positive is understeer. */
    public double understeerGradient() {
        return mass / wheelbase() * (cgToRear / frontStiffness - cgToFront / rearStiffness);
    }

    /** Understeer gradient, degrees per g. */
    public double understeerGradientDegreesPerG() {
        return Math.toDegrees(understeerGradient() * GRAVITY);
    }

    /** Speed at which an understeering car answers the wheel most, m/s; empty if it does not understeer. */
    public OptionalDouble characteristicSpeed() {
        double gradient = understeerGradient();
        return gradient > 0.0 ? OptionalDouble.of(Math.sqrt(wheelbase() / gradient)) : OptionalDouble.empty();
    }

    /** Speed from which an oversteering car is unstable, m/s; empty if it does not oversteer. */
    public OptionalDouble criticalSpeed() {
        double gradient = understeerGradient();
        return gradient < 0.0 ? OptionalDouble.of(Math.sqrt(wheelbase() / -gradient)) : OptionalDouble.empty();
    }

    /**
     * Yaw rate per steer angle of the road wheels.
     *
     * @param speed speed, m/s; below the critical speed
     * @return 1/s
     */
    public double yawRateGain(double speed) {
        return speed / (wheelbase() + understeerGradient() * speed * speed);
    }

    /**
     * Lateral acceleration per steer angle of the road wheels.
     *
     * @param speed speed, m/s; below the critical speed
     * @return m/s² per rad
     */
    public double lateralAccelerationGain(double speed) {
        return yawRateGain(speed) * speed;
    }

    /**
     * Steer angle of the road wheels for a steady turn.
     *
     * @param radius radius, m
     * @param speed speed, m/s
     * @return rad
     */
    public double steer(double radius, double speed) {
        return (wheelbase() + understeerGradient() * speed * speed) / radius;
    }

    /**
     * Sideslip angle at the centre of gravity in a steady turn, positive when the car points out of the turn.
     *
     * @param radius radius, m
     * @param speed speed, m/s
     * @return rad
     */
    public double sideslip(double radius, double speed) {
        double rearSlip = mass * cgToFront / wheelbase() * speed * speed / radius / rearStiffness;
        return cgToRear / radius - rearSlip;
    }

    /** Distance of the neutral-steer point behind the centre of gravity over the wheelbase; positive understeers. */
    public double staticMargin() {
        return (rearStiffness * cgToRear - frontStiffness * cgToFront)
                / (wheelbase() * (frontStiffness + rearStiffness));
    }

    /**
     * What to call the car. A gradient is a small difference of two large numbers, so its sign alone says nothing.
     *
     * @param deadBand magnitude of the understeer gradient below which the car is neutral, rad per m/s²
     * @return the balance
     */
    public Balance balance(double deadBand) {
        double gradient = understeerGradient();
        if (Math.abs(gradient) <= deadBand) {
            return Balance.NEUTRAL;
        }
        return gradient > 0.0 ? Balance.UNDERSTEER : Balance.OVERSTEER;
    }
}
