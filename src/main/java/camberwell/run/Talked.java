package camberwell.run;

import camberwell.saying.Heard;
import java.util.List;
import java.util.Optional;

/**
 * What was said of a run.
 *
 * @param heard what was understood of the driver's own words; the reports of the case have it already
 * @param answered what a debrief asked and need not ask again: the word of a question, after the number of a complaint
 */
public record Talked(Optional<Heard> heard, List<String> answered) {

    /** Nothing was said. */
    public static final Talked NOTHING = new Talked(Optional.empty(), List.of());

    /** Copies the list. */
    public Talked {
        answered = List.copyOf(answered);
    }
}
