package camberwell.units;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number and its unit. Equality is of number and unit as written; {@link #compareTo} compares what is meant.
 *
 * @param value a finite number, in {@code unit}
 */
public record Quantity(double value, Unit unit) implements Comparable<Quantity> {

    private static final Pattern WRITTEN =
            Pattern.compile("([-+\u2212]?[0-9]+(?:\\.[0-9]+)?|[-+\u2212]?\\.[0-9]+)\\s*(\\S*)");

    /** @throws IllegalArgumentException if {@code value} is not finite */
    public Quantity {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("not a finite number: " + value);
        }
        value = value == 0 ? 0 : value;
    }

    /** A quantity given in the SI unit of {@code unit}'s dimension. */
    public static Quantity ofSi(double si, Unit unit) {
        return new Quantity(unit.fromSi(si), unit);
    }

    /** Reads {@code 1.90 bar}, {@code -2.5 deg} or {@code 4}; empty when it is no number with a known unit. */
    public static Optional<Quantity> parse(String text) {
        Matcher matcher = WRITTEN.matcher(text.trim());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1).replace('\u2212', '-'));
        return Double.isInfinite(value) ? Optional.empty()
                : Unit.withSymbol(matcher.group(2)).map(unit -> new Quantity(value, unit));
    }

    /** The value in the SI unit of its dimension. */
    public double si() {
        return unit.toSi(value);
    }

    /**
     * The value in another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public double in(Unit other) {
        return other == unit ? value : to(other).value;
    }

    /**
     * The same quantity written in another unit of the same dimension.
     *
     * @throws IllegalArgumentException if the dimensions differ
     */
    public Quantity to(Unit other) {
        if (other.dimension() != unit.dimension()) {
            throw new IllegalArgumentException(unit.dimension().named() + " is not " + other.dimension().named());
        }
        return other == unit ? this : ofSi(si(), other);
    }

    /** The same unit with another value. */
    public Quantity withValue(double other) {
        return new Quantity(other, unit);
    }

    @Override
    public int hashCode() {
        return 31 * Double.hashCode(value) + unit.ordinal();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Quantity quantity && value == quantity.value && unit == quantity.unit;
    }

    /** Compares what is meant; dimensions must agree. */
    @Override
    public int compareTo(Quantity other) {
        return Double.compare(value, other.in(unit));
    }

    /** Written with {@code decimals} digits after the point: {@code 1.90 bar}. */
    public String text(int decimals) {
        String number = Figures.fixed(value, decimals);
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** Digits after the point that {@code number} needs, at most four. */
    public static int decimalsOf(double number) {
        int scale = BigDecimal.valueOf(number).setScale(4, RoundingMode.HALF_UP).stripTrailingZeros().scale();
        return Math.max(0, scale);
    }

    /** Written with as many digits as it has. */
    @Override
    public String toString() {
        return text(decimalsOf(value));
    }
}
