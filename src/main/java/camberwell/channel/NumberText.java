package camberwell.channel;

import java.time.DateTimeException;
import java.time.LocalDate;

/** Numbers and times of day as loggers write them, read without making an object of each. */
final class NumberText {

    /** Returned for a text that is neither a number nor one of the words for a missing one. */
    static final double NONE = Double.NEGATIVE_INFINITY;

    private static final int EXACT_DIGITS = 15;
    private static final double[] TENS = new double[23];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private NumberText() {
    }

    /** The number in that text; not a number where it is empty or says so, {@link #NONE} where it is something else. */
    static double parse(String text, char decimal) {
        return parse(text.toCharArray(), 0, text.length(), decimal);
    }

    /**
     * The number in those characters: the {@code double} nearest to it where it has at most 15 significant digits and no
     * exponent beyond ±22, which a quotient or a product of two exact numbers is; of longer ones the digits after the
     * fifteenth are passed over, a relative error under 1e-14.
     */
    static double parse(char[] text, int offset, int length, char decimal) {
        int to = offset + length;
        int at = offset;
        boolean negative = length > 0 && text[at] == '-';
        at += negative ? 1 : 0;
        long digits = 0;
        int from = at;
        int letter = 0;
        while (at < to && (letter = text[at] - '0') >= 0 && letter <= 9) {
            digits = digits * 10 + letter;
            at++;
        }
        int seen = at - from;
        int scale = 0;
        if (at < to && text[at] == decimal) {
            int point = ++at;
            while (at < to && (letter = text[at] - '0') >= 0 && letter <= 9) {
                digits = digits * 10 + letter;
                at++;
            }
            scale = at - point;
            seen += scale;
        }
        // Nearly every cell of a log is such a plain number; what is left takes the longer way.
        if (at < to || seen == 0 || seen > EXACT_DIGITS) {
            return any(text, offset, length, decimal);
        }
        double value = digits / TENS[scale];
        return negative ? -value : value;
    }

    /** A number that may have blanks around it, a sign of any kind, many digits and an exponent. */
    private static double any(char[] text, int offset, int length, char decimal) {
        int from = offset;
        int to = offset + length;
        while (from < to && text[from] <= ' ') {
            from++;
        }
        while (to > from && text[to - 1] <= ' ') {
            to--;
        }
        if (from == to) {
            return Double.NaN;
        }
        int at = from;
        boolean negative = text[at] == '-' || text[at] == '\u2212';
        if (negative || text[at] == '+') {
            at++;
        }
        long digits = 0;
        int count = 0;
        int scale = 0;
        int seen = 0;
        boolean fraction = false;
        for (; at < to; at++) {
            char letter = text[at];
            if (letter >= '0' && letter <= '9') {
                seen++;
                if (count < EXACT_DIGITS) {
                    digits = digits * 10 + letter - '0';
                    count += digits == 0 ? 0 : 1;
                    scale -= fraction ? 1 : 0;
                } else {
                    scale += fraction ? 0 : 1;
                }
            } else if (letter == decimal && !fraction) {
                fraction = true;
            } else {
                break;
            }
        }
        if (seen == 0) {
            return missing(text, from, to) ? Double.NaN : NONE;
        }
        if (at < to) {
            int exponent = exponent(text, at, to);
            if (exponent == Integer.MIN_VALUE) {
                return NONE;
            }
            scale += exponent;
        }
        double value = scale < -22 || scale > 22 ? Double.parseDouble(digits + "e" + scale)
                : scale < 0 ? digits / TENS[-scale] : digits * TENS[scale];
        return negative ? -value : value;
    }

    private static int exponent(char[] text, int from, int to) {
        int at = from;
        if (text[at] != 'e' && text[at] != 'E') {
            return Integer.MIN_VALUE;
        }
        at++;
        boolean negative = at < to && text[at] == '-';
        if (at < to && (negative || text[at] == '+')) {
            at++;
        }
        if (at == to || to - at > 3) {
            return Integer.MIN_VALUE;
        }
        int value = 0;
        for (; at < to; at++) {
            if (text[at] < '0' || text[at] > '9') {
                return Integer.MIN_VALUE;
            }
            value = value * 10 + text[at] - '0';
        }
        return negative ? -value : value;
    }

    private static boolean missing(char[] text, int from, int to) {
        if (to - from > 9) {
            return false;
        }
        return switch (new String(text, from, to - from).toLowerCase(java.util.Locale.ROOT)) {
            case "nan", "-", "--", "---", "na", "n/a", "#n/a", "null", "none", "inf", "-inf", "+inf", "infinity",
                    "-infinity", "?", "invalid", "-nan", "nan(ind)" -> true;
            default -> false;
        };
    }

    /**
     * Seconds of a time: a number, {@code [hh:]mm:ss.fff}, or a date with such a time behind it.
     *
     * @return {@link #NONE} where it is none of these
     */
    static double time(char[] text, int offset, int length, char decimal) {
        int colons = 0;
        for (int i = offset; i < offset + length; i++) {
            colons += text[i] == ':' ? 1 : 0;
        }
        return colons == 0 ? parse(text, offset, length, decimal)
                : clock(new String(text, offset, length).strip(), decimal);
    }

    private static double clock(String text, char decimal) {
        String time = text;
        double days = 0;
        int gap = Math.max(text.indexOf('T'), text.indexOf(' '));
        if (gap > 0 && text.indexOf(':') > gap) {
            days = day(text.substring(0, gap));
            time = text.substring(gap + 1);
        }
        time = time.replaceFirst("(Z|[+-]\\d{2}:?\\d{2})$", "");
        double seconds = 0;
        for (String part : time.split(":")) {
            double value = parse(part.replace(',', '.'), '.');
            if (!(value >= 0)) {
                return NONE;
            }
            seconds = seconds * 60 + value;
        }
        return days == NONE ? NONE : days * 86400 + seconds;
    }

    private static double day(String date) {
        try {
            String[] parts = date.split("[-./]");
            if (parts.length != 3) {
                return NONE;
            }
            int first = Integer.parseInt(parts[0]);
            int last = Integer.parseInt(parts[2]);
            // Which of day and month comes first is of no account: only differences are used.
            int middle = Math.min(12, Integer.parseInt(parts[1]));
            LocalDate day = first > 31 ? LocalDate.of(first, middle, last) : LocalDate.of(last, middle, first);
            return day.toEpochDay();
        } catch (NumberFormatException | DateTimeException e) {
            return NONE;
        }
    }
}
