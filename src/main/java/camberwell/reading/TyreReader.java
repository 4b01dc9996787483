package camberwell.reading;

import camberwell.car.Setting;
import camberwell.fact.Reading.State;
import camberwell.fact.Reading;
import camberwell.physics.GasLaw;
import camberwell.physics.TreadRead;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Reads the tyres of a case. Every reading is a ramp from nothing to clear, never a threshold: one kelvin must not tip
 * the advice. Limits without a source beside them are common practice, no source.
 */
public final class TyreReader {

    /** Clearness below this is noise. */
    private static final double NOISE = 0.05;
    /** How far one tyre of an axle counts whose partner does not show the same. */
    private static final double ONE_OF_TWO = 0.6;
    /** Kelvin outside the window from which it is clear. */
    private static final double WINDOW_FULL = 10;
    /** Kelvin outside the window up to which a tyre may still be called inside it. */
    private static final double WINDOW_NEAR = 3;
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
    private static final double PRESSURE_CLEAR = 0.9;
    /** Bar off the target from which nothing could be clearer. */
    private static final double PRESSURE_TOTAL = 0.5;
    /** Bar off the target from which the gauge counts whatever the tread shows. */
    private static final double GAUGE_DECIDES = 0.25;
    /** Clearness of a hot edge or middle from which nobody calls the tread even. */
    private static final double EVEN_ENDS = 0.3;
    /** Bar between the two tyres of an axle from which one of them is told of alone. */
    private static final double ALONE_STARTS = 0.06;
    private static final double ALONE_FULL = 0.16;

    /** Inner less outer that the two tyres of an axle may differ by on a circuit that turns both ways, K. */
    private static final double UNLIKE_EDGES = 12;
    /** The gas is cooler than the tread; hotter by more than this and a gauge or a thermometer is wrong, K. */
    private static final double GAS_OVER_TREAD = 10;
    /** Clearness from which a contradiction is told. */
    private static final double WORTH_TELLING = 0.25;

    private final Case run;
    private final LoadedSide side;
    private final List<Reading> readings = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    private TyreReader(Case run) {
        this.run = run;
        this.side = LoadedSide.of(run);
    }

    /** What the tyres of {@code run} show; nothing when none was measured. */
    public static TyreReadings read(Case run) {
        TyreReader reader = new TyreReader(run);
        Map<Wheel, WheelFigures> wheels = new EnumMap<>(Wheel.class);
        run.tyres().forEach((wheel, tyre) -> wheels.put(wheel, reader.figures(wheel, tyre)));
        Map<Wheel, WheelFigures> all = Collections.unmodifiableMap(wheels);
        TyreReadings figures = new TyreReadings(all, reader.side, List.of(), List.of());
        for (Axle axle : Axle.values()) {
            List<WheelFigures> both = figures.wheels(axle);
            Pressures pressures = reader.pressures(both);
            reader.tread(axle, both);
            reader.window(axle, both);
            reader.pressure(axle, pressures);
            reader.minimum(axle, both);
            reader.lost(axle, both);
        }
        reader.axles(figures);
        reader.sides(figures);
        wheels.values().forEach(reader::growth);
        return new TyreReadings(all, reader.side, List.copyOf(reader.readings), List.copyOf(reader.doubts));
    }

    /**
     * Ambient pressure at the circuit, Pa: the standard atmosphere's at its altitude, at sea level if none is
     * given.
     */
    public static double ambient(Case run) {
        return run.conditions().altitude().map(altitude -> GasLaw.standardPressure(altitude.si()))
                .orElse(GasLaw.STANDARD_ATMOSPHERE);
    }

    /** Temperature of the gas when the cold pressure was set: the tyres' own if it was taken, else the air's. */
    public static Optional<Quantity> coldTemperature(Case run) {
        return run.conditions().coldTyres().or(() -> run.conditions().air());
    }

