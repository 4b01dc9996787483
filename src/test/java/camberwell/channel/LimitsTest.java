package camberwell.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("The limits of the reading of a log")
class LimitsTest {

    private static final Pattern KEY = Pattern.compile("\"([a-z]+\\.[a-z-]+)\"");

    @Test
    @DisplayName("every limit of the file is asked for, and every one that is asked for stands in it")
    void usedAndThere() throws IOException {
        Limits limits = ClockTest.limits();
        Set<String> asked = new TreeSet<>();
        for (String folder : new String[] {"channel", "observe"}) {
            try (Stream<Path> files = Files.walk(Path.of("src/main/java/camberwell", folder))) {
                for (Path file : files.filter(it -> it.toString().endsWith(".java")).toList()) {
                    KEY.matcher(Files.readString(file)).results().map(it -> it.group(1)).forEach(asked::add);
                }
            }
        }

        assertEquals(new TreeSet<>(limits.keys()), asked);
    }

    @Test
    @DisplayName("a limit that is not there is named")
    void missing() {
        assertTrue(assertThrows(IllegalArgumentException.class, () -> ClockTest.limits().of("corners.width")).getMessage()
                .contains("corners.width"));
    }
}
