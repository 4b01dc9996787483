package camberwell.physics;

/**
 * One number for each wheel; the unit is that of the quantity it stands for.
 *
 * @param frontLeft front left
 * @param frontRight front right
 * @param rearLeft rear left
 * @param rearRight rear right
 */
public record Wheels(double frontLeft, double frontRight, double rearLeft, double rearRight) {

    /** All four together. */
    public double sum() {
        return frontLeft + frontRight + rearLeft + rearRight;
    }

    /** Both wheels of one axle together. */
    public double sum(AxleEnd end) {
        return end == AxleEnd.FRONT ? frontLeft + frontRight : rearLeft + rearRight;
    }
}
