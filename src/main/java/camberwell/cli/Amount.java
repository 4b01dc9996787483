package camberwell.cli;

import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Range;
import camberwell.units.Unit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/**
 * A quantity on the command line: a number and its unit, in a plausible range (wide, there to catch a slipped decimal
 * point or a wrong unit; common practice, no source).
 */
abstract class Amount implements ITypeConverter<Quantity> {

    private final Measure measure;
    private final String noun;

    private Amount(Measure measure) {
        this.measure = measure;
        this.noun = measure.noun();
    }

    private Amount(String noun, Range... ranges) {
        this(new Measure(noun, List.of(ranges)));
    }

    @Override
    public Quantity convert(String text) {
        Optional<Quantity> quantity = Quantity.parse(text);
        if (quantity.isEmpty()) {
            String point = text.replace(',', '.');
            boolean comma = text.contains(",") && Quantity.parse(point).isPresent();
            throw new TypeConversionException("\"" + text + "\" will not do: " + noun + " is a number and a unit, "
                    + symbols() + (comma ? meant(point) : ""));
        }
        Quantity read = quantity.get();
        Optional<Range> range = measure.range(read.unit());
        if (range.isEmpty()) {
            throw new TypeConversionException(read.unit() == Unit.POSITION ? noun + " needs a unit: " + symbols()
                    + suggestion(read) : "\"" + text + "\" will not do: " + noun + " is written in " + symbols());
        }
        if (!range.get().holds(read)) {
            throw new TypeConversionException("\"" + text + "\" is out of range: " + noun + " lies between "
                    + range.get()
                    + suggestion(read));
        }
        return read;
    }

    /** The same number in a unit in which it is plausible. */
    private String suggestion(Quantity read) {
        return units().filter(unit -> unit != read.unit()).map(unit -> new Quantity(read.value(), unit))
                .filter(measure::holds).findFirst().map(other -> meant(other.toString())).orElse("");
    }

    private static String meant(String text) {
        return "; did you mean \"" + text + "\"?";
    }

    private Stream<Unit> units() {
        return measure.units().stream();
    }

    private String symbols() {
        List<String> symbols = units().map(Unit::symbol).toList();
        return symbols.size() == 1 ? symbols.get(0) : symbols.stream().limit(symbols.size() - 1L)
                .collect(Collectors.joining(", ")) + " or " + symbols.get(symbols.size() - 1);
    }

    static final class Pressure extends Amount {
        Pressure() {
            super(Measure.PRESSURE);
        }
    }

    static final class AmbientPressure extends Amount {
        AmbientPressure() {
            super("the ambient pressure", Range.in(Unit.BAR, 0.5, 1.1));
        }
    }

    static final class PressureStep extends Amount {
        PressureStep() {
            super("a step of pressure", Range.in(Unit.BAR, 0.0001, 0.5));
        }
    }

    static final class Altitude extends Amount {
        Altitude() {
            super(Measure.ALTITUDE);
        }
    }

    /** Of air, of a track, or of a tyre that stands. */
    static final class Temperature extends Amount {
        Temperature() {
            super("a temperature", Range.in(Unit.CELSIUS, -40, 120));
        }
    }

    static final class GasTemperature extends Amount {
        GasTemperature() {
            super("a gas temperature", Range.in(Unit.CELSIUS, -40, 200));
        }
    }

    static final class Toe extends Amount {
        Toe() {
            super("a toe", Range.in(Unit.DEGREE, -5, 5), Range.in(Unit.MILLIMETRE, -50, 50));
        }
    }

    static final class Camber extends Amount {
        Camber() {
            super("a camber", Range.in(Unit.DEGREE, -20, 20));
        }
    }

    static final class AxisAngle extends Amount {
        AxisAngle() {
            super("a caster or kingpin inclination", Range.in(Unit.DEGREE, -25, 25));
        }
    }

    static final class Steer extends Amount {
        Steer() {
            super("a steer of the wheels", Range.in(Unit.DEGREE, 0.5, 50));
        }
    }

    static final class Roll extends Amount {
        Roll() {
            super("a roll of the body", Range.in(Unit.DEGREE, 0, 15));
        }
    }

    static final class Share extends Amount {
        Share() {
            super("the camber taken back", Range.in(Unit.PERCENT, -100, 200));
        }
    }

    static final class Diameter extends Amount {
        Diameter() {
            super("a reference diameter", Range.in(Unit.MILLIMETRE, 150, 1500));
        }
    }

    static final class Travel extends Amount {
        Travel() {
            super("a travel of the wheel", Range.in(Unit.MILLIMETRE, 1, 300));
        }
    }

    static final class TrackWidth extends Amount {
        TrackWidth() {
            super("a track width", Range.in(Unit.METRE, 0.5, 2.5));
        }
    }

    static final class Speed extends Amount {
        Speed() {
            super("a speed", Range.in(Unit.KILOMETRE_PER_HOUR, 1, 500));
        }
    }

    /** Of a car in a corner. */
    static final class CornerSpeed extends Amount {
        CornerSpeed() {
            super("a speed in a corner", Range.in(Unit.KILOMETRE_PER_HOUR, 15, 350));
        }
    }

    static final class Radius extends Amount {
        Radius() {
            super("a radius", Range.in(Unit.METRE, 5, 2000));
        }
    }

    static final class Load extends Amount {
        Load() {
            super("the load of one tyre", Range.in(Unit.NEWTON, 200, 20_000));
        }
    }
}
