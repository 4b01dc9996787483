package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Two complaints in one saying: cut where a new clause may begin, its two parts sound like one of them each. */
final class Parts {

    private static final String MARKS = ",.;:!?-\u2013\u2014/";
    /** What may join two clauses, in several languages. */
    private static final List<String> JOINS = List.of(" and ", " but ", " then ", " while ", " when ", " und ", " aber ", " et ",
            " mais ", " y ", " pero ", " e ", " ma ");
    /** How sure both parts have to be together. */
    private static final double SURE = 0.5;

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
