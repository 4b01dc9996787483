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
 * @param readings what follows from them, each as certain as it is clear
 * @param doubts where the figures contradict each other, or say less than they seem to
 */
public record TyreReadings(Map<Wheel, WheelFigures> wheels, LoadedSide side, List<Reading> readings,
        List<String> doubts) {

    /** The figures of an axle's wheels that were measured. */
    public List<WheelFigures> wheels(Axle axle) {
        return wheels.values().stream().filter(figures -> figures.wheel().axle() == axle).toList();
    }

    /** The tread of an axle's loaded tyres, as far as it was read. */
    public List<TreadRead> loadedTread(Axle axle) {
        return wheels(axle).stream().filter(WheelFigures::loaded).flatMap(wheel -> wheel.tread().stream()).toList();
    }

    /** Inner less outer edge of an axle's loaded tyres, K, their mean; empty when none was read. */
    public OptionalDouble innerMinusOuter(Axle axle) {
        return loadedTread(axle).stream().mapToDouble(TreadRead::innerMinusOuter).average();
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
