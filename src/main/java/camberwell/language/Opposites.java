package camberwell.language;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Words of which one in the place of the other turns a rule round. */
final class Opposites {

    private static final String[][] PAIRS = {{"above", "below"}, {"over", "below"}, {"over", "under"}, {"above", "under"},
        {"more", "less"}, {"hotter", "cooler"}, {"hotter", "colder"}, {"inner", "outer"}, {"longer", "shorter"},
        {"higher", "lower"}, {"softer", "stiffer"}, {"toe-in", "toe-out"}, {"toed-in", "toed-out"}, {"left", "right"},
        {"front", "rear"}, {"most", "least"}, {"hot", "cold"}, {"better", "worse"}, {"for", "against"}, {"by", "to"},
        {"high", "low"}, {"propose", "oppose"}, {"first", "last"}, {"in", "out"}, {"forward", "rearward"}, {"wants", "reports"}};
    private static final List<String> DENYING = List.of("un", "im", "in", "non", "non-", "dis", "mis");
    private static final Map<String, Set<String>> OF = new HashMap<>();

    static {
        for (String[] pair : PAIRS) {
            OF.merge(pair[0], Set.of(pair[1]), Opposites::both);
            OF.merge(pair[1], Set.of(pair[0]), Opposites::both);
        }
    }

    private Opposites() {
    }

    private static Set<String> both(Set<String> some, Set<String> others) {
        Set<String> all = new HashSet<>(some);
        all.addAll(others);
        return all;
    }

    /** Whether a sentence has the opposite of a word of a line, and the line has not. */
    static boolean turned(List<String> line, List<String> sentence) {
        for (String word : line) {
            for (String opposite : OF.getOrDefault(word, Set.of())) {
                if (sentence.contains(opposite) && !sentence.contains(word) && !line.contains(opposite)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether one word is the other with a syllable that denies it: {@code unlikely}. */
    static boolean denies(String word, String other) {
        return DENYING.stream().anyMatch(syllable -> word.equals(syllable + other) || other.equals(syllable + word));
    }

    /** A line about a number with the one word turned that says on which side of it; empty where it is not such a line. */
    static Optional<String> contrary(List<String> line) {
        List<String> turned = new ArrayList<>();
        int count = 0;
        for (String word : line) {
            boolean turns = Set.of("above", "below", "longer", "shorter").contains(word);
            count += turns ? 1 : 0;
            turned.add(turns ? OF.get(word).stream().filter(it -> !Set.of("under", "over").contains(it)).findFirst().orElse(word)
                    : word);
        }
        return count == 1 && line.stream().anyMatch(word -> Character.isDigit(word.charAt(0)))
                ? Optional.of(String.join(" ", turned)) : Optional.empty();
    }
}