    private WheelFigures figures(Wheel wheel, TyreReading tyre) {
        Optional<TreadRead> tread = tyre.hasTread()
                ? Optional.of(new TreadRead(celsius(tyre.inner()), celsius(tyre.middle()), celsius(tyre.outer())))
                : Optional.empty();
        Optional<Quantity> cold = tyre.coldPressure().or(() -> set(wheel));
        Optional<Quantity> gas = tyre.hotPressure().flatMap(hot -> cold.flatMap(set -> coldTemperature(run).map(at ->
                Quantity.ofSi(GasLaw.impliedTemperature(set.si(), at.si(), hot.si(), ambient(run)), Unit.CELSIUS))));
        OptionalDouble off = offWindow(wheel.axle(), tread);
        boolean believed = tyre.hotPressure().isPresent()
                && cold.filter(set -> tyre.hotPressure().get().compareTo(set) <= 0).isEmpty();
        Optional<Quantity> warm = believed ? tyre.hotPressure().map(hot -> warm(hot, gas, tread, off))
                : Optional.empty();
        return new WheelFigures(wheel, tread, side.loads(wheel), cold, tyre.hotPressure(), warm,
                run.car().tyres(wheel.axle()).hotTarget(), gas, off);
    }

    /** The cold pressure that the car's file says is set. */
    private Optional<Quantity> set(Wheel wheel) {
        return run.car().generic() ? Optional.empty() : run.car().pressureSetting(wheel).map(Setting::now)
                .filter(now -> now.unit().dimension() == Unit.Dimension.PRESSURE);
    }

    /** What the gauge would read with the tread at the lower end of its window; the gas warms with the tread. */
    private Quantity warm(Quantity hot, Optional<Quantity> gas, Optional<TreadRead> tread, OptionalDouble off) {
        if (off.isEmpty() || off.getAsDouble() >= 0) {
            return hot;
        }
        double kelvin = gas.map(Quantity::si).orElseGet(() -> Unit.CELSIUS.toSi(tread.orElseThrow().mean()));
        double absolute = (hot.si() + ambient(run)) * (kelvin - off.getAsDouble()) / kelvin;
        return Quantity.ofSi(absolute - ambient(run), hot.unit());
    }

    private OptionalDouble offWindow(Axle axle, Optional<TreadRead> tread) {
        Optional<Quantity> low = run.car().tyres(axle).windowLow();
        Optional<Quantity> high = run.car().tyres(axle).windowHigh();
        if (tread.isEmpty() || low.isEmpty() || high.isEmpty()) {
            return OptionalDouble.empty();
        }
        double mean = tread.get().mean();
        return OptionalDouble.of((dryWindow() ? Math.min(0, mean - low.get().in(Unit.CELSIUS)) : 0)
                + Math.max(0, mean - high.get().in(Unit.CELSIUS)));
    }

    /** A wet tyre on a wet road runs cooler than a window that was given for the dry, and is none the worse for it. */
    private boolean dryWindow() {
        return run.conditions().surface() != Surface.WET;
    }

    private static double celsius(Optional<Quantity> temperature) {
        return temperature.orElseThrow().in(Unit.CELSIUS);
    }

    /**
     * The loaded tyres are judged: the others hardly work.
     */
    private void tread(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
        List<WheelFigures> loaded = read.stream().filter(WheelFigures::loaded).toList();
        if (loaded.isEmpty()) {
            if (!read.isEmpty()) {
                doubts.add("the tread of the loaded " + axle.id() + " tyre was not read; its partner says little about "
                        + "camber and pressure");
            }
            return;
        }
        List<TreadRead> treads = loaded.stream().map(wheel -> wheel.tread().orElseThrow()).toList();
        double difference = TyreReadings.innerMinusOuter(treads).orElseThrow();
        double inner = clear(treads, difference, TreadRead::innerHotClearness);
        double outer = clear(treads, difference, TreadRead::outerHotClearness);
        // One camber serves both wheels: what the less loaded one says against it counts for less, not for nothing.
        double innerAnywhere = most(loaded, TreadRead::innerHotClearness);
        double outerAnywhere = most(loaded, TreadRead::outerHotClearness);
        String figures = figures(loaded);
        double insideHot = inner * (1 - outerAnywhere / 2);
        double outsideHot = outer * (1 - innerAnywhere / 2);
        if (insideHot >= outsideHot) {
            add(axle, State.INNER_EDGE_HOT, insideHot, axle.id() + " inner edge " + kelvin(difference)
                    + " hotter than the outer" + figures);
        } else {
            add(axle, State.OUTER_EDGE_HOT, outsideHot, axle.id() + " outer edge " + kelvin(-difference)
                    + " hotter than the inner" + figures);
        }
        if (loaded.size() == 2) {
            double unlike = loaded.get(0).tread().orElseThrow().innerMinusOuter()
                    - loaded.get(1).tread().orElseThrow().innerMinusOuter();
            if (Math.abs(unlike) > UNLIKE_EDGES) {
                doubts.add("the two " + axle.id() + " tyres differ by " + kelvin(Math.abs(unlike)) + " in inner less "
                        + "outer edge" + figures + ": measure the camber of each wheel before both are changed"
                        + "; the hotter tyre counts for more, since it does more of the work");
            }
        }
        middle(axle, loaded, pressures(loaded), Math.max(innerAnywhere, outerAnywhere));
    }

