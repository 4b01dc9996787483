package camberwell.fact;

import camberwell.units.Quantity;

/** How far a rule says that a change goes. */
public sealed interface Amount {

    /** So many of the car's own steps, at least 1. */
    record Steps(int count) implements Amount {
    }

    /** To the setting to try. */
    record To(Quantity setting) implements Amount {
    }

    /** By so much, without regard to where the car stands; in no sign's direction. */
    record By(Quantity size) implements Amount {
    }

    /** So many steps, written as digits. */
    static Amount steps(String count) {
        return new Steps(Integer.parseInt(count));
    }

    /**
     * To that setting, written {@code 2.1:bar}.
     *
     * @throws IllegalArgumentException if it is no quantity
     */
    static Amount to(String quantity) {
        return new To(quantity(quantity));
    }

    /**
     * By that much, written {@code 0.5:deg}.
     *
     * @throws IllegalArgumentException if it is no quantity, or not above zero
     */
    static Amount by(String quantity) {
        Quantity size = quantity(quantity);
        if (!(size.value() > 0)) {
            throw new IllegalArgumentException("a change goes by more than nothing; its direction says which way");
        }
        return new By(size);
    }

    private static Quantity quantity(String text) {
        return Quantity.parse(text.replace(':', ' ')).orElseThrow(() -> new IllegalArgumentException("no quantity: " + text));
    }
}
