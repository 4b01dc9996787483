package camberwell.debrief;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Drive;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What is left of the kinds of car when nobody can say which of them it is: the adjusters that all of them have. A
 * change that only some of them allow is then not advised, and the tyres are held against no kind's window.
 */
final class Kinds {

    private Kinds() {
    }

    /** A car of which nothing is known. */
    static Car unknown(List<Car> kinds) {
        return common("Car of unknown kind", Optional.empty(), kinds);
    }

    /** Those of the driven wheels that were said, as long as nobody said which kind it is. */
    static List<Car> fitting(List<Car> kinds, State state) {
        return !state.knows(Topic.of(Field.DRIVE)) || state.knows(Topic.of(Field.CAR)) ? kinds
                : kinds.stream().filter(car -> car.drive().equals(state.run().car().drive())).toList();
    }

    /** For each way to drive the wheels, a car of which only that is known. */
    static List<Car> byDrive(List<Car> kinds) {
        return Arrays.stream(Drive.values()).map(drive -> common("Car of unknown kind", Optional.of(drive), kinds))
                .toList();
    }

    /** The numbers of a class of car only fill its form, so those of the first will do. */
    private static Car common(String name, Optional<Drive> drive, List<Car> kinds) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        kinds.stream().limit(1).forEach(first -> adjusters.putAll(first.adjusters()));
        kinds.forEach(kind -> adjusters.keySet().retainAll(kind.adjusters().keySet()));
        return new Car(name, drive, adjusters, Map.of(), Map.of(), true);
    }
}
