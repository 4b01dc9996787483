package camberwell.observe;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import java.util.Set;
import java.util.function.IntPredicate;

/**
 * A slide that is put into a run.
 *
 * @param degrees how far the front slides more than it should (positive) or the rear (negative)
 * @param phase where in the corner
 * @param corners in which corners, counted from 1; all of that speed if empty
 * @param speed in which corners
 * @param laps in which laps, counted from 1
 * @param seconds how long it takes to come; a snap comes at once
 */
record Slide(double degrees, Phase phase, CornerSpeed speed, Set<Integer> corners, IntPredicate laps, double seconds) {

    static Slide of(double degrees, Phase phase, CornerSpeed speed) {
        return new Slide(degrees, phase, speed, Set.of(), lap -> true, 0.5);
    }

    Slide in(int... numbers) {
        Set<Integer> chosen = java.util.Arrays.stream(numbers).boxed().collect(java.util.stream.Collectors.toSet());
        return new Slide(degrees, phase, speed, chosen, laps, seconds);
    }

    Slide on(IntPredicate which) {
        return new Slide(degrees, phase, speed, corners, which, seconds);
    }

    Slide within(double time) {
        return new Slide(degrees, phase, speed, corners, laps, time);
    }
}
