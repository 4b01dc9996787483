package camberwell.physics;

/**
 * The car in equilibrium. Left and right are the car's own; forces, slip and steer are positive to the left.
 *
 * @param point the operating point
 * @param steer mean steer angle of the front road wheels, rad
 * @param sideslip sideslip angle at the centre of gravity, rad, positive when the car moves to the left of its nose
 * @param roll roll angle of the body, rad, positive to the right
 * @param slip slip angle of each wheel, its heading less its direction of travel, rad
 * @param camber camber of each wheel to the road, rad
 * @param load vertical load of each wheel, N
 * @param lateralForce lateral force of each wheel in its own axes, N
 * @param longitudinalForce drive (positive) or brake force of each wheel, N
 * @param utilisation part of each tyre's friction ellipse that is used, 0 to 1
 * @param frontUtilisation part of the front axle's lateral capacity that is used
 * @param rearUtilisation part of the rear axle's lateral capacity that is used
 * @param limitBalance which end gives up first, and by how much
 * @param understeerGradient change of steer beyond the turn's own with lateral acceleration, rad per m/s², at this
 *     speed; positive understeers
 * @param staticMargin distance of the neutral-steer point behind the centre of gravity over the wheelbase, from the
 *     tyres' slopes at this point; positive is stable
 * @param yawStiffness restoring yaw moment per sideslip at this point, N m/rad; positive is stable
 * @param scrubPower sliding power of each tyre, side force times lateral sliding speed, W
 * @param toeDrag drag of the static toe running straight at this speed, N
 */
public record Equilibrium(OperatingPoint point, double steer, double sideslip, double roll, Wheels slip, Wheels camber,
        Wheels load, Wheels lateralForce, Wheels longitudinalForce, Wheels utilisation, double frontUtilisation,
        double rearUtilisation, LimitBalance limitBalance, double understeerGradient, double staticMargin,
        double yawStiffness, Wheels scrubPower, double toeDrag) implements Solution {

    /** Understeer gradient in the trade's unit, degrees per g. */
    public double understeerGradientDegreesPerG() {
        return Math.toDegrees(understeerGradient * VehicleModel.GRAVITY);
    }

    /** Part of the lateral capacity that an axle has left, 0 to 1. */
    public double margin(AxleEnd end) {
        return 1.0 - (end == AxleEnd.FRONT ? frontUtilisation : rearUtilisation);
    }

    Equilibrium withUndersteerGradient(double gradient) {
        return new Equilibrium(point, steer, sideslip, roll, slip, camber, load, lateralForce, longitudinalForce,
                utilisation, frontUtilisation, rearUtilisation, limitBalance, gradient, staticMargin, yawStiffness,
                scrubPower, toeDrag);
    }
}
