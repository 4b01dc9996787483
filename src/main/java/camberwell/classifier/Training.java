package camberwell.classifier;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;

/**
 * Learns a {@link Classifier}: for each label by itself a logistic regression with a quadratic penalty, by stochastic gradients
 * whose steps shrink with what each weight has been through (AdaGrad: Duchi, Hazan and Singer, Journal of Machine Learning
 * Research 12, 2011, 2121-2159). Always the same of the same examples.
 */
public final class Training {

    private static final float STEP = 0.5f;
    private static final float TINY = 1e-8f;
    private static final int SEED = 1;

    private final Plan plan;
    private final String[] labels;
    private final Lessons lessons;
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
        this.plan = plan;
        Set<String> all = new TreeSet<>();
        examples.forEach(example -> all.addAll(example.labels()));
        labels = all.toArray(new String[0]);
        lessons = new Lessons(examples, labels, plan.leastOften());
        weights = new float[lessons.features.length * labels.length];
        past = new float[weights.length];
        Arrays.fill(past, TINY);
    }

    /** The classifier that these examples teach. */
    public static Classifier of(List<Example> examples, Plan plan) {
        return new Training(examples, plan).learned();
    }

    private Classifier learned() {
        int[] order = new int[lessons.known.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < plan.rounds(); round++) {
            shuffle(order, random);
            for (int i : order) {
                learn(lessons.known[i], lessons.truths[i]);
            }
        }
        return Classifier.of(labels, lessons.features, weights, plan.shared());
    }

    /** One example: a step down the slope of its loss, for those labels that it has not yet been taught. */
    private void learn(int[] known, byte[] truth) {
        int width = labels.length;
        float scale = (float) Classifier.scale(known.length);
        float[] added = new float[width];
        for (int row : known) {
            for (int label = 0; label < width; label++) {
                added[label] += weights[row * width + label];
            }
        }
        double[] sums = new double[width];
        int holding = 0;
        for (int label = 0; label < width; label++) {
            sums[label] = truth[label] == Lessons.OPEN && plan.shared() ? Double.NEGATIVE_INFINITY : added[label] * scale;
            holding += truth[label] == Lessons.HOLDS ? 1 : 0;
        }
        Classifier.probable(sums, plan.shared());
        double holds = plan.shared() ? 1.0 / holding : 1;
        int count = 0;
        int[] taught = new int[width];
        float[] slopes = new float[width];
        for (int label = 0; label < width; label++) {
            double off = sums[label] - (truth[label] == Lessons.HOLDS ? holds : 0);
            if (Math.abs(off) > plan.sure() && truth[label] != Lessons.OPEN) {
                slopes[count] = (float) off * scale;
                taught[count++] = label;
            }
        }
        float penalty = (float) plan.penalty();
        for (int row : known) {
            for (int i = 0; i < count; i++) {
                int at = row * width + taught[i];
                float slope = slopes[i] + penalty * weights[at];
                past[at] += slope * slope;
                weights[at] -= STEP * slope / (float) Math.sqrt(past[at]);
            }
        }
    }

    static void shuffle(int[] order, SplittableRandom random) {
        for (int i = order.length - 1; i > 0; i--) {
            int other = random.nextInt(i + 1);
            int kept = order[i];
            order[i] = order[other];
            order[other] = kept;
        }
    }
}
