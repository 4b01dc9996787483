package camberwell.debrief;

import java.util.Set;

/**
 * What was not said, and is taken for what is most likely.
 *
 * @param all what was said of nothing at all
 * @param otherwise what was said of some complaints, and is taken for the others
 */
public record Taken(Set<Field> all, Set<Field> otherwise) {

    /** Nothing is taken. */
    static final Taken NOTHING = new Taken(Set.of(), Set.of());

    /** Copies both. */
    public Taken {
        all = Set.copyOf(all);
        otherwise = Set.copyOf(otherwise);
    }
}
