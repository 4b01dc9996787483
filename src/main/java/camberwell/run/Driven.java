package camberwell.run;

import camberwell.vocabulary.Outcome;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;

/**
 * A run as the book of runs keeps it.
 *
 * @param sheet which run it was
 * @param changed what was changed since the run before
 * @param laps in the order they were driven
 * @param verdict the driver's own, of the whole
 * @param judged what came of the changes, where a person said so
 */
public record Driven(Sheet sheet, List<Made> changed, List<Lap> laps, Optional<Outcome> verdict,
        List<Tried> judged) {

    /** Nothing is known of it. */
    public static final Driven UNKNOWN = new Driven(Sheet.UNKNOWN, List.of(), List.of(), Optional.empty(), List.of());

    /**
     * Which run it was.
     *
     * @param number in the book, from 1
     * @param date when it began
     * @param driver who drove
     * @param track where
     * @param tyreSet which tyres were on the car
     * @param rebuilt whether the car was rebuilt before it, so that what was learned earlier holds no longer
     */
    public record Sheet(Optional<Integer> number, Optional<LocalDateTime> date, Optional<String> driver,
            Optional<String> track, Optional<String> tyreSet, boolean rebuilt) {

        /** Nothing is known of it. */
        public static final Sheet UNKNOWN = new Sheet(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), false);

        /** The same run, begun then where nothing is known of that. */
        public Sheet begun(LocalDateTime then) {
            return new Sheet(number, date.or(() -> Optional.of(then)), driver, track, tyreSet, rebuilt);
        }

        /** The same run under another number. */
        public Sheet numbered(int other) {
            return new Sheet(Optional.of(other), date, driver, track, tyreSet, rebuilt);
        }
    }

    /** Copies the lists. */
    public Driven {
        changed = List.copyOf(changed);
        laps = List.copyOf(laps);
        judged = List.copyOf(judged);
    }

    /** The same run on another sheet. */
    public Driven on(Sheet other) {
        return new Driven(other, changed, laps, verdict, judged);
    }

    /** The same run, otherwise judged. */
    public Driven withJudged(List<Tried> others) {
        return new Driven(sheet, changed, laps, verdict, others);
    }
}
