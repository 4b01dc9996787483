package camberwell.physics.motion;

/**
 * The speed at which a course is driven, on an even grid along it: as quick as the grip asked for allows, braking into
 * the corner and accelerating out of it with what the cornering leaves of the friction ellipse.
 */
public final class Pace {

    private static final double GRID = 0.5;

    private final double[] speed;

    private Pace(double[] speed) {
        this.speed = speed;
    }

    /**
     * What a driver asks of the tyres.
     *
     * @param lateral in the corner, m/s², above 0
     * @param braking in a straight line, m/s², above 0
     * @param power in a straight line, m/s², above 0
     * @param enginePower power over mass, W/kg, above 0
     */
    public record Demand(double lateral, double braking, double power, double enginePower) {

        /** Refuses to ask for nothing. */
        public Demand {
            if (!(lateral > 0.0 && braking > 0.0 && power > 0.0 && enginePower > 0.0)) {
                throw new IllegalArgumentException("a driver asks for something");
            }
        }
    }

    /** One speed all the way, m/s. */
    public static Pace steady(double speed) {
        return new Pace(new double[] {speed, speed});
    }

    /**
     * The pace for a course.
     *
     * @param course the course
     * @param demand what is asked of the tyres
     * @param most the most, m/s, with which it begins
     * @param beyond how far it goes on beyond the end of the course, m
     */
    public static Pace of(Course course, Demand demand, double most, double beyond) {
        int count = (int) Math.ceil((course.length() + beyond) / GRID) + 2;
        double[] speed = new double[count];
        for (int i = 0; i < count; i++) {
            double curvature = Math.abs(course.curvature(i * GRID));
            speed[i] = Math.min(most, curvature > 0.0 ? Math.sqrt(demand.lateral() / curvature) : most);
        }
        for (int i = count - 2; i >= 0; i--) {
            double left = left(course, demand, i, speed[i + 1]);
            speed[i] = Math.min(speed[i], Math.sqrt(speed[i + 1] * speed[i + 1]
                    + 2.0 * GRID * demand.braking() * left));
        }
        for (int i = 1; i < count; i++) {
            double from = speed[i - 1];
            double gained = Math.min(demand.power() * left(course, demand, i, from), demand.enginePower() / from);
            speed[i] = Math.min(speed[i], Math.sqrt(from * from + 2.0 * GRID * gained));
        }
        return new Pace(speed);
    }

    /** Part of the longitudinal grip that the cornering leaves. */
    private static double left(Course course, Demand demand, int place, double speed) {
        double used = speed * speed * course.curvature(place * GRID) / demand.lateral();
        return Math.sqrt(Math.max(0.0, 1.0 - used * used));
    }

    /** Speed at a distance, m/s. */
    double speed(double distance) {
        double place = Math.max(0.0, Math.min(speed.length - 1.001, distance / GRID));
        int i = (int) place;
        return speed[i] + (place - i) * (speed[i + 1] - speed[i]);
    }

    /** Acceleration along the course at a distance, m/s². */
    double acceleration(double distance) {
        double place = Math.max(0.0, Math.min(speed.length - 1.001, distance / GRID));
        int i = (int) place;
        return (speed[i + 1] * speed[i + 1] - speed[i] * speed[i]) / (2.0 * GRID);
    }
}
