package camberwell.units;

import java.util.List;

/**
 * What is plausible of a quantity, from {@code least} to {@code most} in the first of {@code units}. The ranges are
 * wide, there to catch a slipped decimal point or a wrong unit.
 *
 * @param units those that it may be written in
 * @param least least plausible value, in the first unit
 * @param most greatest plausible value, in the first unit
 */
public record Range(List<Unit> units, double least, double most) {

    /** In {@code unit}, and in the other units of its dimension. */
    public static Range in(Unit unit, double least, double most) {
        return new Range(unit.alike(), least, most);
    }

    /** Whether a quantity in one of the units lies within, its ends included. */
    public boolean holds(Quantity quantity) {
        double value = quantity.in(units.get(0));
        double hair = 1e-9 * Math.max(1, Math.abs(value));
        return value >= least - hair && value <= most + hair;
    }

    /** Both ends: {@code 0.3 bar and 6 bar}. */
    @Override
    public String toString() {
        return new Quantity(least, units.get(0)) + " and " + new Quantity(most, units.get(0));
    }
}
