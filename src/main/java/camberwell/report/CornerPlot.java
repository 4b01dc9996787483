package camberwell.report;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.observe.CornerDrawing;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/** One corner of a log as a drawing: how far an axle slides over the way, against the laps as a rule. */
public final class CornerPlot {

    private static final double WIDTH = 720;
    private static final double HEIGHT = 420;
    private static final double LEFT = 60;
    private static final double RIGHT = 660;
    private static final double TOP = 70;
    private static final double BOTTOM = 360;

    private final CornerDrawing drawing;
    private final Scale way;
    private final Scale slip;
    private final Scale speed;

    /** Of that corner. */
    public CornerPlot(CornerDrawing drawing) {
        this.drawing = drawing;
        List<Double> metres = drawing.metres();
        way = new Scale(metres.get(0), metres.get(metres.size() - 1), LEFT, RIGHT);
        double low = -drawing.starts();
        double high = drawing.starts();
        for (List<Double> curve : List.of(drawing.shown(), drawing.usual())) {
            for (double value : curve) {
                low = value < low ? value : low;
                high = value > high ? value : high;
            }
        }
        slip = new Scale(Math.floor(low - 0.5), Math.ceil(high + 0.5), BOTTOM, TOP);
        double fastest = drawing.speed().stream().mapToDouble(it -> it).filter(it -> !Double.isNaN(it)).max().orElse(1);
        speed = new Scale(0, Math.ceil(fastest / 50) * 50, BOTTOM, TOP);
    }

    /** A whole SVG file. */
    public String svg() {
        List<DomContent> parts = new ArrayList<>();
        parts.add(Svg.text("", LEFT, 46, "start",
                "Slip angle beyond moderate running, degrees: front above nought, rear below"));
        double from = way.at(drawing.from());
        parts.add(Svg.rectangle("complaint", from, TOP, Math.max(2, way.at(drawing.to()) - from), BOTTOM - TOP));
        parts.add(Svg.text("complaint", from + 4, TOP + 14, "start", "complained of here"));
        double moderate = slip.at(drawing.starts());
        parts.add(Svg.rectangle("moderate", LEFT, moderate, RIGHT - LEFT, slip.at(-drawing.starts()) - moderate));
        for (double mark : slip.marks(6)) {
            parts.add(Svg.line("grid", LEFT, slip.at(mark), RIGHT, slip.at(mark)));
            parts.add(Svg.text("", LEFT - 8, slip.at(mark) + 4, "end", slip.label(mark, 6)));
        }
        for (double mark : way.marks(8)) {
            parts.add(Svg.text("", way.at(mark), BOTTOM + 18, "middle", way.label(mark, 8)));
        }
        parts.add(Svg.text("", WIDTH / 2, HEIGHT - 20, "middle", "Way from the line, m"));
        parts.add(Svg.line("axis", LEFT, slip.at(0), RIGHT, slip.at(0)));
        parts.add(curve("beside", speed, drawing.speed()));
        parts.add(curve("usual", slip, drawing.usual()));
        parts.add(curve("this", slip, drawing.shown()));
        parts.add(Svg.text("this", LEFT, 62, "start", "this lap (solid)"));
        parts.add(Svg.text("usual", LEFT + 120, 62, "start", "median of the laps (dashed)"));
        parts.add(Svg.text("beside", LEFT + 320, 62, "start",
                "speed, 0 to " + Math.round(speed.high()) + " km/h (dotted)"));
        parts.add(Svg.text("aside", RIGHT - 4, moderate - 4, "end", "band: moderate running"));
        return Svg.file(WIDTH, HEIGHT, "Corner " + drawing.corner() + ", lap " + drawing.lap() + ": " + drawing.title(),
                parts);
    }

    private DomContent curve(String style, Scale up, List<Double> values) {
        List<Double> points = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            if (!Double.isNaN(values.get(i))) {
                points.add(way.at(drawing.metres().get(i)));
                points.add(up.at(values.get(i)));
            }
        }
        return Svg.polyline(style, points.stream().mapToDouble(it -> it).toArray());
    }
}
