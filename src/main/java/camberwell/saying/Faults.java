package camberwell.saying;

import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/**
 * What is no balance and may hurt somebody, as a driver tells it: "the rear wheel is loose". It is heard before all else, since
 * most of it sounds like a complaint of the balance; what is said besides is heard without that clause.
 *
 * @param told what was told of it
 * @param rest what was said besides
 */
record Faults(String said, List<Told> told, String rest) {

    private static final Set<Meaning.Sign> DENYING = Set.of(Meaning.Sign.NOT, Meaning.Sign.UNREAL, Meaning.Sign.GONE);
    /** How many words before it may deny it. */
    private static final int BEFORE = 4;

    /** Those of a saying; empty where there are none, or all are denied. */
    static Optional<Faults> of(Sayings sayings, String said) {
        List<Told> told = new ArrayList<>();
        List<String> rest = new ArrayList<>();
        for (List<Token> sentence : sayings.sentences(said)) {
            int from = 0;
            for (Atom atom : Cover.of(sayings, sentence, sayings.faults())) {
                if (denied(sayings, sentence, atom)) {
                    continue;
                }
                Symptom symptom = atom.as(Meaning.Complaint.class).orElseThrow().symptom();
                if (told.stream().noneMatch(one -> one.symptom() == symptom)) {
                    told.add(Told.of(symptom));
                }
                int begins = atom.from();
                while (begins > from && !Cover.boundary(sentence.get(begins - 1))) {
                    begins--;
                }
                rest.add(Tokens.typed(sentence.subList(from, begins)));
                from = atom.to();
                while (from < sentence.size() && !Cover.boundary(sentence.get(from))) {
                    from++;
                }
            }
            rest.add(Tokens.typed(sentence.subList(from, sentence.size())));
        }
        rest.removeIf(String::isBlank);
        return told.isEmpty() ? Optional.empty() : Optional.of(new Faults(said, told, String.join(". ", rest)));
    }

    /** Whether it is denied in its clause: "no vibration at all". */
    private static boolean denied(Sayings sayings, List<Token> sentence, Atom fault) {
        int from = fault.from();
        while (from > 0 && fault.from() - from < BEFORE && !sentence.get(from - 1).comma()) {
            from--;
        }
        int to = fault.to();
        while (to < sentence.size() && to - fault.to() < BEFORE && !sentence.get(to).comma()) {
            to++;
        }
        return Cover.of(sayings, sentence.subList(from, fault.from())).stream()
                .anyMatch(atom -> DENYING.stream().anyMatch(atom::is))
                || Cover.of(sayings, sentence.subList(fault.to(), to)).stream().anyMatch(atom -> atom.is(Meaning.Sign.GONE));
    }

    /** What is understood of all of it: no setting is worth a question before the car was looked at. */
    Heard with(Function<String, Heard> balance) {
        Heard besides = balance.apply(rest);
        List<Told> all = new ArrayList<>(told);
        all.addAll(besides.told());
        boolean more = !besides.told().isEmpty();
        return new Heard(said, all, besides.surface(), false, more ? besides.loose() : List.of(),
                more ? besides.unclear() : List.of(), more ? besides.notUnderstood() : List.of());
    }
}
