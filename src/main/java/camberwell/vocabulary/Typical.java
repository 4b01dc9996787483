package camberwell.vocabulary;

import camberwell.units.Quantity;
import camberwell.units.Unit;

/**
 * How an adjuster stands on a made-up car, in {@code unit}, with room both ways: common practice, no source.
 *
 * @param now where it stands
 * @param min lowest setting
 * @param max highest setting
 * @param step smallest move
 */
public record Typical(Quantity now, Quantity min, Quantity max, Quantity step) {

    static Typical of(double now, double min, double max, double step, Unit unit) {
        return new Typical(new Quantity(now, unit), new Quantity(min, unit), new Quantity(max, unit),
                new Quantity(step, unit));
    }
}
