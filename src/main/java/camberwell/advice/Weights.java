package camberwell.advice;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

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
        // The parser that cases are read with, so that a start loads no second one.
        Map<?, ?> root = map(new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(file)));
        Map<?, ?> score = map(root.get("score"));
        return new Weights(each(map(root.get("occurrence")), Occurrence.class),
                each(map(root.get("severity")), Severity.class), number(score, "harm-to-a-complaint"),
                number(score, "harm-to-what-is-fine"), number(score, "effort"), number(score, "risk"),
                number(score, "least-relief"), number(score, "open-circumstance"), number(root, "least-certainty"),
                number(root, "driving-first"), number(root, "clear-majority"));
    }

    private static Map<?, ?> map(Object node) {
        return node instanceof Map<?, ?> map ? map : Map.of();
    }

    private static <W extends Enum<W> & Word> Map<W, Double> each(Map<?, ?> node, Class<W> type) {
        Map<W, Double> weights = new EnumMap<>(type);
        for (W word : type.getEnumConstants()) {
            weights.put(word, number(node, word.id()));
        }
        return weights;
    }

    private static double number(Map<?, ?> node, String key) {
        if (node.get(key) instanceof Number number) {
            return number.doubleValue();
        }
        throw new IllegalArgumentException("weights.yaml: " + key + " must be a number");
    }
}
