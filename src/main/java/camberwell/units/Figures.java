package camberwell.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Figures in text, with a point whatever the locale. The platform's formatter would read the locale's symbols first,
 * which every start of a command would wait for.
 */
public final class Figures {

    private static final Pattern GAP = Pattern.compile("%(?:s|d|(\\+?)\\.([0-9])f)");

    private Figures() {
    }

    /** {@code number} with that many digits after the point, rounded half up, and never a negative zero. */
    public static String fixed(double number, int decimals) {
        String text = BigDecimal.valueOf(number).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
        return text.startsWith("-") && text.chars().noneMatch(c -> c >= '1' && c <= '9') ? text.substring(1) : text;
    }

    /**
     * Fills {@code %s}, {@code %d}, {@code %.1f} and {@code %+.1f} in {@code template}; nothing else is a gap.
     *
     * @throws IllegalArgumentException if there are more gaps than {@code values}, or fewer
     */
    public static String fill(String template, Object... values) {
        Matcher gap = GAP.matcher(template);
        StringBuilder text = new StringBuilder();
        int next = 0;
        while (gap.find()) {
            if (next == values.length) {
                throw new IllegalArgumentException("too few values for \"" + template + "\"");
            }
            gap.appendReplacement(text, Matcher.quoteReplacement(one(gap, values[next])));
            next++;
        }
        if (next < values.length) {
            throw new IllegalArgumentException("too many values for \"" + template + "\"");
        }
        return gap.appendTail(text).toString();
    }

    private static String one(Matcher gap, Object value) {
        if (gap.group(2) == null) {
            return String.valueOf(value);
        }
        double number = ((Number) value).doubleValue();
        String text = fixed(number, Integer.parseInt(gap.group(2)));
        return !gap.group(1).isEmpty() && !text.startsWith("-") ? "+" + text : text;
    }
}
