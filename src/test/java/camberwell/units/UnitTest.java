package camberwell.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.stream.Stream;
import javax.measure.MetricPrefix;
import javax.measure.IncommensurableException;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import si.uom.NonSI;
import systems.uom.common.Imperial;
import systems.uom.common.USCustomary;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

class UnitTest {

    /** The units as JSR 385's reference implementation (indriya, with si-units and systems-common) defines them. */
    private static final Map<Unit, javax.measure.Unit<?>> REFERENCE = Map.ofEntries(
            Map.entry(Unit.CELSIUS, Units.CELSIUS),
            Map.entry(Unit.FAHRENHEIT, USCustomary.FAHRENHEIT),
            Map.entry(Unit.BAR, NonSI.BAR),
            Map.entry(Unit.KILOPASCAL, MetricPrefix.KILO(Units.PASCAL)),
            Map.entry(Unit.PSI, Imperial.POUND_FORCE.divide(USCustomary.INCH.pow(2))),
            Map.entry(Unit.DEGREE, USCustomary.DEGREE_ANGLE),
            Map.entry(Unit.METRE, Units.METRE),
            Map.entry(Unit.MILLIMETRE, MetricPrefix.MILLI(Units.METRE)),
            Map.entry(Unit.INCH, USCustomary.INCH),
            Map.entry(Unit.METRE_PER_SECOND, Units.METRE_PER_SECOND),
            Map.entry(Unit.KILOMETRE_PER_HOUR, Units.KILOMETRE_PER_HOUR),
            Map.entry(Unit.MILE_PER_HOUR, USCustomary.MILE_PER_HOUR),
            Map.entry(Unit.PERCENT, Units.PERCENT),
            Map.entry(Unit.NEWTON_PER_MILLIMETRE, Units.NEWTON.divide(MetricPrefix.MILLI(Units.METRE))),
            Map.entry(Unit.POUND_PER_INCH, Imperial.POUND_FORCE.divide(USCustomary.INCH)),
            Map.entry(Unit.NEWTON_METRE, Units.NEWTON.multiply(Units.METRE)),
            Map.entry(Unit.NEWTON_METRE_PER_DEGREE,
                    Units.NEWTON.multiply(Units.METRE).divide(USCustomary.DEGREE_ANGLE)),
            Map.entry(Unit.NEWTON, Units.NEWTON),
            Map.entry(Unit.KILOGRAM, Units.KILOGRAM),
            Map.entry(Unit.POSITION, AbstractUnit.ONE));

    @ParameterizedTest
    @EnumSource(Unit.class)
    @DisplayName("every unit converts to SI as the reference library does")
    void againstReference(Unit unit) throws IncommensurableException {
        javax.measure.Unit<?> reference = REFERENCE.get(unit);
        for (double value : new double[] {-40, -2.5, 0, 1, 1.9, 32, 212, 1500}) {
            double expected = reference.getConverterToAny(reference.getSystemUnit()).convert(value);
            assertEquals(expected, unit.toSi(value), 1e-9 * Math.max(1, Math.abs(expected)), unit + " " + value);
        }
    }

    @ParameterizedTest
    @DisplayName("conversions give the factors of the handbook: NIST Special Publication 811 (2008), appendix B.8")
    @CsvSource({
        "PSI,                   KILOPASCAL,            6.894757, 5e-7",
        "BAR,                   KILOPASCAL,            100,      1e-9",
        "POUND_PER_INCH,        NEWTON_PER_MILLIMETRE, 0.1751268, 5e-8",
        "MILE_PER_HOUR,         KILOMETRE_PER_HOUR,    1.609344, 1e-9",
        "INCH,                  MILLIMETRE,            25.4,     1e-9",
    })
    void handbook(Unit from, Unit to, double factor, double tolerance) {
        assertEquals(factor, new Quantity(1, from).in(to), tolerance);
    }

    @Test
    @DisplayName("water freezes at 32 °F and boils at 212 °F; the scales meet at -40")
    void fixedPointsOfFahrenheit() {
        assertEquals(0, new Quantity(32, Unit.FAHRENHEIT).in(Unit.CELSIUS), 1e-9);
        assertEquals(100, new Quantity(212, Unit.FAHRENHEIT).in(Unit.CELSIUS), 1e-9);
        assertEquals(-40, new Quantity(-40, Unit.FAHRENHEIT).in(Unit.CELSIUS), 1e-9);
    }

    @Test
    @DisplayName("a difference of 9 °F is one of 5 K: the zero of the scale does not count")
    void differences() {
        assertEquals(5, Unit.FAHRENHEIT.differenceToSi(9), 1e-12);
        assertEquals(5, Unit.CELSIUS.differenceToSi(5), 1e-12);
    }

    @Property
    @Label("a value comes back from SI as it went")
    void thereAndBack(@ForAll Unit unit, @ForAll @DoubleRange(min = -1e4, max = 1e4) double value) {
        assertEquals(value, unit.fromSi(unit.toSi(value)), 1e-8);
    }

    @Test
    @DisplayName("no symbol stands for two units, and each leads back to its unit")
    void symbols() {
        Stream.of(Unit.values()).forEach(unit -> unit.symbols().forEach(symbol ->
                assertEquals(unit, Unit.withSymbol(symbol).orElseThrow(), symbol)));
        assertTrue(Unit.withSymbol("K").isEmpty());
    }
}
