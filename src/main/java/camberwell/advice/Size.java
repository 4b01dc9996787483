package camberwell.advice;

import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
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
 * @param extent those of its lines that hold of this many steps alone
 */
public record Size(Optional<Quantity> from, Optional<Quantity> to, int steps, List<WheelSize> wheels,
        List<String> computation, List<String> extent) {

    /** A size of which every line holds however far the change goes. */
    public Size(Optional<Quantity> from, Optional<Quantity> to, int steps, List<WheelSize> wheels, List<String> computation) {
        this(from, to, steps, wheels, computation, List.of());
    }

    /** The same change as far as another setting: what was said of so many steps gives way to why it is this many. */
    Size to(Quantity setting, int howMany, String why) {
        String line = howMany + (howMany == 1 ? " step: " : " steps: ") + why;
        List<String> lines = new ArrayList<>(List.of(line));
        computation.stream().filter(each -> !extent.contains(each)).forEach(lines::add);
        return new Size(from, Optional.of(setting), howMany, List.of(), List.copyOf(lines), List.of(line));
    }

    /** Whether both go from one setting to the same other one, at each wheel, however either was computed. */
    public boolean goesAsFarAs(Size other) {
        return from.equals(other.from) && to.equals(other.to) && wheels.equals(other.wheels);
    }

    /** The same with one more line to its computation. */
    Size explained(String line) {
        List<String> lines = new ArrayList<>(computation);
        lines.add(line);
        return new Size(from, to, steps, wheels, List.copyOf(lines), extent);
    }

    /** One wheel's part of a change. */
    public record WheelSize(Wheel wheel, Quantity from, Quantity to) {
    }
}
