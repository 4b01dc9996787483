package camberwell.sheet;

import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The pressures of the tyres from cold to hot, each against its hot target, in the unit in which they were read. */
final class PressureFigure {

    private static final double WIDTH = 340;
    private static final double LEFT = 88;
    private static final double RIGHT = 326;
    private static final double ROW = 36;

    private PressureFigure() {
    }

    /** The drawing; empty when no hot pressure was read. */
    static Optional<DomContent> of(String id, TyreReadings tyres) {
        List<WheelFigures> wheels = tyres.wheels().values().stream().filter(wheel -> wheel.hot().isPresent()).toList();
        if (wheels.isEmpty()) {
            return Optional.empty();
        }
        Unit unit = wheels.get(0).hot().orElseThrow().unit();
        double[] all = wheels.stream().flatMap(wheel -> Stream.of(wheel.cold(), wheel.hot(), wheel.target())
                .flatMap(Optional::stream)).mapToDouble(pressure -> pressure.in(unit)).sorted().toArray();
        double margin = Math.max((all[all.length - 1] - all[0]) / 8, all[all.length - 1] / 50);
        Scale scale = new Scale(all[0] - margin, all[all.length - 1] + margin, LEFT, RIGHT);
        double bottom = 20 + ROW * wheels.size();
        List<DomContent> parts = new ArrayList<>();
        for (double mark : scale.marks(4)) {
            parts.add(Svg.line("grid", scale.at(mark), 8, scale.at(mark), bottom));
            parts.add(Svg.text("mark", scale.at(mark), bottom + 15, "middle", text(new Quantity(mark, unit))));
        }
        StringBuilder description = new StringBuilder();
        double y = 26;
        for (WheelFigures wheel : wheels) {
            row(wheel, unit, scale, y, parts);
            description.append(description.isEmpty() ? "" : "; ").append(wheel.wheel().spoken())
                    .append(wheel.cold().map(cold -> " cold " + text(cold.to(unit))).orElse("")).append(" hot ")
                    .append(text(wheel.hot().orElseThrow().to(unit)))
                    .append(wheel.target().map(target -> " target " + text(target.to(unit))).orElse(""));
            y += ROW;
        }
        double foot = bottom + 34;
        parts.add(Svg.circle("point before", LEFT, foot - 4, 4));
        parts.add(Svg.text("mark", LEFT + 8, foot, "start", "cold"));
        parts.add(Svg.circle("point after", LEFT + 66, foot - 4, 4));
        parts.add(Svg.text("mark", LEFT + 74, foot, "start", "hot"));
        parts.add(Svg.line("target", LEFT + 122, foot - 10, LEFT + 122, foot + 2));
        parts.add(Svg.text("mark", LEFT + 130, foot, "start", "hot target"));
        return Optional.of(Svg.drawing(id, WIDTH, foot + 6, "Pressures cold and hot, " + unit.symbol(),
                description + ", in " + unit.symbol() + ".", parts));
    }

    private static void row(WheelFigures wheel, Unit unit, Scale scale, double y, List<DomContent> parts) {
        double hot = scale.at(wheel.hot().orElseThrow().in(unit));
        parts.add(Svg.text("mark", LEFT - 8, y + 4, "end", wheel.wheel().spoken()));
        wheel.target().ifPresent(target -> parts.add(Svg.line("target", scale.at(target.in(unit)), y - 11,
                scale.at(target.in(unit)), y + 11)));
        wheel.cold().ifPresent(cold -> {
            parts.add(Svg.line("span", scale.at(cold.in(unit)), y, hot, y));
            parts.add(Svg.circle("point before", scale.at(cold.in(unit)), y, 4));
            parts.add(Svg.text("value", scale.at(cold.in(unit)) - 4, y - 8, "start", text(cold.to(unit))));
        });
        parts.add(Svg.circle("point after", hot, y, 4));
        parts.add(Svg.text("value", hot - 8, y - 8, "end", text(wheel.hot().orElseThrow().to(unit))));
    }

    private static String text(Quantity pressure) {
        String text = pressure.text(pressure.unit() == Unit.BAR ? 2 : 1);
        return text.substring(0, text.indexOf(' '));
    }
}
