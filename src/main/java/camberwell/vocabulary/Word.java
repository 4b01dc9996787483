package camberwell.vocabulary;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A word of the closed vocabulary: kebab-case in files, in rules and on screen. */
public interface Word {

    /** The word as it is written, for instance {@code mid-corner}. */
    String id();

    /** The word as it is spoken: {@code snap oversteer}; compounds keep their hyphen: {@code slow turn-in}. */
    default String spoken() {
        String id = id();
        return id.indexOf('-') < 0 ? id : id.replace('-', ' ').replace("mid corner", "mid-corner").replace("turn in", "turn-in")
                .replace("lift off", "lift-off").replace("warm up", "warm-up").replace("anti roll", "anti-roll")
                .replace("straight line", "straight-line").replace("toe in", "toe-in")
                .replace("toe out", "toe-out");
    }

    /** Whether this is the word written {@code id}; the form in which rules ask. */
    default boolean is(String id) {
        return id().equals(id);
    }

    /** What it means to somebody who felt it, to choose from a list; the trade's word where that says it. */
    default String felt() {
        return spoken();
    }

    /** The word as it is written; null where nobody said one, as a fact answers that leaves something open. */
    static String idOf(Optional<? extends Word> word) {
        return word.isPresent() ? word.get().id() : null;
    }

    /** Every word of {@code type}, in the vocabulary's order. */
    static <W extends Word> List<W> all(Class<W> type) {
        List<W> all = new ArrayList<>();
        for (Word word : words(type)) {
            all.add(type.cast(word));
        }
        return all;
    }

    /** Symptoms are the one list that may grow, so they are no enumeration. */
    private static Word[] words(Class<? extends Word> type) {
        return type == Symptom.class ? Symptom.values() : type.getEnumConstants();
    }

    /** The word of {@code type} that is written {@code id}, if there is one. */
    static <W extends Word> Optional<W> find(Class<W> type, String id) {
        for (Word word : words(type)) {
            if (word.id().equals(id)) {
                return Optional.of(type.cast(word));
            }
        }
        return Optional.empty();
    }

    /**
     * The word of {@code type} that is written {@code id}.
     *
     * @throws IllegalArgumentException if there is none
     */
    static <W extends Word> W of(Class<W> type, String id) {
        return find(type, id).orElseThrow(() -> new IllegalArgumentException(
                "\"" + id + "\" is none of " + String.join(", ", ids(type))));
    }

    /** Every word of {@code type} as it is written, in the vocabulary's order. */
    static <W extends Word> List<String> ids(Class<W> type) {
        List<String> ids = new ArrayList<>();
        for (Word word : words(type)) {
            ids.add(word.id());
        }
        return List.copyOf(ids);
    }
}
