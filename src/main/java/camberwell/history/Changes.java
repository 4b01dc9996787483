package camberwell.history;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.run.Made;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What was changed between two runs of a car, read off its settings. */
public final class Changes {

    /** Settings nearer than this part of a step are the same. */
    private static final double SAME = 0.25;

    private Changes() {
    }

    /** The changes that lead from {@code before} to {@code after}, in the vocabulary's order. */
    public static List<Made> between(Car before, Car after) {
        List<Made> changes = new ArrayList<>();
        after.adjusters().forEach((adjuster, setting) -> before.setting(adjuster)
                .filter(old -> old.now().unit().dimension() == setting.now().unit().dimension())
                .flatMap(old -> between(adjuster, old.now(), setting)).ifPresent(changes::add));
        return List.copyOf(changes);
    }

    private static Optional<Made> between(Adjuster adjuster, Quantity from, Setting setting) {
        double steps = -setting.stepsUp(from);
        if (Math.abs(steps) < SAME) {
            return Optional.empty();
        }
        List<Direction> directions = adjuster.directions();
        Direction direction = directions.get(0).raises() == steps > 0 ? directions.get(0) : directions.get(1);
        int whole = (int) Math.max(1, Math.round(Math.abs(steps)));
        return Optional.of(new Made(new Change(adjuster, direction), new Tried.Moved(Optional.of(whole),
                Optional.of(from), Optional.of(setting.now()), false)));
    }

    /** Every setting of a car, as a set-up that is whole by itself: the car's file may be edited later. */
    public static Map<Adjuster, Quantity> setup(Car car) {
        Map<Adjuster, Quantity> setup = new EnumMap<>(Adjuster.class);
        car.adjusters().forEach((adjuster, setting) -> setup.put(adjuster, setting.now()));
        return setup;
    }

    /** Whether two runs were driven with the same settings. */
    public static boolean none(Car one, Car other) {
        return between(one, other).isEmpty();
    }
}
