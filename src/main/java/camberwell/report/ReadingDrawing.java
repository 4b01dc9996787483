package camberwell.report;

import camberwell.car.TyreSpec;
import camberwell.physics.TreadRead;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.run.Case;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tyres' figures in characters: the tread across its window, the pressures beside their target, a line a wheel. */
final class ReadingDrawing {

    private static final int NAME = 13;
    private static final int WIDEST = 48;

    private final Case run;
    private final List<WheelFigures> wheels;
    private final int width;
    private final Page page;

    private ReadingDrawing(Case run, TyreReadings tyres, int width, Page page) {
        this.run = run;
        this.wheels = List.copyOf(tyres.wheels().values());
        this.width = Math.max(12, Math.min(WIDEST, width - NAME - 2));
        this.page = page;
    }

    static void write(Case run, TyreReadings tyres, int width, Page page) {
        ReadingDrawing drawing = new ReadingDrawing(run, tyres, width, page);
        drawing.tread();
        drawing.pressures();
    }

    private Optional<double[]> window(WheelFigures wheel) {
        TyreSpec spec = run.car().tyres(wheel.wheel().axle());
        return spec.windowLow().flatMap(low -> spec.windowHigh().map(high ->
                new double[] {low.in(Unit.CELSIUS), high.in(Unit.CELSIUS)}));
    }

    private void tread() {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
        List<Double> all = new ArrayList<>();
        for (WheelFigures wheel : read) {
            TreadRead tread = wheel.tread().orElseThrow();
            all.addAll(List.of(tread.inner(), tread.middle(), tread.outer()));
            window(wheel).ifPresent(bounds -> all.addAll(List.of(bounds[0], bounds[1])));
        }
        if (read.isEmpty()) {
            return;
        }
        double low = 5 * Math.floor(all.stream().min(Double::compare).orElseThrow() / 5);
        double high = Math.max(low + 5, 5 * Math.ceil(all.stream().max(Double::compare).orElseThrow() / 5));
        page.blank().paragraph(0, "Tread: i inner, m middle, o outer, " + DotLine.SEVERAL + " more than one; = the window");
        for (WheelFigures wheel : read) {
            DotLine line = new DotLine(low, high, width);
            window(wheel).ifPresent(bounds -> line.span(bounds[0], bounds[1], '='));
            TreadRead tread = wheel.tread().orElseThrow();
            row(wheel, line.mark(tread.inner(), 'i').mark(tread.middle(), 'm').mark(tread.outer(), 'o'));
        }
        ends(Figures.fixed(low, 0), Figures.fixed(high, 0) + " °C");
    }

    private void pressures() {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.hot().isPresent()).toList();
        if (read.isEmpty()) {
            return;
        }
        Unit unit = read.get(0).hot().orElseThrow().unit();
        List<Double> all = new ArrayList<>();
        for (WheelFigures wheel : read) {
            for (Optional<Quantity> pressure : List.of(wheel.cold(), wheel.hot(), wheel.target())) {
                pressure.ifPresent(it -> all.add(it.in(unit)));
            }
        }
        double low = all.stream().min(Double::compare).orElseThrow();
        double high = all.stream().max(Double::compare).orElseThrow();
        page.blank().paragraph(0, "Pressure: c cold, h hot, | the target, " + DotLine.SEVERAL + " more than one");
        for (WheelFigures wheel : read) {
            DotLine line = new DotLine(low, high, width);
            wheel.target().ifPresent(it -> line.mark(it.in(unit), '|'));
            wheel.cold().ifPresent(it -> line.mark(it.in(unit), 'c'));
            row(wheel, line.mark(wheel.hot().orElseThrow().in(unit), 'h'));
        }
        int decimals = unit == Unit.BAR ? 2 : 1;
        ends(Figures.fixed(low, decimals), Figures.fixed(high, decimals) + " " + unit.symbol());
    }

    private void row(WheelFigures wheel, DotLine line) {
        String name = wheel.wheel().id();
        page.verbatim((name + " ".repeat(NAME - name.length()) + line.text()).stripTrailing());
    }

    private void ends(String low, String high) {
        page.verbatim(" ".repeat(NAME) + low + " ".repeat(Math.max(1, width - low.length() - high.length())) + high);
    }
}
