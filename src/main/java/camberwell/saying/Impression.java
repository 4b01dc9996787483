package camberwell.saying;

import camberwell.vocabulary.Word;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * What a saying sounds like as a whole.
 *
 * @param what how likely each symptom is, and each of {@link Lesson#NOTHING}, {@link Lesson#REFUSED} and {@link Lesson#DAY}
 * @param details how likely each word is that narrows a complaint
 */
record Impression(Map<String, Double> what, Map<String, Double> details) {

    private static final double EVEN = 0.5;

    /** What it sounds like most: one, or two where it sounds like several. */
    Set<String> likeliest() {
        String first = first(Set.of());
        if (!several() || Lesson.NO_COMPLAINT.contains(first)) {
            return Set.of(first);
        }
        Set<String> not = new TreeSet<>(Lesson.NO_COMPLAINT);
        not.add(first);
        return Set.of(first, first(not));
    }

    private boolean several() {
        return details.getOrDefault(Lesson.SEVERAL, 0.0) > EVEN;
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
        double sure = these.size() > 1 ? several : 1 - several;
        double share = 0;
        double least = 1;
        for (String one : these) {
            share += likely(one);
            least = Math.min(least, likely(one));
        }
        return these.size() > 1 ? sure * share * Math.min(1, 4 * least) : sure * share;
    }

    /** How likely it is that the symptom, or one of {@link Lesson#NO_COMPLAINT}, is meant; 0 for one that was never met. */
    double likely(String of) {
        return what.getOrDefault(of, 0.0);
    }

    /** How likely it is that a word that narrows is meant; 0 for one that was never met. */
    double likely(Word detail) {
        return details.getOrDefault(detail.id(), 0.0);
    }

    /** Whether there is anything to be told of that symptom: it was met. */
    boolean knows(String symptom) {
        return what.containsKey(symptom);
    }
}
