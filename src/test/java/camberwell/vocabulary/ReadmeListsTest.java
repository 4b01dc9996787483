package camberwell.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The word lists of the README are those of the vocabulary")
class ReadmeListsTest {

    private static final String README = readme();

    private static String readme() {
        try {
            return Files.readString(Path.of("README.md")).replaceAll("\\s+", " ");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    @DisplayName("symptoms, phases, speeds and the rest of a report, in order")
    void reports() {
        listed("`symptom`: ", Symptom.class);
        listed("`phase`: ", Phase.class);
        listed("`speed` of the corner: ", CornerSpeed.class);
        listed("`severity`: ", Severity.class);
        listed("`occurrence`: ", Occurrence.class);
        listed("`since`: ", Since.class);
        listed("`turn`: ", Turn.class);
    }

    private static <W extends Word> void listed(String label, Class<W> type) {
        int start = README.indexOf(label);
        assertTrue(start > 0, label);
        String list = README.substring(start + label.length(), README.indexOf('.', start));
        assertEquals(String.join(", ", Word.ids(type)), list.replaceAll(" \\([^)]*\\)", ""));
    }

    @Test
    @DisplayName("every adjuster with its two directions")
    void adjusters() {
        String list = README.substring(README.indexOf("Adjusters and the ways they move: "));
        list = list.substring(0, list.indexOf(". "));
        for (Adjuster adjuster : Adjuster.values()) {
            // One wheel's stand with their axle's, the first of them as the example.
            String ways = waysAfter(list, "`" + adjuster.ofBothWheels().id() + "`");
            List<String> known = new ArrayList<>(Word.ids(Direction.class));
            known.retainAll(List.of(ways.split(", ")));
            assertEquals(adjuster.directions().stream().map(Word::id).sorted().toList(),
                    known.stream().sorted().toList(), adjuster.id());
        }
    }

    /** What stands in the next brackets after a word. */
    private static String waysAfter(String list, String word) {
        int start = list.indexOf(word);
        assertTrue(start > 0, word + " is missing");
        return Pattern.compile("\\(([^)]*)\\)").matcher(list.substring(start)).results().map(MatchResult::group)
                .findFirst().orElseThrow().replaceAll("[()]", "");
    }
}
