package camberwell.cli;

import camberwell.explain.DemoCases;
import camberwell.observe.MadeLogs;
import camberwell.pack.Shelf;
import com.sun.management.OperatingSystemMXBean;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Commands put before damaged input, again and again from a seed. Whatever stands in a file or is typed, a command ends with
 * one of its exit codes, soon, and with words of its own: no stack trace, no name of a class, no {@code null}, and nothing
 * that steers a screen.
 */
final class Hardship {

    /** More of the processor than this is a defect, ms: a hundred times what the slowest of these commands needs. */
    private static final long LONGEST = 20_000;
    private static final Pattern JAVA = Pattern.compile("(?m)Exception|Error:|\\bat camberwell\\.|java\\.|com\\.fasterxml|"
            + "org\\.(yaml|drools|kie|snakeyaml)|(: |\\()null\\b");
    /** A line of somebody's file, shown below a message: its words are not camberwell's. */
    private static final Pattern EXCERPT = Pattern.compile("(?m)^ +\\d* \\|.*$");
    private static final Pattern STEERS =
            Pattern.compile("\\r(?!\\n)|[\\u0000-\\u0008\\u000b\\u000c\\u000e-\\u001f\\u007f\\u0080-\\u009f"
            + "\\u202a-\\u202e\\u2066-\\u2069]");

    private final Path folder;
    private final Engine engine;
    private final List<String> cases;
    private final List<String> cars;
    private final String log = MadeLogs.twoLaps();
    private final List<Path> book = new ArrayList<>();
    /** The pack as it is packed, whole; packed when it is first damaged. */
    private byte[] zip = {};

    /** What is damaged. */
    enum Kind {
        CASE, CAR, LOG, BOOK, RULE_FILE, NOTE, MANIFEST, ZIP, COMMAND_LINE, DEBRIEF, SAID, NEW_RULE;

        /** Whether a file is damaged, and not what is typed. */
        boolean file() {
            return ordinal() <= ZIP.ordinal();
        }
    }

