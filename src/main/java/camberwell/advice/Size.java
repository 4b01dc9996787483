package camberwell.advice;

import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.List;
import java.util.Optional;

/**
 * How far a change goes.
 *
 * @param from the present setting; empty for a class of car
 * @param to the setting to try; empty for a class of car
 * @param steps of the car's own, at least one
 * @param wheels where left and right differ: each wheel's own figures
 * @param computation how it was computed, line by line, with units
 */
public record Size(Optional<Quantity> from, Optional<Quantity> to, int steps, List<WheelSize> wheels,
        List<String> computation) {

    /** One wheel's part of a change. */
    public record WheelSize(Wheel wheel, Quantity from, Quantity to) {
    }
}
