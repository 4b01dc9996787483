package camberwell.saying;

import camberwell.classifier.Classifier;
import camberwell.classifier.Features;
import camberwell.classifier.Network;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * The second listener. It has no grammar, but has heard some thousand sayings with their meaning, and tells what a new one sounds
 * like. Several that go about it in different ways are heard, and their geometric mean counts (a logarithmic opinion pool: Genest
 * and Zidek, Statistical Science 1, 1986, 114-135): logistic regressions, one of the symptoms and one of the words that narrow
 * them; and networks for both, which know words by their letters as well, and which word narrows which symptom. Two judges tell
 * how likely right what it makes of a saying is.
 */
final class Ear {

    private final Hearers hearers;
    private final Judge ofWords;
    private final Judge ofReadings;

    /**
     * Those that are asked.
     *
     * @param symptoms the regression of symptoms, and of {@link Lesson#NO_COMPLAINT}
     * @param details that of the words that narrow them
     * @param networks of both, with the same labels in the same order
     * @param common the features that common words are, sorted
     */
    record Hearers(Classifier symptoms, Classifier details, List<Network> networks, int[] common) {
    }

    Ear(Hearers hearers, Judge ofWords, Judge ofReadings) {
        this.hearers = hearers;
        this.ofWords = ofWords;
        this.ofReadings = ofReadings;
    }

    /** Tells how likely right a word is that narrows a complaint. */
    Judge ofWords() {
        return ofWords;
    }

    /** Tells how likely right the reading of a whole saying is. */
    Judge ofReadings() {
        return ofReadings;
    }

    /** Whether a word is met so often that its letters tell no more than it does itself. */
    static Predicate<String> isIn(int[] common) {
        return word -> Arrays.binarySearch(common, Features.ofWord(word)) >= 0;
    }

    /** What a saying sounds like, of which the grammar makes {@code heard}. */
    Impression impression(Sayings sayings, String said, Heard heard) {
        return impression(hearers, Cues.of(sayings, said, heard));
    }

    /** What a saying with these cues sounds like. */
    static Impression impression(Hearers hearers, Cues cues) {
        int[] ofBoth = cues.ofBoth(isIn(hearers.common()));
        List<Map<String, Double>> members = new ArrayList<>();
        Map<String, Double> what = likely(hearers.symptoms().labels(), hearers.symptoms().probabilities(cues.ofSymptoms()));
        Map<String, Double> details = likely(hearers.details().labels(), hearers.details().probabilities(cues.ofDetails()));
        Map<String, Double> both = new HashMap<>(what);
        both.putAll(details);
        members.add(both);
        for (Network network : hearers.networks()) {
            members.add(likely(network.labels(), network.probabilities(ofBoth)));
        }
        List<Map<String, Double>> networks = members.subList(1, members.size());
        what.replaceAll((label, likely) -> Math.sqrt(likely * Pool.together(networks, label)));
        double all = what.values().stream().mapToDouble(Double::doubleValue).sum();
        what.replaceAll((label, likely) -> likely / all);
        Map<String, Double> narrowing = new HashMap<>();
        for (String label : members.get(1).keySet()) {
            if (!what.containsKey(label)) {
                double second = Pool.ofOdds(networks, label);
                Double first = details.get(label);
                narrowing.put(label, first == null ? second : Pool.ofOdds(first, second));
            }
        }
        return new Impression(what, narrowing, members);
    }

    /** Whether it has met each of these words. */
    boolean knows(String words) {
        for (String word : Cues.words(words)) {
            if (!hearers.symptoms().knows(Features.ofWord(word))) {
                return false;
            }
        }
        return true;
    }

    private static Map<String, Double> likely(List<String> labels, double[] probabilities) {
        Map<String, Double> likely = new HashMap<>();
        for (int i = 0; i < probabilities.length; i++) {
            likely.put(labels.get(i), probabilities[i]);
        }
        return likely;
    }

    void write(DataOutputStream out) throws IOException {
        hearers.symptoms().write(out);
        hearers.details().write(out);
        out.writeInt(hearers.networks().size());
        for (Network network : hearers.networks()) {
            network.write(out);
        }
        out.writeInt(hearers.common().length);
        for (int word : hearers.common()) {
            out.writeInt(word);
        }
        ofWords.write(out);
        ofReadings.write(out);
    }

    static Ear read(ByteBuffer in) {
        Classifier symptoms = Classifier.read(in);
        Classifier details = Classifier.read(in);
        List<Network> networks = new ArrayList<>();
        for (int count = in.getInt(); count > 0; count--) {
            networks.add(Network.read(in));
        }
        int[] common = new int[in.getInt()];
        in.asIntBuffer().get(common);
        in.position(in.position() + Integer.BYTES * common.length);
        return new Ear(new Hearers(symptoms, details, networks, common), Judge.read(in), Judge.read(in));
    }
}
