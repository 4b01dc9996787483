package camberwell.classifier;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Teaches a {@link Network}: the features of a text bring a vector each, whose mean is what the text is known by (Joulin, Grave,
 * Bojanowski and Mikolov, EACL 2017, 427-431), through one hidden layer of hyperbolic tangents, by back-propagation (Rumelhart,
 * Hinton and Williams, Nature 323, 1986, 533-536) with steps as {@link Training} takes them. At each example some features and
 * some of the hidden layer are left out at random, so that none leans on a few others (Srivastava and others, Journal of Machine
 * Learning Research 15, 2014, 1929-1958). What is learned is the mean of the last rounds, which hangs less on their order (Polyak
 * and Juditsky, SIAM Journal on Control and Optimization 30, 1992, 838-855). Always the same of the same examples.
 */
public final class NetworkTraining {

    private static final float STEP = 0.1f;
    private static final float TINY = 1e-6f;
    private static final float FIRST = 0.1f;
    private static final int SEED = 1;
    /** Of how many of the last rounds the mean is taken. */
    private static final int AVERAGED = 3;
    /** A label of an example of which nothing is known; that it holds is 1, that it does not 0. */
    private static final byte OPEN = 2;

    private final List<Example> examples;
    private final Plan plan;
    private final String[] labels;
    private final int shared;
    private final Random random = new Random(SEED);
    /** Of each example, what each label is to it. */
    private final byte[][] truths;
    /** The row of each feature that is kept. */
    private final Map<Integer, Integer> rows = new HashMap<>();
    private final float[] brought;
    private final float[] broughtPast;
    private final float[] offsets;
    private final float[] offsetsPast;
    private final float[] weights;
    private final float[] weightsPast;

    /**
     * How it is learned.
     *
     * @param hidden how many figures the hidden layer has
     * @param rounds how often each example is gone through
     * @param featuresOut the share of the features that are left out at each example, 0 to 1
     * @param hiddenOut the share of the hidden layer that is left out, 0 to 1
     * @param sure how near to the truth a probability is at which an example teaches no more, 0 to 1
     * @param leastOften in how many examples a feature has to be to be kept
     */
    public record Plan(int hidden, int rounds, double featuresOut, double hiddenOut, double sure, int leastOften) {
    }

    private NetworkTraining(List<Example> examples, Set<String> together, Plan plan) {
        this.examples = examples;
        this.plan = plan;
        Set<String> sharing = new TreeSet<>();
        Set<String> others = new TreeSet<>();
        Map<Integer, Integer> often = new HashMap<>();
        for (Example example : examples) {
            for (String label : example.labels()) {
                (together.contains(label) ? sharing : others).add(label);
            }
            Arrays.stream(example.features()).distinct().forEach(feature -> often.merge(feature, 1, Integer::sum));
        }
        shared = sharing.size();
        labels = new String[shared + others.size()];
        int count = 0;
        for (Set<String> some : List.of(sharing, others)) {
            for (String label : some) {
                labels[count++] = label;
            }
        }
        for (Example example : examples) {
            for (int feature : example.features()) {
                if (often.get(feature) >= plan.leastOften()) {
                    rows.putIfAbsent(feature, rows.size());
                }
            }
        }
        truths = examples.stream().map(this::truth).toArray(byte[][]::new);
        brought = begun(rows.size() * plan.hidden(), FIRST);
        offsets = new float[plan.hidden()];
        weights = begun(labels.length * (plan.hidden() + 1), (float) (1 / Math.sqrt(plan.hidden())));
        broughtPast = past(brought);
        offsetsPast = past(offsets);
        weightsPast = past(weights);
    }

    /**
     * The network that these examples teach.
     *
     * @param together the labels that share one probability, as only one holds of most texts; all others have their own
     */
    public static Network of(List<Example> examples, Set<String> together, Plan plan) {
        return new NetworkTraining(examples, together, plan).learned();
    }

    private byte[] truth(Example example) {
        byte[] truth = new byte[labels.length];
        for (int label = 0; label < truth.length; label++) {
            truth[label] = example.labels().contains(labels[label]) ? 1 : example.open().contains(labels[label]) ? OPEN : 0;
        }
        return truth;
    }

    /** Figures to begin with, evenly spread about none. */
    private float[] begun(int count, float size) {
        float[] begun = new float[count];
        for (int i = 0; i < count; i++) {
            begun[i] = (2 * random.nextFloat() - 1) * size * (float) Math.sqrt(3);
        }
        return begun;
    }

    private static float[] past(float[] of) {
        float[] past = new float[of.length];
        Arrays.fill(past, TINY);
        return past;
    }

