package camberwell.classifier;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
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
    /** Of how many of the last rounds the mean is taken. */
    private static final int AVERAGED = 3;

    private final Plan plan;
    private final String[] labels;
    private final int shared;
    private final SplittableRandom random;
    private final Lessons lessons;
    /** A sum from which a label that does not hold is near enough to the truth. */
    private final float surely;
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

    private NetworkTraining(List<Example> examples, Set<String> together, Plan plan, int seed) {
        random = new SplittableRandom(seed);
        this.plan = plan;
        Set<String> sharing = new TreeSet<>();
        Set<String> others = new TreeSet<>();
        for (Example example : examples) {
            for (String label : example.labels()) {
                (together.contains(label) ? sharing : others).add(label);
            }
        }
        shared = sharing.size();
        labels = new String[shared + others.size()];
        int count = 0;
        for (Set<String> some : List.of(sharing, others)) {
            for (String label : some) {
                labels[count++] = label;
            }
        }
        lessons = new Lessons(examples, labels, plan.leastOften());
        surely = (float) StrictMath.log(plan.sure() / (1 - plan.sure()));
        brought = begun(lessons.features.length * plan.hidden(), FIRST);
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
    public static Network of(List<Example> examples, Set<String> together, Plan plan, int seed) {
        return new NetworkTraining(examples, together, plan, seed).learned();
    }

    /** Figures to begin with, evenly spread about none. */
    private float[] begun(int count, float size) {
        float[] begun = new float[count];
        for (int i = 0; i < count; i++) {
            begun[i] = (float) (2 * random.nextDouble() - 1) * size * (float) Math.sqrt(3);
        }
        return begun;
    }

    private static float[] past(float[] of) {
        float[] past = new float[of.length];
        Arrays.fill(past, TINY);
        return past;
    }

    private Network learned() {
        int[] order = new int[lessons.known.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        float[][] learned = {brought, offsets, weights};
        float[][] means = {new float[brought.length], new float[offsets.length], new float[weights.length]};
        int averaged = Math.min(AVERAGED, plan.rounds());
        for (int round = 0; round < plan.rounds(); round++) {
            Training.shuffle(order, random);
            for (int i : order) {
                learn(lessons.known[i], lessons.truths[i]);
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
            if (random.nextDouble() >= plan.featuresOut()) {
                used[count++] = row;
            }
        }
        float[] layer = new float[hidden];
        for (int k = 0; k < count; k++) {
            add(brought, used[k] * hidden, layer);
        }
        float scale = (float) Classifier.scale(count);
        float[] slope = new float[hidden];
        for (int i = 0; i < hidden; i++) {
            float figure = (float) StrictMath.tanh(layer[i] * scale + offsets[i]);
            float kept = random.nextDouble() < plan.hiddenOut() ? 0 : (float) (1 / (1 - plan.hiddenOut()));
            layer[i] = figure * kept;
            slope[i] = (1 - figure * figure) * kept;
        }
        float[] back = down(layer, truth);
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

    /** A step of the weights of those labels that are off, and what it means for the hidden layer. */
    private float[] down(float[] layer, byte[] truth) {
        int width = labels.length;
        float[] off = Network.sums(weights, layer, width);
        int[] wrong = new int[width];
        int count = 0;
        double all = 0;
        int sharing = 0;
        for (int label = 0; label < shared; label++) {
            off[label] = truth[label] == Lessons.OPEN ? 0 : (float) StrictMath.exp(off[label]);
            all += off[label];
            sharing += truth[label] == Lessons.HOLDS ? 1 : 0;
        }
        for (int label = 0; label < width; label++) {
            if (truth[label] == Lessons.OPEN || label >= shared && truth[label] == Lessons.HOLDS_NOT && off[label] < surely) {
                continue;
            }
            double likely = label < shared ? off[label] / all : 1 / (1 + StrictMath.exp(-off[label]));
            double by = likely - (truth[label] == Lessons.HOLDS_NOT ? 0 : label < shared ? 1.0 / sharing : 1);
            if (Math.abs(by) >= plan.sure()) {
                off[label] = (float) by;
                wrong[count++] = label;
            }
        }
        float[] back = new float[layer.length];
        for (int i = 0; i <= layer.length; i++) {
            float figure = i < layer.length ? layer[i] : 1;
            for (int k = 0; k < count; k++) {
                int at = i * width + wrong[k];
                float slope = off[wrong[k]] * figure;
                if (i < layer.length) {
                    back[i] += off[wrong[k]] * weights[at];
                }
                weightsPast[at] += slope * slope;
                weights[at] -= STEP * slope / (float) Math.sqrt(weightsPast[at]);
            }
        }
        return back;
    }

    private static void add(float[] from, int at, float[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += from[at + i];
        }
    }

    private static void step(float[] weights, float[] past, int at, float[] slopes) {
        for (int i = 0; i < slopes.length; i++) {
            float slope = slopes[i];
            float sum = past[at + i] + slope * slope;
            past[at + i] = sum;
            weights[at + i] -= STEP * slope / (float) Math.sqrt(sum);
        }
    }

    private Network written(float[] brought, float[] offsets, float[] weights) {
        float most = 0;
        for (float one : brought) {
            most = Math.max(most, Math.abs(one));
        }
        float unit = Math.max(most, Float.MIN_NORMAL) / Byte.MAX_VALUE;
        byte[] kept = new byte[brought.length];
        for (int i = 0; i < kept.length; i++) {
            kept[i] = (byte) Math.round(brought[i] / unit);
        }
        return new Network(labels, shared, lessons.features, kept, unit, offsets, weights);
    }
}
