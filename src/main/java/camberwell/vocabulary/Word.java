package camberwell.vocabulary;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** A word of the closed vocabulary: kebab-case in files, in rules and on screen. */
public interface Word {

    /** The word as it is written, for instance {@code mid-corner}. */
    String id();

    /** The word as it is spoken: {@code snap oversteer}; compounds keep their hyphen: {@code slow turn-in}. */
    default String spoken() {
        return id().replace('-', ' ').replace("mid corner", "mid-corner").replace("turn in", "turn-in")
                .replace("lift off", "lift-off").replace("warm up", "warm-up").replace("anti roll", "anti-roll")
                .replace("straight line", "straight-line").replace("toe in", "toe-in")
                .replace("toe out", "toe-out");
    }

    /** Whether this is the word written {@code id}; the form in which rules ask. */
    default boolean is(String id) {
        return id().equals(id);
    }

    /** The word of {@code type} that is written {@code id}, if there is one. */
    static <W extends Enum<W> & Word> Optional<W> find(Class<W> type, String id) {
        for (W word : type.getEnumConstants()) {
            if (word.id().equals(id)) {
                return Optional.of(word);
            }
        }
        return Optional.empty();
    }

    /**
     * The word of {@code type} that is written {@code id}.
     *
     * @throws IllegalArgumentException if there is none
     */
    static <W extends Enum<W> & Word> W of(Class<W> type, String id) {
        return find(type, id).orElseThrow(() -> new IllegalArgumentException(
                "\"" + id + "\" is none of " + String.join(", ", ids(type))));
    }

    /** Every word of {@code type} as it is written, in the vocabulary's order. */
    static <W extends Enum<W> & Word> List<String> ids(Class<W> type) {
        return Arrays.stream(type.getEnumConstants()).map(Word::id).collect(Collectors.toUnmodifiableList());
    }
}
