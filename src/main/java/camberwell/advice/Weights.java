package camberwell.advice;

import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The weights of the ranking, from {@code rules/weights.yaml}, where each is explained. */
public record Weights(Map<Occurrence, Double> occurrence, Map<Severity, Double> severity, double harmToComplaint,
        double harmToFine, double effort, double risk, double leastRelief, double openCircumstance,
        double leastCertainty, double drivingFirst, double clearMajority) {

    /** Heavier than any weight that still leaves room for the others. */
    private static final double MOST = 10;

    /**
     * Reads the file.
     *
     * @throws ProblemsException with everything that is wrong with it
     */
    public static Weights read(Path file) {
        Problems problems = new Problems();
        Optional<Weights> weights = Document.load(file, problems).map(document -> read(document.fields("weight")));
        problems.warningsOrFail();
        return weights.orElseThrow();
    }

    private static Weights read(Fields fields) {
        Map<Occurrence, Double> occurrence = each("occurrence", fields, Occurrence.class);
        Map<Severity, Double> severity = each("severity", fields, Severity.class);
        fields.require("score");
        Optional<Fields> score = fields.map("score", "weight");
        Weights weights = new Weights(occurrence, severity, part(score, "harm-to-a-complaint"),
                part(score, "harm-to-what-is-fine"), part(score, "effort"), part(score, "risk"),
                part(score, "least-relief"), part(score, "open-circumstance"), weight(fields, "least-certainty", 1),
                weight(fields, "driving-first", 1), weight(fields, "clear-majority", MOST));
        score.ifPresent(Fields::done);
        fields.done();
        return weights;
    }

    private static <W extends Enum<W> & Word> Map<W, Double> each(String key, Fields fields, Class<W> type) {
        Map<W, Double> weights = new EnumMap<>(type);
        fields.require(key);
        fields.map(key, key).ifPresent(each -> {
            for (W word : Word.all(type)) {
                weights.put(word, weight(each, word.id(), MOST));
            }
            each.done();
        });
        return weights;
    }

    private static double part(Optional<Fields> fields, String key) {
        return fields.isPresent() ? weight(fields.get(), key, MOST) : 0;
    }

    /** A weight; 0, with the problem noted, where it is missing or will not do. */
    private static double weight(Fields fields, String key, double most) {
        fields.require(key);
        return fields.number(key, 0, most).orElse(0.0);
    }
}
