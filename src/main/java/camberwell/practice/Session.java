package camberwell.practice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.CarModel;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;

/** One faulty car under treatment: what it does, what was changed on it, and what came of that. For one thread. */
public final class Session {

    /** A change moves nothing where it moves the burden by less than this part of what it was at first. */
    public static final double NOTHING = 0.03;

    private static final int TRIES = 200;

    private final TestDriver driver;
    private final Map<Adjuster, Quantity> settings = new EnumMap<>(Adjuster.class);
    private final List<Step> steps = new ArrayList<>();
    private final double first;
    private Car car;
    private List<Felt> felt;

    /**
     * A change that was made, and what came of it.
     *
     * @param change what was changed
     * @param from the setting before
     * @param to the setting after
     * @param beside what was set with it, as one change
     * @param steps of the car's own
     * @param told what the driver had told before it
     * @param before what was felt before it
     * @param after what was felt after it
     */
    public record Step(Change change, Quantity from, Quantity to, Map<Adjuster, Quantity> beside, int steps,
            List<Report> told, List<Felt> before, List<Felt> after) {

        /** What it took off the burden. */
        public double gain() {
            return TestDriver.burden(before) - TestDriver.burden(after);
        }
    }

    /**
     * @param driver who knows the car as it should be
     * @param fault what is wrong with it
     * @throws IllegalArgumentException where the model does not know of the fault
     */
    public Session(TestDriver driver, Fault fault) {
        this.driver = driver;
        settings.putAll(fault.set());
        drive();
        first = burden();
    }

    private void drive() {
        felt = driver.feels(settings)
                .orElseThrow(() -> new IllegalArgumentException("the model does not know of that setting"));
        car = driver.good().car().with(settings);
    }

    /** Whether the change can be made: the car has the adjuster, the model knows it, and it is not at its stop. */
    public boolean can(Change change) {
        return CarModel.representsInMotion(change.adjuster()) && car.setting(change.adjuster())
                .filter(setting -> setting.stepsLeft(change.direction()) > 0).isPresent();
    }

    /** Moves an adjuster by steps of the car's own, as far as its stop, and drives. */
    public Step make(Change change, int count, List<Report> told) {
        Setting setting = car.setting(change.adjuster()).orElseThrow();
        return make(change.adjuster(), setting.moved(change.direction(), count), Map.of(), told);
    }

    /** Sets an adjuster, and others with it as one change, and drives. */
    public Step make(Adjuster adjuster, Quantity to, Map<Adjuster, Quantity> beside, List<Report> told) {
        Setting from = car.setting(adjuster).orElseThrow();
        double up = from.stepsUp(to);
        Direction way = adjuster.directions().stream().filter(it -> it.raises() == up > 0).findFirst().orElseThrow();
        List<Felt> before = felt;
        settings.put(adjuster, to);
        settings.putAll(beside);
        drive();
        Step step = new Step(new Change(adjuster, way), from.now(), to, Map.copyOf(beside),
                Math.max(1, (int) Math.round(Math.abs(up))), List.copyOf(told), before, felt);
        steps.add(step);
        return step;
    }

    /** The car as it stands, with every dimension. */
    public Car car() {
        return car;
    }

    /** Who drives it. */
    public TestDriver driver() {
        return driver;
    }

    /** The settings that are not those of the car as it should be, and those that were changed. */
    public Map<Adjuster, Quantity> settings() {
        return Map.copyOf(settings);
    }

    /** What is felt of it now, strongest first. */
    public List<Felt> felt() {
        return felt;
    }

    /** All that is felt together; 0 when there is nothing left to tell. */
    public double burden() {
        return TestDriver.burden(felt);
    }

    /** What the burden was at first. */
    public double first() {
        return first;
    }

    /** The changes that were made, in order. */
    public List<Step> steps() {
        return List.copyOf(steps);
    }

    /** Whether there is nothing left to tell. */
    public boolean cured() {
        return felt.isEmpty();
    }

    /** A fault that is worth the trial, drawn for a car; empty where none was found. */
    public static Optional<Fault> draw(TestDriver driver, int adjusters, double worth, Random random) {
        for (int tries = 0; tries < TRIES; tries++) {
            Fault fault = Fault.draw(driver.good().car(), adjusters, random);
            if (driver.feels(fault.set()).filter(felt -> TestDriver.burden(felt) >= worth).isPresent()) {
                return Optional.of(fault);
            }
        }
        return Optional.empty();
    }
}
