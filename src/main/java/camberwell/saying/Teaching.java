package camberwell.saying;

import camberwell.classifier.Classifier;
import camberwell.classifier.Example;
import camberwell.classifier.Features;
import camberwell.classifier.Network;
import camberwell.classifier.NetworkTraining;
import camberwell.classifier.Training;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Teaches an {@link Ear}. Besides those that it consists of, others are taught without one half of the files each, and asked for
 * the sayings of that half, whose authors they have not heard: of how often that is right the two judges learn. Always the same
 * of the same lessons, on however many cores.
 */
final class Teaching {

    private static final Training.Plan ONE = new Training.Plan(5, 1e-5, 0.05, 8, true);
    private static final Training.Plan EACH = new Training.Plan(5, 1e-5, 0.05, 8, false);
    private static final NetworkTraining.Plan BOTH = new NetworkTraining.Plan(48, 5, 0.3, 0.15, 0.02, 16);
    private static final int NETWORKS = 2;
    /** What is only asked for the judges' sake is taught in fewer rounds. */
    private static final NetworkTraining.Plan HALF = new NetworkTraining.Plan(48, 4, 0.3, 0.15, 0.02, 16);
    /** In how many lessons a word has to be, so that it is not known by its letters too. */
    private static final int COMMON = 30;
    /** In how many lessons a word has to narrow a symptom, to be told as narrowing it. */
    private static final int PAIRED = 40;
    /** Files of fewer lessons are no half's, but everybody's. */
    private static final int FEW = 1000;
    /** How often those are heard that the grammar was made with: few, and by whoever says what the words mean. */
    private static final int TIMES = 3;
    /** Of how many lessons one is judged. */
    private static final int JUDGED = 4;

    private final Sayings sayings;
    private final List<List<Lesson>> files;
    private final List<Lesson> lessons = new ArrayList<>();
    private final List<Heard> heard;
    private final List<Cues> cues;
    private final int[] common;
    private final List<int[]> ofSymptoms;
    private final List<int[]> ofDetails;
    private final List<int[]> ofBoth;
    private final Set<String> paired;

    private Teaching(Sayings sayings, List<List<Lesson>> files) {
        this.sayings = sayings;
        this.files = files;
        files.forEach(lessons::addAll);
        heard = lessons.parallelStream().map(lesson -> Hearing.of(sayings, lesson.saying())).toList();
        // What the grammar makes of a lesson counts only where the grammar has not met it.
        cues = IntStream.range(0, lessons.size()).parallel().mapToObj(i -> lessons.get(i).met()
                ? Cues.of(sayings, lessons.get(i).saying())
                : Cues.of(sayings, lessons.get(i).saying(), heard.get(i))).toList();
        common = common(cues);
        ofSymptoms = cues.parallelStream().map(Cues::ofSymptoms).toList();
        ofDetails = cues.parallelStream().map(Cues::ofDetails).toList();
        ofBoth = cues.parallelStream().map(one -> one.ofBoth(Ear.isIn(common))).toList();
        paired = paired(lessons);
    }

    /** The ear that these lessons teach, file by file. */
    static Ear of(Sayings sayings, List<List<Lesson>> files) {
        return new Teaching(sayings, files).taught();
    }

    private Ear taught() {
        List<boolean[]> halves = List.of(half(0), half(1));
        CompletableFuture<Ear.Hearers> all = hearers(new boolean[lessons.size()], BOTH, NETWORKS);
        List<CompletableFuture<Ear.Hearers>> without = halves.stream().map(half -> hearers(half, HALF, 1)).toList();
        List<Impression> impressions = new ArrayList<>();
        List<Integer> judged = new ArrayList<>();
        List<Ear.Hearers> hearers = new ArrayList<>();
        for (int half = 0; half < halves.size(); half++) {
            Ear.Hearers others = without.get(half).join();
            boolean[] out = halves.get(half);
            List<Integer> here = IntStream.range(0, lessons.size()).filter(i -> out[i] && i % JUDGED == 0).boxed().toList();
            judged.addAll(here);
            here.forEach(i -> hearers.add(others));
            impressions.addAll(here.parallelStream().map(i -> Ear.impression(others, cues.get(i))).toList());
        }
        Judge ofWords = Judge.taught(IntStream.range(0, judged.size()).parallel()
                .mapToObj(k -> words(judged.get(k), impressions.get(k), hearers.get(k))).flatMap(List::stream).toList());
        Judge ofReadings = Judge.taught(IntStream.range(0, judged.size()).parallel()
                .mapToObj(k -> readings(judged.get(k), impressions.get(k), new Ear(hearers.get(k), ofWords, null)))
                .flatMap(List::stream).toList());
        return new Ear(all.join(), ofWords, ofReadings);
    }