    /**
     * The middle tells of pressure, and so does the gauge of the same tyres: where one clearly says the opposite of the
     * other, the rules trust neither.
     */
    private void middle(Axle axle, List<WheelFigures> loaded, Pressures pressures, double edges) {
        String figures = figures(loaded);
        double middle = mean(loaded, TreadRead::middleMinusEdges);
        TreadRead across = new TreadRead(0, middle, 0);
        double hot = across.middleHotClearness();
        double cold = across.middleCoolClearness();
        // A gauge at its target makes the middle less telling; one far off it, the other way, takes it back.
        double against = hot > 0 ? pressures.below() : pressures.above();
        double opposed = Math.min(Math.max(hot, cold), against);
        double trust = 1 - Math.max(pressures.atTarget() / 2,
                ramp(hot > 0 ? -pressures.off : pressures.off, PRESSURE_FULL, GAUGE_DECIDES));
        add(axle, State.MIDDLE_HOT, hot * trust, axle.id() + " middle " + kelvin(middle)
                + " hotter than the mean of the edges" + figures);
        add(axle, State.MIDDLE_COLD, cold * trust, axle.id() + " middle " + kelvin(-middle)
                + " cooler than the mean of the edges" + figures);
        add(axle, State.EVEN_TREAD, 1 - ramp(Math.max(edges, Math.max(hot, cold)), 0, EVEN_ENDS), axle.id()
                + " tread even across its width" + figures);
        if (Math.max(hot, cold) < WORTH_TELLING || opposed < WORTH_TELLING
                && pressures.atTarget() < WORTH_TELLING) {
            return;
        }
        doubts.add(axle.id() + " middle " + kelvin(Math.abs(middle)) + (hot > 0 ? " hotter" : " cooler")
                + " than the edges says too " + (hot > 0 ? "much" : "little") + " air, but the gauge reads "
                + against(pressures.read.get(0), pressures.off) + (Math.abs(pressures.off) >= GAUGE_DECIDES
                ? ": the gauge decides. Set the pressure, and read the tread again after the next run"
                : ": trust neither yet. Check the gauge, and read the tread again straight after a hard lap; if both "
                + "stay so, the target may not suit this tyre and rim"));
    }

    private void window(Axle axle, List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
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
        add(axle, State.BELOW_WINDOW, dryWindow() ? ramp(below, 0, WINDOW_FULL) : 0, tyres + window);
        add(axle, State.ABOVE_WINDOW, ramp(above, 0, WINDOW_FULL), tyres + window);
        // What is outside by a few kelvin is no evidence that it is inside: one reading does not speak against itself.
        add(axle, State.INSIDE_WINDOW, dryWindow() ? 1 - ramp(Math.max(below, above), 0, WINDOW_NEAR) : 0,
                tyres + window);
        if (read.size() == 2) {
            double first = read.get(0).offWindow().orElseThrow();
            double second = read.get(1).offWindow().orElseThrow();
            if (first * second < 0) {
                doubts.add("one " + axle.id() + " tyre is below its window and the other above it; their mean of "
                        + celsius(mean) + " is neither's temperature");
            }
        }
    }

