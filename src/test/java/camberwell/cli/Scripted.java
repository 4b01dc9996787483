package camberwell.cli;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.io.SequenceInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** What is typed at a command, with things that happen between two lines of it. */
final class Scripted {

    /** Something that happens while the command waits for its next line. */
    interface Happening {
        void happens() throws IOException;
    }

    private final List<InputStream> parts = new ArrayList<>();

    /** Types a line. */
    Scripted line(String typed) {
        parts.add(new ByteArrayInputStream((typed + "\n").getBytes(StandardCharsets.UTF_8)));
        return this;
    }

    /** Lets something happen once all lines before were answered. */
    Scripted then(Happening happening) {
        parts.add(new InputStream() {
            @Override
            public int read() throws IOException {
                happening.happens();
                return -1;
            }
        });
        return this;
    }

    /** Runs a command with it. */
    Ran run(Path directory, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, false, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), new SequenceInputStream(Collections.enumeration(parts)),
                directory, 80, false, false);
        int code = Main.run(console, InProcess.ENGINE, arguments);
        console.err().flush();
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }
}
