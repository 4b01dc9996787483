package camberwell.input;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.problem.Text;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.yaml.Fields;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code setup} of a case. */
final class SetupReader {

    private SetupReader() {
    }

    /**
     * How the car was set, where it was not as its file says.
     *
     * @param car the case's car, if it could be read
     */
    static Map<Adjuster, Quantity> read(Fields fields, Optional<Car> car) {
        Map<Adjuster, Quantity> setup = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            Optional<Quantity> set = fields.quantity(adjuster.id(), measure(adjuster, car));
            if (set.isPresent() && (car.isEmpty() || fits(adjuster, set.get(), car.get(), fields))) {
                setup.put(adjuster, set.get());
            }
        }
        fields.done();
        return setup;
    }

    private static Measure measure(Adjuster adjuster, Optional<Car> car) {
        return car.flatMap(it -> it.setting(adjuster)).filter(setting -> setting.now().unit() == Unit.POSITION)
                .isPresent() ? adjuster.clicks() : adjuster.measure();
    }

    private static boolean fits(Adjuster adjuster, Quantity quantity, Car car, Fields fields) {
        Setting setting = car.adjusters().get(adjuster);
        if (setting == null) {
            List<String> has = car.adjusters().keySet().stream().map(Adjuster::id).toList();
            fields.errorAtKey(adjuster.id(), "the " + car.name() + " has no " + adjuster.spoken() + " to set"
                    + (has.isEmpty() ? "" : "; it has " + Text.allOf(has)));
        } else if (setting.now().unit().dimension() != quantity.unit().dimension()) {
            fields.error(adjuster.id(), "the " + car.name() + " has its " + adjuster.spoken() + " in the unit of "
                    + setting.now() + ", not of " + quantity);
        } else if (!CarReader.within(setting, quantity)) {
            fields.error(adjuster.id(), "the " + adjuster.spoken() + " of the " + car.name() + " goes from "
                    + setting.min() + " to " + setting.max() + ", so it cannot be at " + quantity);
        } else {
            return true;
        }
        return false;
    }
}
