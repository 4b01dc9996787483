package camberwell.reading;

import camberwell.fact.Reading;
import camberwell.fact.Reading.State;
import camberwell.physics.TreadRead;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;

/**
 * Reads the tyres of a case. Every reading is a ramp from nothing to clear, never a threshold: one kelvin must not tip
 * the advice. Limits without a source beside them are common practice, no source.
 */
public final class TyreReader {

    /** Clearness below this is noise. */
    private static final double NOISE = 0.05;
    /** Kelvin outside the window from which it is clear. */
    private static final double WINDOW_FULL = 10;
    private static final double HOTTER_AXLE_STARTS = 5;
    private static final double HOTTER_AXLE_FULL = 15;
    private static final double SIDES_STARTS = 8;
    private static final double SIDES_FULL = 20;
    /** A side that the circuit works less ought not to be the hotter one at all. */
    private static final double WRONG_SIDE_STARTS = 3;
    private static final double WRONG_SIDE_FULL = 12;
    /** Bar off the target; the trade's step of 2 psi (0.14 bar; Northstar Motorsports tech tips) is clear. */
    private static final double PRESSURE_STARTS = 0.03;
    private static final double PRESSURE_FULL = 0.13;
    /** Bar between the two tyres of an axle from which one of them is told of alone. */
    private static final double ALONE_STARTS = 0.06;
    private static final double ALONE_FULL = 0.16;

    private final Case run;
    private final List<Reading> readings = new ArrayList<>();

    private TyreReader(Case run) {
        this.run = run;
    }

    /** What the tyres of {@code run} show; nothing when none was measured. */
    public static TyreReadings read(Case run) {
        TyreReader reader = new TyreReader(run);
        Map<Wheel, WheelFigures> wheels = new EnumMap<>(Wheel.class);
        run.tyres().forEach((wheel, tyre) -> wheels.put(wheel, reader.figures(wheel, tyre)));
        TyreReadings figures = new TyreReadings(wheels, List.of());
        for (Axle axle : Axle.values()) {
            List<WheelFigures> both = figures.wheels(axle);
            reader.tread(axle, both);
            reader.window(axle, both);
            reader.sides(axle, both);
            reader.pressure(axle, both);
        }
        reader.axles(figures);
        return new TyreReadings(wheels, List.copyOf(reader.readings));
    }

    private WheelFigures figures(Wheel wheel, TyreReading tyre) {
        Optional<TreadRead> tread = tyre.hasTread()
                ? Optional.of(new TreadRead(celsius(tyre.inner()), celsius(tyre.middle()), celsius(tyre.outer())))
                : Optional.empty();
        Optional<Quantity> cold = tyre.coldPressure()
                .or(() -> run.car().pressureSetting(wheel).map(setting -> setting.now()));
        return new WheelFigures(wheel, tread, wheel.loadedIn(run.conditions().turns()), cold, tyre.hotPressure(),
                run.car().tyres(wheel.axle()).hotTarget());
    }

    private static double celsius(Optional<Quantity> temperature) {
        return temperature.orElseThrow().in(Unit.CELSIUS);
    }

    /** Camber is judged on the loaded tyres: the others hardly work. */
    private void tread(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
        List<WheelFigures> loaded = read.stream().filter(WheelFigures::loaded).toList();
        if (!loaded.isEmpty()) {
            double difference = mean(loaded, TreadRead::innerMinusOuter);
            TreadRead typical = new TreadRead(difference, 0, 0);
            String figures = figures(loaded);
            add(axle, State.INNER_EDGE_HOT, typical.innerHotClearness(), axle.id() + " inner edge "
                    + kelvin(difference) + " hotter than the outer" + figures);
            add(axle, State.OUTER_EDGE_HOT, typical.outerHotClearness(), axle.id() + " outer edge "
                    + kelvin(-difference) + " hotter than the inner" + figures);
            double even = 1 - Math.max(typical.innerHotClearness(), typical.outerHotClearness());
            double middle = mean(read, TreadRead::middleMinusEdges);
            TreadRead across = new TreadRead(0, middle, 0);
            add(axle, State.MIDDLE_HOT, across.middleHotClearness(), axle.id() + " middle " + kelvin(middle)
                    + " hotter than the mean of the edges" + figures(read));
            add(axle, State.MIDDLE_COLD, across.middleCoolClearness(), axle.id() + " middle " + kelvin(-middle)
                    + " cooler than the mean of the edges" + figures(read));
            even = Math.min(even, 1 - Math.max(across.middleHotClearness(), across.middleCoolClearness()));
            add(axle, State.EVEN_TREAD, even, axle.id() + " tread even across its width" + figures);
        }
    }

