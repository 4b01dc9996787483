package camberwell.debrief;

import java.util.Optional;

/**
 * What one question is about.
 *
 * @param complaint the index of the complaint that it is about; 0 where it is about none
 * @param own the question of a rule pack, for {@link Field#OWN}
 */
public record Topic(Field field, int complaint, Optional<PackQuestion> own) {

    /** A topic of camberwell's own. */
    public Topic(Field field, int complaint) {
        this(field, complaint, Optional.empty());
    }

    /** A topic that is not about one complaint. */
    public static Topic of(Field field) {
        return new Topic(field, 0);
    }

    /** The topic of a rule pack's question. */
    static Topic of(PackQuestion question) {
        return new Topic(Field.OWN, 0, Optional.of(question));
    }

    /** What a person names it by: {@code phase}, {@code kerb-height}. */
    public String name() {
        return own.map(PackQuestion::id).orElse(field.id());
    }
}
