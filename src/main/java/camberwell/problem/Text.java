package camberwell.problem;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Pieces of messages. */
public final class Text {

    private static final int LONGEST = 60;
    /** Control characters, line separators, and the marks that turn the direction of writing. */
    private static final Pattern CONTROL = Pattern.compile("[\\p{Cc}\\u2028-\\u202E\\u2066-\\u2069]");

    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]*");
    /** A letter that is none of the plain ones. */
    private static final Pattern FOREIGN = Pattern.compile("[\\p{L}&&[^A-Za-z]]");

    private Text() {
    }

    /** Somebody's text in quotes, shortened. */
    public static String quoted(String text) {
        String shown = line(text);
        return "\"" + (shown.length() > LONGEST ? shown.substring(0, LONGEST) + "…" : shown) + "\"";
    }

    /** Somebody's text with control characters blanked, which could otherwise act on the terminal. */
    public static String line(String text) {
        return CONTROL.matcher(text).replaceAll(" ");
    }

    /** Somebody's text with control characters blanked, save the ends of its lines. */
    public static String lines(String text) {
        return text.indexOf('\n') < 0 ? line(text) : text.lines().map(Text::line).collect(Collectors.joining("\n"));
    }

    /**
     * What to write instead of a name with umlauts or accents where plain letters alone may stand: {@code ; did you mean
     * "uebersteuert"?}; blank where it has none, or would still be no name.
     */
    public static String spelledPlainly(String name) {
        String plain = Normalizer.normalize(name.toLowerCase(Locale.ROOT).replace("ä", "ae").replace("ö", "oe")
                .replace("ü", "ue").replace("ß", "ss"), Normalizer.Form.NFD).replaceAll("\\p{M}", "").replaceAll("[ _]+", "-");
        return FOREIGN.matcher(name).find() && NAME.matcher(plain).matches() ? "; did you mean " + quoted(plain) + "?" : "";
    }

    /** {@code a, b or c}. */
    public static String oneOf(List<String> words) {
        return joined(words, " or ");
    }

    /** {@code a, b and c}. */
    public static String allOf(List<String> words) {
        return joined(words, " and ");
    }

    private static String joined(List<String> words, String beforeLast) {
        int last = words.size() - 1;
        return last < 1 ? String.join("", words)
                : String.join(", ", words.subList(0, last)) + beforeLast + words.get(last);
    }
}
