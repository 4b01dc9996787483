package camberwell.cli;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Reads a change as a person types it: {@code front-camber less-negative}, or {@code softer front anti-roll bar}. */
final class ChangeWords {

    private ChangeWords() {
    }

    /** The change that {@code text} names: an adjuster and a direction in either order, with spaces or hyphens. */
    static Optional<Change> parse(String text) {
        String words = text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s-]+", "-")
                .replaceFirst("\\b(left|right)-(front|rear)\\b", "$2-$1");
        for (Change change : Change.all()) {
            String adjuster = change.adjuster().id();
            String direction = change.direction().id();
            if (words.equals(adjuster + "-" + direction) || words.equals(direction + "-" + adjuster)) {
                return Optional.of(change);
            }
        }
        return Optional.empty();
    }

    /** What is wrong with {@code text}, and what was most likely meant. */
    static String problem(String text) {
        String words = text.strip().toLowerCase(Locale.ROOT);
        for (Adjuster adjuster : Adjuster.values()) {
            if (words.replaceAll("[\\s-]+", "-").contains(adjuster.id())) {
                List<String> ways = adjuster.directions().stream().map(Word::id).toList();
                return "\"" + text + "\": " + adjuster.id() + " moves " + String.join(" or ", ways)
                        + Stream.of(words.split("\\s+")).filter(word -> !adjuster.id().contains(word))
                        .flatMap(word -> Nearest.to(word, ways).stream()).findFirst()
                        .map(near -> "; did you mean " + near + "?").orElse("");
            }
        }
        List<String> changes = Change.all().stream().map(Change::id).toList();
        String first = words.split("\\s+")[0];
        return "\"" + text + "\" is no change; " + Nearest.to(words, changes)
                .or(() -> Nearest.to(first, Word.ids(Adjuster.class)))
                .map(near -> "did you mean " + near + "?")
                .orElse("write an adjuster and a direction, like \"rear-wing more\"; camberwell terms lists them");
    }
}
