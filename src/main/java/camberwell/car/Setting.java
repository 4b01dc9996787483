package camberwell.car;

import camberwell.units.Quantity;
import camberwell.vocabulary.Direction;

/**
 * Where an adjuster stands and how far it goes. All four quantities are in the car's own unit.
 *
 * @param now the present setting
 * @param min the smallest number it can be set to
 * @param max the largest number it can be set to
 * @param step the smallest change, positive
 * @param largerIsSofter for dampers and bars that count from full stiff: the larger number is the softer setting
 */
public record Setting(Quantity now, Quantity min, Quantity max, Quantity step, boolean largerIsSofter) {

    private static final double HAIR = 1e-9;

    /** @throws IllegalArgumentException if the units differ, the range is empty or the step is not positive */
    public Setting {
        if (min.unit() != now.unit() || max.unit() != now.unit() || step.unit() != now.unit()) {
            throw new IllegalArgumentException("now, min, max and step must be in one unit");
        }
        if (min.value() > max.value()) {
            throw new IllegalArgumentException("min " + min + " is above max " + max);
        }
        if (step.value() <= 0) {
            throw new IllegalArgumentException("step must be positive, not " + step);
        }
    }

    /**
     * The same adjuster at another setting. One that is written in another unit than the car's is rounded to a tenth of
     * a step: 25 psi on a car that is set in steps of 0.05 bar stands at 1.725 bar, not at 1.7236893 bar.
     *
     * @throws IllegalArgumentException if the unit is of another dimension
     */
    public Setting withNow(Quantity other) {
        double tenth = step.value() / 10;
        Quantity set = other.unit() == now.unit() ? other
                : now.withValue(clean(Math.rint(other.in(now.unit()) / tenth) * tenth));
        return new Setting(set, min, max, step, largerIsSofter);
    }

    /** Without the dust of binary fractions. */
    private static double clean(double value) {
        return Math.rint(value * 1e6) / 1e6;
    }

    /** +1 if the number grows when it is moved that way, else -1. */
    public int sign(Direction direction) {
        return direction.raises() != largerIsSofter ? 1 : -1;
    }

    /** How many whole steps are left that way; none when it stands at or beyond its stop. */
    public int stepsLeft(Direction direction) {
        double room = sign(direction) > 0 ? max.value() - now.value() : now.value() - min.value();
        return (int) Math.max(0, Math.floor(room / step.value() + HAIR));
    }

    /** The setting after {@code steps} steps that way, cut off at the stop. */
    public Quantity moved(Direction direction, int steps) {
        double moved = now.value() + sign(direction) * Math.min(steps, stepsLeft(direction)) * step.value();
        return now.withValue(clean(moved));
    }

    /** How many steps bring the setting nearest to {@code target}; negative when that is to smaller numbers. */
    public int stepsTo(Quantity target) {
        return (int) Math.round((target.in(now.unit()) - now.value()) / step.value());
    }

    /** How many steps stiffer, higher, more forward {@code target} is than the present setting; may be a fraction. */
    public double stepsUp(Quantity target) {
        return (largerIsSofter ? -1 : 1) * (target.in(now.unit()) - now.value()) / step.value();
    }

    /** Digits after the point that show a step and the present setting. */
    public int decimals() {
        return Math.max(Quantity.decimalsOf(step.value()), Quantity.decimalsOf(now.value()));
    }
}
