package camberwell.physics;

/** Corners by speed; the typical speeds are common practice, no source. */
public enum CornerSpeed {
    /** A hairpin, 60 km/h. */
    SLOW(60.0),
    /** A third-gear corner, 110 km/h. */
    MEDIUM(110.0),
    /** A fast sweep, 170 km/h. */
    FAST(170.0);

    private final double metresPerSecond;

    CornerSpeed(double kilometresPerHour) {
        metresPerSecond = kilometresPerHour / 3.6;
    }

    /** Typical speed, m/s. */
    public double metresPerSecond() {
        return metresPerSecond;
    }
}
