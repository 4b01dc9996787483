package camberwell.knowledge;

import camberwell.vocabulary.Direction;
import java.util.Optional;

/**
 * Another wording of one text of a note, for when the case is of that kind.
 *
 * @param key of the text in the note's front matter: {@code rationale}
 * @param way the direction that it speaks of, where the text is a direction's
 * @param when it is shown
 * @param text the wording
 */
public record Variant(String key, Optional<Direction> way, When when, String text) {
}
