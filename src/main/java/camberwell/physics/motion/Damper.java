package camberwell.physics.motion;

/**
 * A damper, its rates seen at the wheel; see J. C. Dixon, The Shock Absorber Handbook, Wiley, 2nd ed. 2007 (from
 * memory).
 *
 * @param bump force over velocity while the wheel moves up towards the body, N s/m, not negative
 * @param rebound force over velocity while it moves away, N s/m, not negative
 */
public record Damper(double bump, double rebound) {

    /** Refuses rates that push. */
    public Damper {
        if (!(bump >= 0.0 && rebound >= 0.0 && Double.isFinite(bump + rebound))) {
            throw new IllegalArgumentException("damper rates must be finite and not negative");
        }
    }

    /** The same damper with its bump rate times a factor. */
    public Damper withBump(double factor) {
        return new Damper(factor * bump, rebound);
    }

    /** The same damper with its rebound rate times a factor. */
    public Damper withRebound(double factor) {
        return new Damper(bump, factor * rebound);
    }
}
