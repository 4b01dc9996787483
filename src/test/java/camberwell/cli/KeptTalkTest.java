package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A talk whose file or folder is taken away under it")
class KeptTalkTest {

    private static final String CAR = Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    private Path directory;

    private Path folder() throws IOException {
        return Files.createDirectories(directory.resolve("stick"));
    }

    private static void remove(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }

    /** The one file of a talk that was put where the program was started. */
    private Path rescued(String ending) throws IOException {
        try (Stream<Path> files = Files.list(directory)) {
            List<Path> found = files.filter(file -> file.getFileName().toString().matches("debrief-[-0-9]+\\" + ending)).toList();
            assertEquals(1, found.size(), found.toString());
            return found.get(0);
        }
    }

    @Test
    @DisplayName("is kept in another file, which is named, and ends with an error")
    void elsewhere() throws IOException {
        Path stick = folder();
        Ran ran = new Scripted().line("pushes on entry").then(() -> remove(stick)).line("slow").line("done").line("quit")
                .run(directory, "debrief", "--car", CAR, "--save", "stick/a.yaml");
        String other = rescued(".yaml").getFileName().toString();
        assertEquals("stick/a.yaml: cannot be written: its folder is not there\nThis talk is kept in " + other + "\n", ran.err());
        assertTrue(ran.out().endsWith("Saved: " + other + "\n"), ran.out());
        assertFalse(ran.out().contains("Saved: stick"), ran.out());
        assertTrue(Files.readString(rescued(".yaml")).contains("understeer"));
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("is kept also where nothing was said since")
    void afterTheLastAnswer() throws IOException {
        Path stick = folder();
        Ran ran = new Scripted().line("pushes on entry").then(() -> remove(stick)).line("quit")
                .run(directory, "debrief", "--car", CAR, "--save", "stick/a.yaml");
        String other = rescued(".yaml").getFileName().toString();
        assertTrue(ran.out().endsWith("Saved: " + other + "; go on with --resume " + other + "\n"), ran.out());
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("goes on beside its book")
    void book() throws IOException {
        Path stick = folder();
        Ran ran = new Scripted().line("pushes on entry").then(() -> remove(stick)).line("slow").line("done").line("quit")
                .run(directory, "debrief", "--car", CAR, "--book", "stick");
        assertTrue(ran.out().endsWith("Saved: " + rescued(".yaml").getFileName() + "\n"), ran.all());
        assertFalse(ran.out().contains("Entered as run"), ran.out());
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("of a program is kept, too")
    void program() throws IOException {
        Path stick = folder();
        Ran ran = new Scripted().line("pushes on entry").then(() -> remove(stick)).line("slow").line("done")
                .run(directory, "debrief", "--car", CAR, "--save", "stick/a.yaml", "--format", "jsonl");
        assertTrue(ran.err().endsWith("This talk is kept in " + rescued(".yaml").getFileName() + "\n"), ran.err());
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("has its transcript elsewhere")
    void transcript() throws IOException {
        Path stick = folder();
        Ran ran = new Scripted().line("pushes on entry").then(() -> remove(stick)).line("slow").line("done").line("quit")
                .run(directory, "debrief", "--car", CAR, "--transcript", "stick/a.md");
        assertEquals("stick/a.md: cannot be written: there is no folder stick\n", ran.err());
        assertTrue(ran.out().endsWith("Transcript: " + rescued(".md").getFileName() + "\n"), ran.out());
        assertEquals(ExitCode.WRONG_INPUT, ran.code());
    }

    @Test
    @DisplayName("saved beside its book stays in the book")
    void copyOfRun() throws IOException {
        Ran ran = new Scripted().line("pushes on entry").line("slow").line("done").line("save copy.yaml").line("quit")
                .run(directory, "debrief", "--car", CAR, "--book", folder().getFileName().toString());
        assertTrue(Files.exists(directory.resolve("copy.yaml")), ran.all());
        assertTrue(ran.out().contains("Entered as run 1"), ran.out());
        assertEquals(ExitCode.DONE, ran.code());
    }
}
