package camberwell.language;

import camberwell.vocabulary.Axle;
import java.util.List;

/**
 * Rules that are written once for both ends of the car: {@code {axle}} and {@code {other-axle}}, with a capital where a
 * sentence starts, stand for front and rear, then for rear and front. A line stays one line, so that a problem or an
 * explanation names the line that somebody wrote.
 */
public final class BothEnds {

    private static final String OPEN = "{";

    private BothEnds() {
    }

    /** Whether a line names an end without saying which. */
    public static boolean isOpen(String line) {
        return !line.stripLeading().startsWith("//") && (line.contains("{axle}") || line.contains("{Axle}")
                || line.contains("{other-axle}")
                || line.contains("{Other-axle}"));
    }

    /** The line as it reads for that end. */
    public static String at(Axle axle, String line) {
        if (!line.contains(OPEN)) {
            return line;
        }
        String here = axle.id();
        String there = (axle == Axle.FRONT ? Axle.REAR : Axle.FRONT).id();
        return line.replace("{axle}", here).replace("{Axle}", capital(here)).replace("{other-axle}", there)
                .replace("{Other-axle}", capital(there));
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }

    /**
     * The column in {@code line} of what stands at {@code column} in {@code line} as it reads for that end, both from 1;
     * of what stands in a word that was filled in, that of the brace.
     */
    static int columnAsWritten(Axle axle, String line, int column) {
        int written = 0;
        int read = 0;
        while (written < line.length() && read < column - 1) {
            int close = line.charAt(written) == '{' ? line.indexOf('}', written) : -1;
            String gap = close < 0 ? line.substring(written, written + 1) : line.substring(written, close + 1);
            String filled = at(axle, gap);
            if (read + filled.length() > column - 1) {
                break;
            }
            written += gap.length();
            read += filled.length();
        }
        return written + 1;
    }

    /**
     * A rule file as Drools gets it: each rule for both ends stands there once for each, one with conditions of which one will do
     * once for each way, the others as they are.
     */
    public static String instantiated(String text) {
        if (!text.contains("xle}") && !text.contains("either ")) {
            return text;
        }
        StringBuilder all = new StringBuilder();
        List<String> lines = text.lines().toList();
        int from = 0;
        while (from < lines.size()) {
            int to = endOfRule(lines, from);
            List<String> rule = lines.subList(from, to);
            boolean both = rule.stream().anyMatch(BothEnds::isOpen);
            List<List<String>> ways = EitherOr.ways(rule);
            for (Axle axle : both ? Axle.values() : new Axle[] {Axle.FRONT}) {
                for (int way = 0; way < ways.size(); way++) {
                    for (String line : ways.get(way)) {
                        all.append(named(at(axle, line), way, ways.size())).append('\n');
                    }
                }
            }
            from = to;
        }
        return all.toString();
    }

    private static String named(String line, int way, int ways) {
        int open = line.startsWith("rule ") ? line.indexOf('"') : -1;
        int close = line.lastIndexOf('"');
        return ways == 1 || open < 0 || close == open ? line
                : line.substring(0, open + 1) + EitherOr.named(line.substring(open + 1, close), way, ways)
                + line.substring(close);
    }

    /** The line after the rule that starts at {@code from} or further down, be it that the next one starts there. */
    static int endOfRule(List<String> lines, int from) {
        boolean inRule = false;
        for (int at = from; at < lines.size(); at++) {
            String text = lines.get(at).strip();
            boolean starts = text.startsWith("rule ");
            if (inRule && starts) {
                return at;
            }
            inRule |= starts;
            if (text.equals("end")) {
                return at + 1;
            }
        }
        return lines.size();
    }
}
