package camberwell.benchmark;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Measures what a person waits for, as ratios in one run, and says of each whether it meets its target. Everything is
 * measured on the distribution, process by process.
 */
public final class Measure {

    private static final int RUNS = 9;
    private static final int MANY = 10_000;
    /** Letters that no rule's id begins with, one a copy. */
    private static final String NO_IDS_FIRST = "HJNQUVWXZ";

    private final Path distribution;
    private final Path scratch;
    private final String java;
    private int fallShort;

    private Measure(Path distribution, Path scratch) {
        this.distribution = distribution;
        this.scratch = scratch;
        this.java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
    }

    /** The distribution's folder, and a folder to work in that is emptied first. */
    public static void main(String[] arguments) throws IOException {
        Path scratch = Path.of(arguments[1]).toAbsolutePath();
        remove(scratch);
        Files.createDirectories(scratch);
        Measure measure = new Measure(Path.of(arguments[0]).toAbsolutePath(), scratch);
        measure.run();
        System.out.println(measure.fallShort == 0 ? "All targets are met." : measure.fallShort + " fall short.");
    }

    private void run() throws IOException {
        Path demo = distribution.resolve("demo-cases/pushes-in-snaps-out.yaml");
        List<String> word = List.of(java, "-cp", Processes.classPath(), "camberwell.benchmark.OneWord");
        List<String> advise = command(distribution, "advise", demo.toString());
        System.out.printf(Locale.ROOT, "%s %s, %d cores, median of %d%n%n", System.getProperty("java.vm.name"),
                System.getProperty("java.version"), Runtime.getRuntime().availableProcessors(), RUNS);
        Processes.median(2, Map.of(), advise);
        double ready = Processes.median(RUNS, Map.of(), word);
        double answer = Processes.median(RUNS, Map.of(), advise);
        double readyAgain = Processes.median(RUNS, Map.of(), word);
        double bare = (ready + readyAgain) / 2;
        System.out.printf(Locale.ROOT, "a JVM that prints one word: %.0f ms%n", bare);
        atMost("advise on a demo case / bare JVM", answer / bare, 8);
        double ordinary = Processes.median(3, Map.of(), List.of(java, "-cp", Processes.classPath(),
                "camberwell.engine.OrdinaryWay", distribution.toString(), demo.toString()));
        atLeast("the ordinary way through KieServices / advise", ordinary / answer, 6);
        atMost("peak memory of advise, MiB", Processes.peakMebibytes(advise), 160);
        atMost("rules check of the whole base / bare JVM",
                Processes.median(RUNS, Map.of(), command(distribution, "rules", "check")) / bare, 6);
        atMost("first advice after editing one rule file / bare JVM", edited("advise", demo.toString()) / bare, 30);
        atMost("rules check after editing one rule file / bare JVM", edited("rules", "check") / bare, 12);
        many();
        tenTimes(demo);
        atMost("the debrief's next question, 95th percentile, ms", Double.parseDouble(Processes.output(List.of(java,
                "-XX:TieredStopAtLevel=1", "-Dcamberwell.home=" + distribution, "-cp", Processes.classPath(),
                "camberwell.debrief.NextQuestion")).strip()), 100);
        logs();
    }

    /** The reading of logged runs: how right it is on those of which it is known what is in them, and how soon. */
    private void logs() throws IOException {
        List<String> known = List.of(java, "-cp", Processes.classPath(), "camberwell.observe.KnownLogs",
                distribution.toString());
        String[] figures = Processes.output(known).strip().split("\\s+");
        atLeast("complaints told of " + figures[0] + " known logs that are right", Double.parseDouble(figures[1]), 0.95);
        atLeast("complaints in them that are told", Double.parseDouble(figures[2]), 0.85);
        atLeast("complaints told of " + figures[3] + " runs of the transient model that are right",
                Double.parseDouble(figures[4]), 0.95);
        atLeast("complaints in them that are told", Double.parseDouble(figures[5]), 0.85);
        atMost("complaints of calm ones that are wrong", Double.parseDouble(figures[6]), 0);
        String car = distribution.resolve("demo-cases/cars/corvane-coupe.yaml").toString();
        Path ten = scratch.resolve("ten-laps.csv");
        Path tenMillion = scratch.resolve("ten-million-rows.csv");
        Processes.output(with(known, ten.toString(), "91000"));
        Processes.output(with(known, tenMillion.toString(), "10000000"));
        atMost("observe on a run of ten laps, s",
                Processes.median(RUNS, Map.of(), command(distribution, "observe", ten.toString(), "--car", car)) / 1000, 1.5);
        List<String> all = command(distribution, "observe", tenMillion.toString(), "--car", car);
        atMost("observe on ten million rows, s", Processes.once(Map.of(), all) / 1000, 12);
        atMost("peak memory of that, MiB", Processes.peakMebibytes(all), 400);
        Files.delete(tenMillion);
    }

    private static List<String> with(List<String> command, String... more) {
        List<String> all = new ArrayList<>(command);
        all.addAll(List.of(more));
        return all;
    }

    private List<String> command(Path home, String... words) {
        boolean windows = System.getProperty("os.name").startsWith("Windows");
        List<String> command = new ArrayList<>();
        command.add(home.resolve("bin").resolve(windows ? "camberwell.bat" : "camberwell").toString());
        command.addAll(List.of(words));
        return command;
    }