    /** Which lessons are in every other of the large files. */
    private boolean[] half(int which) {
        boolean[] half = new boolean[lessons.size()];
        int large = 0;
        int at = 0;
        for (List<Lesson> file : files) {
            if (file.size() >= FEW && large++ % 2 == which) {
                Arrays.fill(half, at, at + file.size(), true);
            }
            at += file.size();
        }
        return half;
    }

    /** Those that all lessons teach but these. */
    private CompletableFuture<Ear.Hearers> hearers(boolean[] without, NetworkTraining.Plan plan, int networks) {
        List<Example> forSymptoms = new ArrayList<>();
        List<Example> forDetails = new ArrayList<>();
        List<Example> forBoth = new ArrayList<>();
        Set<String> told = new HashSet<>();
        for (int i = 0; i < without.length; i++) {
            if (!without[i]) {
                Lesson lesson = lessons.get(i);
                Set<String> narrowing = common(lesson.labels(), Lesson.DETAILS);
                Set<String> what = new HashSet<>(lesson.labels());
                what.removeAll(narrowing);
                told.addAll(what);
                Set<String> all = common(lesson.pairs(), paired);
                all.addAll(lesson.labels());
                Set<String> open = common(lesson.openPairs(), paired);
                open.addAll(lesson.open());
                for (int time = 0; time < (lesson.met() ? TIMES : 1); time++) {
                    forSymptoms.add(new Example(ofSymptoms.get(i), what, lesson.open()));
                    forDetails.add(new Example(ofDetails.get(i), narrowing, lesson.open()));
                    forBoth.add(new Example(ofBoth.get(i), all, open));
                }
            }
        }
        List<CompletableFuture<Network>> third = IntStream.rangeClosed(1, networks)
                .mapToObj(seed -> beside(() -> NetworkTraining.of(forBoth, told, plan, seed))).toList();
        CompletableFuture<Classifier> first = beside(() -> Training.of(forSymptoms, ONE));
        CompletableFuture<Classifier> second = beside(() -> Training.of(forDetails, EACH));
        return first.thenCombine(second, (symptoms, details) -> new Ear.Hearers(symptoms, details,
                third.stream().map(CompletableFuture::join).toList(), common));
    }

    private static <T> CompletableFuture<T> beside(Supplier<T> what) {
        return CompletableFuture.supplyAsync(what);
    }

    /** Each word that may narrow what is meant, and whether it does. */
    private List<Judge.Case> words(int at, Impression impression, Ear.Hearers hearers) {
        List<Judge.Case> cases = new ArrayList<>();
        Lesson lesson = lessons.get(at);
        Set<String> symptoms = common(lesson.labels(), Set.copyOf(Word.ids(Symptom.class)));
        Named named = Named.of(Cover.ofAll(sayings, lesson.saying()));
        for (String id : symptoms.stream().sorted().toList()) {
            Symptom symptom = Word.of(Symptom.class, id);
            List<Optional<Told>> reads = new ArrayList<>();
            heard.get(at).told().stream().filter(told -> told.symptom() == symptom).forEach(told -> reads.add(Optional.of(told)));
            if (reads.isEmpty()) {
                reads.add(Optional.empty());
            }
            WordEvidence evidence = new WordEvidence(impression, heard.get(at), named.words(),
                    new Parts(sayings, new Ear(hearers, null, null), lesson.saying()),
                    symptoms.size() > 1 || heard.get(at).told().size() > 1);
            for (Optional<Told> read : reads) {
                for (Class<? extends Word> kind : Details.KINDS) {
                    for (Word word : Details.weighed(evidence, symptom, kind, read)) {
                        String pair = Lesson.pair(id, word.id());
                        if (!lesson.openPairs().contains(pair)) {
                            cases.add(new Judge.Case(evidence.of(symptom, word, read), lesson.pairs().contains(pair)));
                        }
                    }
                }
            }
        }
        return cases;
    }

    /** Each reading that a saying may have, and whether it is what is meant. */
    private List<Judge.Case> readings(int at, Impression impression, Ear ear) {
        Lesson lesson = lessons.get(at);
        return Candidates.of(ear, lesson.saying(), heard.get(at), impression, Cover.ofAll(sayings, lesson.saying()),
                        new Parts(sayings, ear, lesson.saying()))
                .stream().map(candidate -> new Judge.Case(candidate.evidence(), lesson.isMeant(candidate.heard()))).toList();
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
}
