package camberwell.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** What came of a command line that was run in this process, as a person would have run it. */
record Ran(int code, String out, String err) {

    /**
     * Runs one.
     *
     * @param directory that it is typed in
     * @param width of the screen
     * @param typed what is piped in
     */
    static Ran in(Path directory, int width, String typed, Engine engine, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), directory, width, false, false);
        int code = Main.run(console, engine, arguments);
        console.err().flush();
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    String all() {
        return out + err;
    }
}
