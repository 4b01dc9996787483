package camberwell.saying;

import camberwell.classifier.Classifier;
import camberwell.classifier.Example;
import camberwell.classifier.Features;
import camberwell.classifier.Network;
import camberwell.classifier.NetworkTraining;
import camberwell.classifier.Training;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Predicate;

/**
 * The second listener. It has no grammar, but has heard some thousand sayings with their meaning, and tells what a new one sounds
 * like. Two that go about it in different ways are heard, and their geometric mean counts (a logarithmic opinion pool: Genest and
 * Zidek, Statistical Science 1, 1986, 114-135): logistic regressions, one of the symptoms and one of the words that narrow them,
 * and a network for both, which knows words by their letters as well, and which word narrows which symptom.
 */
final class Ear {

    private static final Training.Plan ONE = new Training.Plan(8, 1e-5, 0.05, 6, true);
    private static final Training.Plan EACH = new Training.Plan(8, 1e-5, 0.05, 6, false);
    private static final NetworkTraining.Plan BOTH = new NetworkTraining.Plan(64, 6, 0.3, 0.15, 0.02, 12);
    /** In how many lessons a word has to be, so that it is not known by its letters too. */
    private static final int COMMON = 30;
    /** In how many lessons a word has to narrow a symptom, to be told as narrowing it. */
    private static final int PAIRED = 25;

    private final Classifier symptoms;
    private final Classifier details;
    private final Network both;
    /** The features that common words are, sorted. */
    private final int[] common;

    private Ear(Classifier symptoms, Classifier details, Network both, int[] common) {
        this.symptoms = symptoms;
        this.details = details;
        this.both = both;
        this.common = common;
    }

    /** One that learns from these. What the grammar makes of a lesson counts only where the grammar has not met it. */
    static Ear taught(Sayings sayings, List<Lesson> lessons) {
        List<Cues> cues = lessons.parallelStream().map(lesson -> lesson.met() ? Cues.of(sayings, lesson.saying())
                : Cues.of(sayings, lesson.saying(), Hearing.of(sayings, lesson.saying()))).toList();
        int[] common = common(cues);
        Example[] ofSymptoms = new Example[cues.size()];
        Example[] ofDetails = new Example[cues.size()];
        Example[] ofBoth = new Example[cues.size()];
        Set<String> paired = paired(lessons);
        Set<String> told = new HashSet<>();
        for (int i = 0; i < cues.size(); i++) {
            Lesson lesson = lessons.get(i);
            Set<String> narrowing = common(lesson.labels(), Lesson.DETAILS);
            Set<String> what = new HashSet<>(lesson.labels());
            what.removeAll(narrowing);
            told.addAll(what);
            Set<String> all = common(lesson.pairs(), paired);
            all.addAll(lesson.labels());
            Set<String> open = common(lesson.openPairs(), paired);
            open.addAll(lesson.open());
            ofSymptoms[i] = new Example(cues.get(i).ofSymptoms(), what, lesson.open());
            ofDetails[i] = new Example(cues.get(i).ofDetails(), narrowing, lesson.open());
            ofBoth[i] = new Example(cues.get(i).ofBoth(isIn(common)), all, open);
        }
        CompletableFuture<Classifier> first = CompletableFuture.supplyAsync(() -> Training.of(List.of(ofSymptoms), ONE));
        CompletableFuture<Classifier> second = CompletableFuture.supplyAsync(() -> Training.of(List.of(ofDetails), EACH));
        Network third = NetworkTraining.of(List.of(ofBoth), told, BOTH);
        return new Ear(first.join(), second.join(), third, common);
    }

    private static Set<String> common(Set<String> some, Set<String> others) {
        Set<String> common = new HashSet<>(some);
        common.retainAll(others);
        return common;
    }

    private static int[] common(List<Cues> cues) {
        Map<Integer, Integer> often = new HashMap<>();
        for (Cues one : cues) {
            one.words().stream().distinct().forEach(word -> often.merge(Features.ofWord(word), 1, Integer::sum));
        }
        return often.keySet().stream().filter(word -> often.get(word) >= COMMON).mapToInt(Integer::intValue).sorted().toArray();
    }

    private static Set<String> paired(List<Lesson> lessons) {
        Map<String, Integer> often = new HashMap<>();
        lessons.forEach(lesson -> lesson.pairs().forEach(pair -> often.merge(pair, 1, Integer::sum)));
        often.values().removeIf(count -> count < PAIRED);
        return often.keySet();
    }

    private static Predicate<String> isIn(int[] common) {
        return word -> Arrays.binarySearch(common, Features.ofWord(word)) >= 0;
    }

    /** What a saying sounds like, of which the grammar makes {@code heard}. */
    Impression impression(Sayings sayings, String said, Heard heard) {
        Cues cues = Cues.of(sayings, said, heard);
        Map<String, Double> second = likely(both.labels(), both.probabilities(cues.ofBoth(isIn(common))));
        Map<String, Double> what = likely(symptoms.labels(), symptoms.probabilities(cues.ofSymptoms()));
        what.replaceAll((label, likely) -> Math.sqrt(likely * second.get(label)));
        double all = what.values().stream().mapToDouble(Double::doubleValue).sum();
        what.replaceAll((label, likely) -> likely / all);
        Map<String, Double> narrowing = likely(details.labels(), details.probabilities(cues.ofDetails()));
        narrowing.replaceAll((label, likely) -> Impression.pooled(likely, second.get(label)));
        second.keySet().removeAll(what.keySet());
        narrowing.forEach(second::put);
        return new Impression(what, second);
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

    private static Map<String, Double> likely(List<String> labels, double[] probabilities) {
        Map<String, Double> likely = new HashMap<>();
        for (int i = 0; i < probabilities.length; i++) {
            likely.put(labels.get(i), probabilities[i]);
        }
        return likely;
    }

    void write(DataOutputStream out) throws IOException {
        symptoms.write(out);
        details.write(out);
        both.write(out);
        out.writeInt(common.length);
        for (int word : common) {
            out.writeInt(word);
        }
    }

    static Ear read(ByteBuffer in) {
        Classifier symptoms = Classifier.read(in);
        Classifier details = Classifier.read(in);
        Network both = Network.read(in);
        int[] common = new int[in.getInt()];
        in.asIntBuffer().get(common);
        in.position(in.position() + Integer.BYTES * common.length);
        return new Ear(symptoms, details, both, common);
    }
}
