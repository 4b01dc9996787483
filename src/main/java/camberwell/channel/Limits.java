package camberwell.channel;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** From what on something counts: {@code rules/observation.yaml}, where each is explained. */
public final class Limits {

    private final Map<String, Double> values;

    private Limits(Map<String, Double> values) {
        this.values = Map.copyOf(values);
    }

    /**
     * Reads the file.
     *
     * @throws IllegalArgumentException if it holds something that is no number
     */
    public static Limits read(Path file) throws IOException {
        LoaderOptions options = new LoaderOptions();
        Map<String, Double> values = new HashMap<>();
        flatten("", new Composer(new ParserImpl(new StreamReader(Files.readString(file)), options), new Resolver(),
                options).getSingleNode(), values);
        return new Limits(values);
    }

    private static void flatten(String above, Node node, Map<String, Double> values) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                if (entry.getKeyNode() instanceof ScalarNode key) {
                    flatten((above.isEmpty() ? "" : above + ".") + key.getValue(), entry.getValueNode(), values);
                }
            }
        } else if (node instanceof ScalarNode scalar) {
            values.put(above, Double.valueOf(scalar.getValue()));
        }
    }

    /**
     * The limit of that key with the one above it: {@code corners.turn-on}.
     *
     * @throws IllegalArgumentException if there is none
     */
    public double of(String key) {
        Double value = values.get(key);
        if (value == null) {
            throw new IllegalArgumentException("observation.yaml: " + key + " must be a number");
        }
        return value;
    }

    /** Every key. */
    public Set<String> keys() {
        return values.keySet();
    }

    /** How far {@code value} is on the way from where something begins to where it is clear, 0 to 1. */
    public static double ramp(double value, double starts, double clear) {
        return Double.isNaN(value) ? 0 : Math.max(0, Math.min(1, (value - starts) / (clear - starts)));
    }
}
