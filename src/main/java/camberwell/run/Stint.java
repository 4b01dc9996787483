package camberwell.run;

import camberwell.units.Quantity;
import camberwell.vocabulary.Compound;
import java.util.Optional;

/**
 * What a run was driven on and how long it was.
 *
 * @param compound of the tyres
 * @param tyreLaps laps that the tyres had done before it, from 0
 * @param laps of the run, at least 1; where nobody says, those that were timed count
 * @param fuel on board at the start, a mass
 */
public record Stint(Optional<Compound> compound, Optional<Integer> tyreLaps, Optional<Integer> laps,
        Optional<Quantity> fuel) {

    /** The same with what {@code more} says, which wins. */
    public Stint with(Stint more) {
        return new Stint(more.compound.or(() -> compound), more.tyreLaps.or(() -> tyreLaps), more.laps.or(() -> laps),
                more.fuel.or(() -> fuel));
    }

    /** Nothing is known of it. */
    public static final Stint UNKNOWN =
            new Stint(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
}
