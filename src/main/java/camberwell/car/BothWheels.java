package camberwell.car;

import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** The camber of an axle whose two wheels are set one by one: both move together, and stand apart as they stood. */
final class BothWheels {

    private final Setting left;
    private final Setting right;

    private BothWheels(Setting left, Setting right) {
        this.left = left;
        this.right = right;
    }

    /** Those of {@code adjuster}, where that is an axle's camber and both its wheels are set in one unit. */
    static Optional<BothWheels> of(Adjuster adjuster, Map<Adjuster, Setting> adjusters) {
        if (adjuster.adjustment() != Adjustment.CAMBER || adjuster.wheel().isPresent()) {
            return Optional.empty();
        }
        boolean front = adjuster.axle().orElseThrow() == Axle.FRONT;
        Setting left = adjusters.get(Adjuster.camberOf(front ? Wheel.FRONT_LEFT : Wheel.REAR_LEFT));
        Setting right = adjusters.get(Adjuster.camberOf(front ? Wheel.FRONT_RIGHT : Wheel.REAR_RIGHT));
        return left == null || right == null || left.now().unit() != right.now().unit()
                || left.largerIsSofter() != right.largerIsSofter() ? Optional.empty() : Optional.of(new BothWheels(left, right));
    }

    /** The mean of the two, as far as both of them go. */
    Setting mean() {
        double now = Math.rint((left.now().value() + right.now().value()) * 5e5) / 1e6;
        double down = Math.min(left.now().value() - left.min().value(), right.now().value() - right.min().value());
        double up = Math.min(left.max().value() - left.now().value(), right.max().value() - right.now().value());
        Quantity is = left.now().withValue(now);
        return new Setting(is, is.withValue(now - down), is.withValue(now + up),
                is.withValue(Math.max(left.step().value(), right.step().value())), left.largerIsSofter());
    }

    /** {@code setup} with what it says of both wheels of an axle said of each of them. */
    static Map<Adjuster, Quantity> apart(Map<Adjuster, Quantity> setup, Map<Adjuster, Setting> adjusters) {
        Map<Adjuster, Quantity> apart = new EnumMap<>(Adjuster.class);
        apart.putAll(setup);
        for (Axle axle : Axle.values()) {
            Adjuster both = Adjuster.camberOf(axle);
            Optional<BothWheels> wheels = setup.containsKey(both) && !adjusters.containsKey(both) ? of(both, adjusters)
                    : Optional.empty();
            if (wheels.isPresent()) {
                double by = apart.remove(both).in(wheels.get().left.now().unit()) - wheels.get().mean().now().value();
                for (Wheel wheel : Wheel.values()) {
                    if (wheel.axle() == axle) {
                        Quantity now = adjusters.get(Adjuster.camberOf(wheel)).now();
                        apart.put(Adjuster.camberOf(wheel), now.withValue(Math.rint((now.value() + by) * 1e6) / 1e6));
                    }
                }
            }
        }
        return apart;
    }
}
