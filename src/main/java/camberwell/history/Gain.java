package camberwell.history;

import camberwell.statistics.SampleSize;
import camberwell.vocabulary.Outcome;
import java.util.List;
import java.util.Optional;

/**
 * What a change that helps is expected to bring in lap time.
 *
 * @param seconds a lap, at least 0
 * @param changes of the book that it is the mean of; 0 where a person said so
 */
public record Gain(double seconds, int changes) {

    /** The laps out and in of two stints. */
    private static final int BESIDE = 4;

    /** As a person expects it. */
    public static Gain said(double seconds) {
        return new Gain(seconds, 0);
    }

    /** The mean gain of the changes of a book that were made alone, helped, and were timed; empty where there are none. */
    public static Optional<Gain> of(History history) {
        List<Double> gains = history.judgements(Optional.empty()).stream().filter(judgement ->
                        judgement.changes().size() == 1 && judgement.outcomes().stream()
                                .anyMatch(outcome -> outcome.outcome() == Outcome.BETTER))
                .flatMap(judgement -> judgement.laps().flatMap(LapComparison::difference).stream())
                .map(difference -> -difference.estimate()).toList();
        return gains.isEmpty() ? Optional.empty() : Optional.of(new Gain(Math.max(0,
                gains.stream().mapToDouble(Double::doubleValue).average().orElse(0)), gains.size()));
    }

    /** What a change is worth before it is tried: its chance of helping times the gain, in seconds a lap. */
    public double worth(double chance) {
        return chance * seconds;
    }

    /**
     * The least difference that {@code laps} can show if all of them go into one comparison, half before the change and
     * half after it; beyond any where they do not make two stints of {@link CountedLaps#FEWEST}.
     *
     * @param scatter of a lap, in seconds
     */
    public static double seen(int laps, double scatter) {
        int each = (laps - BESIDE) / 2;
        return each < CountedLaps.FEWEST ? Double.POSITIVE_INFINITY : scatter * SampleSize.seen(each, SampleSize.POWER);
    }
}
