package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a saying sounds like as a whole.
 *
 * @param what how likely each symptom is, and each of {@link Lesson#NOTHING}, {@link Lesson#REFUSED} and {@link Lesson#DAY}
 * @param details how likely each word is that narrows a complaint, and each that narrows just that one ({@link Lesson#pair})
 * @param members what each of those that were asked says by itself, of both
 */
record Impression(Map<String, Double> what, Map<String, Double> details, List<Map<String, Double>> members) {

    private static final double EVEN = 0.6;
    /** How likely the second of several has to be. */
    private static final double SECOND = 0.2;
    /** How likely that it is several has to be, so that the second may be less. */
    private static final double CLEARLY = 0.9;
    private static final double SECOND_OF_CLEARLY = 0.08;
    /** How sure it is one that sounds like several of which there is no second. */
    private static final double NO_SECOND = 0.78;

    /** One of which no members are known. */
    Impression(Map<String, Double> what, Map<String, Double> details) {
        this(what, details, List.of());
    }

    /** What it sounds like most: one, or two where it sounds like several. */
    Set<String> likeliest() {
        String first = first(Set.of());
        String second = several() && !Lesson.NO_COMPLAINT.contains(first) ? second(first) : first;
        return second.equals(first) ? Set.of(first) : Set.of(first, second);
    }

    /** Whether it sounds like several, and there is a second. */
    private boolean several() {
        String first = first(Set.of());
        double several = details.getOrDefault(Lesson.SEVERAL, 0.0);
        return several > EVEN && likely(second(first)) >= (several > CLEARLY ? SECOND_OF_CLEARLY : SECOND);
    }

    private String second(String first) {
        Set<String> not = new TreeSet<>(Lesson.NO_COMPLAINT);
        not.add(first);
        return first(not);
    }

    private String first(Set<String> not) {
        String first = "";
        for (Map.Entry<String, Double> one : what.entrySet()) {
            boolean before = first.isEmpty() || one.getValue() > what.get(first);
            first = before && !not.contains(one.getKey()) ? one.getKey() : first;
        }
        return first;
    }

    /** How likely it is that it is these and no others. */
    double sure(Set<String> these) {
        double several = details.getOrDefault(Lesson.SEVERAL, 0.0);
        double sure = these.size() > 1 ? several : several > EVEN && !several() ? NO_SECOND : 1 - several;
        return sure * likelyAny(these);
    }

    /** How likely it is that one of these is told, be it with others. */
    double likelyAny(Set<String> these) {
        double share = 0;
        for (String one : these) {
            share += likely(one);
        }
        return share;
    }

    /** How likely it is that the symptom, or one of {@link Lesson#NO_COMPLAINT}, is meant; 0 for one that was never met. */
    double likely(String of) {
        return what.getOrDefault(of, 0.0);
    }

    /** How likely it is that several complaints are meant. */
    double likelySeveral() {
        return details.getOrDefault(Lesson.SEVERAL, 0.0);
    }

    /** How likely a label is by one of the members alone; 0 for one that it has never met. */
    double by(int member, String label) {
        return members.get(member).getOrDefault(label, 0.0);
    }

    /** The symptoms, the likeliest first. */
    List<Symptom> symptoms() {
        return what.keySet().stream().filter(one -> !Lesson.NO_COMPLAINT.contains(one))
                .sorted(Comparator.comparing((String one) -> -what.get(one)).thenComparing(Comparator.naturalOrder()))
                .map(one -> Word.of(Symptom.class, one)).toList();
    }

    /** How likely it is that a word that narrows is meant; 0 for one that was never met. */
    double likely(Word detail) {
        return details.getOrDefault(detail.id(), 0.0);
    }

    /** How likely it is that a word is meant where that symptom is the only one: by itself, and as narrowing just that. */
    double likely(Symptom symptom, Word detail) {
        Double pair = details.get(Lesson.pair(symptom.id(), detail.id()));
        return pair == null ? likely(detail) : Pool.ofOdds(pair, likely(detail));
    }

    /** How likely it is that a word narrows that symptom of several. */
    double likelyOf(Symptom symptom, Word detail) {
        Double pair = details.get(Lesson.pair(symptom.id(), detail.id()));
        return pair == null ? likely(detail) : pair;
    }

    /** Whether it was met often enough that the word narrows that symptom. */
    boolean pairs(Symptom symptom, Word detail) {
        return details.containsKey(Lesson.pair(symptom.id(), detail.id()));
    }

    /** Whether there is anything to be told of that symptom: it was met. */
    boolean knows(String symptom) {
        return what.containsKey(symptom);
    }
}
