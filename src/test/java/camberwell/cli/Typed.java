package camberwell.cli;

import camberwell.engine.RuleBase;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** What came of a typed command line. */
record Typed(int code, String out, String err) {

    /** Runs a command line, split at spaces, on a screen of 80 characters. */
    static Typed run(String line) {
        return on(80, "", line.trim().split(" +"));
    }

    /** Runs a command line with {@code in} piped into it. */
    static Typed piped(String in, String line) {
        return on(80, in, line.trim().split(" +"));
    }

    static Typed on(int width, String in, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(print(out), print(err),
                new ByteArrayInputStream(in.getBytes(StandardCharsets.UTF_8)), Path.of(""), width, false, false);
        Path home = Path.of(System.getProperty("camberwell.home", "."));
        int code = Main.run(console, new Engine(home, RuleBase.defaultCache()), arguments);
        console.err().flush();
        return new Typed(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    private static PrintStream print(ByteArrayOutputStream stream) {
        return new PrintStream(stream, true, StandardCharsets.UTF_8);
    }

    JsonNode json() {
        try {
            return new ObjectMapper().readTree(out);
        } catch (IOException e) {
            throw new UncheckedIOException(out, e);
        }
    }

    /** A figure of the JSON: its value. */
    double value(String id) {
        return json().path(id).path("value").asDouble(Double.NaN);
    }
}
