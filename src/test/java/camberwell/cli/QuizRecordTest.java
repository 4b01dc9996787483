package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The answers of a pupil")
class QuizRecordTest {

    @TempDir
    private Path directory;

    private Ran quiz(String... more) {
        List<String> line = new ArrayList<>(List.of("quiz", "--seed", "5", "--count", "2"));
        line.addAll(List.of(more));
        return Ran.in(directory, 80, "rear-anti-roll-bar softer\nq\n", InProcess.ENGINE, line.toArray(String[]::new));
    }

    @Test
    @DisplayName("are in the file as soon as they are given, so that a quiz that is broken off loses none")
    void atOnce() {
        List<String> seen = new ArrayList<>();
        Scripted typed = new Scripted().line("rear-anti-roll-bar softer")
                .then(() -> seen.add(Files.readString(directory.resolve("ada.yaml"))))
                .line("front-anti-roll-bar stiffer")
                .then(() -> seen.add(Files.readString(directory.resolve("ada.yaml"))));
        Ran ran = typed.run(directory, "quiz", "--seed", "5", "--count", "3", "--record", "ada.yaml");
        assertEquals("", ran.err());
        assertTrue(seen.get(0).endsWith("answer: rear-anti-roll-bar softer}\n"), seen.get(0));
        assertTrue(seen.get(1).startsWith(seen.get(0)) && seen.get(1).endsWith("answer: front-anti-roll-bar stiffer}\n"),
                seen.get(1));
    }

    @Test
    @DisplayName("need a file that can be written, which is said before the first question")
    void obstacles() throws IOException {
        Files.createDirectory(directory.resolve("folder"));
        Files.writeString(directory.resolve("other.yaml"), "title: no answers\n");
        assertRefused("--record nowhere/ada.yaml: there is no folder nowhere\n", quiz("--record", "nowhere/ada.yaml"));
        assertRefused("--record folder: is a folder\n", quiz("--record", "folder"));
        Ran other = quiz("--record", "other.yaml");
        assertTrue(other.err().startsWith("other.yaml:1:1: "), other.err());
        assertRefused(other.err(), other);
        assertEquals("title: no answers\n", Files.readString(directory.resolve("other.yaml")));
    }

    private static void assertRefused(String problem, Ran ran) {
        assertEquals(problem, ran.err());
        assertEquals("", ran.out());
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("are marked only where they can be added")
    void marked() {
        assertEquals(ExitCode.DONE, quiz("--homework", "monday.yaml").code());
        Ran ran = Ran.in(directory, 80, "", InProcess.ENGINE, "quiz", "mark", "monday.yaml", "--pupil", "Ada", "--record",
                "nowhere/ada.yaml");
        assertRefused("--record nowhere/ada.yaml: there is no folder nowhere\n", ran);
    }
}
