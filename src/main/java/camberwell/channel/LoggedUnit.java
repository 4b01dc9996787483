package camberwell.channel;

import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A unit that a logger may write, with the factor to SI: {@code si = (value + offset) * factor}. The factors are exact by
 * definition (SI brochure, 9th edition; the international yard and pound agreement of 1959; standard gravity 9.80665
 * m/s², CGPM 1901; nautical mile 1852 m).
 */
public enum LoggedUnit {
    SECOND(Scale.TIME, 1, "s", "sec", "secs", "second", "seconds", "sek", "sekunden", "sekunde"),
    MILLISECOND(Scale.TIME, 1e-3, "ms", "msec", "millisecond", "milliseconds", "millisekunden"),
    MICROSECOND(Scale.TIME, 1e-6, "us", "usec", "microseconds", "mikrosekunden"),
    NANOSECOND(Scale.TIME, 1e-9, "ns", "nsec", "nanoseconds"),
    MINUTE(Scale.TIME, 60, "min", "minute", "minutes", "minuten"),
    HOUR(Scale.TIME, 3600, "h", "hr", "hour", "hours", "stunden"),
    DAY(Scale.TIME, 86400, "d", "day", "days", "tage"),
    METRE(Scale.LENGTH, 1, "m", "meter", "metre", "meters", "metres", "mtr"),
    KILOMETRE(Scale.LENGTH, 1e3, "km", "kilometer", "kilometre", "kilometers", "kilometres"),
    CENTIMETRE(Scale.LENGTH, 1e-2, "cm", "centimeter", "centimetre"),
    MILLIMETRE(Scale.LENGTH, 1e-3, "mm", "millimeter", "millimetre"),
    INCH(Scale.LENGTH, 0.0254, "in", "inch", "inches", "\""),
    FOOT(Scale.LENGTH, 0.3048, "ft", "foot", "feet"),
    YARD(Scale.LENGTH, 0.9144, "yd", "yard", "yards"),
    MILE(Scale.LENGTH, 1609.344, "mi", "mile", "miles"),
    METRE_PER_SECOND(Scale.SPEED, 1, "m/s", "mps", "m/sec", "m s-1", "meterpersecond", "metres per second"),
    KILOMETRE_PER_HOUR(Scale.SPEED, 1 / 3.6, "km/h", "kph", "kmph", "km/hr", "km h-1"),
    MILE_PER_HOUR(Scale.SPEED, 0.44704, "mph", "mi/h", "mi/hr", "miles/h"),
    FOOT_PER_SECOND(Scale.SPEED, 0.3048, "ft/s", "fps"),
    KNOT(Scale.SPEED, 1852.0 / 3600, "kn", "kt", "kts", "knot", "knots"),
    RADIAN(Scale.ANGLE, 1, "rad", "radian", "radians", "radiant"),
    DEGREE(Scale.ANGLE, Math.PI / 180, "deg", "°", "degree", "degrees", "grad", "º"),
    REVOLUTION(Scale.ANGLE, 2 * Math.PI, "rev", "turns", "umdrehungen"),
    METRE_PER_SECOND_SQUARED(Scale.ACCELERATION, 1, "m/s²", "m/s2", "m/s^2", "m/s/s", "mps2", "m s-2", "m/sec2",
            "m/sec^2"),
    GRAVITY(Scale.ACCELERATION, 9.80665, "g", "gs", "g's", "gee", "gn", "g0"),
    MILLIGRAVITY(Scale.ACCELERATION, 9.80665e-3, "mg"),
    FOOT_PER_SECOND_SQUARED(Scale.ACCELERATION, 0.3048, "ft/s²", "ft/s2", "ft/s^2"),
    RADIAN_PER_SECOND(Scale.ANGULAR_RATE, 1, "rad/s", "rad/sec", "rads-1", "radians/s"),
    DEGREE_PER_SECOND(Scale.ANGULAR_RATE, Math.PI / 180, "deg/s", "°/s", "dps", "deg/sec", "grad/s", "degs-1",
            "degrees/s", "degrees/second", "º/s"),
    REVOLUTION_PER_MINUTE(Scale.ANGULAR_RATE, Math.PI / 30, "rpm", "1/min", "u/min", "rev/min", "min-1"),
    REVOLUTION_PER_SECOND(Scale.ANGULAR_RATE, 2 * Math.PI, "rev/s", "rps", "hz", "1/s"),
    PERCENT(Scale.RATIO, 1e-2, "%", "percent", "pct", "prozent", "perc", "pc"),
    ONE(Scale.RATIO, 1, "", "1", "-", "ratio", "none", "norm", "normalized", "normalised", "no", "#", "n/a", "lap",
            "bool", "unit"),
    BAR(Scale.PRESSURE, 1e5, "bar", "barg", "bar(g)"),
    MILLIBAR(Scale.PRESSURE, 100, "mbar", "hpa"),
    KILOPASCAL(Scale.PRESSURE, 1e3, "kPa", "kpag"),
    MEGAPASCAL(Scale.PRESSURE, 1e6, "MPa"),
    PASCAL(Scale.PRESSURE, 1, "Pa"),
    PSI(Scale.PRESSURE, 0.45359237 * 9.80665 / (0.0254 * 0.0254), "psi", "psig", "lb/in2"),
    CELSIUS(Scale.TEMPERATURE, 1, "°C", "c", "degc", "celsius", "grad c", "deg. c", "ºc"),
    FAHRENHEIT(Scale.TEMPERATURE, 5.0 / 9, "°F", "f", "degf", "fahrenheit", "ºf"),
    KELVIN(Scale.TEMPERATURE, 1, "K", "kelvin", "degk"),
    NEWTON(Scale.FORCE, 1, "N", "newton"),
    KILONEWTON(Scale.FORCE, 1e3, "kN");

