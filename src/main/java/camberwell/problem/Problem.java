package camberwell.problem;

import java.io.EOFException;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.util.Comparator;
import java.util.Optional;
import java.util.zip.ZipException;

/**
 * One thing that is wrong with an input, for a person to act on.
 *
 * @param file the file as it was named, {@code -} for standard input, or the command-line option that is wrong
 * @param line counted from 1; 0 where the problem has no line, for instance a file that is not there
 * @param column counted from 1; 0 where the problem has no line
 * @param message what is wrong, one line without a full stop
 * @param suggestion what was most likely meant
 * @param warning whether the input can be used all the same, read as the message says
 * @param excerpt the line that the problem is in; empty where there is none
 */
public record Problem(String file, int line, int column, String message, Optional<String> suggestion, boolean warning,
        String excerpt) implements Comparable<Problem> {

    private static final int WIDEST = 100;
    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line).thenComparingInt(Problem::column).thenComparing(Problem::message);

    /** A problem of a whole file, or of a command-line option. */
    public static Problem of(String file, String message, Optional<String> suggestion) {
        return new Problem(file, 0, 0, message, suggestion, false, "");
    }

    /** A problem at a place, without its line at hand. */
    public static Problem error(String file, int line, int column, String message) {
        return error(file, line, column, message, Optional.empty());
    }

    /** A problem at a place, without its line at hand, with what was most likely meant. */
    public static Problem error(String file, int line, int column, String message, Optional<String> suggestion) {
        return new Problem(file, line, column, message, suggestion, false, "");
    }

    /** A file that cannot be written, with the operating system's reason. */
    public static Problem unwritable(String file, IOException e) {
        return of(file, "cannot be written: " + (e instanceof NoSuchFileException ? "its folder is not there"
                : e instanceof AccessDeniedException ? "this user may not write there" : reason(e)), Optional.empty());
    }

    /** A file that cannot be read, with the operating system's reason. */
    public static Problem unreadable(String file, IOException e) {
        return of(file, "cannot be read: " + reason(e), Optional.empty());
    }

    /** A file that is not there, with the name of one that may have been meant. */
    public static Problem missing(String file, Optional<String> suggestion) {
        // Java has this in the place of bytes that are no text, and finds no file by it.
        return file.indexOf('\uFFFD') < 0 ? of(file, "there is no such file", suggestion)
                : of(file, "the file's name is not UTF-8 text, so that it cannot be found; rename it", Optional.empty());
    }

    private static String reason(IOException e) {
        if (e instanceof FileSystemException of) {
            return e instanceof NoSuchFileException ? "it is gone"
                    : e instanceof AccessDeniedException ? "this user may not read it"
                    : e instanceof FileAlreadyExistsException || e instanceof NotDirectoryException ? "a file is in the way"
                    : of.getReason() != null ? of.getReason() : "the system does not say why";
        }
        return e instanceof EOFException ? "it is cut off"
                : e instanceof CharacterCodingException ? "it is not UTF-8 text"
                : e instanceof ZipException || e.getMessage() == null ? "it is damaged" : e.getMessage();
    }

    /** The same by another name of the file. */
    public Problem inFile(String other) {
        return new Problem(other, line, column, message, suggestion, warning, excerpt);
    }

    /** {@code FILE:LINE:COLUMN: what is wrong; did you mean "x"?} */
    public String text() {
        return Text.line(file + (line > 0 ? ":" + line + ":" + column : "") + ": " + (warning ? "warning: " : "")
                + message + suggestion.map(word -> "; did you mean \"" + word + "\"?").orElse(""));
    }

    /** {@link #text()}, and below it the line of the file with a caret under the column. */
    public String withExcerpt() {
        if (excerpt.isBlank()) {
            return text();
        }
        // Long lines are cut so that the caret stays in view.
        int from = Math.max(0, Math.min(column - 1 - WIDEST / 2, excerpt.length() - WIDEST));
        String shown = excerpt.substring(from, Math.min(excerpt.length(), from + WIDEST));
        String number = "  " + line;
        return text() + "\n" + number + " | " + shown
                + "\n" + " ".repeat(number.length()) + " | " + " ".repeat(column - 1 - from) + "^";
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        return text();
    }
}
