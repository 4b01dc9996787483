package camberwell.language;

import java.util.ArrayList;
import java.util.List;

/**
 * Conditions of which one will do: a line that starts with "either", and below it lines that start with "or", each with the
 * dashes under it. The reader makes a rule of each way through them, numbered in brackets after the name; as they are one
 * rule to whoever wrote them, they speak with one voice, that of the surest. Lines and columns stay as they were written.
 */
public final class EitherOr {

    /** Rules of more ways than that are refused: nobody reads them. */
    static final int MOST = 12;

    private static final String EITHER = "either ";
    private static final String OR = "or ";
    private static final int OUTSIDE = -1;
    private static final String OPEN = " [";

    private EitherOr() {
    }

    /** The name of one of several ways, from 0; the name itself where there is but one. */
    static String named(String rule, int way, int ways) {
        return ways == 1 ? rule : rule + OPEN + (way + 1) + "]";
    }

    /**
     * The lines of a rule, once for each way through them; as they are where nothing in them is joined by "or", or there
     * are too many ways.
     */
    static List<List<String>> ways(List<String> rule) {
        if (rule.stream().noneMatch(line -> line.stripLeading().startsWith(EITHER))) {
            return List.of(rule);
        }
        int[] group = new int[rule.size()];
        int[] option = new int[rule.size()];
        List<Integer> options = new ArrayList<>();
        boolean inside = false;
        for (int at = 0; at < rule.size(); at++) {
            String text = rule.get(at).strip();
            if (text.startsWith(EITHER)) {
                options.add(1);
                inside = true;
            } else if (inside && text.startsWith(OR)) {
                options.set(options.size() - 1, options.get(options.size() - 1) + 1);
            } else if (!text.isEmpty() && !text.startsWith("-") && !text.startsWith("//")) {
                inside = false;
            }
            group[at] = inside ? options.size() - 1 : OUTSIDE;
            option[at] = inside ? options.get(options.size() - 1) - 1 : 0;
        }
        int ways = 1;
        for (int count : options) {
            ways = Math.min(MOST + 1, ways * count);
        }
        if (ways > MOST || options.contains(1)) {
            return List.of(rule);
        }
        List<List<String>> all = new ArrayList<>();
        for (int way = 0; way < ways; way++) {
            all.add(way(rule, group, option, chosen(way, options)));
        }
        return all;
    }

    /** The option of each group that a way takes: its digits in a system of so many. */
    private static int[] chosen(int way, List<Integer> options) {
        int[] chosen = new int[options.size()];
        int left = way;
        for (int at = options.size() - 1; at >= 0; at--) {
            chosen[at] = left % options.get(at);
            left /= options.get(at);
        }
        return chosen;
    }

    private static List<String> way(List<String> rule, int[] group, int[] option, int[] chosen) {
        List<String> lines = new ArrayList<>();
        for (int at = 0; at < rule.size(); at++) {
            String line = rule.get(at);
            if (group[at] == OUTSIDE) {
                lines.add(line);
            } else if (option[at] != chosen[group[at]]) {
                lines.add("");
            } else {
                lines.add(plain(line));
            }
        }
        return lines;
    }

    /** A line without the word that joins it, at the same columns. */
    private static String plain(String line) {
        int from = line.length() - line.stripLeading().length();
        int length = line.startsWith(EITHER, from) ? EITHER.length() : line.startsWith(OR, from) ? OR.length() : 0;
        return line.substring(0, from) + " ".repeat(length) + line.substring(from + length);
    }
}
