package camberwell.fact;

import camberwell.units.Quantity;
import java.util.Optional;

/**
 * How far a rule says that a change goes: one of the two.
 *
 * @param steps of the car's own, at least 1
 * @param to the setting to try
 */
public record Amount(Optional<Integer> steps, Optional<Quantity> to) {

    /** So many steps, written as digits. */
    public static Amount steps(String count) {
        return new Amount(Optional.of(Integer.parseInt(count)), Optional.empty());
    }

    /**
     * To that setting, written {@code 2.1:bar}.
     *
     * @throws IllegalArgumentException if it is no quantity
     */
    public static Amount to(String quantity) {
        return new Amount(Optional.empty(), Optional.of(Quantity.parse(quantity.replace(':', ' ')).orElseThrow(() ->
                new IllegalArgumentException("no quantity: " + quantity))));
    }
}
