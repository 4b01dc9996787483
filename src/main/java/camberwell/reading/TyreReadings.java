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

    /** Inner less outer that a healthy loaded tyre shows, K: the straights heat the inner edge. */
    private static final double HEALTHY_KELVIN = 5;

    /** The figures of an axle's wheels that were measured. */
    public List<WheelFigures> wheels(Axle axle) {
        return wheels.values().stream().filter(figures -> figures.wheel().axle() == axle).toList();
    }

    /** Inner less outer edge of an axle's tyres that camber is judged by, K, their mean; empty when none was read. */
    public OptionalDouble innerMinusOuter(Axle axle) {
        return judged(wheels(axle).stream().filter(WheelFigures::loaded).toList()).stream()
                .mapToDouble(TreadRead::innerMinusOuter).average();
    }

    /**
     * The tread that camber is judged by: that of all loaded tyres of an axle; where two of them ask for opposite things,
     * that of the hotter one, which does more of the work.
     */
    static List<TreadRead> judged(List<WheelFigures> loaded) {
        List<TreadRead> read = loaded.stream().flatMap(wheel -> wheel.tread().stream()).toList();
        if (read.size() < 2) {
            return read;
        }
        TreadRead one = read.get(0);
        TreadRead other = read.get(1);
        boolean opposed = one.outerHotClearness() > 0 && other.innerMinusOuter() > HEALTHY_KELVIN
                || other.outerHotClearness() > 0 && one.innerMinusOuter() > HEALTHY_KELVIN;
        return !opposed || one.mean() == other.mean() ? read : List.of(one.mean() > other.mean() ? one : other);
    }

    /** The reading of that state at that place, if it shows. */
    public Optional<Reading> find(String place, Reading.State state) {
        return readings.stream().filter(reading -> reading.of(place) && reading.state() == state).findFirst();
    }

    /** What was read about that subject on that axle or one of its wheels, clearest first: the first one decides. */
    public List<Reading> about(Axle axle, Subject subject) {
        return readings.stream().filter(reading -> reading.place().axle() == axle
                && Subject.of(reading.state()) == subject)
                .sorted(Comparator.comparingDouble(Reading::certainty).reversed()).toList();
    }
}
