package camberwell.saying;

import camberwell.vocabulary.Word;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What is left out of a saying, named as the driver said it: "the long ones", and no "sweeper". */
final class Quoted {

    private final Heard taken;
    /** The driver's own words for what narrows a complaint, by its name. */
    private final Map<String, String> typed = new HashMap<>();
    /** Names of what is told after all. */
    private final Set<String> told = new HashSet<>();

    private Quoted(Sayings sayings, Heard read, Heard taken) {
        this.taken = taken;
        taken.told().forEach(one -> one.words().stream().filter(word -> readOf(read, word).equals(List.of(one)))
                .forEach(word -> told.add(Details.name(word))));
        Set<Word> words = new HashSet<>();
        taken.told().forEach(one -> words.addAll(one.words()));
        for (List<Token> sentence : sayings.sentences(taken.said())) {
            for (Atom atom : Cover.of(sayings, sentence)) {
                List<Word> named = Named.of(List.of(atom)).words();
                named.forEach(word -> typed.putIfAbsent(Details.name(word),
                        Tokens.typed(sentence.subList(atom.from(), atom.to()))));
                if (named.stream().anyMatch(words::contains)) {
                    // "Hairpin" says slow as well, and one of the two is enough to have understood it.
                    named.forEach(word -> told.add(Details.name(word)));
                }
            }
        }
    }

    /**
     * What was taken, with what is left out of it in the driver's words. What is left out of one of two complaints is not named
     * where it is told of the other and the grammar reads it of that one alone.
     *
     * @param read what the grammar makes of it
     */
    static Heard of(Sayings sayings, Heard read, Heard taken) {
        return taken.unclear().stream().allMatch(doubt -> !doubt.mayBe().isEmpty()) ? taken
                : new Quoted(sayings, read, taken).heard();
    }

    /** The complaints that are taken of which the grammar reads a word. */
    private List<Told> readOf(Heard read, Word word) {
        return taken.told().stream().filter(one -> read.told().stream()
                .anyMatch(it -> it.symptom() == one.symptom() && it.words().contains(word))).toList();
    }

    private Heard heard() {
        List<Heard.Unclear> unclear = taken.unclear().stream()
                .filter(doubt -> !doubt.mayBe().isEmpty() || !told.contains(doubt.words()))
                .map(doubt -> doubt.mayBe().isEmpty()
                        ? new Heard.Unclear(typed.getOrDefault(doubt.words(), doubt.words()), List.of()) : doubt)
                .distinct().toList();
        return new Heard(taken.said(), taken.told(), taken.surface(), taken.fine(), taken.loose(), unclear,
                taken.notUnderstood());
    }
}