    /**
     * Left against right. What both axles share on a circuit that turns both ways is the circuit's; on one that mostly
     * turns one way the side that it works less ought not to be the hotter one at all.
     */
    private void sides(TyreReadings figures) {
        double shared = run.conditions().turns() == Turn.BOTH ? shared(leftOver(figures.wheels(Axle.FRONT)),
                leftOver(figures.wheels(Axle.REAR))) : 0;
        if (Math.abs(shared) >= SIDES_STARTS) {
            doubts.add("the " + (shared > 0 ? "left" : "right") + " tyres are the hotter ones at both ends, by "
                    + kelvin(Math.abs(shared)) + " at least: that is what a circuit does that mostly turns "
                    + (shared > 0 ? "right" : "left") + "; say which way it turns");
        }
        for (Axle axle : Axle.values()) {
            leftOver(figures.wheels(axle)).ifPresent(left -> sides(axle, withTread(figures.wheels(axle)), left, shared));
        }
    }

    private static double shared(OptionalDouble front, OptionalDouble rear) {
        if (front.isEmpty() || rear.isEmpty() || front.getAsDouble() * rear.getAsDouble() <= 0) {
            return 0;
        }
        return Math.signum(front.getAsDouble())
                * Math.min(Math.abs(front.getAsDouble()), Math.abs(rear.getAsDouble()));
    }

    /** How much hotter the left tyre is, K; empty where not both were read. */
    private static OptionalDouble leftOver(List<WheelFigures> wheels) {
        List<WheelFigures> read = withTread(wheels);
        return read.size() < 2 ? OptionalDouble.empty() : OptionalDouble.of(meanOf(read, true) - meanOf(read, false));
    }

    private void sides(Axle axle, List<WheelFigures> read, double left, double shared) {
        double clear = switch (run.conditions().turns()) {
            case BOTH -> ramp(Math.abs(left - shared), SIDES_STARTS, SIDES_FULL);
            case LEFT -> ramp(left, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
            case RIGHT -> ramp(-left, WRONG_SIDE_STARTS, WRONG_SIDE_FULL);
        };
        add(axle, State.SIDES_DIFFER, clear, axle.id() + " left tyre " + celsius(meanOf(read, true)) + ", right tyre "
                + celsius(meanOf(read, false)) + (run.conditions().turns() == Turn.BOTH ? ""
                : ", on a circuit that mostly turns " + run.conditions().turns().id()));
    }

    private static double meanOf(List<WheelFigures> read, boolean left) {
        return mean(read.stream().filter(wheel -> wheel.wheel().left() == left).toList(), TreadRead::mean);
    }

    private static List<WheelFigures> withTread(List<WheelFigures> wheels) {
        return wheels.stream().filter(wheel -> wheel.tread().isPresent()).toList();
    }

    private void axles(TyreReadings figures) {
        List<WheelFigures> front = withTread(figures.wheels(Axle.FRONT));
        List<WheelFigures> rear = withTread(figures.wheels(Axle.REAR));
        if (front.isEmpty() || rear.isEmpty()) {
            return;
        }
        Optional<Double> frontWindow = middleOfWindow(Axle.FRONT);
        Optional<Double> rearWindow = middleOfWindow(Axle.REAR);
        boolean windows = frontWindow.isPresent() && rearWindow.isPresent();
        double difference = mean(front, TreadRead::mean) - mean(rear, TreadRead::mean)
                - (windows ? frontWindow.get() - rearWindow.get() : 0);
        Axle hotter = difference > 0 ? Axle.FRONT : Axle.REAR;
        add(hotter, State.HOTTER_AXLE, ramp(Math.abs(difference), HOTTER_AXLE_STARTS, HOTTER_AXLE_FULL), hotter.id()
                + " tyres " + kelvin(Math.abs(difference)) + " hotter than the " + hotter.other().id() + " tyres"
                + (windows ? ", each against its own window" : ""));
    }

    private Optional<Double> middleOfWindow(Axle axle) {
        return run.car().tyres(axle).windowLow().flatMap(low -> run.car().tyres(axle).windowHigh()
                .map(high -> (low.in(Unit.CELSIUS) + high.in(Unit.CELSIUS)) / 2));
    }

    /** The gauge on one axle: the tyres that it was read on, and how far they are off their target together, bar. */
    private record Pressures(List<WheelFigures> read, double off) {

        double above() {
            return read.isEmpty() ? 0 : offTarget(off);
        }

        double below() {
            return read.isEmpty() ? 0 : offTarget(-off);
        }

        double atTarget() {
            return read.isEmpty() ? 0 : 1 - ramp(Math.abs(off), PRESSURE_STARTS, 2 * PRESSURE_STARTS);
        }
    }

    /** How clear a deviation is, bar: clear at the trade's step, and clearer still the further it goes. */
    private static double offTarget(double bar) {
        return PRESSURE_CLEAR * ramp(bar, PRESSURE_STARTS, PRESSURE_FULL)
                + (1 - PRESSURE_CLEAR) * ramp(bar, PRESSURE_FULL, PRESSURE_TOTAL);
    }

    private Pressures pressures(List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.overTargetBar().isPresent()).toList();
        return new Pressures(read, read.stream().mapToDouble(wheel -> wheel.overTargetBar().orElseThrow()).average()
                .orElse(0));
    }

