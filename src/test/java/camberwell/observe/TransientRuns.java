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
    record Run(String name, Car car, MovingCar moving, double effort, boolean calm, UnaryOperator<LogText> written) {

        /** Drives it. */
        TransientRun drive() {
            double grip = HandlingModel.maxLateralAcceleration(moving.vehicle(), 25, 0);
            TransientRun run = null;
            for (double asked = effort; asked > 0.6 && (run == null || run.lost); asked -= 0.05) {
                run = new TransientRun(moving, LAPS, new Pace.Demand(asked * grip, 0.6 * asked * grip, 0.25 * asked * grip, 150));
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

    private static void add(Car car, List<Run> runs) {
        MovingCar moving = CarModel.of(car, Surface.DRY).orElseThrow().inMotion();
        List<UnaryOperator<LogText>> ways = List.of(log -> log, log -> {
            log.every = 2;
            return log;
        }, log -> log.without("Wheel"), log -> log.instead("Yaw", "Yaw Rate [deg/s]", -1).instead("Lateral", "Lateral G", -1),
                log -> log.instead("Speed", "v [m/s]", 1 / 3.6).without("Lap"));
        runs.add(new Run(car.name() + ", as it stands", car, moving, 0.88, true, ways.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", at an easy pace", car, moving, 0.75, true, ways.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the front bar too stiff", car, moving.withVehicle(vehicle -> vehicle.withFront(
                axle -> axle.withBarRate(axle.barRate() + 0.8 * axle.rollStiffness()))), 0.97, false, ways.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the front tyres too weak", car, moving.withVehicle(vehicle -> vehicle.withFront(
                axle -> axle.withTyre(weaker((Pac2002) axle.tyre())))), 0.98, false, ways.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the rear bar too stiff", car, moving.withVehicle(vehicle -> vehicle.withRear(
                axle -> axle.withBarRate(axle.barRate() + 0.8 * axle.rollStiffness()))), 0.95, false, ways.get(runs.size() % 5)));
        runs.add(new Run(car.name() + ", the rear tyres too weak", car, moving.withVehicle(vehicle -> vehicle.withRear(
                axle -> axle.withTyre(weaker((Pac2002) axle.tyre())))), 0.95, false, ways.get(runs.size() % 5)));
    }

    private static Pac2002 weaker(Pac2002 tyre) {
        return tyre.withFriction(0.92 * tyre.friction());
    }
}
