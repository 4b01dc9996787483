package camberwell.units;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A unit that a quantity may be written in. Conversions go through the dimension's SI unit:
 * {@code si = value * factor + offset}. Factors are exact by definition (SI brochure; the international yard and pound
 * agreement of 1959: 1 in = 25.4 mm, 1 lb = 0.45359237 kg; standard gravity 9.80665 m/s²).
 */
public enum Unit {
    CELSIUS(Dimension.TEMPERATURE, 1, 273.15, "°C", "C"),
    FAHRENHEIT(Dimension.TEMPERATURE, 5.0 / 9.0, 459.67 * 5.0 / 9.0, "°F", "F"),
    BAR(Dimension.PRESSURE, 1e5, 0, "bar"),
    KILOPASCAL(Dimension.PRESSURE, 1e3, 0, "kPa"),
    PSI(Dimension.PRESSURE, 0.45359237 * 9.80665 / (0.0254 * 0.0254), 0, "psi"),
    DEGREE(Dimension.ANGLE, Math.PI / 180, 0, "deg", "°"),
    METRE(Dimension.LENGTH, 1, 0, "m"),
    MILLIMETRE(Dimension.LENGTH, 1e-3, 0, "mm"),
    INCH(Dimension.LENGTH, 0.0254, 0, "in"),
    METRE_PER_SECOND(Dimension.SPEED, 1, 0, "m/s"),
    KILOMETRE_PER_HOUR(Dimension.SPEED, 1 / 3.6, 0, "km/h"),
    MILE_PER_HOUR(Dimension.SPEED, 0.44704, 0, "mph"),
    PERCENT(Dimension.RATIO, 0.01, 0, "%"),
    NEWTON_PER_MILLIMETRE(Dimension.STIFFNESS, 1e3, 0, "N/mm"),
    POUND_PER_INCH(Dimension.STIFFNESS, 0.45359237 * 9.80665 / 0.0254, 0, "lb/in"),
    NEWTON_METRE(Dimension.TORQUE, 1, 0, "Nm"),
    NEWTON_METRE_PER_DEGREE(Dimension.ROLL_STIFFNESS, 180 / Math.PI, 0, "Nm/deg"),
    NEWTON(Dimension.FORCE, 1, 0, "N"),
    KILOGRAM(Dimension.MASS, 1, 0, "kg"),
    /** A click, a hole, a position: a bare number. */
    POSITION(Dimension.COUNT, 1, 0, "");

    /** What is measured. */
    public enum Dimension {
        TEMPERATURE("a temperature"), PRESSURE("a pressure"), ANGLE("an angle"), LENGTH("a length"), SPEED("a speed"),
        RATIO("a percentage"), STIFFNESS("a spring rate"), TORQUE("a torque"), ROLL_STIFFNESS("a roll stiffness"),
        FORCE("a force"), MASS("a mass"), COUNT("a bare number");

        private final String name;

        Dimension(String name) {
            this.name = name;
        }

        /** With its article, for a sentence: {@code a pressure}. */
        public String named() {
            return name;
        }
    }

    private final Dimension dimension;
    private final double factor;
    private final double offset;
    private final List<String> symbols;

    Unit(Dimension dimension, double factor, double offset, String... symbols) {
        this.dimension = dimension;
        this.factor = factor;
        this.offset = offset;
        this.symbols = List.of(symbols);
    }

    /** The dimension. */
    public Dimension dimension() {
        return dimension;
    }

    /** This unit, and after it the others of its dimension. */
    public List<Unit> alike() {
        List<Unit> alike = new ArrayList<>();
        alike.add(this);
        for (Unit unit : values()) {
            if (unit.dimension == dimension && unit != this) {
                alike.add(unit);
            }
        }
        return List.copyOf(alike);
    }

    /** The symbol that is printed. */
    public String symbol() {
        return symbols.get(0);
    }

    /** {@code value} of this unit in the SI unit of its dimension (kelvin, pascal, radian, metre, …). */
    public double toSi(double value) {
        return value * factor + offset;
    }

    /** {@code si} of the dimension's SI unit in this unit. */
    public double fromSi(double si) {
        return (si - offset) / factor;
    }

    /** A difference of {@code value} in this unit as a difference in the SI unit: no offset. */
    public double differenceToSi(double value) {
        return value * factor;
    }

    /** The unit with that symbol, if there is one. */
    public static Optional<Unit> withSymbol(String symbol) {
        for (Unit unit : values()) {
            if (unit.symbols.contains(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** Every accepted symbol, for messages. */
    public List<String> symbols() {
        return symbols;
    }
}