    private Network learned() {
        int[][] known = new int[examples.size()][];
        int[] order = new int[known.length];
        for (int i = 0; i < known.length; i++) {
            known[i] = Arrays.stream(examples.get(i).features()).distinct().filter(rows::containsKey).map(rows::get).toArray();
            order[i] = i;
        }
        float[][] learned = {brought, offsets, weights};
        float[][] means = {new float[brought.length], new float[offsets.length], new float[weights.length]};
        int averaged = Math.min(AVERAGED, plan.rounds());
        for (int round = 0; round < plan.rounds(); round++) {
            Training.shuffle(order, random);
            for (int i : order) {
                learn(known[i], truths[i]);
            }
            for (int part = 0; part < learned.length && round >= plan.rounds() - averaged; part++) {
                for (int i = 0; i < means[part].length; i++) {
                    means[part][i] += learned[part][i] / averaged;
                }
            }
        }
        return written(means[0], means[1], means[2]);
    }

    /** One example: a step down the slope of its loss. */
    private void learn(int[] known, byte[] truth) {
        int hidden = plan.hidden();
        int[] used = new int[known.length];
        int count = 0;
        for (int row : known) {
            if (random.nextFloat() >= plan.featuresOut()) {
                used[count++] = row;
            }
        }
        float[] sums = new float[hidden];
        for (int k = 0; k < count; k++) {
            add(brought, used[k] * hidden, sums);
        }
        float scale = (float) Classifier.scale(count);
        float[] slope = new float[hidden];
        float[] layer = new float[hidden];
        for (int i = 0; i < hidden; i++) {
            float figure = (float) StrictMath.tanh(sums[i] * scale + offsets[i]);
            float kept = random.nextFloat() < plan.hiddenOut() ? 0 : (float) (1 / (1 - plan.hiddenOut()));
            layer[i] = figure * kept;
            slope[i] = (1 - figure * figure) * kept;
        }
        float[] back = new float[hidden];
        float[] off = off(layer, truth);
        for (int label = 0; label < off.length; label++) {
            if (off[label] != 0) {
                down(label, off[label], layer, back);
            }
        }
        for (int i = 0; i < hidden; i++) {
            back[i] *= slope[i];
            offsetsPast[i] += back[i] * back[i];
            offsets[i] -= STEP * back[i] / (float) Math.sqrt(offsetsPast[i]);
            back[i] *= scale;
        }
        for (int k = 0; k < count; k++) {
            step(brought, broughtPast, used[k] * hidden, back);
        }
    }

    /** How far each label's probability is off; none where it is near enough, or nothing is known. */
    private float[] off(float[] layer, byte[] truth) {
        double[] likely = new double[labels.length];
        int sharing = 0;
        for (int label = 0; label < likely.length; label++) {
            boolean out = truth[label] == OPEN && label < shared;
            likely[label] = out ? Double.NEGATIVE_INFINITY : Network.sum(weights, label, layer);
            sharing += label < shared && truth[label] == 1 ? 1 : 0;
        }
        Network.probable(likely, shared);
        float[] off = new float[likely.length];
        for (int label = 0; label < off.length; label++) {
            double holds = truth[label] == 0 ? 0 : label < shared ? 1.0 / sharing : 1;
            double by = likely[label] - holds;
            off[label] = truth[label] == OPEN || Math.abs(by) < plan.sure() ? 0 : (float) by;
        }
        return off;
    }

    /** A step of one label's weights, and what it means for the hidden layer. */
    private void down(int label, float off, float[] layer, float[] back) {
        int at = label * (layer.length + 1);
        float[] slopes = new float[layer.length + 1];
        for (int i = 0; i < layer.length; i++) {
            back[i] += off * weights[at + i];
            slopes[i] = off * layer[i];
        }
        slopes[layer.length] = off;
        step(weights, weightsPast, at, slopes);
    }

    private static void add(float[] from, int at, float[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += from[at + i];
        }
    }

    private static void step(float[] weights, float[] past, int at, float[] slopes) {
        for (int i = 0; i < slopes.length; i++) {
            float slope = slopes[i];
            past[at + i] += slope * slope;
            weights[at + i] -= STEP * slope / (float) Math.sqrt(past[at + i]);
        }
    }

    private Network written(float[] brought, float[] offsets, float[] weights) {
        int hidden = plan.hidden();
        float most = 0;
        for (float one : brought) {
            most = Math.max(most, Math.abs(one));
        }
        float unit = Math.max(most, Float.MIN_NORMAL) / Byte.MAX_VALUE;
        int[] features = rows.keySet().stream().mapToInt(Integer::intValue).sorted().toArray();
        byte[] kept = new byte[brought.length];
        for (int k = 0; k < features.length; k++) {
            int row = rows.get(features[k]) * hidden;
            for (int i = 0; i < hidden; i++) {
                kept[k * hidden + i] = (byte) Math.round(brought[row + i] / unit);
            }
        }
        return new Network(labels, shared, features, kept, unit, offsets, weights);
    }
}
