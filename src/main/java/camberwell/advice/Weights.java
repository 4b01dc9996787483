package camberwell.advice;

import camberwell.fact.Thresholds;
import camberwell.learning.LearningWeights;
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

/**
 * The weights of the ranking, from {@code rules/weights.yaml}, where each is explained; and the thresholds of the rules' words.
 */
public record Weights(Map<Occurrence, Double> occurrence, Map<Severity, Double> severity, double harmToComplaint,
        double harmToFine, double effort, double risk, double leastRelief, double openCircumstance,
        double leastCertainty, double leastDriving, double drivingFirst, double clearMajority, double heldFully,
        double halt, LearningWeights learning, Thresholds thresholds) {

    /** The same with other thresholds for the words of rules. */
    public Weights with(Thresholds others) {
        return new Weights(occurrence, severity, harmToComplaint, harmToFine, effort, risk, leastRelief, openCircumstance,
                leastCertainty, leastDriving, drivingFirst, clearMajority, heldFully, halt, learning, others);
    }

    /** Heavier than any weight that still leaves room for the others. */
    private static final double MOST = 10;
    private static final double FEWEST_RUNS = 0.1;
    private static final double MOST_RUNS = 1000;
    /** The chance at which one might as well toss a coin. */
    private static final double EVEN = 0.5;
    private static final double MOST_SURE = 0.999;

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
                weight(fields, "least-driving", 1), weight(fields, "driving-first", 1),
                weight(fields, "clear-majority", MOST), weight(fields, "held-fully", 1), weight(fields, "halt", 1),
                learning(fields), Thresholds.BUILT_IN);
        score.ifPresent(Fields::done);
        fields.done();
        return weights;
    }

    private static LearningWeights learning(Fields fields) {
        fields.require("learning");
        Optional<Fields> learning = fields.map("learning", "weight");
        LearningWeights weights = new LearningWeights(part(learning, "prior-runs", FEWEST_RUNS, MOST_RUNS),
                part(learning, "driver-alone", 0, 1), part(learning, "elsewhere", 0, 1),
                part(learning, "opposite", 0, 1), part(learning, "half-life", FEWEST_RUNS, MOST_RUNS),
                part(learning, "worse", EVEN, MOST_SURE));
        learning.ifPresent(Fields::done);
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
        return part(fields, key, 0, MOST);
    }

    private static double part(Optional<Fields> fields, String key, double least, double most) {
        return fields.isPresent() ? weight(fields.get(), key, least, most) : least;
    }

    /** A weight; 0, with the problem noted, where it is missing or will not do. */
    private static double weight(Fields fields, String key, double most) {
        return weight(fields, key, 0, most);
    }

    private static double weight(Fields fields, String key, double least, double most) {
        fields.require(key);
        return fields.number(key, least, most).orElse(least);
    }
}
