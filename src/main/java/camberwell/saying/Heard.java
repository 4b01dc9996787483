package camberwell.saying;

import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * What was understood of what somebody said, and what was not.
 *
 * @param said as it was typed
 * @param told the complaints, in the order in which they were said
 * @param surface of the track, if it was said
 * @param fine whether it was said that nothing is wrong, and nothing else
 * @param loose words of the vocabulary that were said of no complaint
 * @param unclear what may be one thing or another
 * @param notUnderstood the rest, as it was typed
 */
public record Heard(String said, List<Told> told, Optional<Surface> surface, boolean fine, List<Word> loose,
        List<Unclear> unclear,
        List<String> notUnderstood) {

    /**
     * Words that are not taken without asking back.
     *
     * @param mayBe what they may mean, as one or as several; none where no complaint of the vocabulary fits
     */
    public record Unclear(String words, List<Told> mayBe) {

        /** Copies the list. */
        public Unclear {
            mayBe = List.copyOf(mayBe);
        }

        /** What they may mean, in words: {@code understeer or oversteer}; empty where nobody knows. */
        public String text() {
            return mayBe.stream().map(Told::text).collect(Collectors.joining(" or "));
        }
    }

    /** What somebody tells in words of the vocabulary. */
    public static Heard of(Told... told) {
        return new Heard("", List.of(told), Optional.empty(), false, List.of(), List.of(), List.of());
    }

    /** Copies the lists. */
    public Heard {
        told = List.copyOf(told);
        loose = List.copyOf(loose);
        unclear = List.copyOf(unclear);
        notUnderstood = List.copyOf(notUnderstood);
    }

    /** The same with these words said besides, of no complaint. */
    public Heard with(List<Word> more) {
        List<Word> all = new ArrayList<>(loose);
        more.stream().filter(word -> !all.contains(word)).forEach(all::add);
        return new Heard(said, told, surface, fine, all, unclear, notUnderstood);
    }

    /** Whether these words were said, and not only sound as if they were meant. */
    public boolean quotes(Unclear words) {
        return plain(said).contains(plain(words.words()));
    }

    /** In small letters, with nothing between the words. */
    static String plain(String words) {
        return words.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", " ").strip();
    }

    /** Whether the grammar has a reading of every word. */
    public boolean exact() {
        return unclear.isEmpty() && notUnderstood.isEmpty();
    }

    /** Whether anything at all was understood. */
    public boolean anything() {
        return !told.isEmpty() || surface.isPresent() || fine || !loose.isEmpty();
    }

    /** What may be meant and is not taken without asking back, with what it may be. */
    public List<Unclear> doubtful() {
        List<Unclear> doubtful = new ArrayList<>();
        unclear.stream().filter(it -> !it.mayBe().isEmpty()).forEach(doubtful::add);
        return doubtful;
    }

    /** What was understood, in one line: {@code understeer at entry; snap oversteer at exit; wet track}. */
    public String text() {
        String text = told.stream().map(Told::text).collect(Collectors.joining("; "));
        if (surface.isPresent()) {
            text += (text.isEmpty() ? "" : "; ") + surface.get().id() + " track";
        }
        if (fine && told.isEmpty()) {
            text += (text.isEmpty() ? "" : "; ") + "nothing wrong";
        }
        return text;
    }

    /** Everything that tells nothing of a complaint: what is unclear, what is loose, what was not understood. */
    public List<String> refused() {
        List<String> refused = new ArrayList<>();
        unclear.forEach(it -> refused.add(it.words()));
        refused.addAll(notUnderstood);
        loose.forEach(word -> refused.add(word.spoken()));
        return List.copyOf(refused);
    }
}
