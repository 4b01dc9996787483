package camberwell.advice;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.parser.Parser;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.resolver.Resolver;

/** The weights of the ranking, from {@code rules/weights.yaml}, where each is explained. */
public record Weights(Map<Occurrence, Double> occurrence, Map<Severity, Double> severity, double harmToComplaint,
        double harmToFine, double effort, double risk, double leastRelief, double openCircumstance,
        double leastCertainty, double leastDriving, double drivingFirst, double clearMajority, double heldFully,
        double halt) {

    /**
     * Reads the file.
     *
     * @throws IllegalArgumentException if a weight is missing or is no number
     */
    public static Weights read(Path file) throws IOException {
        // Composed as cases are, and nothing constructed: a start loads no second parser, and no logger.
        LoaderOptions options = new LoaderOptions();
        Parser parser = new ParserImpl(new StreamReader(Files.readString(file)), options);
        Map<String, String> values = new HashMap<>();
        flatten("", new Composer(parser, new Resolver(), options).getSingleNode(), values);
        return new Weights(each("occurrence", values, Occurrence.class), each("severity", values, Severity.class),
                number("score.harm-to-a-complaint", values), number("score.harm-to-what-is-fine", values),
                number("score.effort", values), number("score.risk", values), number("score.least-relief", values),
                number("score.open-circumstance", values), number("least-certainty", values),
                number("least-driving", values), number("driving-first", values), number("clear-majority", values),
                number("held-fully", values), number("halt", values));
    }

    /** Every number as it is written, by its key and those above it: {@code score.effort}. */
    private static void flatten(String above, Node node, Map<String, String> values) {
        if (node instanceof MappingNode mapping) {
            for (NodeTuple entry : mapping.getValue()) {
                if (entry.getKeyNode() instanceof ScalarNode key) {
                    flatten((above.isEmpty() ? "" : above + ".") + key.getValue(), entry.getValueNode(), values);
                }
            }
        } else if (node instanceof ScalarNode scalar) {
            values.put(above, scalar.getValue());
        }
    }

    private static <W extends Enum<W> & Word> Map<W, Double> each(String above, Map<String, String> values,
            Class<W> type) {
        Map<W, Double> weights = new EnumMap<>(type);
        for (W word : type.getEnumConstants()) {
            weights.put(word, number(above + "." + word.id(), values));
        }
        return weights;
    }

    private static double number(String key, Map<String, String> values) {
        try {
            return Double.parseDouble(values.getOrDefault(key, ""));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("weights.yaml: " + key + " must be a number", e);
        }
    }
}
