package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * The parts of a saying, cut where a new clause may begin: two complaints sound like one of them each, and beside one complaint
 * there may be what is none.
 */
final class Parts {

    private static final String MARKS = ",.;:!?-\u2013\u2014/";
    /** What may join two clauses, in several languages. */
    private static final List<String> JOINS = List.of(" and ", " but ", " then ", " while ", " when ", " und ", " aber ", " et ",
            " mais ", " y ", " pero ", " e ", " ma ");
    /** What joins a clause to one that only says when. */
    private static final String WHEN = " when ";
    /** How sure both parts have to be together, to be worth weighing. */
    private static final double SURE = 0.4;
    /** How sure a part has to sound like that one complaint, to be asked what narrows it. */
    private static final double ABOUT = 0.5;
    /** How sure each of two parts has to be, of which one is no complaint. */
    private static final double APART = 0.75;

    private final Sayings sayings;
    private final Ear ear;
    private final String said;
    private final Map<String, Part> heard = new HashMap<>();
    private final Map<Symptom, Optional<Impression>> about = new HashMap<>();

    /** A part, as the grammar reads it and as it sounds. */
    record Part(String text, Heard heard, Impression sounds) {
    }

    /**
     * A complaint of each of two parts.
     *
     * @param doubts what is left out of them
     * @param sure how sure both are together
     */
    record Two(List<Told> told, List<Heard.Unclear> doubts, double sure) {
    }

    Parts(Sayings sayings, Ear ear, String said) {
        this.sayings = sayings;
        this.ear = ear;
        this.said = said;
    }

    private Part part(int from, int to) {
        return part(said.substring(from, to));
    }

    private Part part(String words) {
        return heard.computeIfAbsent(words, text -> {
            Heard read = Hearing.of(sayings, text);
            return new Part(text, read, ear.impression(sayings, text, read));
        });
    }

    /** Each of its clauses, without what joins them; the whole where it is one. */
    List<Part> clauses() {
        List<Part> clauses = new ArrayList<>();
        int from = 0;
        for (int cut : cuts(said)) {
            boolean mark = MARKS.indexOf(said.charAt(cut - 1)) >= 0;
            if (cut > from && (mark ? said.charAt(cut) == ' ' : !said.regionMatches(true, cut, WHEN, 0, WHEN.length()))) {
                clause(from, cut).ifPresent(clauses::add);
                from = cut;
            }
        }
        clause(from, said.length()).ifPresent(clauses::add);
        return clauses;
    }

    private Optional<Part> clause(int from, int to) {
        String words = said.substring(from, to).strip();
        String join = JOINS.stream().map(String::strip).filter(it -> words.regionMatches(true, 0, it + " ", 0, it.length() + 1))
                .findFirst().orElse("");
        String rest = words.substring(join.length()).strip();
        int end = rest.length();
        while (end > 0 && MARKS.indexOf(rest.charAt(end - 1)) >= 0) {
            end--;
        }
        return end == 0 ? Optional.empty() : Optional.of(part(rest.substring(0, end).strip()));
    }

    /** The complaint of each part, if some cut leaves two parts that sound like one each; of several cuts the surest. */
    Optional<Two> two() {
        Two best = new Two(List.of(), List.of(), SURE);
        for (int cut : cuts(said)) {
            List<Told> told = new ArrayList<>();
            List<Heard.Unclear> doubts = new ArrayList<>();
            double sure = 1;
            for (Part part : List.of(part(0, cut), part(cut, said.length()))) {
                Set<String> likeliest = part.sounds().likeliest();
                sure *= part.sounds().sure(likeliest);
                if (likeliest.size() == 1 && !Lesson.NO_COMPLAINT.containsAll(likeliest)) {
                    Details.Outcome outcome = Details.of(ear.ofWords(), part.sounds(),
                            List.of(Word.of(Symptom.class, likeliest.iterator().next())), part.heard(), Named.NOTHING,
                            new Parts(sayings, ear, part.text()));
                    told.addAll(outcome.told());
                    doubts.addAll(outcome.doubts());
                }
            }
            boolean apart = told.size() == 2 && !told.get(0).equals(told.get(1)) && !told.get(0).within(told.get(1))
                    && !told.get(1).within(told.get(0));
            if (apart && sure > best.sure()) {
                best = new Two(told, doubts, sure);
            }
        }
        return best.told().isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** What that part sounds like, up to a cut or from there on, which sounds most like that symptom alone. */
    Optional<Impression> about(Symptom symptom) {
        return about.computeIfAbsent(symptom, fresh -> {
            Set<String> just = Set.of(symptom.id());
            Impression best = null;
            for (int cut : cuts(said)) {
                for (Part part : List.of(part(0, cut), part(cut, said.length()))) {
                    double sure = part.sounds().likeliest().equals(just) ? part.sounds().sure(just) : 0;
                    best = sure >= ABOUT && (best == null || sure > best.sure(just)) ? part.sounds() : best;
                }
            }
            return Optional.ofNullable(best);
        });
    }

    /**
     * What the part sounds like that tells that symptom, if it is sure by itself, and so is the other that it is no complaint:
     * "it pushes on the way in, and the seat hurts".
     */
    Optional<Impression> beside(Symptom symptom) {
        for (int cut : cuts(said)) {
            Part first = part(0, cut);
            Part second = part(cut, said.length());
            if (alone(first, symptom) && other(second)) {
                return Optional.of(first.sounds());
            }
            if (alone(second, symptom) && other(first)) {
                return Optional.of(second.sounds());
            }
        }
        return Optional.empty();
    }

    private static boolean alone(Part part, Symptom symptom) {
        Set<String> just = Set.of(symptom.id());
        return part.heard().told().size() == 1 && part.heard().told().get(0).symptom() == symptom
                && part.sounds().likeliest().equals(just) && part.sounds().sure(just) >= APART;
    }

    private static boolean other(Part part) {
        return part.heard().told().isEmpty() && !part.heard().fine()
                && part.sounds().likely(Lesson.REFUSED) + part.sounds().likely(Lesson.NOTHING) >= APART;
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
