package camberwell.reading;

import camberwell.car.TyreSpec;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.Optional;

/**
 * The hot pressure that a tyre is held against: its own where the car's file gives one, else its axle's. A car whose turns go
 * one way may have its wheels filled unlike on purpose. The one target of such an axle is that of the tyre that carries the load;
 * the other may keep the difference that was set or lose it as it warms, and is held to neither. Common practice, no source.
 */
final class HotTarget {

    /** Settings nearer than this are one, Pa. */
    private static final double ALIKE = 500;

    private final Case run;
    private final LoadedSide side;

    HotTarget(Case run, LoadedSide side) {
        this.run = run;
        this.side = side;
    }

    /**
     * That of one wheel.
     *
     * @param warm what its gauge reads, warmed to the window; between the two pressures that are as good it is itself the target
     */
    Optional<Quantity> of(Wheel wheel, Optional<Quantity> warm) {
        TyreSpec spec = run.car().tyres(wheel.axle());
        Optional<Quantity> target = run.hotTarget(wheel);
        Optional<Quantity> kept = spec.ownTarget(wheel).isPresent() || side.loads(wheel) ? Optional.empty()
                : target.flatMap(axle -> kept(wheel, axle));
        if (kept.isEmpty() || warm.isEmpty()) {
            return target;
        }
        Quantity least = kept.get().compareTo(target.get()) < 0 ? kept.get() : target.get();
        Quantity most = kept.get().compareTo(target.get()) < 0 ? target.get() : kept.get();
        return Optional.of(warm.get().compareTo(least) < 0 ? least : warm.get().compareTo(most) > 0 ? most : warm.get());
    }

    /**
     * What this wheel's setting grows to while that of its partner grows to {@code target}: both by the same share of their
     * absolute pressure, which is the gas law at one temperature.
     */
    private Optional<Quantity> kept(Wheel wheel, Quantity target) {
        double ambient = TyreReader.ambient(run);
        return TyreReader.set(run, wheel).flatMap(own -> TyreReader.set(run, wheel.partner())
                .filter(other -> Math.abs(own.si() - other.si()) > ALIKE).map(other -> Quantity.ofSi(
                        (own.si() + ambient) * (target.si() + ambient) / (other.si() + ambient) - ambient, target.unit())));
    }
}
