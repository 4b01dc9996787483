package camberwell.cli;

import camberwell.explain.DemoCases;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;

/** A command line run in this process. */
record InProcess(int code, String out, String err) {

    private static final Engine ENGINE = engine();

    private static Engine engine() {
        try {
            return new Engine(DemoCases.HOME, Files.createTempDirectory("cache"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Runs a command on a screen of {@code width} characters, with {@code typed} piped in. */
    static InProcess run(int width, String typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), DemoCases.HOME, width, false, false);
        int code = Main.run(console, ENGINE, arguments);
        return new InProcess(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
