package camberwell.physics;

/**
 * What the body's roll does to the camber between wheel and road.
 *
 * <p>The body leans out of the turn and takes its wheels along; the suspension gives back a part of it, the camber
 * gain. What is left, {@code (1 - gain) roll}, stands the outer wheel's top out and the inner wheel's top in. Hence
 * static negative camber: it stands the loaded outer tyre upright, and the inner one pays. First-order geometry; see
 * J. C. Dixon, Suspension Geometry and Computation, Wiley, 2009 (from memory).
 */
public final class RollCamber {

    private RollCamber() {
    }

    /**
     * Camber of the loaded, outer wheel to the road.
     *
     * @param staticCamber static camber, rad
     * @param roll roll angle of the body, rad, not negative
     * @param gain camber gain in roll: the part of the roll that the suspension takes back, 0 (the wheel leans with
     *     the body) to 1 (it stays upright)
     * @return camber to the road, rad
     */
    public static double outer(double staticCamber, double roll, double gain) {
        return staticCamber + (1.0 - gain) * roll;
    }

    /**
     * Camber of the unloaded, inner wheel to the road.
     *
     * @param staticCamber static camber, rad
     * @param roll roll angle of the body, rad, not negative
     * @param gain camber gain in roll
     * @return camber to the road, rad
     */
    public static double inner(double staticCamber, double roll, double gain) {
        return staticCamber - (1.0 - gain) * roll;
    }

    /**
     * Camber gain in roll from the camber change with wheel travel: in roll each wheel travels half a track per
     * radian.
     *
     * @param camberPerTravel camber change per metre of bump, rad/m; negative on a usual suspension
     * @param track track width, m
     * @return camber gain in roll
     */
    public static double gainFromTravel(double camberPerTravel, double track) {
        return -camberPerTravel * track / 2.0;
    }
}
