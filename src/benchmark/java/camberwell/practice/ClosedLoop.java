package camberwell.practice;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.model.CarModel;
import camberwell.practice.Advising.Move;
import camberwell.run.Report;
import camberwell.vocabulary.Surface;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * Does it cure the car? Faults are put into cars, the driver's complaints told to an adviser, its change made, the car
 * driven again, at most six times. Prints what share of the faults each adviser cured, and what its changes were worth;
 * then, for the program itself, the faults that it did not cure, with the changes that it named. Every second fault is
 * set aside and reported apart.
 *
 * <p>Arguments: any of {@code quick} (without the row that tries everything) and {@code noise} (a driver who errs).
 */
public final class ClosedLoop {

    private static final List<String> CARS = List.of("demo-cases/cars/corvane-coupe.yaml",
            "demo-cases/cars/harrow-rally-saloon.yaml", "demo-cases/cars/larkspur-hatch.yaml",
            "demo-cases/cars/sandling-tourer.yaml", "demo-cases/cars/tessel-single-seater.yaml",
            "rules/reference-cars/loose-rear-drive.yaml");
    private static final int SINGLE = 11;
    private static final int DOUBLE = 6;
    private static final int MOST_CHANGES = 6;
    /** A fault is worth the trial from so much on: two clear complaints or one strong one. */
    private static final double WORTH = 4;

    private ClosedLoop() {
    }

    private record Patient(Car car, Fault fault, int number) {
    }

    private record Trail(Patient patient, double first, double left, boolean cured, List<Session.Step> changes) {
    }

    public static void main(String[] arguments) {
        List<String> words = List.of(arguments);
        boolean noise = words.contains("noise");
        List<Patient> patients = patients();
        Map<String, Supplier<Advising>> advisers = new LinkedHashMap<>();
        advisers.put("any change at random", () -> Advising.random(1));
        advisers.put("a plain chart", Advising::chart);
        advisers.put("camberwell", () -> new Camberwell(false));
        if (!words.contains("quick")) {
            advisers.put("the best single step", Advising::best);
        }
        advisers.put("camberwell, told what it tried", () -> new Camberwell(true));
        System.out.printf("%d faults of %d cars, at most %d changes%s%n", patients.size(), CARS.size(), MOST_CHANGES,
                noise ? ", a driver who errs in one report of ten" : "");
        Map<String, List<Trail>> trails = new LinkedHashMap<>();
        advisers.forEach((name, adviser) -> trails.put(name, treat(patients, adviser, noise)));
        for (int half = 0; half < 2; half++) {
            int wanted = half;
            System.out.printf("%n%s%n%-32s %6s %16s %24s %6s%n",
                    half == 0 ? "Faults to learn from" : "Faults set aside", "who advises", "cured", "first +/-", "all +/-/nothing", "left");
            trails.forEach((name, of) -> row(name, of.stream()
                    .filter(it -> it.patient().number() % 2 == wanted).toList()));
        }
        System.out.println("\nNot cured, of the faults to learn from");
        trails.get("camberwell, told what it tried").stream()
                .filter(it -> it.patient().number() % 2 == 0 && !it.cured()).forEach(ClosedLoop::tell);
    }

    private static List<Patient> patients() {
        List<Patient> patients = new ArrayList<>();
        for (String file : CARS) {
            Car car = new CaseReader().readCar(Path.of(System.getProperty("camberwell.home", "")).resolve(file));
            TestDriver driver = new TestDriver(CarModel.of(car, Surface.DRY).orElseThrow());
            Random random = new Random(file.hashCode());
            for (int i = 0; i < SINGLE + DOUBLE; i++) {
                Optional<Fault> fault = Session.draw(driver, i < SINGLE ? 1 : 2, WORTH, random);
                boolean known = fault.isEmpty() || patients.stream()
                        .anyMatch(it -> it.car().name().equals(car.name()) && it.fault().equals(fault.get()));
                if (!known) {
                    patients.add(new Patient(car, fault.get(), patients.size()));
                }
            }
        }
        return patients;
    }

