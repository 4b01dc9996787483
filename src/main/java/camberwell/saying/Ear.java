package camberwell.saying;

import camberwell.classifier.Classifier;
import camberwell.classifier.Example;
import camberwell.classifier.Features;
import camberwell.classifier.Training;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The second listener. It has no grammar, but has heard some thousand sayings with their meaning, and tells what a new one sounds
 * like: one classifier names the symptoms, another one the words that narrow them.
 */
final class Ear {

    private static final Training.Plan ONE = new Training.Plan(8, 1e-5, 0.05, 2, true);
    private static final Training.Plan EACH = new Training.Plan(8, 1e-5, 0.05, 2, false);

    private final Classifier symptoms;
    private final Classifier details;

    private Ear(Classifier symptoms, Classifier details) {
        this.symptoms = symptoms;
        this.details = details;
    }

    /** One that learns from these. What the grammar makes of a lesson counts only where the grammar has not met it. */
    static Ear taught(Sayings sayings, List<Lesson> lessons) {
        List<Example> ofSymptoms = new ArrayList<>();
        List<Example> ofDetails = new ArrayList<>();
        for (Lesson lesson : lessons) {
            Cues cues = lesson.met() ? Cues.of(sayings, lesson.saying())
                    : Cues.of(sayings, lesson.saying(), Hearing.of(sayings, lesson.saying()));
            Set<String> narrowing = new HashSet<>(lesson.labels());
            narrowing.retainAll(Lesson.DETAILS);
            Set<String> told = new HashSet<>(lesson.labels());
            told.removeAll(Lesson.DETAILS);
            ofSymptoms.add(new Example(cues.ofSymptoms(), told, lesson.open()));
            ofDetails.add(new Example(cues.ofDetails(), narrowing, lesson.open()));
        }
        return new Ear(Training.of(ofSymptoms, ONE), Training.of(ofDetails, EACH));
    }

    /** What a saying sounds like, of which the grammar makes {@code heard}. */
    Impression impression(Sayings sayings, String said, Heard heard) {
        Cues cues = Cues.of(sayings, said, heard);
        return new Impression(likely(symptoms, cues.ofSymptoms()), likely(details, cues.ofDetails()));
    }

    /** Whether it has met each of these words. */
    boolean knows(String words) {
        for (String word : Cues.words(words)) {
            if (!symptoms.knows(Features.ofWord(word))) {
                return false;
            }
        }
        return true;
    }

    private static Map<String, Double> likely(Classifier classifier, int[] features) {
        Map<String, Double> likely = new HashMap<>();
        List<String> labels = classifier.labels();
        double[] probabilities = classifier.probabilities(features);
        for (int i = 0; i < probabilities.length; i++) {
            likely.put(labels.get(i), probabilities[i]);
        }
        return likely;
    }

    void write(DataOutputStream out) throws IOException {
        symptoms.write(out);
        details.write(out);
    }

    static Ear read(ByteBuffer in) {
        return new Ear(Classifier.read(in), Classifier.read(in));
    }
}
