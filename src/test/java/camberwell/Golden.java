package camberwell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Texts as they were last approved, each in a file. After a change that is meant, run the tests with
 * {@code -Dcamberwell.bless=true} to write them anew, and read what changed before committing it.
 */
public final class Golden {

    private Golden() {
    }

    /** Whether the texts are written anew. */
    public static boolean blessing() {
        return Boolean.getBoolean("camberwell.bless");
    }

    /** Holds {@code actual} against the text in {@code file}. */
    public static void check(Path file, String actual) throws IOException {
        if (blessing()) {
            Files.createDirectories(file.toAbsolutePath().getParent());
            Files.writeString(file, actual);
        }
        assertTrue(Files.isRegularFile(file), () -> "there is no " + file + "; -Dcamberwell.bless=true writes it");
        assertEquals(Files.readString(file), actual, file.toString());
    }
}
