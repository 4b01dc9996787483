package camberwell.physics;

/**
 * Toe between angle and length, and what it costs on the straight.
 *
 * <p>A toe length is the front-to-rear difference across a reference diameter, {@code d sin(toe)} for one wheel. The
 * formula {@code pi d / 360} per degree that is in circulation is the arc at the rim's radius and is half of it. A
 * length means nothing without its reference diameter: at the rim it is smaller than at the tyre.
 */
public final class Toe {

    private Toe() {
    }

    /**
     * Toe length of one wheel.
     *
     * @param degrees toe of the wheel, degrees, toe-in positive
     * @param diameter reference diameter, mm
     * @return front-to-rear difference of that wheel, mm
     */
    public static double millimetresFromDegrees(double degrees, double diameter) {
        return diameter(diameter) * Math.sin(Math.toRadians(degrees));
    }

    /**
     * Toe angle of one wheel.
     *
     * @param millimetres front-to-rear difference of that wheel, mm, toe-in positive
     * @param diameter reference diameter, mm
     * @return toe of the wheel, degrees
     */
    public static double degreesFromMillimetres(double millimetres, double diameter) {
        if (!(Math.abs(millimetres) <= diameter(diameter))) {
            throw new IllegalArgumentException("toe of " + millimetres + " mm does not fit on " + diameter + " mm");
        }
        return Math.toDegrees(Math.asin(millimetres / diameter));
    }

    /**
     * Total toe length of an axle: {@code d (sin left + sin right)}.
     *
     * @param leftDegrees toe of the left wheel, degrees
     * @param rightDegrees toe of the right wheel, degrees
     * @param diameter reference diameter, mm
     * @return total toe, mm
     */
    public static double totalMillimetres(double leftDegrees, double rightDegrees, double diameter) {
        return millimetresFromDegrees(leftDegrees, diameter) + millimetresFromDegrees(rightDegrees, diameter);
    }

    /**
     * Toe of each wheel of an axle whose total toe is shared equally.
     *
     * @param totalMillimetres total toe, mm
     * @param diameter reference diameter, mm
     * @return toe of one wheel, degrees
     */
    public static double degreesPerWheelFromTotal(double totalMillimetres, double diameter) {
        return degreesFromMillimetres(totalMillimetres / 2.0, diameter);
    }

    /**
     * Drag of one wheel that runs straight with toe: side force {@code C toe}, of which {@code sin(toe)} points
     * back. An estimate: it takes the toe for the slip angle, as J. Yurko does in EPA-AA-LDTP 78-12 (1978).
     *
     * @param corneringStiffness cornering stiffness of the tyre at its load, N/rad, not negative
     * @param toe toe of the wheel, rad
     * @return drag, N, never negative
     */
    public static double drag(double corneringStiffness, double toe) {
        return corneringStiffness * toe * Math.sin(toe);
    }

    /**
     * Power that the drag takes, all of which ends as heat in the tread.
     *
     * @param corneringStiffness cornering stiffness of the tyre at its load, N/rad
     * @param toe toe of the wheel, rad
     * @param speed speed, m/s
     * @return power, W
     */
    public static double dragPower(double corneringStiffness, double toe, double speed) {
        return drag(corneringStiffness, toe) * speed;
    }

    private static double diameter(double millimetres) {
        if (!(millimetres > 0.0)) {
            throw new IllegalArgumentException("reference diameter must be positive, is " + millimetres + " mm");
        }
        return millimetres;
    }
}
