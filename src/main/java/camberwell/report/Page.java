package camberwell.report;

import java.io.File;
import java.util.ArrayList;
import java.util.List;

/**
 * Text for a screen: wrapped at its width, with styles only where the screen has them. Styles are an aid: nothing is
 * told by them alone. A word is never broken, since names of files and findings are there to be copied: one that is
 * wider than the screen stands on a line of its own. A command is broken only so that it runs as it is copied.
 */
public final class Page {

    private static final int NARROWEST = 30;
    private static final String CONTINUED = " \\";
    private static final boolean WINDOWS = File.separatorChar == '\\';

    private final int width;
    private final boolean styled;
    private final StringBuilder text = new StringBuilder();

    /**
     * @param width in characters; narrower than 30 is taken for 30
     * @param styled whether the screen shows ANSI styles
     */
    public Page(int width, boolean styled) {
        this.width = Math.max(NARROWEST, width);
        this.styled = styled;
    }

    private Page(int least, int width) {
        this.width = Math.max(least, width);
        this.styled = false;
    }

    /** A heading, with an empty line before it. */
    public Page heading(String words) {
        blank();
        wrap("", "", words, "1");
        return this;
    }

    /** A paragraph at that indent. */
    public Page paragraph(int indent, String words) {
        wrap(" ".repeat(indent), " ".repeat(indent), words, "");
        return this;
    }

    /** A point of a list. */
    public Page point(int indent, String words) {
        wrap(" ".repeat(indent) + "- ", " ".repeat(indent + 2), words, "");
        return this;
    }

    /** A point of a numbered list. */
    public Page numbered(int indent, int number, String words) {
        String start = " ".repeat(indent) + (number < 10 ? " " : "") + number + "  ";
        wrap(start, " ".repeat(start.length()), words, "");
        return this;
    }

    /** A label and what it says; on a narrow screen what it says is less indented. */
    public Page labelled(int indent, String label, String words) {
        int column = narrow() ? indent + 2 : indent + 11;
        String start = " ".repeat(indent) + label + (narrow() ? ": " : " ");
        if (start.length() > column) {
            wrap(start, " ".repeat(column), words, "");
        } else {
            wrap(start + " ".repeat(column - start.length()), " ".repeat(column), words, "");
        }
        return this;
    }

    /** A row of a table with two columns beside its name; on a narrow screen they stand below it. */
    public Page row(String name, String one, String other) {
        if (narrow()) {
            String both = one + " / " + other;
            return name.isEmpty() ? paragraph(0, both) : point(0, name).paragraph(4, both);
        }
        int column = (width - 4) / 3;
        List<String> names = fold(name, width - 2 * column - 4);
        List<String> ones = fold(one, column);
        List<String> others = fold(other, column);
        int lines = Math.max(names.size(), Math.max(ones.size(), others.size()));
        for (int i = 0; i < lines; i++) {
            verbatim((pad(names, i, width - 2 * column - 2) + pad(ones, i, column + 2) + pad(others, i, 0))
                    .stripTrailing());
        }
        return this;
    }

    /** Short items, in as many columns as the width has room for, read downwards. */
    public Page columns(int indent, List<String> items) {
        int wide = items.stream().mapToInt(String::length).max().orElse(0) + 3;
        int columns = Math.max(1, Math.min(items.size(), (width - indent) / wide));
        int rows = (items.size() + columns - 1) / columns;
        for (int row = 0; row < rows; row++) {
            StringBuilder line = new StringBuilder(" ".repeat(indent));
            for (int i = row; i < items.size(); i += rows) {
                line.append(items.get(i)).append(" ".repeat(wide - items.get(i).length()));
            }
            text.append(line.toString().stripTrailing()).append('\n');
        }
        return this;
    }

    private static List<String> fold(String words, int columns) {
        Page cell = new Page(0, columns);
        cell.wrap("", "", words, "");
        return cell.text.toString().lines().toList();
    }

    private static String pad(List<String> lines, int line, int columns) {
        String there = line < lines.size() ? lines.get(line) : "";
        return there + " ".repeat(Math.max(0, columns - there.length()));
    }

    /** Whether a table has no room on it. */
    public boolean narrow() {
        return width < 60;
    }

    /** A line as it is, not wrapped. */
    public Page verbatim(String line) {
        text.append(line).append('\n');
        return this;
    }

    /** A drawing; a screen that is too narrow for it is told so, where a wrapped one would mislead. */
    public Page drawing(List<String> lines) {
        int wide = lines.stream().mapToInt(String::length).max().orElse(0);
        if (wide > width) {
            return paragraph(0, "(There is a drawing for screens of " + wide + " characters or more.)");
        }
        lines.forEach(this::verbatim);
        return this;
    }

    /**
     * A command line to be copied: with quotes where a shell wants them, and a backslash where it goes on below. On
     * Windows, whose two shells go on below in two ways, it stays on one line.
     */
    public Page command(String... words) {
        StringBuilder line = new StringBuilder(words[0]);
        for (int i = 1; i < words.length; i++) {
            String word = quoted(words[i]);
            int last = i + 1 < words.length ? CONTINUED.length() : 0;
            if (!WINDOWS && line.length() + 1 + word.length() + last > width) {
                verbatim(line + CONTINUED);
                line = new StringBuilder("    ").append(word);
            } else {
                line.append(' ').append(word);
            }
        }
        return verbatim(line.toString());
    }

    private static String quoted(String word) {
        if (word.matches(WINDOWS ? "[\\p{L}\\p{N}._/\\\\:@+-]+" : "[\\p{L}\\p{N}._/:@%+=,-]+")) {
            return word;
        }
        if (WINDOWS) {
            return '"' + word + '"';
        }
        return word.matches("[^\"$`\\\\!]*") ? '"' + word + '"' : "'" + word.replace("'", "'\\''") + "'";
    }

    /** An empty line, unless there is one or nothing yet. */
    public Page blank() {
        if (!text.isEmpty() && !text.toString().endsWith("\n\n")) {
            text.append('\n');
        }
        return this;
    }

    private void wrap(String first, String next, String words, String style) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(first);
        boolean fresh = true;
        for (String word : words.trim().split("\\s+")) {
            // Below a label there is more room than beside it.
            boolean beside = fresh && lines.isEmpty() && first.length() > next.length() && !first.isBlank();
            if (!fresh && line.length() + 1 + word.length() > width
                    || beside && line.length() + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(next);
                fresh = true;
            }
            if (!fresh) {
                line.append(' ');
            }
            line.append(word);
            fresh = false;
        }
        lines.add(line.toString());
        for (String done : lines) {
            String stripped = done.stripTrailing();
            text.append(styled && !style.isEmpty() ? "\u001b[" + style + "m" + stripped + "\u001b[0m" : stripped)
                    .append('\n');
        }
    }

    /** All of it. */
    @Override
    public String toString() {
        return text.toString();
    }
}
