package camberwell.advice;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;

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
        JsonNode root = new ObjectMapper(new YAMLFactory()).readTree(Files.readString(file));
        JsonNode score = root.path("score");
        return new Weights(each(root.path("occurrence"), Occurrence.class), each(root.path("severity"), Severity.class),
                number(score, "harm-to-a-complaint"), number(score, "harm-to-what-is-fine"), number(score, "effort"),
                number(score, "risk"), number(score, "least-relief"), number(score, "open-circumstance"),
                number(root, "least-certainty"), number(root, "driving-first"), number(root, "clear-majority"));
    }

    private static <W extends Enum<W> & Word> Map<W, Double> each(JsonNode node, Class<W> type) {
        Map<W, Double> weights = new EnumMap<>(type);
        for (W word : type.getEnumConstants()) {
            weights.put(word, number(node, word.id()));
        }
        return weights;
    }

    private static double number(JsonNode node, String key) {
        if (!node.path(key).isNumber()) {
            throw new IllegalArgumentException("weights.yaml: " + key + " must be a number");
        }
        return node.path(key).asDouble();
    }
}
