package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

import java.io.ByteArrayOutputStream;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("An input without an end, that nobody types")
class EndlessInputTest {

    private static final String CAR = Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    private Path directory;

    /** One line again and again. */
    private static final class Again extends InputStream {
        private final byte[] line;
        private int at;

        Again(String line) {
            this.line = (line + "\n").getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public int read() {
            return line[at++ % line.length];
        }
    }

    private String ends(String typed, String... line) {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = assertTimeoutPreemptively(Duration.ofSeconds(120), () -> {
            Console console = new Console(new PrintStream(OutputStream.nullOutputStream()), new PrintStream(err, true,
                    StandardCharsets.UTF_8), new Again(typed), directory, 80, false, false);
            int ended = Main.run(console, InProcess.ENGINE, line);
            console.err().flush();
            return ended;
        }, typed + ": " + String.join(" ", line));
        assertEquals(ExitCode.WRONG_INPUT, code, typed + ": " + String.join(" ", line));
        return err.toString(StandardCharsets.UTF_8);
    }

    @Test
    @DisplayName("ends a quiz, a practice and a debrief of which nothing is understood, with a word")
    void notUnderstood() {
        for (String[] line : List.of(new String[] {"quiz", "--seed", "7"}, new String[] {"debrief", "--car", CAR},
                new String[] {"debrief", "--car", CAR, "--format", "jsonl"}, new String[] {"debrief"})) {
            assertEquals("-: nothing came of 50 answers in a row\n", ends("y", line));
        }
        String practice = ends("y", "practise", "--seed", "7", "--format", "json");
        assertEquals("-: nothing came of 50 answers in a row", practice.lines().reduce((first, last) -> last).orElseThrow());
    }

    @Test
    @DisplayName("ends a debrief that is asked without end, and one that is told the same without end")
    void understood() {
        for (String typed : List.of("why", "it pushes on entry", "why not camber")) {
            ends(typed, "debrief", "--car", CAR);
            ends(typed, "debrief", "--car", CAR, "--format", "jsonl");
        }
    }
}
