package camberwell.practice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.CarModel;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/**
 * Something that is wrong with a car: one or two adjusters that stand where they should not.
 *
 * @param set where they stand
 */
public record Fault(Map<Adjuster, Quantity> set) {

    /** Part of what an adjuster can be moved that a fault moves it at least, and at most. */
    private static final double LEAST = 0.3;
    private static final double MOST = 0.9;

    /** Copies the map in the order of the vocabulary. */
    public Fault {
        set = new EnumMap<>(set);
    }

    /**
     * Draws a fault.
     *
     * @param car the car as it should be
     * @param adjusters how many of its adjusters are wrong
     * @param random where the luck comes from
     */
    public static Fault draw(Car car, int adjusters, Random random) {
        List<Adjuster> can = new ArrayList<>(car.adjusters().keySet());
        can.removeIf(adjuster -> !CarModel.representsInMotion(adjuster));
        Map<Adjuster, Quantity> set = new EnumMap<>(Adjuster.class);
        while (set.size() < adjusters) {
            Adjuster adjuster = can.get(random.nextInt(can.size()));
            Setting setting = car.setting(adjuster).orElseThrow();
            Direction way = adjuster.directions().get(random.nextInt(2));
            int left = setting.stepsLeft(way);
            int steps = (int) Math.round(left * (LEAST + (MOST - LEAST) * random.nextDouble()));
            if (steps > 0) {
                set.put(adjuster, setting.moved(way, steps));
            }
        }
        return new Fault(set);
    }

    /** The car with settings changed; empty where the model does not know of one of them. */
    public static Optional<CarModel> with(CarModel car, Map<Adjuster, Quantity> settings) {
        Optional<CarModel> changed = Optional.of(car);
        for (Map.Entry<Adjuster, Quantity> setting : settings.entrySet()) {
            changed = changed.flatMap(it -> it.withInMotion(setting.getKey(), setting.getValue()));
        }
        return changed;
    }
}
