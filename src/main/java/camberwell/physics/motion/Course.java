package camberwell.physics.motion;

/**
 * A course on a flat road: its curvature over the way along it, in straight pieces. A piece of growing curvature is a
 * clothoid.
 */
public final class Course {

    /** Straight on for ever. */
    public static final Course STRAIGHT = new Course(new double[] {0.0}, new double[] {0.0});

    private final double[] way;
    private final double[] curvature;

    /**
     * @param way where pieces begin, m, rising
     * @param curvature curvature there, 1/m, positive to the left; before the first and beyond the last it stays
     */
    public Course(double[] way, double[] curvature) {
        if (way.length != curvature.length || way.length == 0) {
            throw new IllegalArgumentException("a course has as many curvatures as places, and at least one");
        }
        for (int i = 1; i < way.length; i++) {
            if (!(way[i] > way[i - 1])) {
                throw new IllegalArgumentException("the places of a course must rise");
            }
        }
        this.way = way.clone();
        this.curvature = curvature.clone();
    }

    /** Curvature at a distance, 1/m. */
    double curvature(double distance) {
        int next = 0;
        while (next < way.length && distance >= way[next]) {
            next++;
        }
        if (next == 0) {
            return curvature[0];
        }
        if (next == way.length) {
            return curvature[next - 1];
        }
        double part = (distance - way[next - 1]) / (way[next] - way[next - 1]);
        return curvature[next - 1] + part * (curvature[next] - curvature[next - 1]);
    }

    /** Where the pieces end, m. */
    double length() {
        return way[way.length - 1];
    }
}
