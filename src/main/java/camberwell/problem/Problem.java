package camberwell.problem;

import java.util.Comparator;
import java.util.Optional;

/**
 * One thing that is wrong in a file.
 *
 * @param file as the person named it
 * @param line from 1
 * @param column from 1
 * @param message what is wrong, with what was found quoted
 * @param suggestion the word that was most likely meant
 * @param warning whether work can go on all the same
 */
public record Problem(String file, int line, int column, String message, Optional<String> suggestion, boolean warning)
        implements Comparable<Problem> {

    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::file)
            .thenComparingInt(Problem::line).thenComparingInt(Problem::column).thenComparing(Problem::message);

    /** A problem that stops the work. */
    public static Problem error(String file, int line, int column, String message) {
        return new Problem(file, line, column, message, Optional.empty(), false);
    }

    /** A problem that stops the work, with what was most likely meant. */
    public static Problem error(String file, int line, int column, String message, Optional<String> suggestion) {
        return new Problem(file, line, column, message, suggestion, false);
    }

    /** {@code FILE:LINE:COLUMN: what is wrong; did you mean "x"?} */
    public String text() {
        return file + ":" + line + ":" + column + ": " + (warning ? "note: " : "") + message
                + suggestion.map(word -> "; did you mean \"" + word + "\"?").orElse("");
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }
}
