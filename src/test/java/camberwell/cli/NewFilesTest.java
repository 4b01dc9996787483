package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Files that are written together")
class NewFilesTest {

    @TempDir
    Path folder;

    @Test
    @DisplayName("when the second cannot take its place, the first is taken back: a rule without its note helps nobody")
    void allOrNone() throws IOException {
        Files.createDirectories(folder.resolve("note.md/is-a-folder"));
        NewFiles files = new NewFiles();
        files.add(folder.resolve("rule.dslr"), new byte[] {1});
        files.replace(folder.resolve("note.md"), new byte[] {2});
        assertThrows(ProblemsException.class, files::write);
        assertEquals(List.of("note.md"), names());
    }

    @Test
    @DisplayName("a file that stood there before is not taken away with what failed")
    void olderStays() throws IOException {
        Files.write(folder.resolve("rule.dslr"), new byte[] {7});
        Files.createDirectories(folder.resolve("note.md/is-a-folder"));
        NewFiles files = new NewFiles();
        files.replace(folder.resolve("rule.dslr"), new byte[] {1});
        files.replace(folder.resolve("note.md"), new byte[] {2});
        assertThrows(ProblemsException.class, files::write);
        assertEquals(List.of("note.md", "rule.dslr"), names());
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
