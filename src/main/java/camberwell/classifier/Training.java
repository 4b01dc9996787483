package camberwell.classifier;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/**
 * Learns a {@link Classifier}: for each label by itself a logistic regression with a quadratic penalty, by stochastic gradients
 * whose steps shrink with what each weight has been through (AdaGrad: Duchi, Hazan and Singer, Journal of Machine Learning
 * Research 12, 2011, 2121-2159). Always the same of the same examples.
 */
public final class Training {

    private static final double STEP = 0.5;
    private static final double TINY = 1e-8;
    private static final int SEED = 1;

    private final List<Example> examples;
    private final Plan plan;
    private final String[] labels;
    /** The row of each feature that is kept. */
    private final Map<Integer, Integer> rows = new HashMap<>();
    private final float[] weights;
    /** The sum of the squares of each weight's gradients. */
    private final float[] past;

    /**
     * How it is learned.
     *
     * @param rounds how often each example is gone through
     * @param penalty on the square of each weight, at each example that has its feature and teaches
     * @param sure how near to the truth a probability is at which an example teaches no more, 0 to 1
     * @param shared whether the labels share one probability, as where only one holds of most texts, or each has its own
     * @param leastOften in how many examples a feature has to be to be kept
     */
    public record Plan(int rounds, double penalty, double sure, int leastOften, boolean shared) {
    }

    private Training(List<Example> examples, Plan plan) {
        this.examples = examples;
        this.plan = plan;
        Set<String> all = new TreeSet<>();
        Map<Integer, Integer> often = new HashMap<>();
        for (Example example : examples) {
            all.addAll(example.labels());
            Arrays.stream(example.features()).distinct().forEach(feature -> often.merge(feature, 1, Integer::sum));
        }
        labels = all.toArray(new String[0]);
        for (Example example : examples) {
            for (int feature : example.features()) {
                if (often.get(feature) >= plan.leastOften()) {
                    rows.putIfAbsent(feature, rows.size());
                }
            }
        }
        weights = new float[rows.size() * labels.length];
        past = new float[weights.length];
        Arrays.fill(past, (float) TINY);
    }

    /** The classifier that these examples teach. */
    public static Classifier of(List<Example> examples, Plan plan) {
        return new Training(examples, plan).learned();
    }

    private Classifier learned() {
        int[][] known = new int[examples.size()][];
        int[] order = new int[known.length];
        for (int i = 0; i < known.length; i++) {
            known[i] = Arrays.stream(examples.get(i).features()).filter(rows::containsKey).map(rows::get).toArray();
            order[i] = i;
        }
        Random random = new Random(SEED);
        for (int round = 0; round < plan.rounds(); round++) {
            shuffle(order, random);
            for (int i : order) {
                learn(known[i], examples.get(i));
            }
        }
        return Classifier.of(labels, rows, weights, plan.shared());
    }

    /** One example: a step down the slope of its loss, for those labels that it has not yet been taught. */
    private void learn(int[] known, Example example) {
        int width = labels.length;
        double scale = Classifier.scale(known.length);
        double[] sums = new double[width];
        for (int row : known) {
            for (int label = 0; label < width; label++) {
                sums[label] += weights[row * width + label];
            }
        }
        boolean[] open = new boolean[width];
        for (int label = 0; label < width; label++) {
            sums[label] *= scale;
            open[label] = example.open().contains(labels[label]);
            if (open[label] && plan.shared()) {
                sums[label] = Double.NEGATIVE_INFINITY;
            }
        }
        Classifier.probable(sums, plan.shared());
        double holds = plan.shared() ? 1.0 / example.labels().size() : 1;
        int count = 0;
        int[] taught = new int[width];
        double[] slopes = new double[width];
        for (int label = 0; label < width; label++) {
            double off = sums[label] - (example.labels().contains(labels[label]) ? holds : 0);
            if (Math.abs(off) > plan.sure() && !open[label]) {
                slopes[count] = off * scale;
                taught[count++] = label;
            }
        }
        for (int row : known) {
            for (int i = 0; i < count; i++) {
                int at = row * width + taught[i];
                double slope = slopes[i] + plan.penalty() * weights[at];
                past[at] += (float) (slope * slope);
                weights[at] -= (float) (STEP * slope / Math.sqrt(past[at]));
            }
        }
    }

    static void shuffle(int[] order, Random random) {
        for (int i = order.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
    }
}