    /** Each run finds one file changed since the run before. */
    private double edited(String... words) throws IOException {
        Path copy = scratch.resolve("edited-" + words[0]);
        copy(distribution, copy);
        Path file = copy.resolve("rules/3-changes").resolve(firstOf(copy.resolve("rules/3-changes")));
        Map<String, String> environment = Map.of("XDG_CACHE_HOME", scratch.resolve("cache").toString(),
                "LOCALAPPDATA", scratch.resolve("cache").toString());
        List<Double> times = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            Files.writeString(file, "\n// Edit " + i + "\n", StandardOpenOption.APPEND);
            times.add(Processes.once(environment, command(copy, words)));
        }
        times.sort(Comparator.naturalOrder());
        return times.get(RUNS / 2);
    }

    private void many() throws IOException {
        double few = time(MANY / 4);
        double all = time(MANY);
        atLeast("cases a second, of " + MANY, MANY / (all / 1000), 1500);
        atMost("time a case of " + MANY + " / of " + MANY / 4, all / MANY / (few / (MANY / 4.0)), 1.1);
    }

    private double time(int count) throws IOException {
        return Processes.median(3, Map.of(),
                command(distribution, "advise", "--format", "jsonl", "@" + cases(count)));
    }

    /** The demo cases over and over, each time with its own file. */
    private Path cases(int count) throws IOException {
        Path folder = scratch.resolve("cases");
        Files.createDirectories(folder);
        List<Path> demos;
        try (Stream<Path> files = Files.list(distribution.resolve("demo-cases"))) {
            demos = files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
        }
        List<String> names = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Path file = folder.resolve("case-" + i + ".yaml");
            if (!Files.exists(file)) {
                String text = Files.readString(demos.get(i % demos.size()));
                Files.writeString(file, text.replace("cars/", distribution.resolve("demo-cases/cars") + "/"));
            }
            names.add("\"" + file.toString().replace("\\", "\\\\") + "\"");
        }
        return Files.write(scratch.resolve("cases-" + count + ".txt"), names);
    }

    /** Nine copies of every rule beside the rules themselves, in three folders, as if three instructors wrote them. */
    private void tenTimes(Path demo) throws IOException {
        List<String> rules = new ArrayList<>();
        for (int folder = 0; folder < 3; folder++) {
            Path own = scratch.resolve("copies-" + folder);
            for (int copy = 1; copy <= 3; copy++) {
                copyRules(own, 3 * folder + copy);
            }
            rules.addAll(List.of("--rules", own.toString()));
        }
        Map<String, String> environment = Map.of("XDG_CACHE_HOME", scratch.resolve("cache").toString(),
                "LOCALAPPDATA", scratch.resolve("cache").toString());
        int count = 2000;
        String list = "@" + cases(count);
        List<String> one = List.of("advise", "--format", "jsonl", demo.toString());
        List<String> many = List.of("advise", "--format", "jsonl", list);
        Processes.once(environment, command(distribution, with(one, rules)));
        double tenfold = Processes.median(3, environment, command(distribution, with(many, rules)))
                - Processes.median(3, environment, command(distribution, with(one, rules)));
        double plain = Processes.median(3, Map.of(), command(distribution, with(many, List.of())))
                - Processes.median(3, Map.of(), command(distribution, with(one, List.of())));
        atMost("time a case with ten times the rules / with the rules", tenfold / plain, 3);
    }

    private static String[] with(List<String> words, List<String> more) {
        List<String> all = new ArrayList<>(words);
        all.addAll(more);
        return all.toArray(String[]::new);
    }

    private void copyRules(Path folder, int number) throws IOException {
        for (String stage : List.of("1-readings", "2-causes", "3-changes", "4-cautions", "5-driving")) {
            Files.createDirectories(folder.resolve(stage));
            try (Stream<Path> files = Files.list(distribution.resolve("rules").resolve(stage))) {
                for (Path file : files.toList()) {
                    Files.writeString(folder.resolve(stage).resolve(number + "-" + file.getFileName()),
                            Files.readString(file).replaceAll("(?m)^rule \"", "rule \"" + number + ": ")
                                    .replaceAll("@id\\(\"[A-Z]([A-Z]+)-", "@id(\"" + NO_IDS_FIRST.charAt(number - 1) + "$1-")
                                    .replaceAll("(?m)^ *@replaces.*\\R", ""));
                }
            }
        }
    }

    private void atMost(String what, double figure, double target) {
        say(what, figure, "at most", target, figure <= target);
    }

    private void atLeast(String what, double figure, double target) {
        say(what, figure, "at least", target, figure >= target);
    }

    private void say(String what, double figure, String relation, double target, boolean met) {
        boolean known = !Double.isNaN(figure);
        System.out.printf(Locale.ROOT, "%-55s %9.2f  %s %.1f: %s%n", what, figure, relation, target,
                !known ? "not measured on this system" : met ? "pass" : "falls short");
        fallShort += known && !met ? 1 : 0;
    }

    private static Path firstOf(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().findFirst().orElseThrow().getFileName();
        }
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path path : all.toList()) {
                Path target = to.resolve(from.relativize(path));
                if (Files.isDirectory(path)) {
                    Files.createDirectories(target);
                } else {
                    Files.copy(path, target, StandardCopyOption.COPY_ATTRIBUTES);
                }
            }
        }
    }

    private static void remove(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