    private void pressure(Axle axle, Pressures pressures) {
        if (pressures.read.isEmpty()) {
            return;
        }
        double alone = 0;
        if (pressures.read.size() == 2) {
            alone = Math.max(alone(pressures.read.get(0), pressures.read.get(1)),
                    alone(pressures.read.get(1), pressures.read.get(0)));
        }
        String statement = axle.id() + " tyres " + against(pressures.read.get(0), pressures.off);
        add(axle, State.ABOVE_TARGET, pressures.above() * (1 - alone), statement);
        add(axle, State.BELOW_TARGET, pressures.below() * (1 - alone), statement);
        add(axle, State.AT_TARGET, pressures.atTarget() * (1 - alone), statement);
    }

    /** A tyre is told of alone as far as its partner does not share what is wrong with it. */
    private double alone(WheelFigures tyre, WheelFigures partner) {
        double off = tyre.overTargetBar().orElseThrow();
        double other = partner.overTargetBar().orElseThrow();
        double shared = Math.max(0, Math.signum(off) * other);
        double alone = ramp(Math.abs(off - other), ALONE_STARTS, ALONE_FULL)
                * Math.max(0, ramp(Math.abs(off), PRESSURE_STARTS, PRESSURE_FULL)
                        - ramp(shared, PRESSURE_STARTS, PRESSURE_FULL));
        if (tidy(alone) > NOISE) {
            readings.add(new Reading(Word.of(Place.class, tyre.wheel().id()),
                    off > 0 ? State.ABOVE_TARGET_ALONE : State.BELOW_TARGET_ALONE, tidy(alone), tyre.wheel().id()
                            + " tyre " + against(tyre, off) + "; its partner differs by "
                            + bar(tyre, Math.abs(off - other))));
        }
        return alone;
    }

    private void minimum(Axle axle, List<WheelFigures> wheels) {
        Optional<Quantity> least = run.car().tyres(axle).coldMinimum();
        List<String> below = new ArrayList<>();
        for (Wheel wheel : Wheel.values()) {
            Optional<Quantity> cold = wheels.stream().filter(tyre -> tyre.wheel() == wheel).findFirst()
                    .map(WheelFigures::cold).orElseGet(() -> set(wheel));
            if (wheel.axle() == axle && least.isPresent() && cold.filter(it -> it.compareTo(least.get()) < 0).isPresent()) {
                below.add(wheel.id() + " tyre: cold " + pressure(cold.get()) + " is below its minimum of "
                        + pressure(least.get()));
            }
        }
        below.forEach(tyre -> doubts.add(tyre + ": set it before it runs again"));
        add(axle, State.BELOW_MINIMUM, below.isEmpty() ? 0 : 1, String.join("; ", below));
    }

