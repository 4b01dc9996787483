package camberwell.cli;

import camberwell.problem.Text;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;

/**
 * Where a command reads and writes.
 *
 * @param out what was asked for
 * @param err what is said beside it
 * @param in what is typed or piped
 * @param directory that relative paths start from
 * @param width of the screen, in characters
 * @param styled whether {@code out} is a screen that shows styles
 * @param interactive whether a person sits at {@code in} and {@code out}
 */
public record Console(PrintStream out, PrintStream err, InputStream in, Path directory, int width, boolean styled,
        boolean interactive) {

    private static final int DEFAULT_WIDTH = 80;
    /** A wider screen is not filled: lines would be too long to read. */
    static final int WIDEST = 100;

    /** Whatever is printed is safe for a screen. */
    public Console {
        out = new PrintStream(new ScreenSafeStream(out, styled), false, StandardCharsets.UTF_8);
        err = new PrintStream(new ScreenSafeStream(err, styled), true, StandardCharsets.UTF_8);
    }

    /**
     * The process's own. The launcher says whether standard output is a terminal, and which folder it was started in:
     * it has to leave that folder for the class-data archive to fit. Text is written in UTF-8 whatever the platform's
     * encoding is.
     */
    static Console ofProcess(Map<String, String> environment) {
        boolean windows = System.getProperty("os.name", "").startsWith("Windows");
        // A batch file cannot tell whether its output goes to a screen; Java can, if its input comes from one too.
        boolean terminal = Boolean.getBoolean("camberwell.terminal") && (!windows || System.console() != null);
        boolean plain = !environment.getOrDefault("NO_COLOR", "").isEmpty()
                || environment.getOrDefault("TERM", "").equals("dumb")
                || windows && !environment.containsKey("WT_SESSION") && !environment.containsKey("TERM");
        return new Console(new PrintStream(new Written(new FileOutputStream(FileDescriptor.out)), false,
                StandardCharsets.UTF_8), new PrintStream(new FileOutputStream(FileDescriptor.err), true,
                StandardCharsets.UTF_8), System.in,
                Path.of(System.getProperty("camberwell.directory", "")).normalize(), width(environment),
                terminal && !plain, terminal && System.console() != null);
    }

    private static int width(Map<String, String> environment) {
        try {
            int columns = Integer.parseInt(environment.getOrDefault("COLUMNS", "").trim());
            return columns > 0 ? Math.min(columns, WIDEST) : DEFAULT_WIDTH;
        } catch (NumberFormatException e) {
            return DEFAULT_WIDTH;
        }
    }

    /** A path as it was typed, from the working directory. */
    Path path(String typed) {
        return directory.resolve(typed);
    }

    /** A path, or a message that starts with one or suggests one, as it is typed in the working directory. */
    String shown(String path) {
        String clean = Text.lines(path);
        String here = Text.line(directory.toString());
        String separator = directory.getFileSystem().getSeparator();
        String prefix = here.endsWith(separator) ? here : here + separator;
        if (here.isEmpty()) {
            return clean;
        }
        String suggested = clean.replace("did you mean \"" + prefix, "did you mean \"");
        return suggested.startsWith(prefix) ? suggested.substring(prefix.length()) : suggested;
    }
}
