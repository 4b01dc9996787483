package camberwell.classifier;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Examples as figures: which of the features that are often enough each has, and what each label is to it. */
final class Lessons {

    /** A label that does not hold of an example, that holds, and of which nothing is known. */
    static final byte HOLDS_NOT = 0;
    static final byte HOLDS = 1;
    static final byte OPEN = 2;

    /** The features that are kept, sorted; where one stands is its row. */
    final int[] features;
    /** Of each example, the rows of its features. */
    final int[][] known;
    /** Of each example, what each label is to it. */
    final byte[][] truths;

    /** @param leastOften in how many examples a feature has to be to be kept */
    Lessons(List<Example> examples, String[] labels, int leastOften) {
        Tally tally = new Tally();
        for (int i = 0; i < examples.size(); i++) {
            tally.add(i, examples.get(i).features());
        }
        features = tally.often(leastOften);
        int[] numbers = tally.numbered(features);
        Map<String, Integer> columns = new HashMap<>();
        for (int label = 0; label < labels.length; label++) {
            columns.put(labels[label], label);
        }
        known = new int[examples.size()][];
        truths = new byte[known.length][labels.length];
        for (int i = 0; i < known.length; i++) {
            known[i] = rows(examples.get(i).features(), tally, numbers);
            for (String open : examples.get(i).open()) {
                Integer column = columns.get(open);
                if (column != null) {
                    truths[i][column] = OPEN;
                }
            }
            for (String label : examples.get(i).labels()) {
                truths[i][columns.get(label)] = HOLDS;
            }
        }
    }

    private static int[] rows(int[] of, Tally tally, int[] numbers) {
        int[] rows = new int[of.length];
        int count = 0;
        for (int feature : of) {
            int number = numbers[tally.at(feature)];
            if (number > 0) {
                rows[count++] = number - 1;
            }
        }
        return Arrays.copyOf(rows, count);
    }
}
