package camberwell.reading;

import camberwell.physics.TreadRead;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.Optional;

/**
 * One tyre's figures.
 *
 * @param tread the three tread temperatures, if all were read
 * @param loaded whether it is on the outside in the turns that most turns of the circuit are
 * @param cold the pressure set cold: as measured, or else the car's setting
 * @param hot the pressure read hot
 * @param target the hot pressure to run at
 */
public record WheelFigures(Wheel wheel, Optional<TreadRead> tread, boolean loaded, Optional<Quantity> cold,
        Optional<Quantity> hot, Optional<Quantity> target) {

    /** Hot pressure less its target, in bar; positive when it is too high. */
    public Optional<Double> overTargetBar() {
        return hot.flatMap(read -> target.map(wanted -> (read.si() - wanted.si()) / 1e5));
    }
}
