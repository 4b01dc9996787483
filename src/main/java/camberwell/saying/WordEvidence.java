package camberwell.saying;

import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/**
 * What speaks for a word that narrows a complaint, and against it.
 *
 * @param heard what the grammar makes of the saying
 * @param named every word that narrows and is named somewhere in it, whatever it is said of
 * @param parts of the saying: of several complaints each is in one
 * @param several whether the complaint is one of several
 */
record WordEvidence(Impression impression, Heard heard, List<Word> named, Parts parts, boolean several) {

    /** How likely it sounds that the word narrows that symptom. */
    double likely(Symptom symptom, Word word) {
        return several ? impression.likelyOf(symptom, word) : impression.likely(symptom, word);
    }

    /** @param read what the grammar reads of that complaint; empty where it reads another or none */
    Evidence of(Symptom symptom, Word word, Optional<Told> read) {
        String kind = word.getClass().getSimpleName() + (several ? " of several" : "");
        boolean said = read.filter(told -> told.words().contains(word)).isPresent();
        boolean exact = heard.exact();
        String how = said ? exact ? "read of all" : "read" : read.isEmpty() ? "silent" : exact ? "not in all" : "not read";
        String sort = kind + " " + how;
        String pair = Lesson.pair(symptom.id(), word.id());
        double rival = 0;
        for (Word other : Word.all(word.getClass())) {
            rival = other == word ? rival : Math.max(rival, likely(symptom, other));
        }
        Evidence evidence = new Evidence().is(sort).is(kind).is(how).is(word.id()).is(pair).is(word.id() + " " + how)
                .likely("sounds", likely(symptom, word), sort).likely("rival", rival, kind)
                .likely("word", impression.likely(word), kind);
        if (impression.pairs(symptom, word)) {
            evidence.likely("pair", impression.likelyOf(symptom, word), kind);
        }
        Optional<Impression> part = several ? parts.about(symptom) : Optional.empty();
        if (part.isPresent()) {
            evidence.likely("in its part", part.get().likely(symptom, word), sort);
        }
        for (int member = 0; member < impression.members().size(); member++) {
            evidence.likely("by " + member, impression.by(member, word.id()), kind);
        }
        return evidence.is("named", named.contains(word)).is("loose", heard.loose().contains(word))
                .is("of another",
                        heard.told().stream().anyMatch(told -> told != read.orElse(null) && told.words().contains(word)))
                .is("another read", !said && read.filter(told -> told.word(word.getClass()).isPresent()).isPresent())
                .is("excluded", read.filter(told -> told.notIn().contains(word)).isPresent())
                .is("other named", named.stream().anyMatch(other -> other != word && other.getClass() == word.getClass()))
                .count("told", heard.told().size(), 3)
                .is("twice", heard.told().stream().filter(told -> told.symptom() == symptom).count() > 1);
    }
}
