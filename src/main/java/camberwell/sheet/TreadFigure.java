package camberwell.sheet;

import camberwell.car.TyreSpec;
import camberwell.drawing.Scale;
import camberwell.drawing.Svg;
import camberwell.physics.TreadRead;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.units.Figures;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import j2html.tags.DomContent;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * The tread temperatures of one axle over the width of its tyres, with the working range as a band and the slope that a
 * healthy tyre shows: its inner edge up to {@link TreadRead#INNER_HOT_STARTS} hotter than its outer one.
 */
final class TreadFigure {

    private static final double WIDTH = 340;
    private static final double HEIGHT = 222;
    private static final double LEFT = 44;
    private static final double RIGHT = 328;
    private static final double TOP = 24;
    private static final double BOTTOM = 168;
    private static final double INSET = 40;

    private TreadFigure() {
    }

    /** The drawing; empty when no tread of the axle was read whole. */
    static Optional<DomContent> of(String id, Axle axle, TyreReadings tyres, TyreSpec spec) {
        List<WheelFigures> wheels = tyres.wheels(axle).stream().filter(wheel -> wheel.tread().isPresent()).toList();
        if (wheels.isEmpty()) {
            return Optional.empty();
        }
        Scale degrees = scale(wheels, spec);
        List<DomContent> parts = new ArrayList<>();
        window(spec, degrees, parts);
        for (double mark : degrees.marks(5)) {
            parts.add(Svg.line("grid", LEFT, degrees.at(mark), RIGHT, degrees.at(mark)));
            parts.add(Svg.text("mark", LEFT - 6, degrees.at(mark) + 4, "end", Figures.fixed(mark, 0)));
        }
        parts.add(Svg.text("mark", LEFT + INSET, BOTTOM + 16, "middle", "inner"));
        parts.add(Svg.text("mark", (LEFT + RIGHT) / 2, BOTTOM + 16, "middle", "middle"));
        parts.add(Svg.text("mark", RIGHT - INSET, BOTTOM + 16, "middle", "outer"));
        parts.add(Svg.text("mark", 4, 10, "start", "°C"));
        StringBuilder description = new StringBuilder();
        for (WheelFigures wheel : wheels) {
            tread(wheel, wheels.stream().filter(it -> it != wheel).findFirst(), degrees, parts);
            TreadRead read = wheel.tread().orElseThrow();
            description.append(description.isEmpty() ? "" : "; ").append(wheel.wheel().spoken()).append(" inner ")
                    .append(Figures.fixed(read.inner(), 0)).append(", middle ")
                    .append(Figures.fixed(read.middle(), 0)).append(", outer ")
                    .append(Figures.fixed(read.outer(), 0)).append(" °C")
                    .append(wheel.loaded() ? "" : ", not the loaded side");
        }
        bounds(spec).ifPresent(window -> description.append("; working range ").append(Figures.fixed(window[0], 0))
                .append(" to ").append(Figures.fixed(window[1], 0)).append(" °C"));
        legend(wheels, bounds(spec).isPresent(), parts);
        return Optional.of(Svg.drawing(id, WIDTH, HEIGHT, "Tread of the " + axle.id() + " tyres across the width",
                description + ".", parts));
    }

    private static Optional<double[]> bounds(TyreSpec spec) {
        return spec.windowLow().flatMap(low -> spec.windowHigh().map(high ->
                new double[] {low.in(Unit.CELSIUS), high.in(Unit.CELSIUS)}));
    }

    private static Scale scale(List<WheelFigures> wheels, TyreSpec spec) {
        double[] all = DoubleStream.concat(wheels.stream().flatMapToDouble(wheel -> {
            TreadRead read = wheel.tread().orElseThrow();
            return DoubleStream.of(read.inner(), read.middle(), read.outer());
        }), bounds(spec).map(DoubleStream::of).orElse(DoubleStream.empty())).sorted().toArray();
        return new Scale(Math.floor(all[0] / 5 - 1) * 5, Math.ceil(all[all.length - 1] / 5 + 1) * 5, BOTTOM, TOP);
    }

    private static void window(TyreSpec spec, Scale degrees, List<DomContent> parts) {
        bounds(spec).ifPresent(window -> parts.add(Svg.rectangle("band", LEFT, degrees.at(window[1]), RIGHT - LEFT,
                degrees.at(window[0]) - degrees.at(window[1]))));
    }

    /** One tread, with its figures on the side where the other one's are not: those of the hotter one stand above. */
    private static void tread(WheelFigures wheel, Optional<WheelFigures> other, Scale degrees, List<DomContent> parts) {
        TreadRead read = wheel.tread().orElseThrow();
        double[] others = other.flatMap(WheelFigures::tread).map(it -> new double[] {it.inner(), it.middle(), it.outer()})
                .orElse(new double[] {Double.NaN, Double.NaN, Double.NaN});
        String style = wheel.wheel().left() ? "left" : "right";
        double inner = LEFT + INSET;
        double middle = (LEFT + RIGHT) / 2;
        double outer = RIGHT - INSET;
        if (wheel.loaded()) {
            double half = TreadRead.INNER_HOT_STARTS / 2;
            parts.add(Svg.polygon("healthy", inner, degrees.at(read.mean() + half), outer,
                    degrees.at(read.mean() - half), outer, degrees.at(read.mean()), inner, degrees.at(read.mean())));
        }
        parts.add(Svg.polyline("curve " + style, inner, degrees.at(read.inner()), middle, degrees.at(read.middle()),
                outer, degrees.at(read.outer())));
        double[][] points = {{inner, read.inner()}, {middle, read.middle()}, {outer, read.outer()}};
        for (int i = 0; i < points.length; i++) {
            double[] point = points[i];
            parts.add(wheel.wheel().left() ? Svg.circle("point left", point[0], degrees.at(point[1]), 4)
                    : Svg.rectangle("point right", point[0] - 3.5, degrees.at(point[1]) - 3.5, 7, 7));
            boolean below = point[1] < others[i] || wheel.wheel().left() && !(point[1] > others[i]);
            parts.add(Svg.text("value", point[0] + (below ? -7 : 7), degrees.at(point[1]) + (below ? 15 : -7),
                    below ? "end" : "start", Figures.fixed(point[1], 0)));
        }
    }

    private static void legend(List<WheelFigures> wheels, boolean window, List<DomContent> parts) {
        double x = LEFT;
        for (WheelFigures wheel : wheels) {
            boolean left = wheel.wheel().left();
            parts.add(Svg.line("curve " + (left ? "left" : "right"), x, HEIGHT - 26, x + 24, HEIGHT - 26));
            parts.add(Svg.text("mark", x + 30, HEIGHT - 22, "start", (left ? "left" : "right")
                    + (wheel.loaded() ? ", loaded" : "")));
            x += 140;
        }
        if (window) {
            parts.add(Svg.rectangle("band", LEFT, HEIGHT - 14, 24, 12));
            parts.add(Svg.text("mark", LEFT + 30, HEIGHT - 4, "start", "working range"));
        }
        if (wheels.stream().anyMatch(WheelFigures::loaded)) {
            parts.add(Svg.rectangle("healthy", LEFT + 140, HEIGHT - 14, 24, 12));
            parts.add(Svg.text("mark", LEFT + 170, HEIGHT - 4, "start", "healthy slope"));
        }
    }
}
