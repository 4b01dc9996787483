package camberwell.observe;

import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import java.util.Optional;

/**
 * One thing that is looked for in every corner, with the figures from which it begins and is clear.
 *
 * @param symptom what it is a sign of
 * @param where the axle or the wheel
 * @param starts the figure from which it begins to count
 * @param clear the figure from which nobody would argue
 * @param unit of both
 * @param name of what is measured: {@code understeer angle beyond the car's own line}
 * @param decimals that its figures are shown with
 * @param fewest clear laps, together, that it must go beyond where it does not show on every lap
 */
record Measure(Symptom symptom, Optional<Place> where, double starts, double clear, String unit, String name,
        int decimals, double fewest) {

    /** As often as it may be. */
    Measure(Symptom symptom, Optional<Place> where, double starts, double clear, String unit, String name, int decimals) {
        this(symptom, where, starts, clear, unit, name, decimals, 0);
    }

    /** The same, told only where it goes beyond so many clear laps. */
    Measure beyond(double laps) {
        return new Measure(symptom, where, starts, clear, unit, name, decimals, laps);
    }
}
