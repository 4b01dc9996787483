package camberwell.report;

import camberwell.model.Characteristic;
import camberwell.physics.VehicleModel;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Two understeer characteristics in one drawing: steer over lateral acceleration, before a change and after it, with
 * the steer of the turn alone.
 */
public final class CharacteristicPlot {

    private static final int ROWS = 14;
    private static final int MARGIN = 7;
    private static final int WIDEST = 64;
    private static final double SVG_WIDTH = 640;
    private static final double SVG_HEIGHT = 420;
    private static final double SVG_MARGIN = 56;

    private final Characteristic before;
    private final Characteristic after;
    private final double mostLateral;
    private final double leastSteer;
    private final double mostSteer;

    /** Both at the same speed. */
    public CharacteristicPlot(Characteristic before, Characteristic after) {
        this.before = before;
        this.after = after;
        double most = Math.max(before.limit().lateral(), after.limit().lateral()) / VehicleModel.GRAVITY;
        mostLateral = Math.max(0.1, Math.ceil(most * 10) / 10);
        double[] steers = Stream.of(before, after).flatMap(curve -> curve.points().stream())
                .mapToDouble(point -> Math.toDegrees(point.steer())).toArray();
        double turn = Math.toDegrees(before.turn(mostLateral * VehicleModel.GRAVITY));
        leastSteer = Math.min(0, Math.floor(Arrays.stream(steers).min().orElse(0)));
        mostSteer = Math.max(1, Math.ceil(Math.max(turn, Arrays.stream(steers).max().orElse(0))));
    }

    /** In characters: {@code o} before, {@code x} after, {@code *} both, {@code .} the turn alone. */
    public void draw(Page page, int width) {
        int columns = Math.max(20, Math.min(WIDEST, width - MARGIN - 2));
        char[][] grid = new char[ROWS][columns];
        for (char[] row : grid) {
            Arrays.fill(row, ' ');
        }
        for (int column = 0; column < columns; column++) {
            double lateral = mostLateral * column / (columns - 1);
            set(grid, column, Math.toDegrees(before.turn(lateral * VehicleModel.GRAVITY)), '.');
            for (Characteristic curve : new Characteristic[] {before, after}) {
                double steer = steer(curve, lateral);
                if (!Double.isNaN(steer)) {
                    set(grid, column, steer, curve == before ? 'o' : 'x');
                }
            }
        }
        page.verbatim("Steer angle, degrees");
        for (int row = 0; row < ROWS; row++) {
            boolean labelled = row == 0 || row == ROWS - 1;
            String label = labelled ? String.format(Locale.ROOT, "%5.1f", row == 0 ? mostSteer : leastSteer) : "     ";
            page.verbatim((label + " |" + new String(grid[row])).stripTrailing());
        }
        page.verbatim("      +" + "-".repeat(columns));
        String most = String.format(Locale.ROOT, "%.1f", mostLateral);
        String name = "lateral acceleration, g";
        int gap = Math.max(1, (columns - name.length()) / 2 - 1);
        page.verbatim("      0" + " ".repeat(gap) + name
                + " ".repeat(Math.max(1, columns - gap - name.length() - most.length())) + most);
        page.paragraph(0, "o before, x after, * both, . the turn alone");
    }

    private void set(char[][] grid, int column, double steer, char mark) {
        double part = (steer - leastSteer) / (mostSteer - leastSteer);
        int row = (int) Math.round((1 - part) * (ROWS - 1));
        if (row < 0 || row >= ROWS) {
            return;
        }
        grid[row][column] = grid[row][column] == 'o' && mark == 'x' ? '*' : mark;
    }