    /** @param folder an empty one, to be filled and emptied */
    Hardship(Path folder) throws IOException {
        this.folder = folder;
        this.engine = new Engine(DemoCases.HOME.toAbsolutePath(), folder.resolve("cache"))
                .withShelf(new Shelf(folder.resolve("shelf")));
        this.cases = texts("demo-cases");
        this.cars = texts("demo-cases/cars");
        Files.createDirectories(folder.resolve("cars"));
        try (Stream<Path> files = Files.list(DemoCases.HOME.resolve("demo-cases/cars"))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve("cars").resolve(file.getFileName()));
            }
        }
        fillBook();
    }

    /** A book of three runs, kept aside as it was written. */
    private void fillBook() throws IOException {
        write("begun.yaml", ("title: Begun\ncar: cars/corvane-coupe.yaml\nreports:\n"
                + "  - {symptom: understeer, phase: entry, speed: slow}\n").getBytes(StandardCharsets.UTF_8));
        String laps = "out 92.52 92.51 92.38 92.32 92.20 92.37";
        run("", "runs", "add", "begun.yaml", "--book", "kept", "--date", "2026-05-03", "--driver", "Ada", "--laps", laps);
        for (String change : List.of("front-toe toe-out 1", "rear-anti-roll-bar stiffer 1")) {
            run("", "runs", "add", "--book", "kept", "--date", "2026-05-03", "--laps", laps, "--changed", change,
                    "--verdict", "better");
        }
        try (Stream<Path> files = Files.list(folder.resolve("kept"))) {
            files.filter(file -> file.toString().endsWith(".yaml")).sorted().forEach(book::add);
        }
        if (book.size() != 3) {
            throw new IllegalStateException("a book of " + book.size() + " runs");
        }
    }

    private static List<String> texts(String place) throws IOException {
        List<String> texts = new ArrayList<>();
        try (Stream<Path> files = Files.list(DemoCases.HOME.resolve(place))) {
            for (Path file : files.filter(it -> it.toString().endsWith(".yaml")).sorted().toList()) {
                texts.add(Files.readString(file));
            }
        }
        return texts;
    }

    /** What is wrong with how the command took the damage that comes of {@code seed}; empty where it took it well. */
    Optional<String> defect(Kind kind, long seed) {
        Random random = new Random(seed * 31 + kind.ordinal());
        try {
            return switch (kind) {
                case CASE -> {
                    write("case.yaml", Damage.of(one(cases, random), random));
                    yield run("", one(List.of("advise", "read", "explain", "pressure", "advise --format json"), random)
                            + " case.yaml");
                }
                case CAR -> {
                    write("cars/damaged.yaml", Damage.of(one(cars, random), random));
                    Files.writeString(folder.resolve("of-car.yaml"), "title: Damaged\ncar: cars/damaged.yaml\nreports:\n"
                            + "  - {symptom: understeer, phase: entry, speed: slow}\n");
                    yield random.nextBoolean() ? run("", "advise of-car.yaml") : run("", "predict", "--car",
                            "cars/damaged.yaml", "--change", "front-toe toe-out 1");
                }
                case LOG -> {
                    int some = random.nextBoolean() ? log.length() : log.indexOf('\n', 400);
                    byte[] head = Damage.of(log.substring(0, some), random);
                    byte[] rest = log.substring(some).getBytes(StandardCharsets.UTF_8);
                    byte[] whole = Arrays.copyOf(head, head.length + rest.length);
                    System.arraycopy(rest, 0, whole, head.length, rest.length);
                    write("run.csv", whole);
                    yield run("", one(List.of("observe run.csv", "observe run.csv --format json",
                            "observe run.csv --car cars/corvane-coupe.yaml"), random));
                }
                case BOOK -> book(random);
                case SAID -> run("", "advise", "--car", "cars/corvane-coupe.yaml", "--say",
                        new String(Damage.of(one(SAID, random), random), StandardCharsets.UTF_8));
                case RULE_FILE -> pack("3-changes/kerbs.dslr", RULE, random, false);
                case NOTE -> pack("knowledge-notes/causes/tall-kerbs.md", NOTE, random, false);
                case MANIFEST -> pack("pack.yaml", MANIFEST, random, false);
                case ZIP -> pack("", "", random, true);
                case COMMAND_LINE -> run("", line(random));
                case DEBRIEF -> run(new String(Damage.of(one(TALKS, random), random), StandardCharsets.UTF_8), "debrief",
                        "--car", "cars/corvane-coupe.yaml");
                case NEW_RULE -> run(new String(Damage.of(NEW_RULE_TALK, random), StandardCharsets.UTF_8), "rules", "new",
                        "A rule", "--into", "new-" + random.nextInt(4));
            };
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One run of the book is damaged; a run that a command adds goes again. */
    private Optional<String> book(Random random) throws IOException {
        Path place = Files.createDirectories(folder.resolve("book"));
        try (Stream<Path> files = Files.list(place)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.delete(file);
            }
        }
        int damaged = random.nextInt(book.size());
        for (int i = 0; i < book.size(); i++) {
            String text = Files.readString(book.get(i));
            write("book/" + book.get(i).getFileName(), i == damaged ? Damage.of(text, random)
                    : text.getBytes(StandardCharsets.UTF_8));
        }
        return run("", one(List.of("runs list", "runs show 2", "runs compare 1 3", "runs judge", "runs plan", "runs draw",
                "runs draw -o run.svg --overwrite", "runs add --laps 92.3", "runs undo", "advise", "runs list --format json"),
                random) + " --book book");
    }

    private Optional<String> pack(String damaged, String text, Random random, boolean zipped) throws IOException {
        write("mine/3-changes/kerbs.dslr", RULE.getBytes(StandardCharsets.UTF_8));
        write("mine/knowledge-notes/causes/tall-kerbs.md", NOTE.getBytes(StandardCharsets.UTF_8));
        write("mine/pack.yaml", MANIFEST.getBytes(StandardCharsets.UTF_8));
        if (zipped) {
            if (zip.length == 0) {
                run("", "rules", "pack", "mine", "-o", "whole.zip");
                zip = Files.readAllBytes(folder.resolve("whole.zip"));
            }
            write("mine.zip", Damage.of(zip, random));
            return run("", "rules", "check", "mine.zip");
        }
        write("mine/" + damaged, Damage.of(text, random));
        return run("", "rules", "check", "mine");
    }

    private static String[] line(Random random) {
        List<String> words = new ArrayList<>();
        for (int i = 1 + random.nextInt(6); i > 0; i--) {
            words.add(random.nextInt(5) == 0 ? new String(Damage.of(one(WORDS, random), random), StandardCharsets.UTF_8)
                    : one(WORDS, random));
        }
        // These write files of a name that the line itself makes up, or wait for a person.
        return words.stream().anyMatch(word -> word.startsWith("-o") || word.contains("watch") || word.startsWith("@")
                || word.contains("svg") || word.contains("save") || word.contains("transcript"))
                ? new String[] {"--help"} : words.toArray(String[]::new);
    }

    private Optional<String> run(String typed, String line) {
        return run(typed, line.split(" "));
    }

    private Optional<String> run(String typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), folder, 80, false, false);
        long start = worked();
        int code;
        try {
            code = Main.run(console, engine, arguments);
        } catch (RuntimeException | StackOverflowError | OutOfMemoryError e) {
            return Optional.of(String.join(" ", arguments) + ": " + e + " at " + e.getStackTrace()[0]);
        }
        long took = (worked() - start) / 1_000_000;
        String said = err.toString(StandardCharsets.UTF_8);
        String shown = out.toString(StandardCharsets.UTF_8) + said;
        if (code < 0 || code > 2) {
            return Optional.of(String.join(" ", arguments) + ": exit code " + code);
        }
        if (took > LONGEST) {
            return Optional.of(String.join(" ", arguments) + ": " + took + " ms");
        }
        if (code == 2 && said.isBlank()) {
            return Optional.of(String.join(" ", arguments) + ": exit code 2 without a word");
        }
        return Stream.of(JAVA, STEERS).map(pattern -> pattern.matcher(pattern == JAVA ? own(said, arguments) : shown))
                .filter(Matcher::find).findFirst().map(matcher -> String.join(" ", arguments)
                        + " says \"" + matcher.group() + "\": " + shown);
    }

    /** What camberwell says by itself: without the lines of files that it shows, and the typed words that it quotes. */
    private static String own(String said, String... arguments) {
        String own = EXCERPT.matcher(said).replaceAll("");
        for (String argument : arguments) {
            String quoted = STEERS.matcher(argument).replaceAll("\uFFFD");
            own = quoted.isBlank() ? own : own.replace("\"" + quoted + "\"", "");
        }
        return own;
    }

    /** What this process has had of the processor, ns: a busy computer makes no defects. */
    private static long worked() {
        return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class).getProcessCpuTime();
    }

    private void write(String path, byte[] bytes) throws IOException {
        Path file = folder.resolve(path);
        Files.createDirectories(file.getParent());
        Files.write(file, bytes);
    }

    private static String one(List<String> of, Random random) {
        return of.get(random.nextInt(of.size()));
    }

    private static final String RULE = """
            // Kerbs.
            rule "Tall kerbs throw the car about: softer front bump first"
                @because("A tall kerb lifts the wheel faster than a stiff damper lets it move, so it lifts the whole car.")
                @note("tall-kerbs")
            when
                the driver reports kerb-instability
                    - on every lap
                the front tyres are below their window
                the car has an adjustable front-bump
            then
                propose front-bump softer with certainty 0.6
                oppose front-bump stiffer with certainty 0.4
            end
            """;
    private static final String NOTE = """
            ---
            title: Tall kerbs
            kind: cause
            statement: The kerbs here are taller than the dampers let the wheels move.
            plain: The kerb pushes the wheel up faster than the shock absorber allows, so the whole car jumps.
            sources:
              - common practice, no source
            ---
            Watch the car from the outside of the corner. If the body rises with the wheel, the damper holds the two together.
            """;
    private static final String MANIFEST = """
            name: tall-kerbs
            version: 1.0
            author: A. Tutor
            needs: [camberwell 0.1.0]
            """;
    private static final List<String> TALKS = List.of(
            "understeer\nentry\nslow\nno\n92 84 78\n92 84 78\n90 85 80\n90 85 80\nstrong\nevery-lap\ndone\n",
            "it pushes on the way in and snaps on the way out\nwhy\nso far\nback\nunknown\nunknown\nhelp\ndone\nquit\n",
            "oversteer\nmid-corner\nfast\nyes\nfront-left 92 84 78 27\nchange phase\nexit\nwhat if wet\ndone\n");
    private static final List<String> SAID = List.of("it pushes on the way in and snaps on the way out, every lap",
            "Das Auto schiebt in den langsamen Ecken, aber nicht in den schnellen", "no understeer, the back steps out when "
                    + "I lift; tyres never come in and it bottoms out over the crest", "loose");
    private static final String NEW_RULE_TALK = "kerbs\n3\nthe driver reports kerb-instability\n- on every lap\n\n"
            + "propose front-bump softer with certainty 0.6\n\nA tall kerb lifts the wheel.\ntall-kerbs\nyes\n";
    private static final List<String> WORDS = List.of("advise", "debrief", "explain", "read", "pressure", "alignment",
            "predict", "note", "terms", "quiz", "rules", "check", "try", "compare", "sentences", "list", "shelf", "sheet",
            "toe", "camber", "caster", "--each", "2mm", "--across", "18in", "--cold", "1.70bar", "--hot", "2.05bar",
            "--target", "1.90bar", "--format", "json", "jsonl", "--for", "newcomer", "engineer", "--top", "3", "--score",
            "--change", "rear-toe toe-in 1", "--if", "reports[0].severity=slight", "reports[99999999999]=x",
            "--why-not", "front-pressure lower", "case.yaml", "cars/corvane-coupe.yaml", "--car", "--rules", "mine",
            "--trust", "--seed", "7", "-", "--", "", "rear-toe", "-1", "99999999999999999999", "--help", "--version");
}