    /** A tyre that is no higher hot than cold leaks, was bled, or was misread: what it reads is not built on. */
    private void lost(Axle axle, List<WheelFigures> wheels) {
        List<String> lost = new ArrayList<>();
        for (WheelFigures tyre : wheels) {
            if (tyre.cold().isPresent() && tyre.hot().filter(hot -> hot.compareTo(tyre.cold().get()) <= 0).isPresent()) {
                lost.add(tyre.wheel().id() + " tyre: hot " + pressure(tyre.hot().get()) + " is not above cold "
                        + pressure(tyre.cold().get()));
            }
        }
        lost.forEach(tyre -> doubts.add(tyre + ": it leaks, it was bled, or a reading is wrong. Look for the leak, and "
                + "measure again before a pressure is set"));
        add(axle, State.NO_GROWTH, lost.isEmpty() ? 0 : 1, String.join("; ", lost));
    }

    /** A growth that no tyre shows is a mistake of the gauge, the thermometer or the pen. */
    private void growth(WheelFigures tyre) {
        if (tyre.cold().isEmpty() || tyre.hot().isEmpty()) {
            return;
        }
        if (tyre.hot().get().compareTo(tyre.cold().get()) > 0 && tyre.gas().isPresent() && tyre.tread().isPresent()
                && tyre.gas().get().in(Unit.CELSIUS) > tyre.tread().get().mean() + GAS_OVER_TREAD) {
            doubts.add(tyre.wheel().id() + " tyre: the growth from " + pressure(tyre.cold().get()) + " to "
                    + pressure(tyre.hot().get()) + " would need gas at " + celsius(tyre.gas().get().in(Unit.CELSIUS))
                    + ", hotter than its tread at "
                    + celsius(tyre.tread().get().mean()) + ": the cold pressure was set in colder tyres than was said, "
                    + "the air in the tyre is damp, the tread was read late, or a gauge is wrong");
        }
    }

    private static String against(WheelFigures wheel, double offBar) {
        String target = pressure(wheel.target().orElseThrow());
        String off = bar(wheel, Math.abs(offBar));
        String warmed = wheel.warm().equals(wheel.hot()) ? "" : ", warmed to the window as they should be";
        return (Math.abs(offBar) < 0.005 ? "at the hot target of " + target
                : off + (offBar > 0 ? " above" : " below") + " the hot target of " + target) + warmed;
    }

    private static String bar(WheelFigures wheel, double bar) {
        Unit unit = wheel.hot().orElseThrow().unit();
        return pressure(new Quantity(bar * 1e5 / unit.differenceToSi(1), unit));
    }

    private static String pressure(Quantity pressure) {
        return pressure.text(pressure.unit() == Unit.BAR ? 2 : 1);
    }

    private void add(Axle axle, State state, double clearness, String statement) {
        double tidy = tidy(clearness);
        if (tidy > NOISE) {
            readings.add(new Reading(Word.of(Place.class, axle.id()), state, tidy, statement));
        }
    }

    /** Without the dust of binary fractions, which could tip what is noise. */
    private static double tidy(double clearness) {
        return Math.rint(clearness * 1e6) / 1e6;
    }

    private static double most(List<WheelFigures> wheels, ToDoubleFunction<TreadRead> clearness) {
        return wheels.stream().mapToDouble(wheel -> clearness.applyAsDouble(wheel.tread().orElseThrow())).max()
                .orElseThrow();
    }

    /** What both together say, or a little less than what the clearer of them says. */
    private static double clear(List<TreadRead> treads, double difference, ToDoubleFunction<TreadRead> clearness) {
        return Math.max(clearness.applyAsDouble(new TreadRead(difference, 0, 0)),
                ONE_OF_TWO * treads.stream().mapToDouble(clearness).max().orElseThrow());
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
        return Figures.fill("%.0f K", difference);
    }

    private static String celsius(double temperature) {
        return Figures.fill("%.0f °C", temperature);
    }

    private static double ramp(double value, double start, double full) {
        return Math.max(0, Math.min(1, (value - start) / (full - start)));
    }
}
