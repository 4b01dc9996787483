package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Output that cannot be written")
class LostOutputTest {

    private static final String CASE = "demo-cases/pushes-in-snaps-out.yaml";

    @TempDir
    Path cache;

    private final ByteArrayOutputStream said = new ByteArrayOutputStream();

    /** Takes so many writes, then fails with that message. */
    private final class Failing extends OutputStream {

        private final String message;
        private int left;

        Failing(int left, String message) {
            this.left = left;
            this.message = message;
        }

        @Override
        public void write(int one) throws IOException {
            if (left-- <= 0) {
                throw new IOException(message);
            }
        }

        @Override
        public void write(byte[] bytes, int from, int length) throws IOException {
            write(0);
        }
    }

    private int run(OutputStream out, String... arguments) {
        Console console = new Console(new PrintStream(new Written(out), false, StandardCharsets.UTF_8),
                new PrintStream(said, true, StandardCharsets.UTF_8), new ByteArrayInputStream(new byte[0]),
                DemoCases.HOME, 80, false, false);
        return Main.written(console, new Engine(DemoCases.HOME, cache), arguments);
    }

    @Test
    @DisplayName("a full disk is told, and is no success")
    void fullDisk() {
        assertEquals(ExitCode.FOUND_WRONG, run(new Failing(0, "No space left on device"), "advise", CASE));
        assertEquals("camberwell: the output cannot be written: No space left on device\n",
                said.toString(StandardCharsets.UTF_8));
        said.reset();
        assertEquals(ExitCode.FOUND_WRONG, run(new Failing(0, "No space left on device"), "--help"));
        assertEquals("camberwell: the output cannot be written: No space left on device\n",
                said.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("whoever has seen enough and closes the pipe is told nothing, and no further case is computed")
    void closedPipe() {
        List<String> line = new ArrayList<>(List.of("advise", "--format", "jsonl"));
        for (int i = 0; i < 2000; i++) {
            line.add(i < 5 ? CASE : "no-such-case-" + i + ".yaml");
        }
        assertEquals(ExitCode.DONE, run(new Failing(1, "Broken pipe"), line.toArray(String[]::new)));
        // Cases that came to be looked at would have been told to be missing.
        assertTrue(said.toString(StandardCharsets.UTF_8).isEmpty(), said.toString(StandardCharsets.UTF_8));
    }
}