    private static List<Trail> treat(List<Patient> patients, Supplier<Advising> advisers, boolean noise) {
        ThreadLocal<Advising> adviser = ThreadLocal.withInitial(advisers);
        return IntStream.range(0, patients.size()).parallel()
                .mapToObj(i -> treat(patients.get(i), adviser.get(), noise)).toList();
    }

    private static Trail treat(Patient patient, Advising adviser, boolean noise) {
        Session session = new Session(new TestDriver(CarModel.of(patient.car(), Surface.DRY).orElseThrow()),
                patient.fault());
        Random luck = new Random(patient.number());
        while (!session.cured() && session.steps().size() < MOST_CHANGES) {
            List<Report> told = noise ? Told.of(session.felt(), luck) : Told.of(session.felt());
            Optional<Move> move = adviser.next(session, told);
            if (move.isEmpty()) {
                break;
            }
            session.make(move.get().adjuster(), move.get().to(), told);
        }
        return new Trail(patient, session.first(), session.burden(), session.cured(), session.steps());
    }

    private static void row(String name, List<Trail> trails) {
        double cured = trails.stream().filter(Trail::cured).count();
        List<Double> firsts = trails.stream().filter(it -> !it.changes().isEmpty())
                .map(it -> gain(it, it.changes().get(0))).toList();
        List<Double> all = trails.stream()
                .flatMap(it -> it.changes().stream().map(change -> gain(it, change))).toList();
        double left = trails.stream().mapToDouble(it -> Math.min(2, it.left() / it.first())).average().orElse(0);
        System.out.printf(Locale.ROOT, "%-32s %5.0f%% %7.0f%% /%4.0f%% %8.0f%% /%4.0f%% /%4.0f%% %6.0f%%%n", name,
                100 * cured / trails.size(), share(firsts, trails.size(), 1), share(firsts, trails.size(), -1),
                share(all, all.size(), 1), share(all, all.size(), -1), share(all, all.size(), 0), 100 * left);
    }

    /** What a change took off the burden, as a part of what it was at first. */
    private static double gain(Trail trail, Session.Step change) {
        return change.gain() / trail.first();
    }

    private static double share(List<Double> gains, int of, int sign) {
        return 100.0 * gains.stream().filter(gain -> sign(gain) == sign).count() / Math.max(1, of);
    }

    private static int sign(double gain) {
        return gain > Session.NOTHING ? 1 : gain < -Session.NOTHING ? -1 : 0;
    }

    private static void tell(Trail trail) {
        System.out.printf(Locale.ROOT, "%n%s: %s; burden %.1f, left %.1f%n", trail.patient().car().name(), wrong(trail),
                trail.first(), trail.left());
        for (Session.Step change : trail.changes()) {
            System.out.printf(Locale.ROOT, "  %-36s %5.1f -> %5.1f  told: %s%n", change.change().id() + " to "
                    + change.to(), TestDriver.burden(change.before()), TestDriver.burden(change.after()),
                    String.join("; ", change.told().stream().map(ClosedLoop::brief).toList()));
        }
        if (trail.changes().size() < MOST_CHANGES) {
            System.out.println("  and then nothing more to name");
        }
    }

    private static String wrong(Trail trail) {
        List<String> wrong = new ArrayList<>();
        trail.patient().fault().set().forEach((adjuster, to) -> wrong.add(adjuster.id() + " "
                + trail.patient().car().setting(adjuster).orElseThrow().now() + " -> " + to));
        return String.join(", ", wrong);
    }

    private static String brief(Report report) {
        return report.severity().id() + " " + report.symptom().id() + " " + report.phase().orElseThrow().id()
                + report.speed().map(speed -> " " + speed.id()).orElse("");
    }
}