    private void window(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
        Optional<Quantity> low = run.car().tyres(axle).windowLow();
        Optional<Quantity> high = run.car().tyres(axle).windowHigh();
        if (read.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return;
        }
        double mean = mean(read, TreadRead::mean);
        double below = low.get().in(Unit.CELSIUS) - mean;
        double above = mean - high.get().in(Unit.CELSIUS);
        String window = "; their window is " + low.get() + " to " + high.get();
        String tyres = axle.id() + " tyres " + celsius(mean) + " on average";
        add(axle, State.BELOW_WINDOW, ramp(below, 0, WINDOW_FULL), tyres + window);
        add(axle, State.ABOVE_WINDOW, ramp(above, 0, WINDOW_FULL), tyres + window);
        add(axle, State.INSIDE_WINDOW, 1 - ramp(Math.max(below, above), 0, WINDOW_FULL), tyres + window);
    }

    private void sides(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
        if (read.size() < 2) {
            return;
        }
        double left = read.stream().filter(wheel -> wheel.wheel().left()).findFirst().orElseThrow()
                .tread().orElseThrow().mean();
        double right = read.stream().filter(wheel -> !wheel.wheel().left()).findFirst().orElseThrow()
                .tread().orElseThrow().mean();
        double clear = switch (run.conditions().turns()) {
            case BOTH -> ramp(Math.abs(left - right), SIDES_STARTS, SIDES_FULL);
            case LEFT -> ramp(left - right, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
            case RIGHT -> ramp(right - left, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
        };
        add(axle, State.SIDES_DIFFER, clear, axle.id() + " left tyre " + celsius(left) + ", right tyre "
                + celsius(right) + (run.conditions().turns() == Turn.BOTH ? "" : ", on a circuit that mostly turns "
                + run.conditions().turns().id()));
    }

    private void axles(TyreReadings figures) {
        Optional<Double> front = overWindow(Axle.FRONT, figures);
        Optional<Double> rear = overWindow(Axle.REAR, figures);
        if (front.isEmpty() || rear.isEmpty()) {
            return;
        }
        double difference = front.get() - rear.get();
        Axle hotter = difference > 0 ? Axle.FRONT : Axle.REAR;
        add(hotter, State.HOTTER_AXLE, ramp(Math.abs(difference), HOTTER_AXLE_STARTS, HOTTER_AXLE_FULL), hotter.id()
                + " tyres " + kelvin(Math.abs(difference)) + " hotter than the " + hotter.other().id()
                + " tyres, each against its own window");
    }

    /** The axle's mean against the middle of its window; the plain mean where no window is known. */
    private Optional<Double> overWindow(Axle axle, TyreReadings figures) {
        List<WheelFigures> read = figures.wheels(axle).stream().filter(wheel -> wheel.tread().isPresent()).toList();
        if (read.isEmpty()) {
            return Optional.empty();
        }
        Optional<Quantity> low = run.car().tyres(axle).windowLow();
        Optional<Quantity> high = run.car().tyres(axle).windowHigh();
        double middle = low.isPresent() && high.isPresent()
                ? (low.get().in(Unit.CELSIUS) + high.get().in(Unit.CELSIUS)) / 2 : 0;
        return Optional.of(mean(read, TreadRead::mean) - middle);
    }

    private void pressure(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.overTargetBar().isPresent()).toList();
        if (read.isEmpty()) {
            return;
        }
        if (read.size() == 2) {
            double first = read.get(0).overTargetBar().orElseThrow();
            double second = read.get(1).overTargetBar().orElseThrow();
            WheelFigures worse = Math.abs(first) >= Math.abs(second) ? read.get(0) : read.get(1);
            double off = worse.overTargetBar().orElseThrow();
            double alone = ramp(Math.abs(first - second), ALONE_STARTS, ALONE_FULL);
            if (alone > NOISE && ramp(Math.min(Math.abs(first), Math.abs(second)), PRESSURE_STARTS, PRESSURE_FULL)
                    < ramp(Math.abs(off), PRESSURE_STARTS, PRESSURE_FULL) - NOISE) {
                readings.add(new Reading(Word.of(Place.class, worse.wheel().id()),
                        off > 0 ? State.ABOVE_TARGET_ALONE : State.BELOW_TARGET_ALONE, alone,
                        worse.wheel().id() + " tyre " + against(worse, off) + "; its partner differs by "
                                + bar(worse, Math.abs(first - second))));
                if (alone >= 0.5) {
                    return;
                }
            }
        }
        double off = read.stream().mapToDouble(wheel -> wheel.overTargetBar().orElseThrow()).average().orElseThrow();
        String statement = axle.id() + " tyres " + against(read.get(0), off);
        add(axle, State.ABOVE_TARGET, ramp(off, PRESSURE_STARTS, PRESSURE_FULL), statement);
        add(axle, State.BELOW_TARGET, ramp(-off, PRESSURE_STARTS, PRESSURE_FULL), statement);
        add(axle, State.AT_TARGET, 1 - ramp(Math.abs(off), PRESSURE_STARTS, PRESSURE_FULL), statement);
    }

    private static String against(WheelFigures wheel, double offBar) {
        Quantity target = wheel.target().orElseThrow();
        String off = bar(wheel, Math.abs(offBar));
        return Math.abs(offBar) < 0.005 ? "hot at their target of " + target
                : off + (offBar > 0 ? " above" : " below") + " the hot target of " + target;
    }

    private static String bar(WheelFigures wheel, double bar) {
        Unit unit = wheel.hot().orElseThrow().unit();
        return new Quantity(bar * 1e5 / unit.differenceToSi(1), unit).text(unit == Unit.BAR ? 2 : 1);
    }

    private void add(Axle axle, State state, double clearness, String statement) {
        if (clearness > NOISE) {
            readings.add(new Reading(Word.of(Place.class, axle.id()), state, Math.rint(clearness * 1e6) / 1e6,
                    statement));
        }
    }

    private static double mean(List<WheelFigures> wheels, ToDoubleFunction<TreadRead> figure) {
        return wheels.stream().mapToDouble(wheel -> figure.applyAsDouble(wheel.tread().orElseThrow())).average()
                .orElseThrow();
    }

    private static String figures(List<WheelFigures> wheels) {
        List<String> each = wheels.stream().map(wheel -> {
            TreadRead tread = wheel.tread().orElseThrow();
            return wheel.wheel().id() + " " + Math.round(tread.inner()) + "/" + Math.round(tread.middle()) + "/"
                    + Math.round(tread.outer());
        }).toList();
        return " (" + String.join(", ", each) + " °C)";
    }

    private static String kelvin(double difference) {
        return String.format(Locale.ROOT, "%.0f K", difference);
    }

    private static String celsius(double temperature) {
        return String.format(Locale.ROOT, "%.0f °C", temperature);
    }

    private static double ramp(double value, double start, double full) {
        return Math.max(0, Math.min(1, (value - start) / (full - start)));
    }
}
