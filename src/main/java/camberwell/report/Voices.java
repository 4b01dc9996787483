package camberwell.report;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/**
 * What the authors of rule folders say where a rule of theirs decided; of the built-in rules the notes speak.
 *
 * @param words by the name of the rule, its reason and whose it is
 * @param packs by the name of the rule, the name and version of its pack
 */
public record Voices(Map<String, String> words, Map<String, String> packs) {

    /** Nobody's. */
    public static final Voices NONE = new Voices(Map.of(), Map.of());

    /** The packs of those of {@code rules} that stand in one, each once. */
    public List<String> packs(Collection<String> rules) {
        return packs.isEmpty() ? List.of() : rules.stream().filter(packs::containsKey).map(packs::get).distinct().toList();
    }

    /** The words of those of {@code rules} that have an author, in their order, the same words once. */
    public List<String> of(Collection<String> rules) {
        return words.isEmpty() ? List.of() : rules.stream().filter(words::containsKey).map(words::get).distinct().toList();
    }
}
