package camberwell.run;

import camberwell.vocabulary.Level;
import camberwell.vocabulary.Wish;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

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

    /** The same with what {@code more} says; what is wanted adds up. */
    public Pupil with(Pupil more) {
        return new Pupil(more.name.or(() -> name), more.level.or(() -> level),
                Stream.concat(wants.stream(), more.wants.stream()).distinct().toList());
    }

    /** Copies the list. */
    public Pupil {
        wants = List.copyOf(wants);
    }
}
