package camberwell.physics.motion;

/**
 * A limited-slip differential. The torque that it moves from the faster to the slower side is half the locking torque
 * at most: {@code preload + power T} on the drive, {@code preload + coast |T|} on the overrun (M. Gadola and
 * D. Chindamo, The Mechanical Limited-Slip Differential Revisited, SAE, 2018, abstract alone).
 *
 * @param preload locking torque with no torque through it, N m, not negative; a torque difference between its sides
 * @param power part of the driving torque that it adds, 0 to 1
 * @param coast part of the braking torque of the engine that it adds, 0 to 1
 */
public record Differential(double preload, double power, double coast) {

    /** No lock at all. */
    public static final Differential OPEN = new Differential(0.0, 0.0, 0.0);

    /** Refuses what no differential does. */
    public Differential {
        if (!(preload >= 0.0 && power >= 0.0 && power <= 1.0 && coast >= 0.0 && coast <= 1.0
                && Double.isFinite(preload))) {
            throw new IllegalArgumentException("preload must be finite and not negative, ramps from 0 to 1");
        }
    }

    /**
     * The torque difference between its sides that it can hold.
     *
     * @param torque torque through it, N m, negative on the overrun
     * @return N m, not negative
     */
    public double locking(double torque) {
        return preload + (torque > 0.0 ? power * torque : -coast * torque);
    }

    /**
     * Torque that it takes from the second side and gives to the first.
     *
     * @param torque torque through it, N m
     * @param faster speed of the second side less that of the first, rad/s
     * @param setsIn speed difference over which the lock sets in, rad/s, above 0
     * @return N m
     */
    double shift(double torque, double faster, double setsIn) {
        double part = faster / setsIn;
        double square = part * part;
        return 0.5 * locking(torque) * part / Math.sqrt(Math.sqrt(1.0 + square * square));
    }
}
