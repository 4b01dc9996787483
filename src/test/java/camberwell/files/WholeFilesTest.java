package camberwell.files;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Files appear whole or not at all")
class WholeFilesTest {

    @TempDir
    Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    @DisplayName("a file that nobody but its owner may read stays so when it is written anew")
    void permissions() throws IOException {
        assumeTrue(folder.getFileSystem().supportedFileAttributeViews().contains("posix"));
        Path file = Files.createFile(folder.resolve("mine"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rw-------"));
        WholeFiles.write(file, new byte[] {1});
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(file)));
        WholeFiles.writePrivately(folder.resolve("other"), new byte[] {1});
        assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(folder.resolve("other"))));
    }

    @Test
    @DisplayName("what a link points to is written, and the link stays a link")
    void links() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Path link = Files.createSymbolicLink(folder.resolve("link"), file);
        WholeFiles.write(link, new byte[] {7});
        assertArrayEquals(new byte[] {7}, Files.readAllBytes(file));
        assertEquals(file, Files.readSymbolicLink(link));
    }

    @Test
    @DisplayName("a folder that is gone is told, and nothing is made")
    void noFolder() {
        assertThrows(IOException.class, () -> WholeFiles.write(folder.resolve("gone/file"), new byte[] {1}));
    }

    @Test
    @DisplayName("of files that belong together none stays when the last one cannot take its place, and no draft either")
    void together() throws IOException {
        Files.createDirectories(folder.resolve("in-the-way/it-is-full"));
        Map<Path, byte[]> files = new LinkedHashMap<>();
        files.put(folder.resolve("first"), new byte[] {1});
        files.put(folder.resolve("in-the-way"), new byte[] {2});
        assertThrows(IOException.class, () -> WholeFiles.write(files));
        assertEquals(List.of("in-the-way"), names());
    }

    @Test
    @DisplayName("threads that write one file at once leave one of their texts, and nothing beside it")
    void atOnce() throws IOException {
        Path file = folder.resolve("file");
        IntStream.range(0, 64).parallel().forEach(i -> {
            try {
                byte[] text = new byte[1000 + i];
                WholeFiles.write(file, text);
            } catch (IOException e) {
                throw new AssertionError(e);
            }
        });
        assertEquals(List.of("file"), names());
        assertEquals(0, Files.size(file) < 1000 ? 1 : 0);
    }

    @Test
    @DisplayName("drafts of processes that are gone are cleared away; what only looks like one stays")
    void sweep() throws IOException {
        long living = ProcessHandle.current().pid();
        for (String name : List.of(".camberwell-draft-999999999-1", ".camberwell-draft-" + living + "-0",
                ".camberwell-draft-notes", ".camberwell-draft-99999999999999999999-1", "camberwell-draft-999999999-1")) {
            Files.createFile(folder.resolve(name));
        }
        WholeFiles.sweep(folder);
        assertEquals(List.of(".camberwell-draft-" + living + "-0", ".camberwell-draft-99999999999999999999-1",
                ".camberwell-draft-notes", "camberwell-draft-999999999-1").stream().sorted().toList(), names());
    }
}
