package camberwell.physics.motion;

/**
 * The way that a tyre rolls until its force has followed a new slip to 63 % (H. B. Pacejka, Tire and Vehicle
 * Dynamics, transient tyre).
 *
 * @param across for the slip angle, m; 0 answers at once
 * @param along for longitudinal slip, m; 0 answers at once
 */
public record Relaxation(double across, double along) {

    /** A tyre that answers at once. */
    public static final Relaxation NONE = new Relaxation(0.0, 0.0);
    /** Of a car tyre: about a wheel's radius and a half across, less along (common practice, no source). */
    public static final Relaxation USUAL = new Relaxation(0.5, 0.25);

    /** Refuses negative lengths. */
    public Relaxation {
        if (!(across >= 0.0 && along >= 0.0 && Double.isFinite(across + along))) {
            throw new IllegalArgumentException("relaxation lengths must be finite and not negative");
        }
    }
}
