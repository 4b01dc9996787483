package camberwell.sheet;

import camberwell.car.Setting;
import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.report.Words;
import camberwell.units.Quantity;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;

/** One adjuster from stop to stop, with its steps, where it stands and where it goes. */
final class TravelFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 74;
    private static final double LEFT = 24;
    private static final double RIGHT = 316;
    private static final double LINE = 40;
    /** More steps than this would be a smear. */
    private static final int MOST_MARKS = 60;

    private TravelFigure() {
    }

    /** The drawing of one adjuster's travel. */
    static DomContent of(String id, String name, Setting setting, Quantity from, Quantity to) {
        int decimals = setting.decimals();
        double low = setting.min().value();
        double high = Math.max(setting.max().value(), low + setting.step().value());
        Scale scale = new Scale(low, high, LEFT, RIGHT);
        List<DomContent> parts = new ArrayList<>();
        parts.add(Svg.line("axis", LEFT, LINE, RIGHT, LINE));
        int steps = (int) Math.floor((high - low) / setting.step().value() + 1e-9);
        for (int i = 0; steps <= MOST_MARKS && i <= steps; i++) {
            double x = scale.at(low + i * setting.step().value());
            parts.add(Svg.line("tick", x, LINE - 4, x, LINE + 4));
        }
        parts.add(Svg.line("stop", LEFT, LINE - 10, LEFT, LINE + 10));
        parts.add(Svg.line("stop", RIGHT, LINE - 10, RIGHT, LINE + 10));
        parts.add(Svg.text("mark", LEFT, LINE + 26, "middle", figure(setting.min(), decimals)));
        parts.add(Svg.text("mark", RIGHT, LINE + 26, "middle", figure(setting.max(), decimals)));
        double start = scale.at(clamped(from.in(setting.now().unit()), low, high));
        double end = scale.at(clamped(to.in(setting.now().unit()), low, high));
        parts.add(Svg.line("span", start, LINE, end, LINE));
        parts.add(Svg.circle("point before", start, LINE, 5));
        parts.add(Svg.circle("point after", end, LINE, 5));
        boolean rising = end >= start;
        label(parts, "value", start, !rising, "now " + figure(from, decimals));
        label(parts, "value strong", end, rising, "next " + figure(to, decimals));
        return Svg.drawing(id, WIDTH, HEIGHT, Words.sentence(name) + " from stop to stop"
                + (setting.now().unit().symbol().isEmpty() ? "" : ", " + setting.now().unit().symbol()),
                "From " + setting.min().text(decimals) + " to " + setting.max().text(decimals) + " in steps of "
                + setting.step().text(decimals) + ": now " + from.text(decimals) + ", next " + to.text(decimals) + ".",
                parts);
    }

    /** Beside its point, away from the other one; at a stop, where there is no room, over it and higher up. */
    private static void label(List<DomContent> parts, String style, double x, boolean right, String text) {
        double room = 7.5 * text.length();
        boolean fits = right ? x + room < WIDTH : x - room > 0;
        parts.add(Svg.text(style, x, fits ? LINE - 14 : LINE - 27, right == fits ? "start" : "end", text));
    }

    private static double clamped(double figure, double low, double high) {
        return Math.max(low, Math.min(high, figure));
    }

    private static String figure(Quantity quantity, int decimals) {
        String text = quantity.text(decimals);
        int unit = text.indexOf(' ');
        return unit < 0 ? text : text.substring(0, unit);
    }
}
