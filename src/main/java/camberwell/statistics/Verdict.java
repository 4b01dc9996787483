package camberwell.statistics;

/** What an interval says of a difference in lap time. "Cannot tell" is not "no effect": that is a claim of its own. */
public enum Verdict {
    FASTER("faster"),
    PERHAPS_FASTER("faster, perhaps by little"),
    NO_DIFFERENCE("no difference worth having"),
    PERHAPS_SLOWER("slower, perhaps by little"),
    SLOWER("slower"),
    CANNOT_TELL("cannot tell");

    private static final double LEVEL = 0.95;
    /** Two one-sided tests at 0.05 (D. J. Schuirmann, J. Pharmacokin. Biopharm. 15, 1987). */
    private static final double EQUIVALENCE_LEVEL = 0.9;

    private final String told;

    Verdict(String told) {
        this.told = told;
    }

    /** In words. */
    public String told() {
        return told;
    }

    /**
     * The verdict on B less A.
     *
     * @param leastGain the least difference worth having, positive, in the unit of {@code difference}
     */
    public static Verdict of(Difference difference, double leastGain) {
        Interval interval = difference.interval(LEVEL);
        if (interval.high() < -leastGain) {
            return FASTER;
        }
        if (interval.low() > leastGain) {
            return SLOWER;
        }
        if (difference.interval(EQUIVALENCE_LEVEL).inside(leastGain)) {
            return NO_DIFFERENCE;
        }
        return interval.high() < 0 ? PERHAPS_FASTER : interval.low() > 0 ? PERHAPS_SLOWER : CANNOT_TELL;
    }
}
