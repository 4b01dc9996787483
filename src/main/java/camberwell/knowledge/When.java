package camberwell.knowledge;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * When a part of a note holds. What it does not name is open; of the words that it names for one matter any will do; all
 * matters that it names have to be met, those of a complaint by one and the same complaint. What is not known of a case
 * meets nothing.
 *
 * @param words for each matter that is named, in the order of {@link Matter}
 */
public record When(Map<Matter, List<String>> words) {

    /** Holds always. */
    public static final When ALWAYS = new When(new EnumMap<>(Matter.class));

    /** Copies the map in the order of the matters. */
    public When {
        EnumMap<Matter, List<String>> copy = new EnumMap<>(Matter.class);
        copy.putAll(words);
        words = Collections.unmodifiableMap(copy);
    }

    /** Whether nothing is named. */
    public boolean always() {
        return words.isEmpty();
    }

    /** The words that are named for {@code matter}; empty when it is open. */
    public List<String> of(Matter matter) {
        return words.getOrDefault(matter, List.of());
    }

    /** Whether it holds in {@code circumstances}. */
    public boolean holds(Circumstances circumstances) {
        boolean complaint = false;
        for (Map.Entry<Matter, List<String>> entry : words.entrySet()) {
            if (entry.getKey().ofComplaint()) {
                complaint = true;
            } else if (!met(entry.getKey(), entry.getValue(), circumstances)) {
                return false;
            }
        }
        return !complaint || complained(circumstances);
    }

    private static boolean met(Matter matter, List<String> words, Circumstances circumstances) {
        boolean without = matter == Matter.NO_FINDING || matter == Matter.NO_CAUTION;
        Set<String> known = circumstances.known(matter == Matter.NO_FINDING ? Matter.FINDING : matter);
        for (String word : words) {
            if (known.contains(word)) {
                return !without;
            }
        }
        return without;
    }

    private boolean complained(Circumstances circumstances) {
        for (Map<Matter, Set<String>> complaint : circumstances.complaints()) {
            boolean all = true;
            for (Map.Entry<Matter, List<String>> entry : words.entrySet()) {
                all &= !entry.getKey().ofComplaint() || met(entry.getValue(), complaint.get(entry.getKey()));
            }
            if (all) {
                return true;
            }
        }
        return false;
    }

    private static boolean met(List<String> words, Set<String> said) {
        for (String word : words) {
            if (said != null && said.contains(word)) {
                return true;
            }
        }
        return false;
    }

    /** As it is written: {@code drive: front or all, phase: exit}. */
    public String text() {
        StringBuilder text = new StringBuilder();
        words.forEach((matter, said) -> text.append(text.isEmpty() ? "" : ", ").append(matter.id()).append(": ")
                .append(String.join(" or ", said)));
        return text.toString();
    }
}
