package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.input.CaseReader;
import camberwell.model.CarModel;
import camberwell.physics.HandlingModel;
import camberwell.physics.Pac2002;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Pace;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Runs of the transient model: every car there is, as it stands and at an easy pace, and near the limit with one end weakened
 * by its bar or by its tyres; written down in one way or another. A driver who loses a car goes more slowly.
 */
final class TransientRuns {

    private static final int LAPS = 4;

    /**
     * One run.
     *
     * @param name of the car, and what is the matter with it
     * @param calm whether the car stays within what it can do
     */
    record Run(String name, Car car, MovingCar moving, double effort, boolean calm, List<TransientRun.Bend> bends,
            UnaryOperator<LogText> written) {

        Run(String name, Car car, MovingCar moving, double effort, boolean calm, UnaryOperator<LogText> written) {
            this(name, car, moving, effort, calm, TransientRun.SEVEN, written);
        }

        /** Drives it. */
        TransientRun drive() {
            double grip = HandlingModel.maxLateralAcceleration(moving.vehicle(), 25, 0);
            TransientRun run = null;
            for (double asked = effort; asked > 0.6 && (run == null || run.lost); asked -= 0.05) {
                run = new TransientRun(moving, LAPS, new Pace.Demand(asked * grip, 0.6 * asked * grip, 0.25 * asked * grip, 150),
                        bends);
            }
            return run;
        }

        /** What is observed in it. */
        Observed observe(TransientRun run, Limits limits) {
            return new KnownRun(name, () -> written.apply(LogText.plain()).write(run.samples, 1, name.hashCode()), Set.of())
                    .observe(car, limits);
        }
    }

    /** The slides that are told; one that lets go at once is a slide of the rear. */
    static Set<KnownRun.Truth> slides(Observed observed) {
        return KnownRun.told(observed).stream().map(it -> it.symptom() == Symptom.SNAP_OVERSTEER
                ? new KnownRun.Truth(Symptom.OVERSTEER, it.phase(), it.speed()) : it).filter(it ->
                it.symptom() == Symptom.UNDERSTEER || it.symptom() == Symptom.OVERSTEER).collect(Collectors.toSet());
    }

    /** What is there and was not told, not even without the speed of its corners. */
    static Set<KnownRun.Truth> missed(TransientTruth truth, Set<KnownRun.Truth> told) {
        return truth.there.stream().filter(it -> !told.contains(it)
                && !told.contains(new KnownRun.Truth(it.symptom(), it.phase(), Optional.empty())))
                .collect(Collectors.toSet());
    }

    private TransientRuns() {
    }

    static List<Run> all(Path home) throws IOException {
        List<Run> runs = new ArrayList<>();
        for (String folder : List.of("demo-cases/cars", "rules/reference-cars")) {
            try (Stream<Path> files = Files.list(home.resolve(folder))) {
                files.sorted().forEach(file -> add(new CaseReader().readCar(file), runs));
            }
        }
        return runs;
    }

    /**
     * Runs that nothing was tuned for: a car, what is the matter with it, how hard it is driven, the circuit and the way it is
     * written down are all drawn.
     */
    static List<Run> drawn(Path home, long seed, int count) throws IOException {
        Random random = new Random(seed);
        List<Run> cars = all(home).stream().filter(run -> run.name().endsWith("as it stands")).toList();
        List<Run> runs = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Run run = cars.get(random.nextInt(cars.size()));
            double friction = 0.88 + 0.1 * random.nextDouble();
            double bar = 0.3 + 0.7 * random.nextDouble();
            int fault = random.nextInt(5);
            MovingCar moving = run.moving.withVehicle(vehicle -> switch (fault) {
                case 0 -> vehicle.withFront(axle -> axle.withBarRate(axle.barRate() + bar * axle.rollStiffness()));
                case 1 -> vehicle.withFront(axle -> axle.withTyre(weaker((Pac2002) axle.tyre(), friction)));
                case 2 -> vehicle.withRear(axle -> axle.withBarRate(axle.barRate() + bar * axle.rollStiffness()));
                case 3 -> vehicle.withRear(axle -> axle.withTyre(weaker((Pac2002) axle.tyre(), friction)));
                default -> vehicle;
            });
            double effort = fault == 4 ? 0.7 + 0.18 * random.nextDouble() : 0.92 + 0.07 * random.nextDouble();
            runs.add(new Run(run.car.name() + ", draw " + seed + "." + i + ", " + List.of("front bar", "front tyres", "rear bar",
                    "rear tyres", "sound").get(fault), run.car, moving, effort, fault == 4, bends(random),
                    WAYS.get(random.nextInt(WAYS.size()))));
        }
        return runs;
    }

    private static List<TransientRun.Bend> bends(Random random) {
        List<TransientRun.Bend> bends = new ArrayList<>();
        int corners = 5 + random.nextInt(6);
        for (int i = 0; i < corners; i++) {
            // Hairpins to sweepers, spread evenly in the logarithm of the radius; a driver turns in within half a second or so.
            double radius = 22 * Math.pow(9, random.nextDouble());
            double ease = 3.6 * Math.sqrt(radius) + 12 * random.nextDouble();
            double arc = radius * (0.5 + 1.1 * random.nextDouble());
            bends.add(new TransientRun.Bend(150 + 300 * random.nextDouble(), ease, arc, random.nextBoolean() ? radius : -radius));
        }
        return bends;
    }

    private static final List<UnaryOperator<LogText>> WAYS = List.of(log -> log, log -> {
        log.every = 2;
        return log;
    }, log -> log.without("Wheel"), log -> log.instead("Yaw", "Yaw Rate [deg/s]", -1).instead("Lateral", "Lateral G", -1),
                log -> log.instead("Speed", "v [m/s]", 1 / 3.6).without("Lap"));

    private static void add(Car car, List<Run> runs) {
        MovingCar moving = CarModel.of(car, Surface.DRY).orElseThrow().inMotion();
        runs.add(new Run(car.name() + ", as it stands", car, moving, 0.88, true, WAYS.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", at an easy pace", car, moving, 0.75, true, WAYS.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the front bar too stiff", car, moving.withVehicle(vehicle -> vehicle.withFront(
                axle -> axle.withBarRate(axle.barRate() + 0.8 * axle.rollStiffness()))), 0.97, false, WAYS.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the front tyres too weak", car, moving.withVehicle(vehicle -> vehicle.withFront(
                axle -> axle.withTyre(weaker((Pac2002) axle.tyre(), 0.92)))), 0.98, false, WAYS.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the rear bar too stiff", car, moving.withVehicle(vehicle -> vehicle.withRear(
                axle -> axle.withBarRate(axle.barRate() + 0.8 * axle.rollStiffness()))), 0.95, false, WAYS.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the rear tyres too weak", car, moving.withVehicle(vehicle -> vehicle.withRear(
                axle -> axle.withTyre(weaker((Pac2002) axle.tyre(), 0.92)))), 0.95, false, WAYS.get(runs.size() % 5)));
    }

    private static Pac2002 weaker(Pac2002 tyre, double friction) {
        return tyre.withFriction(friction * tyre.friction());
    }
}
