package camberwell.engine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
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

    @Test
    @DisplayName("it grows to 64 MiB, and what was not used for longest goes first")
    void bounded() throws IOException {
        byte[] large = new byte[3 << 20];
        // What compresses is no measure of what lies on the disk.
        new Random(1).nextBytes(large);
        Instant begin = Instant.parse("2026-05-03T08:00:00Z");
        for (int i = 0; i < 25; i++) {
            String key = "00000000000000" + (10 + i);
            cache.keep(new CompiledRules(key, "Model", Map.of("Model", large)));
            Path kept = folder.resolve(key + ".compiled-rules");
            if (Files.exists(kept)) {
                Files.setLastModifiedTime(kept, FileTime.from(begin.plusSeconds(i)));
            }
        }
        long total = 0;
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                total += Files.size(file);
            }
        }
        assertTrue(total <= 64L << 20, total + " bytes");
        assertTrue(cache.find("0000000000000034").isPresent(), "the last one is there");
        assertEquals(Optional.empty(), cache.find("0000000000000010"), "the first one went");
    }
}
