package camberwell.fact;

/**
 * From what on the words of rules hold. The built-in ones are shown in {@code rules/thresholds.yaml}, which the check of the
 * rules holds against these: a start has no time to read what nobody changed.
 *
 * @param coldTrack °C; below it a track warms no tyre
 * @param hotTrack °C; above it a track cools no tyre
 * @param longRun laps; more is a long run
 * @param oldTyres laps that tyres had done before the run; more is old
 */
public record Thresholds(double coldTrack, double hotTrack, int longRun, int oldTyres) {

    /** Camberwell's own: common practice, no source. */
    public static final Thresholds BUILT_IN = new Thresholds(15, 38, 15, 40);
}
