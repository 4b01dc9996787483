package camberwell.report;

import java.util.Arrays;

/** Figures on a scale of characters. What lies beyond the scale stands at its end. */
final class DotLine {

    /** Where more than one figure falls on a character. */
    static final char SEVERAL = '*';

    private final double low;
    private final double high;
    private final char[] line;
    private final boolean[] marked;

    /**
     * @param low the figure at the left end
     * @param high at the right end; where it is no greater, all stands in the middle
     * @param width characters, at least 1
     */
    DotLine(double low, double high, int width) {
        this.low = low;
        this.high = high;
        this.line = new char[width];
        this.marked = new boolean[width];
        Arrays.fill(line, ' ');
    }

    private int column(double figure) {
        int last = line.length - 1;
        return high > low ? (int) Math.max(0, Math.min(last, Math.round((figure - low) / (high - low) * last)))
                : line.length / 2;
    }

    /** Fills a span; to be asked for before the marks that stand upon it. */
    DotLine span(double from, double to, char mark) {
        Arrays.fill(line, column(from), column(to) + 1, mark);
        return this;
    }

    /** Marks a figure. */
    DotLine mark(double figure, char mark) {
        int at = column(figure);
        line[at] = !marked[at] || line[at] == mark ? mark : SEVERAL;
        marked[at] = true;
        return this;
    }

    /** The line, as wide as was asked for. */
    String text() {
        return new String(line);
    }
}
