package camberwell.run;

import camberwell.units.Quantity;
import java.util.Optional;

/**
 * What was measured on one tyre straight after the run. Pressures are gauge pressures.
 *
 * @param inner tread temperature near the edge that faces the car
 * @param middle tread temperature in the middle
 * @param outer tread temperature near the edge that faces away
 * @param coldPressure as set before the run
 * @param hotPressure as read after it
 */
public record TyreReading(Optional<Quantity> inner, Optional<Quantity> middle, Optional<Quantity> outer,
        Optional<Quantity> coldPressure, Optional<Quantity> hotPressure) {

    /** Whether all three tread temperatures were read. */
    public boolean hasTread() {
        return inner.isPresent() && middle.isPresent() && outer.isPresent();
    }

    /** The same with what was read besides, or read anew. */
    public TyreReading with(TyreReading later) {
        return new TyreReading(later.inner.or(() -> inner), later.middle.or(() -> middle), later.outer.or(() -> outer),
                later.coldPressure.or(() -> coldPressure), later.hotPressure.or(() -> hotPressure));
    }
}
