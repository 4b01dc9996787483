package camberwell.cli;

import camberwell.cli.Killed.Work;
import camberwell.engine.RuleBase;
import camberwell.explain.DemoCases;
import camberwell.history.Book;
import camberwell.input.CaseReader;
import camberwell.pack.RulePack;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Kills processes that write, at random moments, and looks at what they leave: every file whole, no rule without its note,
 * and no draft after the next one that writes.
 */
final class Killing {

    private static final String RULE = Bench.rule("Kerbs: softer", "tall-kerbs", "the driver reports kerb-instability",
            "propose front-bump softer with certainty 0.35");
    private final Path folder;
    private final Work work;
    private final Engine engine;
    private int drafts;

    /** @param folder an empty one */
    Killing(Path folder, Work work) throws IOException {
        this.folder = folder;
        this.work = work;
        this.engine = new Engine(DemoCases.HOME.toAbsolutePath(), RuleBase.defaultCache());
        Files.copy(DemoCases.HOME.resolve("demo-cases/cars/corvane-coupe.yaml"), folder.resolve("car.yaml"));
        new Bench(folder).file("begun.yaml", "title: Begun\ncar: car.yaml\nreports:\n  - {symptom: understeer}\n")
                .file("sound/3-changes/kerbs.dslr", RULE).file("sound/knowledge-notes/causes/tall-kerbs.md", Bench.note("cause"))
                .file("sound/pack.yaml", "name: sound\nversion: 1.0\nauthor: A. Tutor\nneeds: [camberwell 0.1.0]\n");
    }

    /** Begins it, lets it do at least one thing, and kills it some time later; every defect that was found then. */
    List<String> kill(Random random) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        Files.writeString(said, "");
        Process process = new ProcessBuilder(Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Dcamberwell.home=" + DemoCases.HOME.toAbsolutePath(), "-cp",
                System.getProperty("java.class.path"), Killed.class.getName(), work.name(), folder.toString())
                .redirectOutput(said.toFile()).redirectError(ProcessBuilder.Redirect.DISCARD).start();
        while (Files.size(said) == 0 && process.isAlive()) {
            TimeUnit.MILLISECONDS.sleep(2);
        }
        TimeUnit.MICROSECONDS.sleep(random.nextInt(200_000));
        process.destroyForcibly().waitFor();
        drafts += drafts().size();
        List<String> defects = new ArrayList<>(whole());
        Files.readString(said).lines().filter(line -> line.startsWith("failed")).forEach(defects::add);
        if (work != Work.RUN) {
            removed("mine");
        } else if (Files.list(folder.resolve("book")).count() > 200) {
            removed("book");
        }
        return defects;
    }

    /** How many drafts killed processes left so far. */
    int left() {
        return drafts;
    }

    /** After one more that is let be, there are no drafts. */
    List<String> cleanedUp() throws IOException {
        Ran ran = work.once(folder, engine, 0);
        List<String> left = drafts().stream().map(file -> "left behind: " + file).toList();
        return ran.code() == ExitCode.DONE ? left : List.of(ran.all());
    }

    private List<Path> drafts() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.getFileName().toString().contains("draft")).toList();
        }
    }

    private List<String> whole() throws IOException {
        List<String> defects = new ArrayList<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.filter(it -> it.getFileName().toString().matches("talk.*yaml")).toList()) {
                told(() -> new CaseReader().read(file)).ifPresent(defects::add);
            }
        }
        if (Files.exists(folder.resolve("mine"))) {
            try (Stream<Path> folders = Files.list(folder.resolve("mine"))) {
                folders.filter(mine -> Files.exists(mine.resolve("3-changes")))
                        .forEach(mine -> told(() -> problems(mine)).ifPresent(defects::add));
            }
        }
        if (Files.exists(folder.resolve("sound.zip"))) {
            told(() -> RulePack.read(folder.resolve("sound.zip"), "sound.zip", false).files().size() == 3 ? null : "files")
                    .ifPresent(defects::add);
        }
        if (Files.exists(folder.resolve("book"))) {
            Book book = Book.in(folder.resolve("book"));
            book.pages().forEach(page -> told(() -> book.read(page).driven().laps().isEmpty() ? page : null)
                    .ifPresent(defects::add));
        }
        return defects;
    }

    private List<Problem> problems(Path mine) {
        List<Problem> problems = engine.withRules(List.of(RulePack.read(mine, "mine", false))).ruleSet().problems();
        return problems.isEmpty() ? null : problems;
    }

    private interface Look {
        Object at();
    }

    /** What is wrong: what the look returned that is no case, or the problems it threw. */
    private static Optional<String> told(Look look) {
        try {
            Object seen = look.at();
            return seen == null || seen instanceof camberwell.input.CaseFile ? Optional.empty() : Optional.of(seen.toString());
        } catch (ProblemsException e) {
            return Optional.of(e.getMessage());
        }
    }

    private void removed(String name) throws IOException {
        if (!Files.exists(folder.resolve(name))) {
            return;
        }
        try (Stream<Path> files = Files.walk(folder.resolve(name))) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
