package camberwell.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Compiled rules are taken from nobody else's hands: they are code")
class RuleCacheTest {

    private static final String KEY = "0123456789abcdef";

    @TempDir
    Path parent;
    private Path folder;
    private RuleCache cache;

    @BeforeEach
    void keep() {
        assumeTrue(parent.getFileSystem().supportedFileAttributeViews().contains("posix"));
        folder = parent.resolve("cache");
        cache = new RuleCache(folder);
        cache.keep(new CompiledRules(KEY, "Model", Map.of("Model", new byte[] {1, 2, 3})));
        assertTrue(cache.find(KEY).isPresent());
    }

    private Optional<CompiledRules> withMode(Path path, String mode) throws IOException {
        Files.setPosixFilePermissions(path, PosixFilePermissions.fromString(mode));
        return cache.find(KEY);
    }

    private Path file() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.findFirst().orElseThrow();
        }
    }

    @Test
    @DisplayName("not a file that the group or others may write")
    void writableFile() throws IOException {
        assertEquals(Optional.empty(), withMode(file(), "rw-rw----"));
        assertEquals(Optional.empty(), withMode(file(), "rw----rw-"));
        assertTrue(withMode(file(), "rw-r--r--").isPresent(), "to read is no harm");
    }

    @Test
    @DisplayName("not from a folder in which others may swap it")
    void writableFolder() throws IOException {
        assertEquals(Optional.empty(), withMode(folder, "rwxrwx---"));
        assertEquals(Optional.empty(), withMode(folder, "rwx---rwx"));
    }

    @Test
    @DisplayName("not below a folder in which others may swap the folder")
    void writableParent() throws IOException {
        assertEquals(Optional.empty(), withMode(parent, "rwxrwxrwx"));
        assertTrue(withMode(parent, "rwxr-xr-x").isPresent());
    }

    @Test
    @DisplayName("and not a damaged one")
    void damaged() throws IOException {
        Files.write(file(), new byte[] {9, 9, 9});
        assertEquals(Optional.empty(), cache.find(KEY));
    }
}
