package camberwell.classifier;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.BufferUnderflowException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A classifier by logistic regression")
class ClassifierTest {

    private static final Training.Plan EACH = new Training.Plan(300, 0, 0, 1, false);
    private static final Training.Plan SHARED = new Training.Plan(300, 0, 0, 1, true);

    private static Example example(Set<String> labels, int... features) {
        return new Example(features, labels, Set.of());
    }

    private static double likely(Classifier classifier, String label, int... features) {
        return classifier.probabilities(features)[classifier.labels().indexOf(label)];
    }

    /** The closed form: with one feature alone the likeliest probability is how often the label holds. */
    @Test
    @DisplayName("learns how often a label holds where there is nothing else to go by")
    void frequency() {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            examples.add(example(i % 4 == 0 ? Set.of("yes") : Set.of("no"), 7));
        }
        assertEquals(0.25, likely(Training.of(examples, EACH), "yes", 7), 0.03);
        assertEquals(0.25, likely(Training.of(examples, SHARED), "yes", 7), 0.03);
        assertEquals(0.75, likely(Training.of(examples, SHARED), "no", 7), 0.03);
    }

    /** Against Newton's method (iteratively reweighted least squares; common practice, any handbook of statistics). */
    @Test
    @DisplayName("finds what Newton's method finds")
    void newton() {
        Random random = new Random(5);
        int features = 4;
        List<Example> examples = new ArrayList<>();
        double[][] rows = new double[400][features];
        double[] truth = new double[rows.length];
        double[] weights = {-0.5, 1.5, -2, 0.8};
        for (int i = 0; i < rows.length; i++) {
            rows[i][0] = 1;
            double sum = weights[0];
            for (int j = 1; j < features; j++) {
                rows[i][j] = random.nextInt(2);
                sum += weights[j] * rows[i][j];
            }
            truth[i] = random.nextDouble() < 1 / (1 + Math.exp(-sum)) ? 1 : 0;
            double[] row = rows[i];
            int[] has = java.util.stream.IntStream.range(0, features).filter(j -> row[j] > 0).toArray();
            examples.add(example(truth[i] > 0 ? Set.of("it") : Set.of(), has));
            // The classifier divides by the square root of how many there are.
            double scale = 1 / Math.sqrt(has.length);
            for (int j = 0; j < features; j++) {
                rows[i][j] *= scale;
            }
        }
        double[] newton = newton(rows, truth);
        Classifier learned = Training.of(examples, EACH);
        for (int i = 0; i < 8; i++) {
            int pattern = i;
            int[] has = java.util.stream.IntStream.range(0, features).filter(j -> j == 0 || (pattern >> j - 1 & 1) == 1)
                    .toArray();
            double sum = Arrays.stream(has).mapToDouble(j -> newton[j]).sum() / Math.sqrt(has.length);
            assertEquals(1 / (1 + Math.exp(-sum)), likely(learned, "it", has), 0.05, Arrays.toString(has));
        }
    }

    private static double[] newton(double[][] rows, double[] truth) {
        RealMatrix x = MatrixUtils.createRealMatrix(rows);
        RealVector weights = new ArrayRealVector(rows[0].length);
        for (int step = 0; step < 30; step++) {
            double[] p = x.operate(weights).map(sum -> 1 / (1 + Math.exp(-sum))).toArray();
            RealMatrix weighted = x.copy();
            double[] off = new double[p.length];
            for (int i = 0; i < p.length; i++) {
                weighted.setRowVector(i, x.getRowVector(i).mapMultiply(p[i] * (1 - p[i])));
                off[i] = truth[i] - p[i];
            }
            RealMatrix curvature = x.transpose().multiply(weighted);
            weights = weights.add(MatrixUtils.inverse(curvature).operate(x.transpose().operate(new ArrayRealVector(off))));
        }
        return weights.toArray();
    }

    @Test
    @DisplayName("labels that share one probability add up to one, others do not")
    void shared() {
        List<Example> examples = List.of(example(Set.of("a"), 1, 2), example(Set.of("b"), 1, 3), example(Set.of("a", "c"), 2, 3));
        assertEquals(1, Arrays.stream(Training.of(examples, SHARED).probabilities(new int[] {1, 2, 3})).sum(), 1e-9);
        assertTrue(Arrays.stream(Training.of(examples, EACH).probabilities(new int[] {2})).sum() > 1);
    }

    @Test
    @DisplayName("of what is left open nothing is learned, and what was never met counts for nothing")
    void open() {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            examples.add(new Example(new int[] {1}, Set.of("a"), Set.of("b")));
            examples.add(example(Set.of("b"), 2));
        }
        Classifier learned = Training.of(examples, EACH);
        assertEquals(0.5, likely(learned, "b", 1), 0.01);
        assertArrayEquals(learned.probabilities(new int[] {1}), learned.probabilities(new int[] {1, 99}), 1e-12);
    }

    @Test
    @DisplayName("is the same each time, and the same once it was written and read; a damaged one is refused")
    void written() throws IOException {
        List<Example> examples = List.of(example(Set.of("a"), 1, 2), example(Set.of("b"), 1, 3), example(Set.of("a", "c"), 2, 3));
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        Classifier learned = Training.of(examples, EACH);
        learned.write(new DataOutputStream(bytes));
        ByteArrayOutputStream again = new ByteArrayOutputStream();
        Training.of(examples, EACH).write(new DataOutputStream(again));
        assertArrayEquals(bytes.toByteArray(), again.toByteArray());
        Classifier read = Classifier.read(ByteBuffer.wrap(bytes.toByteArray()));
        assertEquals(learned.labels(), read.labels());
        assertArrayEquals(learned.probabilities(new int[] {1, 3}), read.probabilities(new int[] {1, 3}), 0);
        assertThrows(BufferUnderflowException.class,
                () -> Classifier.read(ByteBuffer.wrap(bytes.toByteArray(), 0, bytes.size() - 3)));
    }

    @Test
    @DisplayName("the order of words counts, and what is strong counts more")
    void features() {
        int[] one = Features.of(List.of("front", "locks"), List.of(), List.of());
        int[] other = Features.of(List.of("locks", "front"), List.of(), List.of());
        assertEquals(one.length, other.length);
        assertTrue(!Arrays.equals(one, other));
        assertEquals(one.length + 6, Features.of(List.of("front", "locks"), List.of(), List.of("braking")).length);
    }
}
