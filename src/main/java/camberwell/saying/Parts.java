package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The parts of a saying, cut where a new clause may begin: two complaints sound like one of them each, and beside one complaint
 * there may be what is none.
 */
final class Parts {

    private static final String MARKS = ",.;:!?-\u2013\u2014/";
    /** What may join two clauses, in several languages. */
    private static final List<String> JOINS = List.of(" and ", " but ", " then ", " while ", " when ", " und ", " aber ", " et ",
            " mais ", " y ", " pero ", " e ", " ma ");
    /** How sure both parts have to be together. */
    private static final double SURE = 0.62;

    /** How sure each of two parts has to be, of which one is no complaint. */
    private static final double APART = 0.75;

    private Parts() {
    }

    /** The complaint of each part, if some cut leaves two parts that sound like just these; none otherwise. */
    static List<Told> of(Sayings sayings, Ear ear, String said, Set<String> sounds) {
        List<Told> best = List.of();
        double most = SURE;
        for (int cut : cuts(said)) {
            List<Told> parts = new ArrayList<>();
            Set<String> told = new TreeSet<>();
            double both = 1;
            for (String part : List.of(said.substring(0, cut), said.substring(cut))) {
                Heard heard = Hearing.of(sayings, part);
                Impression here = ear.impression(sayings, part, heard);
                Set<String> likeliest = here.likeliest();
                both *= here.sure(likeliest);
                told.addAll(likeliest);
                if (likeliest.size() == 1 && !Lesson.NO_COMPLAINT.containsAll(likeliest)) {
                    parts.addAll(Details.of(here, Word.of(Symptom.class, likeliest.iterator().next()), heard, List.of()).told());
                }
            }
            if (parts.size() == 2 && told.equals(sounds) && both > most) {
                most = both;
                best = parts;
            }
        }
        return best;
    }

    /**
     * What the part sounds like that tells that symptom, if it is sure by itself, and so is the other that it is no complaint:
     * "it pushes on the way in, and the seat hurts".
     */
    static Optional<Impression> beside(Sayings sayings, Ear ear, String said, String symptom) {
        for (int cut : cuts(said)) {
            Optional<Impression> first = alone(sayings, ear, said.substring(0, cut), symptom);
            if (first.isPresent() && other(sayings, ear, said.substring(cut))) {
                return first;
            }
            Optional<Impression> second = alone(sayings, ear, said.substring(cut), symptom);
            if (second.isPresent() && other(sayings, ear, said.substring(0, cut))) {
                return second;
            }
        }
        return Optional.empty();
    }

    private static Optional<Impression> alone(Sayings sayings, Ear ear, String part, String symptom) {
        Heard heard = Hearing.of(sayings, part);
        Impression here = ear.impression(sayings, part, heard);
        return heard.told().size() == 1 && heard.told().get(0).symptom().id().equals(symptom)
                && here.likeliest().equals(Set.of(symptom)) && here.sure(Set.of(symptom)) >= APART ? Optional.of(here)
                : Optional.empty();
    }

    private static boolean other(Sayings sayings, Ear ear, String part) {
        Heard heard = Hearing.of(sayings, part);
        Impression here = ear.impression(sayings, part, heard);
        return heard.told().isEmpty() && !heard.fine() && here.likely(Lesson.REFUSED) + here.likely(Lesson.NOTHING) >= APART;
    }

    /** Where a new clause may begin. */
    private static List<Integer> cuts(String said) {
        List<Integer> cuts = new ArrayList<>();
        for (int at = 1; at + 1 < said.length(); at++) {
            if (MARKS.indexOf(said.charAt(at)) >= 0) {
                cuts.add(at + 1);
            }
            for (String join : JOINS) {
                if (said.regionMatches(true, at, join, 0, join.length())) {
                    cuts.add(at);
                }
            }
        }
        return cuts;
    }
}
