package camberwell.reading;

import camberwell.fact.Reading;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Wheel;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * All that the tyres show.
 *
 * @param wheels the figures of every wheel that was measured
 * @param readings what follows from them, each as certain as it is clear
 */
public record TyreReadings(Map<Wheel, WheelFigures> wheels, List<Reading> readings) {

    /** The figures of an axle's wheels that were measured. */
    public List<WheelFigures> wheels(Axle axle) {
        return wheels.values().stream().filter(figures -> figures.wheel().axle() == axle).toList();
    }

    /** The reading of that state at that place, if it shows. */
    public Optional<Reading> find(String place, Reading.State state) {
        return readings.stream().filter(reading -> reading.of(place) && reading.state() == state).findFirst();
    }
}
