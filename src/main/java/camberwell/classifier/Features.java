package camberwell.classifier;

import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * What is compared of a text: its words, its pairs of neighbours, and whatever else is known of it. Each is known by a hash of
 * 32 bits (FNV-1a: Fowler, Noll and Vo, 1991); of fifty thousand, less than one falls on another.
 */
public final class Features {

    private static final int BASIS = 0x811c9dc5;
    private static final int PRIME = 0x01000193;
    /** How often what counts for more is there besides. */
    private static final int STRONG = 5;
    /** How many letters there are in a run. */
    private static final int FEWEST = 3;
    private static final int MOST = 4;

    private Features() {
    }

    /**
     * The features of a text.
     *
     * @param words in small letters, in order
     * @param others whatever else is known of the text; each is a feature by itself
     * @param strong what counts six times as much
     */
    public static int[] of(List<String> words, List<String> others, List<String> strong) {
        int[] hashes = new int[1 + 2 * words.size() + others.size() + strong.size()];
        int count = 0;
        hashes[count++] = hash(BASIS, "always");
        for (int at = 0; at < words.size(); at++) {
            hashes[count++] = ofWord(words.get(at));
            if (at > 0) {
                hashes[count++] = hash(hash(hash(hash(BASIS, "b"), words.get(at - 1)), " "), words.get(at));
            }
        }
        for (String other : others) {
            hashes[count++] = hash(hash(BASIS, "o"), other);
        }
        for (String other : strong) {
            hashes[count++] = hash(hash(BASIS, "o"), other);
        }
        int[] once = Arrays.stream(hashes, 0, count).sorted().distinct().toArray();
        int[] all = Arrays.copyOf(once, once.length + STRONG * strong.size());
        for (int i = 0; i < STRONG * strong.size(); i++) {
            all[once.length + i] = hash(hash(BASIS, "o"), strong.get(i / STRONG));
        }
        return all;
    }

    /**
     * The features of a text with those of the letters in its rarer words, three and four in a run: what is written otherwise,
     * or in another tongue, is met in parts. Each is there once.
     *
     * @param words in small letters, in order
     * @param others whatever else is known of the text
     * @param common whether a word is met so often that its letters tell no more than it does itself
     */
    public static int[] withLetters(List<String> words, List<String> others, Predicate<String> common) {
        IntStream.Builder all = IntStream.builder();
        for (int feature : of(words, others, List.of())) {
            all.add(feature);
        }
        for (String word : words) {
            if (!common.test(word)) {
                String whole = "<" + word + ">";
                for (int length = FEWEST; length <= MOST; length++) {
                    for (int at = 0; at + length <= whole.length(); at++) {
                        all.add(hash(hash(BASIS, "l"), whole.substring(at, at + length)));
                    }
                }
            }
        }
        return all.build().distinct().toArray();
    }

    /** The feature that a word is by itself. */
    public static int ofWord(String word) {
        return hash(hash(BASIS, "w"), word);
    }

    private static int hash(int begun, String text) {
        int hash = begun;
        for (int at = 0; at < text.length(); at++) {
            hash = (hash ^ text.charAt(at)) * PRIME;
        }
        return hash;
    }
}
