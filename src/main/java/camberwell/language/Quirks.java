package camberwell.language;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What word processors and web pages do to a text without being asked: curly quotes, spaces that do not break, capitals
 * where a line starts. The line is read as it was meant, and each of these is told once a file.
 */
final class Quirks {

    private static final String CURLY = "\u201c\u201d\u201e\u201f\u00ab\u00bb\u2033";
    private static final String SPACES = "\u00a0\u2007\u2009\u202f\u2002\u2003\u3000";
    private static final List<String> KEYWORDS = List.of("rule", "when", "then", "end");

    private final List<String> curly = new ArrayList<>();
    private final List<String> spaced = new ArrayList<>();

    /** The first line and column of a quirk, how many lines have it, and what to do. */
    record Found(int line, int column, String message) {
    }

    private Optional<Found> curlyAt = Optional.empty();
    private Optional<Found> spaceAt = Optional.empty();

    /** The line as it was meant. */
    String straightened(String line, int number) {
        if (isPlain(line)) {
            return line;
        }
        String text = line;
        if (hasCurlyQuotes(text)) {
            curly.add(line);
            if (curlyAt.isEmpty()) {
                curlyAt = Optional.of(new Found(number, first(line, CURLY) + 1, "curly quotes; write straight ones, \""));
            }
            text = replaced(text, CURLY, '"');
        }
        if (first(outside(text), SPACES) >= 0) {
            spaced.add(line);
            if (spaceAt.isEmpty()) {
                spaceAt = Optional.of(new Found(number, first(outside(text), SPACES) + 1,
                        "a space that does not break; write an ordinary one"));
            }
            text = replaced(text, SPACES, ' ');
        }
        return text;
    }

    /** Whether every letter is one of ASCII, as in nearly all lines, and no quirk can be there. */
    private static boolean isPlain(String line) {
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) > '~') {
                return false;
            }
        }
        return true;
    }

    /** A quote in the place of one that belongs to the rule's form; inside a reason any quote may stand. */
    private static boolean hasCurlyQuotes(String line) {
        String text = replaced(line, SPACES, ' ').strip();
        int open = text.startsWith("@") ? text.indexOf('(') + 1 : text.startsWith("rule ") ? 5 : -1;
        return open > 0 && first(text.substring(open).stripLeading(), CURLY) == 0;
    }

    /** The line without what stands in straight quotes, at the same columns. */
    private static String outside(String line) {
        int open = line.indexOf('"');
        int close = line.lastIndexOf('"');
        return open < 0 || close == open ? line
                : line.substring(0, open) + "\"".repeat(close - open) + line.substring(close);
    }

    private static int first(String text, String characters) {
        for (int i = 0; i < text.length(); i++) {
            if (characters.indexOf(text.charAt(i)) >= 0) {
                return i;
            }
        }
        return -1;
    }

    private static String replaced(String text, String characters, char by) {
        StringBuilder replaced = new StringBuilder(text);
        for (int i = 0; i < text.length(); i++) {
            if (characters.indexOf(text.charAt(i)) >= 0) {
                replaced.setCharAt(i, by);
            }
        }
        return replaced.toString();
    }

    /** What was found in the file, once each. */
    List<Found> found() {
        List<Found> found = new ArrayList<>();
        curlyAt.ifPresent(first -> found.add(withCount(first, curly.size())));
        spaceAt.ifPresent(first -> found.add(withCount(first, spaced.size())));
        return found;
    }

    private static Found withCount(Found first, int lines) {
        return lines == 1 ? first : new Found(first.line(), first.column(), first.message() + " (here and in "
                + (lines - 1) + " more line" + (lines == 2 ? "" : "s") + ")");
    }

    /** Whether a line ends in a mark that ends sentences elsewhere. */
    static boolean isPunctuated(String text) {
        return !text.isEmpty() && ":;.,".indexOf(text.charAt(text.length() - 1)) >= 0;
    }

    /** The keyword that a line starts with when capitals do not count, where they stand. */
    static Optional<String> miswrittenKeyword(String text) {
        for (String keyword : KEYWORDS) {
            int end = keyword.length();
            boolean wordEnds = text.length() == end
                    || keyword.equals("rule") && text.length() > end && " \"".indexOf(text.charAt(end)) >= 0;
            if (isPunctuated(text) && !keyword.equals("rule") && text.length() == end + 1
                    && text.regionMatches(true, 0, keyword, 0, end)) {
                return Optional.of(keyword);
            }
            if (wordEnds && text.regionMatches(true, 0, keyword, 0, end) && !text.startsWith(keyword)) {
                return Optional.of(keyword);
            }
        }
        return Optional.empty();
    }
}
