package camberwell.debrief;

import camberwell.run.Case;
import camberwell.run.Made;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;

/**
 * The run that a debrief goes on from.
 *
 * @param last the run before, as the book has it
 * @param number that this run will have
 * @param begun this run before anything is said of it: the car, the day and the complaints of the run before
 * @param informed a case with what came of all earlier changes
 * @param changed what was changed on the car of a case, read from words; a problem where the car cannot be set so
 */
public record Earlier(Case last, int number, Case begun, UnaryOperator<Case> informed,
        BiFunction<Case, String, Changed> changed) {

    /**
     * What was changed.
     *
     * @param settings where the adjusters stand now
     * @param made what leads there
     */
    public record Changed(Map<Adjuster, Quantity> settings, List<Made> made) {

        /** Copies both. */
        public Changed {
            settings = Map.copyOf(settings);
            made = List.copyOf(made);
        }
    }

    /** The run before, in two words: {@code run 6}. */
    String name() {
        return last.driven().sheet().number().map(before -> "run " + before).orElse("the run before");
    }
}
