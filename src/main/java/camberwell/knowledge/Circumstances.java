package camberwell.knowledge;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What a case says on the matters that notes ask about.
 *
 * @param known of the case as a whole; a matter that nobody knows is left out
 * @param complaints of each complaint in hand what was said of it
 */
public record Circumstances(Map<Matter, Set<String>> known, List<Map<Matter, Set<String>>> complaints) {

    /** Of which nothing is known. */
    public static final Circumstances UNKNOWN = new Circumstances(Map.of(), List.of());

    /** What is known of {@code matter}; empty when nothing is. */
    public Set<String> known(Matter matter) {
        Set<String> words = known.get(matter);
        return words == null ? Set.of() : words;
    }

    /** The same case with {@code words} known of {@code matter}. */
    public Circumstances with(Matter matter, Set<String> words) {
        EnumMap<Matter, Set<String>> all = new EnumMap<>(Matter.class);
        all.putAll(known);
        all.put(matter, words);
        return new Circumstances(all, complaints);
    }

    /** The same case with those complaints in hand. */
    public Circumstances with(List<Map<Matter, Set<String>>> inHand) {
        return new Circumstances(known, inHand);
    }
}
