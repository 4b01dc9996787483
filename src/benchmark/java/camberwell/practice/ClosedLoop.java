package camberwell.practice;

import camberwell.car.Car;
import camberwell.model.CarModel;
import camberwell.practice.Advising.Move;
import camberwell.run.Report;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.Function;

/**
 * Does it cure the car? Faults are put into cars, the driver's complaints told to an adviser, its change made, the car
 * driven again, at most six times. Prints what share of the faults each adviser cured, and what its changes were worth;
 * then, for the program itself, the faults that it did not cure or made worse at first, with its changes. Every second fault is
 * set aside and reported apart. Seeds are fixed: two runs print the same.
 *
 * <p>The environment variable {@code CAMBERWELL_LOOP} takes any of {@code best} (also the row that tries everything, which
 * takes an hour), {@code noise} (a driver who errs), {@code learn} (without the faults set aside), {@code advised} (the
 * program alone), {@code alone} (the program with its memory alone), {@code others} and {@code more}
 * (four other cars each with faults of their own), {@code strangers} (three cars more),
 * {@code unseen} (three by somebody who has seen neither the program's rules nor its sources), {@code fresh} (other faults of
 * the same cars; of all these nothing is set aside) and {@code unlike} (cars that are driven are not quite what their files say).
 */
public final class ClosedLoop {

    private static final int MOST_CHANGES = 6;
    private static final String WITH_MEMORY = "camberwell, with its memory";

    private ClosedLoop() {
    }

    private record Trail(String adviser, Patient patient, double first, double left, boolean cured,
            List<Session.Step> changes) {
    }

    public static void main(String[] arguments) {
        Set<String> words = new HashSet<>(List.of(arguments));
        words.addAll(List.of(System.getenv().getOrDefault("CAMBERWELL_LOOP", "").split(" ")));
        Map<String, Function<Patient, Advising>> advisers = advisers(words);
        System.out.printf("at most %d changes%s%s%n", MOST_CHANGES,
                words.contains("noise") ? ", a driver who errs in one report of ten" : "",
                words.contains("unlike") ? ", cars that are not quite what their files say" : "");
        Series series = Series.of(words);
        List<Trail> trails = series.cars().parallelStream().flatMap(file -> treat(file, series, advisers, words).stream())
                .toList();
        for (boolean aside : !series.halved() || words.contains("learn") ? List.of(false) : List.of(false, true)) {
            List<Trail> half = trails.stream().filter(it -> !series.halved() || it.patient().aside() == aside).toList();
            System.out.printf("%n%s: %d%n%-32s %6s %16s %24s %6s%n", !series.halved() ? series.title()
                            : aside ? "Faults set aside" : "Faults to learn from",
                    half.size() / advisers.size(), "who advises", "cured", "first +/-", "all +/-/nothing", "left");
            advisers.keySet().forEach(name -> row(name, half.stream().filter(it -> it.adviser().equals(name)).toList()));
        }
        List<Trail> own = trails.stream().filter(it -> it.adviser().equals(WITH_MEMORY)
                && (!series.halved() || !it.patient().aside())).toList();
        System.out.println("\nNot cured, of " + (series.halved() ? "the faults to learn from" : "these faults"));
        own.stream().filter(it -> !it.cured()).forEach(ClosedLoop::tell);
        System.out.println("\nFirst change to the worse or a change that did nothing, of those that were cured");
        own.stream().filter(it -> it.cured() && (sign(gain(it, it.changes().get(0))) < 0 || it.changes().stream()
                .anyMatch(change -> sign(gain(it, change)) == 0))).forEach(ClosedLoop::tell);
    }

    private static Map<String, Function<Patient, Advising>> advisers(Set<String> words) {
        Map<String, Function<Patient, Advising>> advisers = new LinkedHashMap<>();
        if (!words.contains("alone") && !words.contains("advised")) {
            advisers.put("any change at random", patient -> Advising.random(patient.number()));
            advisers.put("a plain chart", patient -> Advising.chart());
        }
        if (!words.contains("alone")) {
            advisers.put("camberwell", patient -> new Camberwell(patient.car(), false));
        }
        advisers.put(WITH_MEMORY, patient -> new Camberwell(patient.car(), true));
        if (words.contains("best")) {
            advisers.put("the best single step", patient -> Advising.best());
        }
        return advisers;
    }

    /** One car: one driver knows it, and remembers how it was with each set of settings. */
    private static List<Trail> treat(String file, Series series, Map<String, Function<Patient, Advising>> advisers,
            Set<String> words) {
        Car written = CarModel.of(series.car(file), Surface.DRY).orElseThrow().car();
        Car driven = words.contains("unlike") ? Unlike.of(written, file.hashCode()) : written;
        TestDriver driver = new TestDriver(CarModel.of(driven, Surface.DRY).orElseThrow());
        List<Trail> trails = new ArrayList<>();
        boolean all = !words.contains("learn") || !series.halved();
        for (Patient patient : series.patients(file, written, driver)) {
            if (all || !patient.aside()) {
                advisers.forEach((name, adviser) -> trails.add(treat(name, patient, driver, adviser.apply(patient),
                        words.contains("noise"))));
            }
        }
        return trails;
    }

    private static Trail treat(String name, Patient patient, TestDriver driver, Advising adviser, boolean noise) {
        Session session = new Session(driver, patient.fault());
        Random luck = new Random(patient.number());
        for (int run = 0; run < MOST_CHANGES && !session.cured(); run++) {
            List<Report> told = noise ? Told.of(session.felt(), luck) : Told.of(session.felt());
            Optional<Move> move = adviser.next(session, told);
            move.ifPresent(it -> session.make(it.adjuster(), it.to(), it.beside(), told));
            if (move.isEmpty() && !noise) {
                break;
            }
            // Where there is nothing to change for what a driver told who errs, he goes out again and tells once more.
        }
        return new Trail(name, patient, session.first(), session.burden(), session.cured(), session.steps());
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
            System.out.printf(Locale.ROOT, "  %-36s %5.1f -> %5.1f %s told: %s%n", change.change().id() + " to "
                    + change.to(), TestDriver.burden(change.before()), TestDriver.burden(change.after()),
                    "-0+".charAt(1 + sign(gain(trail, change))),
                    String.join("; ", change.told().stream().map(ClosedLoop::brief).toList()));
        }
        if (!trail.cured() && trail.changes().size() < MOST_CHANGES) {
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
