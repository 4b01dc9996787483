package camberwell.audit;

import camberwell.car.Car;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * That a change relieves something, or makes it worse.
 *
 * @param by the note's effect or the rule that says so, in words
 * @param change the change
 * @param relieves whether it is said to relieve rather than to make worse
 * @param troubles what it is said to act on; one of several is enough
 * @param cars the cars that it is said of
 * @param surface the surface that it is said of
 * @param explanation why practice and the model differ, where the note says so
 */
record Claim(String by, Change change, boolean relieves, List<Trouble> troubles, Predicate<Car> cars, Surface surface,
        Optional<String> explanation) {

    /** Whether it is said of that car. */
    boolean holdsFor(Car car) {
        return cars.test(car);
    }

    /** What a change acts on. What is left open is any. */
    record Trouble(Word on, Set<Phase> phases, Set<CornerSpeed> speeds, Optional<Axle> where) {
    }
}
