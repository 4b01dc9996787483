package camberwell.report;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Curves in one drawing: in characters for a screen, or as a whole SVG file.
 *
 * @param acrossName what is drawn to the right, with its unit
 * @param upName what is drawn upwards, with its unit
 * @param across what the drawing spans to the right
 * @param up what it spans upwards
 * @param curves what is drawn, later ones over earlier ones
 */
record CurvePlot(String acrossName, String upName, Span across, Span up, List<Curve> curves) {

    private static final int ROWS = 14;
    private static final int MARGIN = 7;
    private static final int WIDEST = 64;
    private static final double SVG_WIDTH = 640;
    private static final double SVG_HEIGHT = 420;
    private static final double SVG_MARGIN = 56;
    private static final int TICKS = 5;

    /** From here to there. */
    record Span(double from, double to) {

        private double at(double part) {
            return from + part * (to - from);
        }
    }

    /**
     * A curve.
     *
     * @param name what it is
     * @param mark its character on a screen
     * @param style what it is in a file's style sheet
     * @param x places, rising
     * @param y values there
     */
    record Curve(String name, char mark, String style, double[] x, double[] y) {

        /** Between the curve's points; not a number beyond them. */
        private double at(double wanted) {
            for (int i = 1; i < x.length; i++) {
                if (wanted >= x[i - 1] && wanted <= x[i]) {
                    double part = x[i] > x[i - 1] ? (wanted - x[i - 1]) / (x[i] - x[i - 1]) : 0;
                    return y[i - 1] + part * (y[i] - y[i - 1]);
                }
            }
            return Double.NaN;
        }
    }

    /** In characters; where the second of two marks falls on the first there is an asterisk. */
    void draw(Page page, int width, int acrossDecimals) {
        int columns = Math.max(20, Math.min(WIDEST, width - MARGIN - 2));
        char[][] grid = new char[ROWS][columns];
        for (char[] row : grid) {
            Arrays.fill(row, ' ');
        }
        for (int column = 0; column < columns; column++) {
            double place = across.at((double) column / (columns - 1));
            for (Curve curve : curves) {
                double value = curve.at(place);
                if (!Double.isNaN(value)) {
                    set(grid, column, value, curve.mark());
                }
            }
        }
        page.verbatim(upName);
        for (int row = 0; row < ROWS; row++) {
            boolean labelled = row == 0 || row == ROWS - 1;
            String label = labelled ? String.format(Locale.ROOT, "%5.1f", row == 0 ? up.to() : up.from()) : "     ";
            page.verbatim((label + " |" + new String(grid[row])).stripTrailing());
        }
        page.verbatim("      +" + "-".repeat(columns));
        String most = String.format(Locale.ROOT, "%." + acrossDecimals + "f", across.to());
        int gap = Math.max(1, (columns - acrossName.length()) / 2 - 1);
        String least = String.format(Locale.ROOT, "%.0f", across.from());
        page.verbatim("      " + least + " ".repeat(gap) + acrossName
                + " ".repeat(Math.max(1, columns - gap - acrossName.length() - most.length())) + most);
    }

    private void set(char[][] grid, int column, double value, char mark) {
        int row = (int) Math.round(new Scale(up.from(), up.to(), ROWS - 1, 0).at(value));
        if (row < 0 || row >= ROWS) {
            return;
        }
        grid[row][column] = grid[row][column] == 'o' && mark == 'x' ? '*' : mark;
    }

    /** As a drawing for a page: a whole SVG file. */
    String svg(String title) {
        Scale x = new Scale(across.from(), across.to(), SVG_MARGIN, SVG_WIDTH - SVG_MARGIN / 2);
        Scale y = new Scale(up.from(), up.to(), SVG_HEIGHT - SVG_MARGIN, SVG_MARGIN);
        List<DomContent> parts = new ArrayList<>();
        for (double mark : x.marks(TICKS)) {
            parts.add(Svg.line("grid", x.at(mark), y.end(), x.at(mark), y.start()));
            parts.add(Svg.text("", x.at(mark), y.start() + 18, "middle", x.label(mark, TICKS)));
        }
        for (double mark : y.marks(TICKS)) {
            parts.add(Svg.line("grid", x.start(), y.at(mark), x.end(), y.at(mark)));
            parts.add(Svg.text("", x.start() - 8, y.at(mark) + 4, "end", y.label(mark, TICKS)));
        }
        parts.add(Svg.text("", SVG_WIDTH / 2, SVG_HEIGHT - 16, "middle", acrossName));
        parts.add(Svg.text("", x.start(), 46, "start", upName));
        int line = 74;
        for (Curve curve : curves) {
            double[] points = new double[2 * curve.x().length];
            for (int i = 0; i < curve.x().length; i++) {
                points[2 * i] = x.at(curve.x()[i]);
                points[2 * i + 1] = y.at(curve.y()[i]);
            }
            parts.add(Svg.polyline(curve.style(), points));
            parts.add(Svg.text(curve.style(), x.start() + 12, line, "start", curve.name()));
            line += 18;
        }
        return Svg.file(SVG_WIDTH, SVG_HEIGHT, title, parts);
    }
}
