package camberwell.car;

import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CarKind;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Wheel;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * A car as it stands for one run.
 *
 * @param name what people call it
 * @param drive the driven wheels; unknown only of a class of car that nobody could name
 * @param adjusters what can be changed on it, and nothing else
 * @param tyres what the maker says of the tyres, per axle
 * @param dimensions as far as they are given, at the present settings; empty when the file gives none
 * @param generic whether this is a class of car rather than one car: advice then has directions and common steps only
 * @param simulated whether it exists in a simulator only, where there are no wheel nuts and no jacks; empty where
 *         nobody said
 * @param biasOf what its brake bias counts
 * @param kind what sort of car it is, where somebody said
 * @param aids those that its file names; of others nobody knows
 */
public record Car(String name, Optional<Drive> drive, Map<Adjuster, Setting> adjusters, Map<Axle, TyreSpec> tyres,
        Map<Dimension, Quantity> dimensions, boolean generic, Optional<Boolean> simulated, BiasOf biasOf,
        Optional<CarKind> kind, Set<Aid> aids) {

    /** One of which nobody said whether it can be touched, with its brake bias as a share of the braking force. */
    public Car(String name, Optional<Drive> drive, Map<Adjuster, Setting> adjusters, Map<Axle, TyreSpec> tyres,
            Map<Dimension, Quantity> dimensions, boolean generic) {
        this(name, drive, adjusters, tyres, dimensions, generic, Optional.empty(), BiasOf.FORCE, Optional.empty(),
                Set.of());
    }

    /** Copies the maps in the order of the vocabulary. */
    public Car {
        if (drive.isEmpty() && !generic) {
            throw new IllegalArgumentException("the driven wheels of " + name + " are not given");
        }
        adjusters = ordered(Adjuster.class, adjusters);
        tyres = ordered(Axle.class, tyres);
        dimensions = ordered(Dimension.class, dimensions);
        aids = Set.copyOf(aids);
    }

    private static <K extends Enum<K>, V> Map<K, V> ordered(Class<K> type, Map<K, V> map) {
        EnumMap<K, V> copy = new EnumMap<>(type);
        copy.putAll(map);
        return Collections.unmodifiableMap(copy);
    }

    /** Which wheels are driven, in words: {@code rear-wheel drive}. */
    public String driven() {
        return drive.map(wheels -> wheels.id() + "-wheel drive").orElse("driven wheels unknown");
    }

    /** That it cannot be adjusted there, as a reason; of a class of car that is no more than likely. */
    public String lacking(Adjuster adjuster) {
        return (generic ? "such a car often has no adjustable " : "the car has no adjustable ") + adjuster.spoken();
    }

    /** Where that adjuster stands, if the car has it; of an axle whose camber is set wheel by wheel, both wheels together. */
    public Optional<Setting> setting(Adjuster adjuster) {
        Setting own = adjusters.get(adjuster);
        return own != null ? Optional.of(own) : BothWheels.of(adjuster, adjusters).map(BothWheels::mean);
    }

    /** Whether it can be adjusted there; a wheel's own pressure is set on every car whose axle's is. */
    public boolean has(Adjuster adjuster) {
        return setting(adjuster).isPresent() || adjuster.kind() == Adjuster.Kind.PRESSURE
                && adjuster.wheel().flatMap(this::pressureSetting).isPresent();
    }

    /** Whether a wheel of that axle has its camber set by itself. */
    public boolean camberByWheel(Axle axle) {
        return axle == Axle.FRONT
                ? adjusters.containsKey(Adjuster.FRONT_LEFT_CAMBER) || adjusters.containsKey(Adjuster.FRONT_RIGHT_CAMBER)
                : adjusters.containsKey(Adjuster.REAR_LEFT_CAMBER) || adjusters.containsKey(Adjuster.REAR_RIGHT_CAMBER);
    }

    /** {@code setup} adjuster by adjuster as the car lists them: the camber of both wheels of an axle said of each of them. */
    public Map<Adjuster, Quantity> asListed(Map<Adjuster, Quantity> setup) {
        return BothWheels.apart(setup, adjusters);
    }

    /** The setting that sets a wheel's cold pressure: the wheel's own, or else its axle's. */
    public Optional<Setting> pressureSetting(Wheel wheel) {
        return setting(Adjuster.pressureOf(wheel)).or(() -> setting(Adjuster.pressureOf(wheel.axle())));
    }

    /** The tyres of an axle; unknown when the file says nothing of them. */
    public TyreSpec tyres(Axle axle) {
        return tyres.getOrDefault(axle, TyreSpec.UNKNOWN);
    }

    /** A dimension, if it is given. */
    public Optional<Quantity> dimension(Dimension dimension) {
        return Optional.ofNullable(dimensions.get(dimension));
    }

    /**
     * The same car with some adjusters set otherwise; adjusters that it lacks are left out. The dimensions follow: they
     * are those of the settings as they stand.
     */
    public Car with(Map<Adjuster, Quantity> changes) {
        Map<Adjuster, Quantity> setup = asListed(changes);
        Map<Adjuster, Setting> changed = new EnumMap<>(Adjuster.class);
        adjusters.forEach((adjuster, setting) -> changed.put(adjuster,
                setup.containsKey(adjuster) ? setting.withNow(setup.get(adjuster)) : setting));
        return new Car(name, drive, changed, tyres, MovedDimensions.of(dimensions, adjusters, changed), generic, simulated,
                biasOf, kind, aids);
    }

    /** The same car with that adjuster standing so, whether it had it before or not. */
    public Car withSetting(Adjuster adjuster, Setting setting) {
        Map<Adjuster, Setting> changed = new EnumMap<>(Adjuster.class);
        changed.putAll(adjusters);
        changed.put(adjuster, setting);
        return new Car(name, drive, changed, tyres, dimensions, generic, simulated, biasOf, kind, aids);
    }

    /** The same car with other dimensions. */
    public Car withDimensions(Map<Dimension, Quantity> others) {
        return new Car(name, drive, adjusters, tyres, others, generic, simulated, biasOf, kind, aids);
    }

    /** The same car, in a simulator or on a road. */
    public Car withSimulator(boolean simulator) {
        return new Car(name, drive, adjusters, tyres, dimensions, generic, Optional.of(simulator), biasOf, kind, aids);
    }

    /** The same car, known to be of that kind. */
    public Car withKind(CarKind other) {
        return new Car(name, drive, adjusters, tyres, dimensions, generic, simulated, biasOf, Optional.of(other),
                aids);
    }

    /** The same car with those aids. */
    public Car withAids(Set<Aid> others) {
        return new Car(name, drive, adjusters, tyres, dimensions, generic, simulated, biasOf, kind, others);
    }

    /** Whether it carries wings: one can be set, or the file gives downforce. */
    public boolean winged() {
        return setting(Adjuster.FRONT_WING).isPresent() || setting(Adjuster.REAR_WING).isPresent()
                || dimension(Dimension.FRONT_DOWNFORCE).filter(force -> force.value() > 0).isPresent()
                || dimension(Dimension.REAR_DOWNFORCE).filter(force -> force.value() > 0).isPresent();
    }

    /** Whether the camber of a wheel is set more than a step otherwise than that of the wheel across from it. */
    public boolean sidesUnlike() {
        return Arrays.stream(Wheel.values()).anyMatch(wheel -> {
            Setting own = adjusters.get(Adjuster.camberOf(wheel));
            Setting other = adjusters.get(Adjuster.camberOf(wheel.partner()));
            return own != null && other != null && own.now().unit() == other.now().unit()
                    && Math.abs(own.now().value() - other.now().value()) > own.step().value() * 1.001;
        });
    }

    /** Whether it is known to exist in a simulator only. */
    public boolean simulator() {
        return simulated.orElse(false);
    }
}
