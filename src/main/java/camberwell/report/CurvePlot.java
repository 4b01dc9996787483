package camberwell.report;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

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

        private double part(double value) {
            return (value - from) / (to - from);
        }

        private double at(double part) {
            return from + part * (to - from);
        }
    }

    /**
     * A curve.
     *
     * @param name what it is
     * @param mark its character on a screen
     * @param colour its colour in a file
     * @param dash its dashes there, empty for a solid line
     * @param x places, rising
     * @param y values there
     */
    record Curve(String name, char mark, String colour, String dash, double[] x, double[] y) {

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
        int row = (int) Math.round((1 - up.part(value)) * (ROWS - 1));
        if (row < 0 || row >= ROWS) {
            return;
        }
        grid[row][column] = grid[row][column] == 'o' && mark == 'x' ? '*' : mark;
    }

    /** As a drawing for a page: a whole SVG file. */
    String svg(String title) {
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" font-family="sans-serif" font-size="13">
                <title>%s</title>
                <rect width="100%%" height="100%%" fill="white"/>
                <text x="%.0f" y="24" font-size="15">%s</text>
                """, SVG_WIDTH, SVG_HEIGHT, escaped(title), SVG_MARGIN, escaped(title)));
        for (int tick = 0; tick <= TICKS; tick++) {
            double part = (double) tick / TICKS;
            svg.append(String.format(Locale.ROOT, """
                    <line x1="%1$.1f" y1="%2$.1f" x2="%1$.1f" y2="%3$.1f" stroke="#ddd"/>
                    <text x="%1$.1f" y="%4$.1f" text-anchor="middle">%5$.2f</text>
                    <line x1="%6$.1f" y1="%7$.1f" x2="%8$.1f" y2="%7$.1f" stroke="#ddd"/>
                    <text x="%9$.1f" y="%10$.1f" text-anchor="end">%11$.1f</text>
                    """, x(across.at(part)), SVG_MARGIN, SVG_HEIGHT - SVG_MARGIN, SVG_HEIGHT - SVG_MARGIN + 18,
                    across.at(part), SVG_MARGIN, y(up.at(part)), SVG_WIDTH - SVG_MARGIN / 2, SVG_MARGIN - 8,
                    y(up.at(part)) + 4, up.at(part)));
        }
        svg.append(String.format(Locale.ROOT, """
                <text x="%.0f" y="%.0f" text-anchor="middle">%s</text>
                <text x="%.0f" y="44">%s</text>
                """, SVG_WIDTH / 2, SVG_HEIGHT - 16, escaped(acrossName), SVG_MARGIN, escaped(upName)));
        int line = 74;
        for (Curve curve : curves) {
            svg.append(polyline(curve)).append(String.format(Locale.ROOT,
                    "<text x=\"%.0f\" y=\"%d\" fill=\"%s\">%s</text>%n", SVG_MARGIN + 12, line, curve.colour(),
                    escaped(curve.name())));
            line += 18;
        }
        return svg.append("</svg>\n").toString();
    }

    private String polyline(Curve curve) {
        String dash = curve.dash().isEmpty() ? "" : " stroke-dasharray=\"" + curve.dash() + "\"";
        return IntStream.range(0, curve.x().length).mapToObj(i -> String.format(Locale.ROOT, "%.1f,%.1f",
                x(curve.x()[i]), y(curve.y()[i]))).collect(Collectors.joining(" ",
                "<polyline fill=\"none\" stroke-width=\"2\" stroke=\"" + curve.colour() + "\"" + dash + " points=\"",
                "\"/>\n"));
    }

    private double x(double value) {
        return SVG_MARGIN + across.part(value) * (SVG_WIDTH - 1.5 * SVG_MARGIN);
    }

    private double y(double value) {
        return SVG_HEIGHT - SVG_MARGIN - up.part(value) * (SVG_HEIGHT - 2 * SVG_MARGIN);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
