package camberwell.fact;

import java.util.List;
import java.util.Optional;

/**
 * A kind of premise, and what can be asked of it.
 *
 * @param name as the dictionary writes it: the simple name of the premise's class
 * @param single whether there is one and no more, so that all conditions about it meet on the same one; of the others
 *     the first attribute tells which is meant
 * @param attributes what it can be asked
 */
public record Kind(String name, boolean single, List<Attribute> attributes) {

    /** Every kind. */
    public static List<Kind> all() {
        return List.of(Reported.KIND, Reading.KIND, Setup.KIND, Day.KIND, Finding.KIND);
    }

    /** The kind of that name, if there is one. */
    public static Optional<Kind> named(String name) {
        return all().stream().filter(kind -> kind.name.equals(name)).findFirst();
    }

    /** What it can be asked under that name, if there is anything. */
    public Optional<Attribute> attribute(String name) {
        for (Attribute attribute : attributes) {
            if (attribute.name().equals(name)) {
                return Optional.of(attribute);
            }
        }
        return Optional.empty();
    }
}
