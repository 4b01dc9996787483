package camberwell.classifier;

import java.util.Arrays;

/** How many examples each feature is in: a table with open addressing (Knuth, The Art of Computer Programming 3, 6.4). */
final class Tally {

    /** Spreads features over the table: the golden ratio's part of 2 to the 32nd, odd. */
    private static final int SPREAD = 0x9E3779B9;
    private static final int BEGUN = 18;

    private int bits = BEGUN;
    private int[] features = new int[1 << bits];
    private int[] counts = new int[1 << bits];
    /** The last example that each was met in, from 1 on. */
    private int[] last = new int[1 << bits];
    private int met;

    /** Counts the features of an example, each once. */
    void add(int example, int[] of) {
        for (int feature : of) {
            int at = at(feature);
            if (last[at] == 0 && ++met > features.length / 2) {
                grow();
                at = at(feature);
            }
            if (last[at] != example + 1) {
                features[at] = feature;
                counts[at]++;
                last[at] = example + 1;
            }
        }
    }

    /** Those that are in that many examples at least, sorted. */
    int[] often(int least) {
        int[] often = new int[met];
        int count = 0;
        for (int at = 0; at < features.length; at++) {
            if (counts[at] >= least) {
                often[count++] = features[at];
            }
        }
        int[] sorted = Arrays.copyOf(often, count);
        Arrays.sort(sorted);
        return sorted;
    }

    /** What each feature is numbered by that is one of these, from 1 on, and 0 for all others. */
    int[] numbered(int[] often) {
        int[] numbers = new int[features.length];
        for (int i = 0; i < often.length; i++) {
            numbers[at(often[i])] = i + 1;
        }
        return numbers;
    }

    /** Where a feature stands in the table; at its end a place that is free. */
    int at(int feature) {
        int at = (feature * SPREAD) >>> (Integer.SIZE - bits);
        while (last[at] != 0 && features[at] != feature) {
            at = (at + 1) & (features.length - 1);
        }
        return at;
    }

    private void grow() {
        int[] grownFrom = features;
        int[] countsBefore = counts;
        int[] lastBefore = last;
        bits++;
        features = new int[1 << bits];
        counts = new int[1 << bits];
        last = new int[1 << bits];
        for (int i = 0; i < grownFrom.length; i++) {
            if (lastBefore[i] != 0) {
                int at = at(grownFrom[i]);
                features[at] = grownFrom[i];
                counts[at] = countsBefore[i];
                last[at] = lastBefore[i];
            }
        }
    }
}
