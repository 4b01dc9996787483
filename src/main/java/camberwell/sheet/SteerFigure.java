package camberwell.sheet;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.model.Characteristic;
import camberwell.physics.VehicleModel;
import camberwell.units.Figures;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/**
 * What the handling model says of a change: the steer angle that the car needs over its lateral acceleration, before and
 * after, as in the constant-speed test of ISO 4138.
 */
final class SteerFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 222;
    private static final double LEFT = 40;
    private static final double RIGHT = 328;
    private static final double TOP = 20;
    private static final double BOTTOM = 166;

    private SteerFigure() {
    }

    /** The drawing; both curves at the same speed. */
    static DomContent of(String id, Characteristic before, Characteristic after) {
        double most = Math.max(before.limit().lateral(), after.limit().lateral()) / VehicleModel.GRAVITY;
        double turn = Math.toDegrees(before.turn(most * VehicleModel.GRAVITY));
        double low = Math.min(0, Math.min(least(before), least(after)));
        double high = Math.max(turn, Math.max(greatest(before), greatest(after)));
        Scale lateral = new Scale(0, most * 1.03, LEFT, RIGHT);
        Scale steer = new Scale(low, high * 1.05 + 0.1, BOTTOM, TOP);
        List<DomContent> parts = new ArrayList<>();
        for (double mark : lateral.marks(5)) {
            parts.add(Svg.line("grid", lateral.at(mark), TOP, lateral.at(mark), BOTTOM));
            parts.add(Svg.text("mark", lateral.at(mark), BOTTOM + 15, "middle", Figures.fixed(mark, 1)));
        }
        for (double mark : steer.marks(4)) {
            parts.add(Svg.line("grid", LEFT, steer.at(mark), RIGHT, steer.at(mark)));
            parts.add(Svg.text("mark", LEFT - 6, steer.at(mark) + 4, "end", Figures.fixed(mark, 0)));
        }
        parts.add(Svg.text("mark", 4, 11, "start", "steer, °"));
        parts.add(Svg.text("mark", RIGHT, BOTTOM + 31, "end", "lateral acceleration, g"));
        parts.add(Svg.line("turn", lateral.at(0), steer.at(0), lateral.at(most), steer.at(turn)));
        parts.add(curve("curve before", before, lateral, steer));
        parts.add(curve("curve after", after, lateral, steer));
        double foot = HEIGHT - 6;
        String[][] legend = {{"curve before", "now"}, {"curve after", "next"}, {"turn", "the turn alone"}};
        double x = LEFT;
        for (String[] entry : legend) {
            parts.add(Svg.line(entry[0], x, foot - 4, x + 24, foot - 4));
            parts.add(Svg.text("mark", x + 29, foot, "start", entry[1]));
            x += 84;
        }
        return Svg.drawing(id, WIDTH, HEIGHT, "Steer that the model's car needs at "
                + Figures.fixed(before.speed() * 3.6, 0) + " km/h", "The model's car holds "
                + Figures.fixed(before.limit().lateral() / VehicleModel.GRAVITY, 2) + " g now and "
                + Figures.fixed(after.limit().lateral() / VehicleModel.GRAVITY, 2) + " g next; at its limit it is steered "
                + Figures.fixed(last(before), 1) + "° and " + Figures.fixed(last(after), 1) + "°.", parts);
    }

    private static Svg.Element curve(String style, Characteristic curve, Scale lateral, Scale steer) {
        double[] points = new double[2 * curve.points().size()];
        int i = 0;
        for (Characteristic.Point point : curve.points()) {
            points[i++] = lateral.at(point.lateral() / VehicleModel.GRAVITY);
            points[i++] = steer.at(Math.toDegrees(point.steer()));
        }
        return Svg.polyline(style, points);
    }

    private static double least(Characteristic curve) {
        return curve.points().stream().mapToDouble(point -> Math.toDegrees(point.steer())).min().orElse(0);
    }

    private static double greatest(Characteristic curve) {
        return curve.points().stream().mapToDouble(point -> Math.toDegrees(point.steer())).max().orElse(1);
    }

    private static double last(Characteristic curve) {
        return curve.points().isEmpty() ? 0
                : Math.toDegrees(curve.points().get(curve.points().size() - 1).steer());
    }
}
