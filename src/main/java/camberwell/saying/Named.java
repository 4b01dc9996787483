package camberwell.saying;

import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * The words of the vocabulary that phrases in a saying name.
 *
 * @param words that narrow a complaint, whatever they are said of
 * @param phrased those of phrases that tell a complaint whole: who wrote those knows what they mean, and a pack's no ear can know
 */
record Named(List<Word> words, List<Word> phrased) {

    static final Named NOTHING = new Named(List.of(), List.of());

    static Named of(List<Atom> atoms) {
        List<Word> words = new ArrayList<>();
        List<Word> phrased = new ArrayList<>();
        for (Atom atom : atoms) {
            atom.as(Meaning.Circumstance.class).ifPresent(it -> words.addAll(it.words()));
            atom.as(Meaning.Complaint.class).ifPresent(it -> phrased.addAll(it.words()));
        }
        return new Named(words, phrased);
    }
}
