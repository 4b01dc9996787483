package camberwell.run;

import camberwell.vocabulary.Level;
import camberwell.vocabulary.Wish;
import java.util.List;
import java.util.Optional;

/**
 * Who drove.
 *
 * @param name as the coach calls them
 * @param level how much they have driven
 * @param wants what they want of the car
 */
public record Pupil(Optional<String> name, Optional<Level> level, List<Wish> wants) {

    /** Nobody said. */
    public static final Pupil UNKNOWN = new Pupil(Optional.empty(), Optional.empty(), List.of());

    /** Copies the list. */
    public Pupil {
        wants = List.copyOf(wants);
    }
}
