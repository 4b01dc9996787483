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
        double leastCertainty, double drivingFirst, double clearMajority) {

    /**
     * Reads the file.
     *
     * @throws IllegalArgumentException if a weight is missing or is no number
     */
    public static Weights read(Path file) throws IOException {
        // Composed as cases are, and nothing constructed: a start loads no second parser, and no logger.
        LoaderOptions options = new LoaderOptions();
        Parser parser = new ParserImpl(new StreamReader(Files.readString(file)), options);
        Map<String, ?> root = map(tree(new Composer(parser, new Resolver(), options).getSingleNode()));
        Map<String, ?> score = map(root.get("score"));
        return new Weights(each(map(root.get("occurrence")), Occurrence.class),
                each(map(root.get("severity")), Severity.class), number(score, "harm-to-a-complaint"),
                number(score, "harm-to-what-is-fine"), number(score, "effort"), number(score, "risk"),
                number(score, "least-relief"), number(score, "open-circumstance"), number(root, "least-certainty"),
                number(root, "driving-first"), number(root, "clear-majority"));
    }

    /** Maps as maps, and what else there is as it is written. */
    private static Object tree(Node node) {
        if (!(node instanceof MappingNode mapping)) {
            return node instanceof ScalarNode scalar ? scalar.getValue() : "";
        }
        Map<String, Object> tree = new HashMap<>();
        for (NodeTuple entry : mapping.getValue()) {
            tree.put(String.valueOf(tree(entry.getKeyNode())), tree(entry.getValueNode()));
        }
        return tree;
    }

    @SuppressWarnings("unchecked")
    private static Map<String, ?> map(Object node) {
        return node instanceof Map<?, ?> map ? (Map<String, ?>) map : Map.of();
    }

    private static <W extends Enum<W> & Word> Map<W, Double> each(Map<String, ?> node, Class<W> type) {
        Map<W, Double> weights = new EnumMap<>(type);
        for (W word : type.getEnumConstants()) {
            weights.put(word, number(node, word.id()));
        }
        return weights;
    }

    private static double number(Map<String, ?> node, String key) {
        try {
            return Double.parseDouble(String.valueOf(node.get(key)));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException("weights.yaml: " + key + " must be a number", e);
        }
    }
}
