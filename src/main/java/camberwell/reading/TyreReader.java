package camberwell.reading;

import camberwell.car.Setting;
import camberwell.physics.GasLaw;
import camberwell.physics.TreadRead;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Wheel;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Reads the tyres of a case. Every reading is a ramp from nothing to clear, never a threshold: one kelvin must not tip
 * the advice. Limits without a source beside them are common practice, no source.
 */
public final class TyreReader {

    private final Case run;
    private final LoadedSide side;

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
        Optional<HotCorner> hot = HotCorner.of(run, all);
        TyreReadings figures = new TyreReadings(all, reader.side, hot, List.of(), List.of());
        Notepad notes = new Notepad();
        reader.ofAnotherTyre().ifPresent(notes::doubt);
        figures.held().ifPresent(corner -> notes.doubt(corner.text()));
        TreadReader pyrometer = new TreadReader(run, hot, notes);
        GaugeReader gauge = new GaugeReader(run, notes);
        for (Axle axle : Axle.values()) {
            pyrometer.read(axle, figures.wheels(axle));
            gauge.read(axle, figures.wheels(axle));
        }
        pyrometer.axles(figures);
        pyrometer.sides(figures);
        wheels.values().forEach(gauge::growth);
        return new TyreReadings(all, reader.side, hot, notes.readings(), notes.doubts());
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
        Optional<Quantity> cold = tyre.coldPressure().or(() -> set(run, wheel));
        Optional<Quantity> gas = tyre.hotPressure().flatMap(hot -> cold.flatMap(set -> coldTemperature(run).map(at ->
                Quantity.ofSi(GasLaw.impliedTemperature(set.si(), at.si(), hot.si(), ambient(run)), Unit.CELSIUS))));
        OptionalDouble off = offWindow(wheel.axle(), tread);
        boolean believed = tyre.hotPressure().isPresent()
                && cold.filter(set -> tyre.hotPressure().get().compareTo(set) <= 0).isEmpty();
        Optional<Quantity> warm = believed ? tyre.hotPressure().map(hot -> warm(hot, gas, tread, off))
                : Optional.empty();
        return new WheelFigures(wheel, tread, side.loads(wheel), cold, tyre.hotPressure(), warm,
                run.hotTarget(wheel.axle()), gas, off);
    }

    private Optional<String> ofAnotherTyre() {
        boolean read = run.tyres().values().stream().anyMatch(tyre -> tyre.hotPressure().isPresent());
        boolean unsaid = run.conditions().surface() == Surface.WET && run.background().stint().compound().isEmpty();
        return !(run.onRainTyres() || unsaid) || !read ? Optional.empty() : Arrays.stream(Axle.values())
                .flatMap(axle -> run.car().tyres(axle).hotTarget().stream()).findFirst()
                .map(target -> "the hot target of the car's file, " + target + ", is taken to be that of its dry tyres and "
                        + (unsaid ? "held against these, as nobody said which were on a wet track: for rain tyres say "
                        + "\"compound: wet\" and go by what their maker gives"
                        : "not held against rain tyres: go by what their maker gives"));
    }

    /** The cold pressure that the car's file says is set. */
    static Optional<Quantity> set(Case run, Wheel wheel) {
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
        return OptionalDouble.of((TreadReader.dryWindow(run) ? Math.min(0, mean - low.get().in(Unit.CELSIUS)) : 0)
                + Math.max(0, mean - high.get().in(Unit.CELSIUS)));
    }

    private static double celsius(Optional<Quantity> temperature) {
        return temperature.orElseThrow().in(Unit.CELSIUS);
    }
}
