package camberwell.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a quantity may be: its units, and the range that is plausible in each. Where a source is not named, the ranges
 * are common practice, no source.
 *
 * @param noun what it is, with its article
 * @param ranges one for each dimension that it may be written in
 */
public record Measure(String noun, List<Range> ranges) {

    public static final Measure TREAD = in("a tread temperature", Unit.CELSIUS, -20, 200);
    public static final Measure AIR = in("an air temperature", Unit.CELSIUS, -30, 60);
    public static final Measure TRACK = in("a track temperature", Unit.CELSIUS, -20, 80);
    /** Tyres from blankets are "cold" at some 80 °C when their pressure is set. */
    public static final Measure COLD_TYRES = in("the temperature of cold tyres", Unit.CELSIUS, -30, 120);
    /** In metres alone: a depth in millimetres or inches would be a slip. */
    public static final Measure ALTITUDE =
            new Measure("an altitude", List.of(new Range(List.of(Unit.METRE), -500, 5000)));
    public static final Measure PRESSURE = in("a pressure", Unit.BAR, 0.3, 6);
    public static final Measure FUEL = in("a load of fuel", Unit.KILOGRAM, 0, 300);
    public static final Measure RIM = in("a rim diameter", Unit.INCH, 6, 26);
    public static final Measure DIAMETER = in("a tyre diameter", Unit.MILLIMETRE, 250, 1200);
    public static final Measure CAMBER_PER_KELVIN = in("camber for one kelvin", Unit.DEGREE, 0.001, 0.5);

    /** In one dimension, with all its units. */
    public static Measure in(String noun, Unit unit, double least, double most) {
        return new Measure(noun, List.of(Range.in(unit, least, most)));
    }

    /** The same units with any value: for steps, which are differences. */
    public Measure anyValue(String newNoun) {
        List<Range> open = new ArrayList<>();
        for (Range range : ranges) {
            open.add(new Range(range.units(), -Double.MAX_VALUE, Double.MAX_VALUE));
        }
        return new Measure(newNoun, List.copyOf(open));
    }

    /** The range for quantities in {@code unit}, if it may be written in it. */
    public Optional<Range> range(Unit unit) {
        for (Range range : ranges) {
            if (range.units().contains(unit)) {
                return Optional.of(range);
            }
        }
        return Optional.empty();
    }

    /** Whether {@code quantity} is in one of the units and plausible. */
    public boolean holds(Quantity quantity) {
        Optional<Range> range = range(quantity.unit());
        return range.isPresent() && range.get().holds(quantity);
    }

    /** Every unit that it may be written in. */
    public List<Unit> units() {
        List<Unit> units = new ArrayList<>();
        for (Range range : ranges) {
            units.addAll(range.units());
        }
        return units;
    }
}
