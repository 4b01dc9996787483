package camberwell.report;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * What the authors of rule folders say where a rule of theirs decided; of the built-in rules the notes speak.
 *
 * @param words by the name of the rule, its reason and whose it is
 */
public record Voices(Map<String, String> words) {

    /** Nobody's. */
    public static final Voices NONE = new Voices(Map.of());

    /** The words of those of {@code rules} that have an author, in their order. */
    List<String> of(Collection<String> rules) {
        return words.isEmpty() ? List.of() : rules.stream().filter(words::containsKey).map(words::get).toList();
    }
}
