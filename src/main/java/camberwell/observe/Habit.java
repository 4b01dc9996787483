package camberwell.observe;

import camberwell.run.Measured;
import java.util.List;

/**
 * Something that the driver does, as the log shows it.
 *
 * @param note the name of the knowledge note that tells of it
 * @param certainty 0 to 1
 * @param text what was seen, in one line
 * @param evidence where
 */
public record Habit(String note, double certainty, String text, List<Measured.Place> evidence) {

    /** Copies the list. */
    public Habit {
        evidence = List.copyOf(evidence);
    }
}