    private final Scale scale;
    private final double factor;
    private final List<String> symbols;
    private final List<String> plain;

    LoggedUnit(Scale scale, double factor, String... symbols) {
        this.scale = scale;
        this.factor = factor;
        this.symbols = List.of(symbols);
        this.plain = Arrays.stream(symbols).map(LoggedUnit::plain).toList();
    }

    /** What it measures. */
    public Scale scale() {
        return scale;
    }

    /** The symbol that is shown. */
    public String symbol() {
        return symbols.get(0);
    }

    /** One of this unit in SI. */
    public double factor() {
        return factor;
    }

    /** What is added to a value before it is scaled. */
    public double offset() {
        return this == FAHRENHEIT ? -32 : this == KELVIN ? -273.15 : 0;
    }

    /** A value in SI; temperatures in degrees Celsius. */
    public double toSi(double value) {
        return (value + offset()) * factor;
    }

    /** The unit of one of {@code scales} that is written {@code text}: case, spaces and strokes do not count. */
    public static Optional<LoggedUnit> find(String text, Collection<Scale> scales) {
        String wanted = plain(text);
        for (LoggedUnit unit : values()) {
            if (scales.contains(unit.scale) && unit.plain.contains(wanted)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** Every unit of one of {@code scales}, as it is shown. */
    public static List<String> symbols(Collection<Scale> scales) {
        return Arrays.stream(values()).filter(unit -> scales.contains(unit.scale) && !unit.symbol().isEmpty())
                .map(LoggedUnit::symbol).toList();
    }

    private static String plain(String text) {
        StringBuilder plain = new StringBuilder();
        for (char letter : text.toLowerCase(Locale.ROOT).toCharArray()) {
            switch (letter) {
                case ' ', '/', '^', '.', '·', '*', '_', '(', ')', '[', ']', '{', '}' -> { }
                case '²' -> plain.append('2');
                case '°', 'º' -> plain.append("deg");
                case 'µ', 'μ' -> plain.append('u');
                default -> plain.append(letter);
            }
        }
        return plain.toString();
    }

    /** The one of {@code units} whose factor is nearest to {@code factor}, in proportion. */
    static Optional<LoggedUnit> nearest(List<LoggedUnit> units, double factor) {
        return units.stream().min((one, other) -> Double.compare(Math.abs(Math.log(one.factor() / factor)),
                Math.abs(Math.log(other.factor() / factor))));
    }
}
