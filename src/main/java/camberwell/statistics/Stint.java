package camberwell.statistics;

/**
 * The laps of one stint that count.
 *
 * @param lap each one's number in the stint
 * @param seconds its time
 */
public record Stint(double[] lap, double[] seconds) {

    /** @throws IllegalArgumentException if the two differ in length */
    public Stint {
        if (lap.length != seconds.length) {
            throw new IllegalArgumentException(lap.length + " laps, " + seconds.length + " times");
        }
    }

    /** How many laps. */
    public int count() {
        return lap.length;
    }
}
