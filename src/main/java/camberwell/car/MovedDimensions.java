package camberwell.car;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import java.util.EnumMap;
import java.util.Map;

/**
 * The dimensions that follow an adjuster: a bar and a wing by what one of their steps adds, the wheel rate with the
 * spring (the motion ratio stays as it is), the differential's lock with its ramps and its preload. What the car's file
 * does not give cannot follow.
 */
final class MovedDimensions {

    private static final double DIGITS = 1e4;

    private final EnumMap<Dimension, Quantity> dimensions = new EnumMap<>(Dimension.class);

    private MovedDimensions(Map<Dimension, Quantity> dimensions) {
        this.dimensions.putAll(dimensions);
    }

    /** {@code dimensions} after the adjusters have gone from {@code before} to {@code after}. */
    static Map<Dimension, Quantity> of(Map<Dimension, Quantity> dimensions, Map<Adjuster, Setting> before,
            Map<Adjuster, Setting> after) {
        MovedDimensions moved = new MovedDimensions(dimensions);
        after.forEach((adjuster, setting) -> moved.move(adjuster, before.get(adjuster), setting));
        return moved.dimensions;
    }

    private void move(Adjuster adjuster, Setting from, Setting to) {
        double steps = from.stepsUp(to.now());
        if (steps == 0) {
            return;
        }
        switch (adjuster) {
            case FRONT_ANTI_ROLL_BAR -> add(Dimension.FRONT_BAR, Dimension.FRONT_BAR_STEP, steps);
            case REAR_ANTI_ROLL_BAR -> add(Dimension.REAR_BAR, Dimension.REAR_BAR_STEP, steps);
            case FRONT_SPRINGS -> scale(Dimension.FRONT_WHEEL_RATE, from, to);
            case REAR_SPRINGS -> scale(Dimension.REAR_WHEEL_RATE, from, to);
            case FRONT_WING -> add(Dimension.FRONT_DOWNFORCE, Dimension.FRONT_WING_STEP, steps);
            case REAR_WING -> add(Dimension.REAR_DOWNFORCE, Dimension.REAR_WING_STEP, steps);
            case DIFFERENTIAL_POWER -> add(Dimension.DIFFERENTIAL_LOCK, Dimension.DIFFERENTIAL_STEP, steps);
            case DIFFERENTIAL_PRELOAD -> {
                if (to.now().unit().dimension() == Unit.Dimension.TORQUE) {
                    add(Dimension.DIFFERENTIAL_LOCK, to.now().si() - from.now().si());
                } else {
                    add(Dimension.DIFFERENTIAL_LOCK, Dimension.DIFFERENTIAL_STEP, steps);
                }
            }
            default -> { }
        }
    }

    private void add(Dimension dimension, Dimension ofOneStep, double steps) {
        if (dimensions.containsKey(ofOneStep)) {
            add(dimension, steps * dimensions.get(ofOneStep).si());
        }
    }

    private void add(Dimension dimension, double si) {
        Quantity now = dimensions.get(dimension);
        if (now != null) {
            put(dimension, Quantity.ofSi(now.si() + si, now.unit()));
        }
    }

    private void scale(Dimension wheelRate, Setting from, Setting to) {
        Quantity now = dimensions.get(wheelRate);
        if (now != null && to.now().unit().dimension() == Unit.Dimension.STIFFNESS && from.now().value() > 0) {
            put(wheelRate, now.withValue(now.value() * to.now().value() / from.now().value()));
        }
    }

    /** As far as it is plausible, and with no more digits than a file can have. */
    private void put(Dimension dimension, Quantity moved) {
        Unit unit = moved.unit();
        double least = unit.fromSi(dimension.unit().toSi(dimension.least()));
        double most = unit.fromSi(dimension.unit().toSi(dimension.most()));
        double within = Math.max(least, Math.min(most, moved.value()));
        dimensions.put(dimension, moved.withValue(Math.rint(within * DIGITS) / DIGITS));
    }
}
