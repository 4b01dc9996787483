package camberwell.knowledge;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.cases.Paddock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Where each fact comes from: a publication with its title and year, a named page of the web, or nowhere that is known. */
@DisplayName("Every source")
class SourcesTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home", ""));
    /** Author or body, a title, and the year of the edition, which a standard's number stands for. */
    private static final Pattern PUBLISHED = Pattern.compile("(?:ISO|SAE|DIN|NASA|FMVSS|UN)\\b.*\\d.*|"
            + "[A-Z].*, .*\\b(?:19|20)\\d\\d\\b.*");
    private static final Pattern WEB = Pattern.compile("(.*?)(?:, | \\()(?:[a-z0-9-]+(?:\\.[a-z0-9-]+)+\\S*|"
            + "a tyre maker's web page|web page).*undated.*");
    private static final Pattern CONDITION = Pattern.compile("^\\s+(?:either |or )?(?:the|a) "
            + ".*\\b(?:than|by more than|above|below) "
            + "-?\\d+(?:\\.\\d+)? ?(?:degrees|deg|mm|bar|kPa|psi|K|°C|%|laps|kg)?.*$");

    private static List<Note> notes() {
        return Paddock.notes().names().stream().map(Paddock.notes()::get).toList();
    }

    @Test
    @DisplayName("of a note is a publication, a named page of the web, or the words that there is none")
    void ofNotes() {
        List<String> neither = new ArrayList<>();
        for (Note note : notes()) {
            for (String source : note.sources()) {
                if (!source.contains("no source") && !WEB.matcher(source).matches() && !PUBLISHED.matcher(source).matches()) {
                    neither.add(note.name() + ": " + source);
                }
            }
        }
        assertEquals(List.of(), neither);
    }

    @Test
    @DisplayName("of the sizes of effects is told in each note that has them")
    void ofSizes() {
        List<String> silent = notes().stream().filter(note -> note.kind() == Note.Kind.ADJUSTMENT)
                .filter(note -> note.sources().stream().noneMatch(source -> source.startsWith("sizes of the effects: ")))
                .map(Note::name).toList();
        assertEquals(List.of(), silent);
    }

    @Test
    @DisplayName("on the web goes by one title")
    void oneTitle() {
        Map<String, String> titles = new HashMap<>();
        for (Note note : notes()) {
            for (String source : note.sources()) {
                Matcher address = Pattern.compile("[a-z0-9-]+\\.(?:com|org|net|co\\.uk)\\S*").matcher(source);
                if (address.find()) {
                    String title = source.substring(0, source.indexOf(','));
                    String other = titles.putIfAbsent(address.group(), title);
                    assertTrue(other == null || other.equals(title), address.group() + ": " + other + ", " + title);
                }
            }
        }
        assertTrue(titles.size() > 3, titles.toString());
    }

    @Test
    @DisplayName("of the figures that rules compare with is told at the head of their file")
    void ofFigures() throws IOException {
        List<String> silent = new ArrayList<>();
        try (Stream<Path> files = Files.walk(HOME.resolve("rules"))) {
            for (Path file : files.filter(it -> it.toString().endsWith(".dslr")).sorted().toList()) {
                List<String> lines = Files.readAllLines(file);
                String head = String.join(" ", lines.stream().takeWhile(line -> line.startsWith("//")).toList());
                if (lines.stream().anyMatch(line -> CONDITION.matcher(line).matches()) && !head.contains("source")) {
                    silent.add(HOME.relativize(file) + ": " + lines.stream().filter(line -> CONDITION.matcher(line).matches())
                            .findFirst().orElseThrow().strip());
                }
            }
        }
        assertEquals(List.of(), silent);
    }
}
