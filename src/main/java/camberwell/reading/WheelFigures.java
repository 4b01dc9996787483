package camberwell.reading;

import camberwell.physics.TreadRead;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One tyre's figures.
 *
 * @param tread the three tread temperatures, if all were read
 * @param loaded whether it is on the outside in the turns that it is judged in
 * @param cold the pressure set cold: as measured, or else the car's setting
 * @param hot the pressure read hot
 * @param warm what the hot pressure would be with the tread at the lower end of its window, where it was read below it;
 *     else the hot pressure; empty where it was not read, or reads no more than cold
 * @param target the hot pressure to run at
 * @param gas the gas temperature that the growth from cold to hot implies, where the cold temperature is known
 * @param offWindow tread mean outside its window, K: negative below it, zero inside; empty where no window is known
 */
public record WheelFigures(Wheel wheel, Optional<TreadRead> tread, boolean loaded, Optional<Quantity> cold,
        Optional<Quantity> hot, Optional<Quantity> warm, Optional<Quantity> target, Optional<Quantity> gas,
                OptionalDouble offWindow) {

    /** Warm pressure less its target, in bar; positive when it is too high. */
    public Optional<Double> overTargetBar() {
        return warm.flatMap(read -> target.map(wanted -> (read.si() - wanted.si()) / 1e5));
    }
}
