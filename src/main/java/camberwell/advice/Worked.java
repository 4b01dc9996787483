package camberwell.advice;

import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;

/**
 * One figure and how it was computed.
 *
 * @param id for programs: {@code cold-setting}
 * @param name for people: {@code Cold setting}
 * @param value the figure, in {@code unit}
 * @param unit its symbol
 * @param decimals digits after the point that mean something
 * @param computation the line that computed it, with units
 */
public record Worked(String id, String name, double value, String unit, int decimals, String computation) {

    static Worked of(String id, String name, Quantity value, int decimals, String computation) {
        return new Worked(id, name, value.value(), value.unit().symbol(), decimals, computation);
    }

    static Worked degrees(String id, String name, double degrees, String computation) {
        return new Worked(id, name, degrees, Unit.DEGREE.symbol(), 2, computation);
    }

    /** The figure with its unit: {@code 1.57 bar}. */
    public String text() {
        return number(value, decimals) + " " + unit;
    }

    /** The number alone, with {@code decimals} digits, and never a negative zero. */
    static String number(double value, int decimals) {
        return Figures.fixed(value, decimals);
    }
}
