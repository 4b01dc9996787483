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
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A classifier by a network with one hidden layer")
class NetworkTest {

    private static final NetworkTraining.Plan PLAIN = new NetworkTraining.Plan(8, 400, 0, 0, 0, 1);

    private static Example example(Set<String> labels, int... features) {
        return new Example(features, labels, Set.of());
    }

    private static double likely(Network network, String label, int... features) {
        return network.probabilities(features)[network.labels().indexOf(label)];
    }

    /** By hand: features 3 and 5 bring (1, 0) and (1, 2) tenths; the layer is tanh of their sum over the root of two. */
    @Test
    @DisplayName("a worked example: what two features bring, squeezed, weighed and made probable")
    void worked() {
        Network network = new Network(new String[] {"a", "b", "c"}, 2, new int[] {3, 5}, new byte[] {1, 0, 1, 2}, 0.1f,
                new float[] {0, 0.5f}, new float[] {2, -1, 0.5f, 1, 0, -1, 0, 0.3f, 0.1f});
        double first = Math.tanh(0.2 / Math.sqrt(2));
        double second = Math.tanh(0.2 / Math.sqrt(2) + 0.5);
        double a = Math.exp(2 * first + second);
        double b = Math.exp(-first + 0.3);
        double c = 1 / (1 + Math.exp(-(0.5 * first - second + 0.1)));
        assertArrayEquals(new double[] {a / (a + b), b / (a + b), c}, network.probabilities(new int[] {5, 3, 5, 99}), 1e-6);
    }

    /** Either but not both, which no weighing of two features can tell (Rumelhart, Hinton and Williams, 1986). */
    @Test
    @DisplayName("learns either but not both, which a regression cannot")
    void eitherNotBoth() {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            examples.add(example(Set.of(), 1));
            examples.add(example(Set.of("odd"), 1, 2));
            examples.add(example(Set.of("odd"), 1, 3));
            examples.add(example(Set.of(), 1, 2, 3));
        }
        Network network = NetworkTraining.of(examples, Set.of(), PLAIN, 1);
        assertTrue(likely(network, "odd", 1) < 0.1);
        assertTrue(likely(network, "odd", 1, 2) > 0.9);
        assertTrue(likely(network, "odd", 1, 3) > 0.9);
        assertTrue(likely(network, "odd", 1, 2, 3) < 0.1);
        Classifier regression = Training.of(examples, new Training.Plan(400, 0, 0, 1, false));
        int odd = regression.labels().indexOf("odd");
        assertTrue(regression.probabilities(new int[] {1, 2})[odd] < 0.7
                || regression.probabilities(new int[] {1, 2, 3})[odd] > 0.3);
    }

    /** The closed form: where nothing tells examples apart, the likeliest probability is how often a label holds. */
    @Test
    @DisplayName("learns how often a label holds where there is nothing else to go by")
    void frequency() {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            examples.add(example(i % 4 == 0 ? Set.of("yes", "also") : Set.of("no"), 7));
        }
        Network network = NetworkTraining.of(examples, Set.of("yes", "no"), PLAIN, 1);
        assertEquals(0.25, likely(network, "yes", 7), 0.05);
        assertEquals(0.25, likely(network, "also", 7), 0.05);
        assertEquals(1, likely(network, "yes", 7) + likely(network, "no", 7), 1e-9);
    }

    @Test
    @DisplayName("of what is left open nothing is learned")
    void open() {
        List<Example> examples = new ArrayList<>();
        for (int i = 0; i < 20; i++) {
            examples.add(new Example(new int[] {1}, Set.of("a"), Set.of("b")));
            examples.add(example(Set.of("b"), 2));
            examples.add(example(Set.of("a"), 3));
        }
        Network network = NetworkTraining.of(examples, Set.of(), PLAIN, 1);
        assertTrue(likely(network, "b", 1) > likely(network, "b", 3));
        assertTrue(likely(network, "b", 3) < 0.1);
    }

    @Test
    @DisplayName("is the same each time, and the same once it was written and read; a damaged one is refused")
    void written() throws IOException {
        List<Example> examples = List.of(example(Set.of("a"), 1, 2), example(Set.of("b"), 1, 3), example(Set.of("a", "c"), 2, 3));
        NetworkTraining.Plan plan = new NetworkTraining.Plan(4, 20, 0.3, 0.2, 0.02, 1);
        byte[] bytes = bytes(NetworkTraining.of(examples, Set.of("a", "b"), plan, 1));
        assertArrayEquals(bytes, bytes(NetworkTraining.of(examples, Set.of("a", "b"), plan, 1)));
        Network read = Network.read(ByteBuffer.wrap(bytes));
        assertArrayEquals(bytes, bytes(read));
        assertEquals(List.of("a", "b", "c"), read.labels());
        assertThrows(BufferUnderflowException.class, () -> Network.read(ByteBuffer.wrap(bytes, 0, bytes.length - 3)));
    }

    private static byte[] bytes(Network network) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        network.write(new DataOutputStream(bytes));
        return bytes.toByteArray();
    }

    @Test
    @DisplayName("a rare word is known by its letters too, a common one is not")
    void letters() {
        int[] rare = Features.withLetters(List.of("pushs"), List.of(), word -> false);
        int[] other = Features.withLetters(List.of("pushes"), List.of(), word -> false);
        assertTrue(Arrays.stream(rare).filter(it -> Arrays.stream(other).anyMatch(o -> o == it)).count() > 4);
        assertEquals(2, Features.withLetters(List.of("push"), List.of(), word -> true).length);
        // "<push>": four runs of three letters and three of four.
        assertEquals(2 + 4 + 3, Features.withLetters(List.of("push"), List.of(), word -> false).length);
    }
}