    /** Steer in degrees at a lateral acceleration in g, between the curve's points; not a number beyond its limit. */
    private static double steer(Characteristic curve, double lateral) {
        double wanted = lateral * VehicleModel.GRAVITY;
        for (int i = 1; i < curve.points().size(); i++) {
            Characteristic.Point from = curve.points().get(i - 1);
            Characteristic.Point to = curve.points().get(i);
            if (wanted >= from.lateral() && wanted <= to.lateral()) {
                double part = (wanted - from.lateral()) / (to.lateral() - from.lateral());
                return Math.toDegrees(from.steer() + part * (to.steer() - from.steer()));
            }
        }
        return Double.NaN;
    }

    /** As a drawing for a page: a whole SVG file. */
    public String svg(String title) {
        StringBuilder svg = new StringBuilder(String.format(Locale.ROOT, """
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" font-family="sans-serif" font-size="13">
                <title>%s</title>
                <rect width="100%%" height="100%%" fill="white"/>
                <text x="%.0f" y="24" font-size="15">%s</text>
                """, SVG_WIDTH, SVG_HEIGHT, escaped(title), SVG_MARGIN, escaped(title)));
        for (int tick = 0; tick <= 5; tick++) {
            double lateral = mostLateral * tick / 5;
            double steer = leastSteer + (mostSteer - leastSteer) * tick / 5;
            svg.append(String.format(Locale.ROOT, """
                    <line x1="%1$.1f" y1="%2$.1f" x2="%1$.1f" y2="%3$.1f" stroke="#ddd"/>
                    <text x="%1$.1f" y="%4$.1f" text-anchor="middle">%5$.2f</text>
                    <line x1="%6$.1f" y1="%7$.1f" x2="%8$.1f" y2="%7$.1f" stroke="#ddd"/>
                    <text x="%9$.1f" y="%10$.1f" text-anchor="end">%11$.1f</text>
                    """, x(lateral), SVG_MARGIN, SVG_HEIGHT - SVG_MARGIN, SVG_HEIGHT - SVG_MARGIN + 18, lateral,
                    SVG_MARGIN, y(steer), SVG_WIDTH - SVG_MARGIN / 2, SVG_MARGIN - 8, y(steer) + 4, steer));
        }
        svg.append(String.format(Locale.ROOT, """
                <text x="%.0f" y="%.0f" text-anchor="middle">Lateral acceleration, g</text>
                <text x="%.0f" y="44">Steer angle, degrees</text>
                <line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" stroke="#888" stroke-dasharray="3 4"/>
                """, SVG_WIDTH / 2, SVG_HEIGHT - 16, SVG_MARGIN, x(0), y(0), x(mostLateral),
                y(Math.toDegrees(before.turn(mostLateral * VehicleModel.GRAVITY)))));
        svg.append(line(before, "#1f5fa8", "")).append(line(after, "#c0392b", " stroke-dasharray=\"8 4\""));
        svg.append(String.format(Locale.ROOT, """
                <text x="%1$.0f" y="74" fill="#1f5fa8">before (solid)</text>
                <text x="%1$.0f" y="92" fill="#c0392b">after (dashed)</text>
                <text x="%1$.0f" y="110" fill="#888">the turn alone (dotted)</text>
                </svg>
                """, SVG_MARGIN + 12));
        return svg.toString();
    }

    private String line(Characteristic curve, String colour, String dash) {
        return curve.points().stream().map(point -> String.format(Locale.ROOT, "%.1f,%.1f",
                x(point.lateral() / VehicleModel.GRAVITY), y(Math.toDegrees(point.steer()))))
                .collect(Collectors.joining(" ", "<polyline fill=\"none\" stroke-width=\"2\" stroke=\"" + colour + "\""
                        + dash + " points=\"", "\"/>\n"));
    }

    private double x(double lateral) {
        return SVG_MARGIN + lateral / mostLateral * (SVG_WIDTH - 1.5 * SVG_MARGIN);
    }

    private double y(double steer) {
        return SVG_HEIGHT - SVG_MARGIN
                - (steer - leastSteer) / (mostSteer - leastSteer) * (SVG_HEIGHT - 2 * SVG_MARGIN);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
