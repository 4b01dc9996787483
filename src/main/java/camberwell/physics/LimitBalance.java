package camberwell.physics;

/**
 * Which end gives up first: the lateral acceleration that each axle could hold with its present wheel loads and
 * longitudinal forces. Near the limit this is what the driver feels.
 *
 * @param front lateral acceleration at which the front axle runs out, m/s², not negative
 * @param rear lateral acceleration at which the rear axle runs out, m/s², not negative
 */
public record LimitBalance(double front, double rear) {

    /** Rear less front over their mean, dimensionless; positive when the front gives up first (understeer). */
    public double value() {
        double sum = front + rear;
        return sum > 0.0 ? 2.0 * (rear - front) / sum : 0.0;
    }

    /** The axle that gives up first. */
    public AxleEnd first() {
        return front <= rear ? AxleEnd.FRONT : AxleEnd.REAR;
    }
}
