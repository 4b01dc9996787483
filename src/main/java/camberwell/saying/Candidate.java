package camberwell.saying;

import camberwell.vocabulary.Word;
import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;

/**
 * One reading of a whole saying, of several that it may have.
 *
 * @param sort how it was come by
 * @param means the symptoms that it tells; {@link Lesson#NOTHING} where all is well
 * @param heard what would be taken
 */
record Candidate(Sort sort, Set<String> means, Heard heard, Evidence evidence) {

    /** How a reading was come by. */
    enum Sort {
        /** The grammar reads it. */
        READ,
        /** It sounds like that symptom most, and the grammar reads another or none. */
        FIRST,
        /** It sounds like that next. */
        SECOND,
        /** Two parts of it sound like a symptom each. */
        PARTS,
        /** It sounds like two symptoms. */
        TWO,
        /** Nothing is wrong. */
        WELL
    }

    static Candidate of(Sort sort, Heard heard) {
        Set<String> means = new TreeSet<>();
        heard.told().forEach(told -> means.add(told.symptom().id()));
        if (sort == Sort.WELL) {
            means.add(Lesson.NOTHING);
        }
        return new Candidate(sort, means, heard, new Evidence());
    }

    /** Each symptom with the words that narrow it. */
    Set<Set<Word>> tells() {
        Set<Set<Word>> tells = new HashSet<>();
        for (Told told : heard.told()) {
            Set<Word> words = new HashSet<>(told.words());
            words.add(told.symptom());
            tells.add(words);
        }
        return tells;
    }
}
