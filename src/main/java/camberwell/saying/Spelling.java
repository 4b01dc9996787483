package camberwell.saying;

import camberwell.vocabulary.Nearest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Mends slips in whole words: one letter wrong, missing, too many or swapped with its neighbour, or two in a long word
 * (the restricted distance of Damerau, 1964). A word that is known stays as it is, and so does one that could as well be
 * another: nothing is guessed.
 */
final class Spelling {

    private static final int SHORTEST = 4;
    private static final int SHORT = 5;
    private static final int LONG = 9;
    /** More letters than any word has. */
    private static final int MOST = 64;
    /** How many words are remembered. */
    private static final int REMEMBERED = 20_000;

    private final Set<String> stems;
    private final Set<String> ordinary;
    private final Set<String> written;
    /** Each form of each word with its stem; put together at the first word that is not known. */
    private Map<String, String> forms;
    /** Words that are not known, with their stems as they were mended: they come again. */
    private final Map<String, String> mended = new ConcurrentHashMap<>();
    /** The forms that begin with a letter and are so long, as a slip leaves both nearly as they were. */
    private Map<Integer, List<Map.Entry<String, String>>> near;
    /** The stem of the words that sound so; empty where they have several. */
    private Map<String, String> sounds;

    /**
     * @param stems of every word that is known
     * @param ordinary words that are words, though nothing is made of them
     * @param written every word, as it is written
     */
    Spelling(Set<String> stems, Set<String> ordinary, Set<String> written) {
        this.stems = stems;
        this.ordinary = ordinary;
        this.written = written;
    }

    private synchronized Map<String, String> forms() {
        if (forms == null) {
            Map<String, String> all = new HashMap<>();
            ordinary.forEach(word -> all.put(word, word));
            for (String word : written) {
                String stem = Stem.of(word);
                if (stems.contains(stem)) {
                    for (String form : new String[] {word, word + "s", word + "es", stem + "ing", stem + "ed", word + "d"}) {
                        if (form.length() >= SHORTEST && (form.equals(word) || Stem.of(form).equals(stem))) {
                            all.put(form, stem);
                        }
                    }
                }
            }
            Map<String, String> alike = new HashMap<>();
            all.forEach((form, stem) -> alike.merge(sound(form), stem, (one, other) -> one.equals(other) ? one : ""));
            Map<Integer, List<Map.Entry<String, String>>> sorted = new HashMap<>();
            all.entrySet().forEach(form -> sorted
                    .computeIfAbsent(near(form.getKey().charAt(0), form.getKey().length()), it -> new ArrayList<>()).add(form));
            sounds = alike;
            near = sorted;
            forms = all;
        }
        return forms;
    }

    private static int near(char first, int length) {
        return first * MOST + length;
    }

    private boolean known(String word) {
        return stems.contains(word) || ordinary.contains(word);
    }

    /** The stem that was most likely meant; {@code stem} where it is known, or none is near, or two are. */
    String right(String typed, String stem) {
        if (typed.length() < SHORTEST || known(stem) || known(typed)) {
            return stem;
        }
        String before = mended.get(typed);
        if (before != null) {
            return before;
        }
        if (mended.size() >= REMEMBERED) {
            mended.clear();
        }
        String mend = mend(typed, stem);
        mended.put(typed, mend);
        return mend;
    }

    private String mend(String typed, String stem) {
        Map<String, String> forms = forms();
        String swapped = swapped(typed, forms);
        if (swapped != null) {
            return swapped;
        }
        String alike = sounds.getOrDefault(sound(typed), "");
        if (!alike.isEmpty()) {
            return alike;
        }
        int allowed = typed.length() >= LONG ? 2 : 1;
        String best = null;
        int least = allowed + 1;
        List<Map.Entry<String, String>> candidates = new ArrayList<>();
        for (int length = typed.length() - allowed; length <= typed.length() + allowed; length++) {
            candidates.addAll(near.getOrDefault(near(typed.charAt(0), length), List.of()));
        }
        for (Map.Entry<String, String> form : candidates) {
            String candidate = form.getKey();
            if (typed.length() <= SHORT && candidate.length() == typed.length() && !sorted(typed, candidate)) {
                // In a short word another letter is another word: "cords" is no slip.
                continue;
            }
            int distance = Nearest.distance(typed, candidate);
            if (typed.length() == SHORTEST && (distance != 1 || candidate.length() != SHORTEST)) {
                continue;
            }
            if (distance < least) {
                least = distance;
                best = form.getValue();
            } else if (distance == least && best != null && !best.equals(form.getValue())) {
                best = "";
            }
        }
        return best == null || best.isEmpty() ? stem : best;
    }

    /** The stem of the one word of which two neighbouring letters are swapped; null where there is none, or more than one. */
    private String swapped(String typed, Map<String, String> forms) {
        String meant = null;
        for (int at = 1; at + 1 < typed.length(); at++) {
            String swap = typed.substring(0, at) + typed.charAt(at + 1) + typed.charAt(at) + typed.substring(at + 2);
            String stem = ordinary.contains(swap) ? null : forms.get(swap);
            if (stem != null && meant != null && !meant.equals(stem)) {
                return null;
            }
            meant = stem == null ? meant : stem;
        }
        return meant;
    }

    /** The word as it sounds: "entri" is "entry", "realy" "really". */
    private static String sound(String word) {
        StringBuilder sound = new StringBuilder(word.length());
        for (int at = 0; at < word.length(); at++) {
            char letter = word.charAt(at) == 'y' ? 'i' : word.charAt(at);
            boolean silent = letter == 'c' && at + 1 < word.length() && word.charAt(at + 1) == 'k';
            if (!silent && (sound.length() == 0 || sound.charAt(sound.length() - 1) != letter)) {
                sound.append(letter);
            }
        }
        return sound.toString();
    }

    /** Whether two words have the same letters: in a short word only a swap is a slip. */
    private static boolean sorted(String one, String other) {
        return one.chars().sorted().boxed().toList().equals(other.chars().sorted().boxed().toList());
    }
}
