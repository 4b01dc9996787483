package camberwell.report;

import camberwell.observe.CornerDrawing;
import java.util.List;
import java.util.Locale;

/** One corner of a log as a drawing: how far an axle slides over the way, against the laps as a rule. */
public final class CornerPlot {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 420;
    private static final double LEFT = 60;
    private static final double RIGHT = 60;
    private static final double TOP = 70;
    private static final double BOTTOM = 60;

    private final CornerDrawing drawing;
    private final double from;
    private final double to;
    private final double least;
    private final double most;
    private final double fastest;

    /** Of that corner. */
    public CornerPlot(CornerDrawing drawing) {
        this.drawing = drawing;
        from = drawing.metres().get(0);
        to = drawing.metres().get(drawing.metres().size() - 1);
        double low = -drawing.starts();
        double high = drawing.starts();
        for (List<Double> curve : List.of(drawing.shown(), drawing.usual())) {
            for (double value : curve) {
                low = value < low ? value : low;
                high = value > high ? value : high;
            }
        }
        least = Math.floor(low - 0.5);
        most = Math.ceil(high + 0.5);
        fastest = Math.ceil(drawing.speed().stream().mapToDouble(it -> it).filter(it -> !Double.isNaN(it)).max().orElse(1)
                / 50) * 50;
    }

    /** A whole SVG file. */
    public String svg() {
        StringBuilder svg = new StringBuilder(line("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 %.0f %.0f" font-family="sans-serif" font-size="13" \
                role="img" aria-labelledby="t">
                <title id="t">%s</title>
                <rect width="100%%" height="100%%" fill="white"/>
                <text x="%.0f" y="24" font-size="15">Corner %d, lap %d: %s</text>
                <text x="%.0f" y="44">Slip angle beyond moderate running, degrees: front above nought, rear below</text>
                """, WIDTH, HEIGHT, escaped(drawing.title()), LEFT, drawing.corner(), drawing.lap(),
                escaped(drawing.title()), LEFT));
        svg.append(line("""
                <rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" fill="#fbe3d6"/>
                <text x="%.1f" y="%.1f" fill="#8a3b12" font-size="12">complained of here</text>
                <rect x="%.1f" y="%.1f" width="%.1f" height="%.1f" fill="#e8eef5"/>
                """, x(drawing.from()), TOP, Math.max(2, x(drawing.to()) - x(drawing.from())), HEIGHT - TOP - BOTTOM,
                x(drawing.from()) + 4, TOP + 14, LEFT, y(drawing.starts()), WIDTH - LEFT - RIGHT,
                y(-drawing.starts()) - y(drawing.starts())));
        for (double tick = least; tick <= most + 1e-9; tick += most - least > 8 ? 2 : 1) {
            svg.append(line("""
                    <line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" stroke="#ddd"/>
                    <text x="%.1f" y="%.1f" text-anchor="end">%.0f</text>
                    """, LEFT, y(tick), WIDTH - RIGHT, y(tick), LEFT - 8, y(tick) + 4, tick));
        }
        for (double metres = Math.ceil(from / 50) * 50; metres <= to; metres += 50) {
            svg.append(line("""
                    <text x="%.1f" y="%.1f" text-anchor="middle">%.0f</text>
                    """, x(metres), HEIGHT - BOTTOM + 18, metres));
        }
        svg.append(line("""
                <text x="%.1f" y="%.1f" text-anchor="middle">Way from the line, m</text>
                <line x1="%.1f" y1="%.1f" x2="%.1f" y2="%.1f" stroke="#555"/>
                """, WIDTH / 2, HEIGHT - 20, LEFT, y(0), WIDTH - RIGHT, y(0)));
        svg.append(curve(drawing.speed(), "#999", "2 4", true)).append(curve(drawing.usual(), "#1f5fa8", "8 4", false))
                .append(curve(drawing.shown(), "#c0392b", "", false));
        svg.append(line("""
                <text x="%1$.0f" y="62" fill="#c0392b">this lap (solid)</text>
                <text x="%2$.0f" y="62" fill="#1f5fa8">median of the laps (dashed)</text>
                <text x="%3$.0f" y="62" fill="#777">speed, 0 to %4$.0f km/h (dotted)</text>
                <text x="%5$.0f" y="%6$.0f" fill="#567" text-anchor="end">band: moderate running</text>
                </svg>
                """, LEFT, LEFT + 120, LEFT + 320, fastest, WIDTH - RIGHT - 4, y(-drawing.starts()) - 4));
        return svg.toString();
    }

    private String curve(List<Double> values, String colour, String dash, boolean speed) {
        StringBuilder points = new StringBuilder();
        for (int i = 0; i < values.size(); i++) {
            if (!Double.isNaN(values.get(i))) {
                double y = speed ? HEIGHT - BOTTOM - values.get(i) / fastest * (HEIGHT - TOP - BOTTOM) : y(values.get(i));
                points.append(line("%.1f,%.1f ", x(drawing.metres().get(i)), y));
            }
        }
        return "<polyline fill=\"none\" stroke=\"" + colour + "\" stroke-width=\"2\""
                + (dash.isEmpty() ? "" : " stroke-dasharray=\"" + dash + "\"") + " points=\"" + points.toString().strip()
                + "\"/>\n";
    }

    private double x(double metres) {
        return LEFT + (metres - from) / (to - from) * (WIDTH - LEFT - RIGHT);
    }

    private double y(double degrees) {
        return TOP + (most - degrees) / (most - least) * (HEIGHT - TOP - BOTTOM);
    }

    private static String line(String template, Object... values) {
        return String.format(Locale.ROOT, template, values);
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;");
    }
}
