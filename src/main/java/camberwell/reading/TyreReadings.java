package camberwell.reading;

import camberwell.fact.Reading;
import camberwell.physics.TreadRead;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * All that the tyres show.
 *
 * @param wheels the figures of every wheel that was measured
 * @param side the turns that load the tyres which camber is judged on
 * @param hotCorner the one tyre that something else than its work heats, where there is one
 * @param readings what follows from them, each as certain as it is clear
 * @param doubts where the figures contradict each other, or say less than they seem to
 */
public record TyreReadings(Map<Wheel, WheelFigures> wheels, LoadedSide side, Optional<HotCorner> hotCorner,
        List<Reading> readings, List<String> doubts) {

    /** From so many kelvin on the hotter one of two tyres does all of the work that tells: common practice, no source. */
    private static final double HOTTER_KELVIN = 5;

    /** The figures of an axle's wheels that were measured. */
    public List<WheelFigures> wheels(Axle axle) {
        return wheels.values().stream().filter(figures -> figures.wheel().axle() == axle).toList();
    }

    /** The one tyre whose pressures are held until it has been read again, as something else than its work heats it. */
    public Optional<HotCorner> held() {
        return hotCorner.filter(HotCorner::plain);
    }

    /** Inner less outer edge of an axle's tyres that camber is judged by, K; empty when none was read. */
    public OptionalDouble innerMinusOuter(Axle axle) {
        return innerMinusOuter(wheels(axle).stream().filter(WheelFigures::loaded)
                .flatMap(wheel -> wheel.tread().stream()).toList());
    }

    /** Inner less outer edge of one tyre, K; empty when it was not read. */
    public OptionalDouble innerMinusOuter(Wheel wheel) {
        return wheels.containsKey(wheel) && wheels.get(wheel).tread().isPresent()
                ? OptionalDouble.of(wheels.get(wheel).tread().get().innerMinusOuter()) : OptionalDouble.empty();
    }

    /** Of two loaded tyres the hotter one counts for more, since it does more of the work; all of it from a few kelvin on. */
    static OptionalDouble innerMinusOuter(List<TreadRead> loaded) {
        if (loaded.size() < 2) {
            return loaded.stream().mapToDouble(TreadRead::innerMinusOuter).findFirst();
        }
        TreadRead one = loaded.get(0);
        TreadRead other = loaded.get(1);
        double part = Math.max(0, Math.min(1, 0.5 + (one.mean() - other.mean()) / (2 * HOTTER_KELVIN)));
        return OptionalDouble.of(part * one.innerMinusOuter() + (1 - part) * other.innerMinusOuter());
    }

    /** The reading of that state at that place, if it shows. */
    public Optional<Reading> find(String place, Reading.State state) {
        return readings.stream().filter(reading -> reading.place().is(place) && reading.state() == state).findFirst();
    }

    /** What was read about that subject on that axle or one of its wheels, clearest first: the first one decides. */
    public List<Reading> about(Axle axle, Subject subject) {
        return readings.stream().filter(reading -> reading.place().axle() == axle
                && Subject.of(reading.state()) == subject)
                .sorted(Comparator.comparingDouble(Reading::certainty).reversed()).toList();
    }
}
