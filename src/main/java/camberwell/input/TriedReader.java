package camberwell.input;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.run.Made;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Witness;
import camberwell.yaml.Fields;
import java.util.List;
import java.util.Optional;

/** Reads one entry of a case's {@code tried}. */
final class TriedReader {

    private static final int MOST = 10_000;

    private TriedReader() {
    }

    /**
     * The change that was tried; empty, with the problems noted, when it does not say what it was and what came of it.
     *
     * @param car the case's car, if it could be read
     */
    static Optional<Tried> read(Fields fields, Optional<Car> car) {
        fields.require("change");
        fields.require("outcome");
        Optional<Change> change = change(fields, car);
        Tried.Moved moved = moved(fields, change, car);
        Optional<Outcome> outcome = fields.word("outcome", Outcome.class);
        Tried.On on = new Tried.On(fields.word("on", Symptom.class, ReportReader.A_PACKS), fields.word("where", Place.class),
                fields.word("phase", Phase.class), fields.word("speed", CornerSpeed.class));
        if (on.symptom().isEmpty() && !on.equals(Tried.On.ALL) && !fields.has("on")) {
            fields.require("on");
        }
        Tried.Trial trial = new Tried.Trial(fields.count("run", 1, MOST), fields.count("runs-ago", 0, MOST),
                fields.count("laps", 0, MOST), fields.count("together", 1, MOST).orElse(1),
                fields.word("judged-by", Witness.class), fields.word("surface", Surface.class),
                fields.yes("elsewhere"));
        done(fields, change);
        return change.isEmpty() || outcome.isEmpty() ? Optional.empty()
                : Optional.of(new Tried(change.get(), moved, outcome.get(), on, trial));
    }

    /** A change that was made; empty, with the problems noted, when it does not say what it was. */
    static Optional<Made> made(Fields fields, Optional<Car> car) {
        fields.require("change");
        Optional<Change> change = change(fields, car);
        Tried.Moved moved = moved(fields, change, car);
        done(fields, change);
        return change.map(it -> new Made(it, moved));
    }

    private static void done(Fields fields, Optional<Change> change) {
        if (change.isPresent()) {
            fields.done();
        } else {
            fields.done(List.of("from", "to"));
        }
    }

    private static Optional<Change> change(Fields fields, Optional<Car> car) {
        return fields.change("change").filter(it -> car.isEmpty() || has(it, car.get(), fields));
    }

    private static Tried.Moved moved(Fields fields, Optional<Change> change, Optional<Car> car) {
        return new Tried.Moved(fields.count("steps", 1, MOST), change.flatMap(it -> setting("from", it, car, fields)),
                change.flatMap(it -> setting("to", it, car, fields)), fields.yes("put-back"));
    }

    /** Whether the car has the adjuster; a wheel's pressure may be set through its axle's, or the other way round. */
    private static boolean has(Change change, Car car, Fields fields) {
        Adjuster adjuster = change.adjuster();
        if (adjuster.kind() == Adjuster.Kind.PRESSURE || car.setting(adjuster).isPresent()) {
            return true;
        }
        fields.error("change", "the " + car.name() + " has no " + adjuster.spoken() + " that could have been changed");
        return false;
    }

    private static Optional<Quantity> setting(String key, Change change, Optional<Car> car, Fields fields) {
        Adjuster adjuster = change.adjuster();
        Optional<Setting> setting = car.flatMap(it -> it.setting(adjuster));
        Optional<Quantity> quantity = fields.quantity(key, adjuster.measure());
        if (quantity.isPresent() && setting.isPresent()
                && setting.get().now().unit().dimension() != quantity.get().unit().dimension()) {
            fields.error(key, "the " + car.get().name() + " has its " + adjuster.spoken() + " in the unit of "
                    + setting.get().now() + ", not of " + quantity.get());
            return Optional.empty();
        }
        return quantity;
    }
}
