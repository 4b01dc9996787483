package camberwell.physics.motion;

/**
 * What resists being turned.
 *
 * @param yaw of the whole car about its vertical axis, kg m², above 0
 * @param roll of the body about its longitudinal axis, kg m², above 0
 * @param pitch of the body about its lateral axis, kg m², above 0
 * @param wheel of one wheel, with its share of the driveline, about its axle, kg m², above 0
 */
public record Inertia(double yaw, double roll, double pitch, double wheel) {

    /** Refuses what has no inertia. */
    public Inertia {
        if (!(yaw > 0.0 && roll > 0.0 && pitch > 0.0 && wheel > 0.0 && Double.isFinite(yaw + roll + pitch + wheel))) {
            throw new IllegalArgumentException("moments of inertia must be positive and finite");
        }
    }
}
