package camberwell.cli;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
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
        Ran ran = Ran.in(Path.of(""), width, in, InProcess.ENGINE, arguments);
        return new Typed(ran.code(), ran.out(), ran.err());
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
