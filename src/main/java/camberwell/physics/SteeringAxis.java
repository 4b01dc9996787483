package camberwell.physics;

/**
 * The axis about which a front wheel steers, and the camber that steering brings.
 *
 * <p>The wheel's spindle keeps a constant angle to the steering axis. With caster {@code t}, kingpin inclination
 * {@code s}, static camber {@code g0} and steer {@code d} that gives, exactly,
 * {@code tan t sin d cos g - tan s cos d cos g - sin g = -tan s cos g0 - sin g0}; see D. B. January, SAE 850219
 * (1985), for the geometry. Positive caster leans both front wheels into the turn.
 *
 * @param caster caster angle, rad, magnitude below 0.6
 * @param kingpinInclination steering-axis (kingpin) inclination, rad, magnitude below 0.6
 */
public record SteeringAxis(double caster, double kingpinInclination) {

    private static final double LARGEST = 0.6;

    /** Refuses angles that no steering axis has. */
    public SteeringAxis {
        if (!(Math.abs(caster) < LARGEST && Math.abs(kingpinInclination) < LARGEST)) {
            throw new IllegalArgumentException("caster " + caster + " rad and kingpin inclination "
                    + kingpinInclination + " rad must both be below " + LARGEST + " rad");
        }
    }

    /**
     * Camber of the steered wheel, exactly.
     *
     * @param staticCamber camber straight ahead, rad
     * @param steer steer of the wheel towards its own side, rad: positive for the inner wheel of a turn (left wheel,
     *     left turn), negative for the outer one; magnitude below 1.2
     * @return camber to the body's vertical, rad
     */
    public double camber(double staticCamber, double steer) {
        double lean = Math.tan(kingpinInclination);
        // p cos g - sin g = q has, with r = hypot(p, 1), the solution g = acos(q / r) - atan2(1, p).
        double p = Math.tan(caster) * Math.sin(steer) - lean * Math.cos(steer);
        double q = -lean * Math.cos(staticCamber) - Math.sin(staticCamber);
        double cosine = q / Math.hypot(p, 1.0);
        if (!(Math.abs(cosine) <= 1.0)) {
            throw new IllegalArgumentException("no wheel can be steered to " + steer + " rad about " + this);
        }
        return Math.acos(cosine) - Math.atan2(1.0, p);
    }

    /**
     * Camber of the steered wheel, by the handbooks' small-angle form
     * {@code g0 + s (1 - cos d) + t sin d}; within 0.015° of {@link #camber} up to 20° of steer on usual geometry.
     *
     * @param staticCamber camber straight ahead, rad
     * @param steer steer of the wheel towards its own side, rad
     * @return camber to the body's vertical, rad
     */
    public double camberSmallAngle(double staticCamber, double steer) {
        return staticCamber + kingpinInclination * (1.0 - Math.cos(steer)) + caster * Math.sin(steer);
    }

    /**
     * Caster from a measured sweep: camber read with the wheel turned as far in as out, sine form. The workshop rule
     * of one and a half times the difference at 20° reads 2.6 % high.
     *
     * @param camberTurnedIn camber with the wheel steered towards its own side, rad
     * @param camberTurnedOut camber with the wheel steered the other way, rad
     * @param steer steer to either side, rad, above 0
     * @return caster, rad
     */
    public static double casterFromSweep(double camberTurnedIn, double camberTurnedOut, double steer) {
        if (!(steer > 0.0 && steer < Math.PI / 2.0)) {
            throw new IllegalArgumentException("steer of the sweep must be between 0 and a right angle, is " + steer);
        }
        return (camberTurnedIn - camberTurnedOut) / (2.0 * Math.sin(steer));
    }
}
