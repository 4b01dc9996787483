package camberwell.cli;

import java.io.PrintStream;
import java.io.Writer;
import java.util.regex.Pattern;

/**
 * Help on a screen that is narrower than picocli lays it out for: laid out wide, so that each paragraph and each option is one
 * line, and broken here. A command in an example goes on behind a backslash, so that it can be copied.
 */
final class NarrowLines extends Writer {

    /** The narrowest that picocli lays out. */
    static final int LEAST = 55;
    /** So wide that nothing is broken. */
    static final int UNBROKEN = 2000;

    private static final String INDENT = " ".repeat(6);
    private static final Pattern STYLE = Pattern.compile("\u001B\\[[0-9;]*m");
    private static final Pattern COLUMN = Pattern.compile("(?<=\\S) {3,}(?=\\S)");
    private static final String SYNOPSIS = "Usage:";
    private static final String EXAMPLE = "  camberwell ";
    private static final String GOES_ON = " \\";

    private final PrintStream out;
    private final int width;
    private final StringBuilder line = new StringBuilder();
    /** Whether the last line goes on in the next. */
    private boolean open;

    NarrowLines(PrintStream out, int width) {
        this.out = out;
        this.width = width;
    }

    @Override
    public void write(char[] text, int from, int length) {
        for (int i = from; i < from + length; i++) {
            if (text[i] == '\n') {
                print(line.toString().stripTrailing());
                line.setLength(0);
            } else {
                line.append(text[i]);
            }
        }
    }

    private void print(String whole) {
        boolean command = open || whole.startsWith(EXAMPLE);
        open = command && whole.endsWith(GOES_ON);
        String left = COLUMN.matcher(whole).replaceAll("  ");
        if (left.length() - left.stripLeading().length() > INDENT.length()) {
            left = INDENT + left.stripLeading();
        }
        String indent = whole.startsWith(" ") || whole.startsWith(SYNOPSIS) ? INDENT : "";
        while (shown(left) > width) {
            int cut = cut(left, command ? width - GOES_ON.length() : width, command);
            if (cut < 0) {
                break;
            }
            out.println(left.substring(0, cut).stripTrailing() + (command ? GOES_ON : ""));
            left = indent + left.substring(cut).stripLeading();
        }
        out.println(left);
    }

    /**
     * The last blank that fits, or else the first, of those that have something before them and, in a command, are in no quotes;
     * below 0 where there is none.
     */
    private static int cut(String text, int width, boolean command) {
        int first = -1;
        for (int cut = text.lastIndexOf(' '); cut > 0; cut = text.lastIndexOf(' ', cut - 1)) {
            String before = text.substring(0, cut);
            if (before.isBlank()) {
                break;
            }
            if (!command || before.chars().filter(letter -> letter == '"').count() % 2 == 0) {
                first = cut;
                if (shown(before) <= width) {
                    break;
                }
            }
        }
        return first;
    }

    private static int shown(String text) {
        return STYLE.matcher(text).replaceAll("").length();
    }

    @Override
    public void flush() {
        out.flush();
    }

    @Override
    public void close() {
        flush();
    }
}
