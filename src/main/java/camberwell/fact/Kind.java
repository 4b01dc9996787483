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
 * @param figures what else it can be asked for, with a number: too much to list before anybody asks
 */
public record Kind(String name, boolean single, List<Attribute> attributes, Figures figures) {

    /** Finds a figure by its name. */
    public interface Figures {

        /** The attribute of that name; null where there is none. */
        Attribute find(String name);
    }

    /** One that has no more figures than are listed. */
    Kind(String name, boolean single, List<Attribute> attributes) {
        this(name, single, attributes, null);
    }

    /** Every kind. */
    public static List<Kind> all() {
        return List.of(Reported.KIND, Reading.KIND, Setup.KIND, Day.KIND, Outing.KIND, Finding.KIND);
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
        return figures == null ? Optional.empty() : Optional.ofNullable(figures.find(name));
    }
}
