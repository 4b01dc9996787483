package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.observe.MadeLogs;
import camberwell.problem.Problem;
import camberwell.yaml.Problems;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What broke camberwell once and has no place in another test. The times are hundreds of times what is needed. */
@DisplayName("What broke it once does not break it again")
class OnceBrokenTest {

    private static final Duration LONGEST = Duration.ofSeconds(120);
    private static final String CAR = Bench.home().resolve("demo-cases/cars/corvane-coupe.yaml").toAbsolutePath().toString();

    @TempDir
    private Path directory;

    private Bench bench() {
        return new Bench(directory);
    }

    private static void words(Bench.Run run) {
        assertTrue(run.code() >= 0 && run.code() <= 2);
        assertFalse(run.all().contains("Exception"), run.all());
    }

    @ParameterizedTest
    @ValueSource(strings = {",", "change ,", "change", "understeer entry slow\n/", "understeer entry slow\nunknown\n/ / /",
        "understeer entry slow\nunknown\nunknown\n92 /", "what if", "save", "explain", "another car", "add ,", "y", "-1", "0"})
    @DisplayName("punctuation and half a command are no answer, and no end of the talk")
    void halfAnswers(String typed) {
        Bench.Run run = bench().runWith(typed + "\nquit\n", "debrief", "--car", CAR);
        words(run);
        assertEquals(ExitCode.DONE, run.code(), run.err());
    }

    @ParameterizedTest
    @ValueSource(strings = {"reports[99999999999].severity=slight", "reports[-1].severity=slight", "reports[].severity=x",
        "reports[0]", "=", "[0]=", "tyres.front-left.inner=9e999 °C"})
    @DisplayName("a place that is nowhere is named")
    void places(String place) {
        Bench.Run run = bench().file("case.yaml", Bench.kerbCase()).run("explain", "case.yaml", "--if", place);
        words(run);
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertTrue(run.err().contains("--if"), run.err());
    }

    @Test
    @DisplayName("a number of very many digits in a sentence is read in time linear in them")
    void manyDigits() {
        Bench bench = bench().file("mine/3-changes/kerbs.dslr", Bench.rule("Caster", "the caster is less than "
                + "9".repeat(900) + " degrees", "propose front-bump softer with certainty 0.35"));
        Bench.Run run = assertTimeoutPreemptively(LONGEST, () -> bench.run("rules", "check", "mine"));
        assertEquals(ExitCode.FOUND_WRONG, run.code());
        assertTrue(run.all().contains("mine/3-changes/kerbs.dslr:5:"), run.all());
    }

    @Test
    @DisplayName("thousands of earlier runs that are not there are not looked for one by one for ever")
    void earlierRuns() {
        StringBuilder text = new StringBuilder(Bench.kerbCase()).append("earlier-runs:\n");
        IntStream.range(0, 60_000).forEach(i -> text.append("  - x").append(i).append(".yaml\n"));
        Bench bench = bench().file("case.yaml", text.toString());
        Bench.Run run = assertTimeoutPreemptively(LONGEST, () -> bench.run("advise", "case.yaml"));
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        words(run);
    }

    @Test
    @DisplayName("many misspelt names in a full folder are each answered with the right one")
    void misspeltNames() throws IOException {
        for (int i = 0; i < 3000; i++) {
            Files.createFile(directory.resolve("case-" + i + ".yaml"));
        }
        String[] line = Stream.concat(Stream.of("read"), IntStream.range(0, 300).mapToObj(i -> "csae-" + i + ".yaml"))
                .toArray(String[]::new);
        Bench.Run run = assertTimeoutPreemptively(LONGEST, () -> bench().run(line));
        assertEquals(300, run.err().lines().filter(told -> told.contains("did you mean \"case-")).count());
    }

    /** A clock that leaps to the end of all numbers had been filled up to there, second by second. */
    @ParameterizedTest
    @ValueSource(strings = {"5199999999999999999999992.2", "1e300", "9e999", "-1e-300"})
    @DisplayName("one cell of a log may hold any number, in whatever column and in the first lap or the last")
    void figuresInLogs(String figure) {
        List<String> lines = MadeLogs.twoLaps().lines().toList();
        int columns = lines.get(0).split(",").length;
        for (int column = 0; column < columns; column++) {
            for (int row : new int[] {40, lines.size() - 40}) {
                List<String> damaged = new ArrayList<>(lines);
                String[] cells = lines.get(row).split(",");
                cells[column] = figure;
                damaged.set(row, String.join(",", cells));
                Bench bench = bench().file("run.csv", String.join("\n", damaged));
                Bench.Run run = assertTimeoutPreemptively(LONGEST, () -> bench.run("observe", "run.csv", "--car", CAR),
                        lines.get(0).split(",")[column]);
                words(run);
                assertEquals(ExitCode.DONE, run.code(), run.err());
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"4e9", "-5000", "1e13"})
    @DisplayName("one cell that leaps away changes nothing of what a log complains of")
    void leapsInLogs(String figure) throws IOException {
        List<String> lines = MadeLogs.pushesAndSlides().lines().toList();
        String found = complaints(lines);
        assertTrue(found.contains("oversteer"), found);
        String[] headings = lines.get(0).split(",");
        for (int column = 3; column < headings.length; column++) {
            List<String> damaged = new ArrayList<>(lines);
            String[] cells = lines.get(1500).split(",");
            cells[column] = figure;
            damaged.set(1500, String.join(",", cells));
            assertEquals(found, complaints(damaged), headings[column]);
        }
    }

    private String complaints(List<String> log) throws IOException {
        Bench.Run run = bench().file("run.csv", String.join("\n", log))
                .run("observe", "run.csv", "--car", CAR, "--format", "json");
        StringBuilder words = new StringBuilder();
        new ObjectMapper().readTree(run.out()).path("reports").forEach(report -> List.of("symptom", "phase", "speed", "severity",
                "occurrence").forEach(key -> words.append(report.path(key).asText()).append(' ')));
        return words.toString();
    }

    @Test
    @DisplayName("any number of warnings remain warnings")
    void warnings() {
        Problems problems = new Problems();
        problems.inFile("case.yaml");
        for (int i = 1; i <= 200; i++) {
            problems.add(new Problem("case.yaml", i, 1, "odd", Optional.empty(), true, ""));
        }
        assertFalse(problems.warningsOrFail().isEmpty());
    }

    @Test
    @DisplayName("compiled rules that are not those of their name are compiled anew")
    void foreignCache() throws IOException {
        Bench bench = bench().file("case.yaml", Bench.kerbCase()).file("mine/3-changes/a.dslr", Bench.rule("A",
                "the driver reports kerb-instability", "propose front-bump softer with certainty 0.35"))
                .file("mine/3-changes/b.dslr", Bench.rule("B", "the driver reports bottoming",
                        "propose rear-bump softer with certainty 0.35"));
        String[] line = {"advise", "--format", "json", "--rules", "mine", "case.yaml"};
        String first = bench.run(line).out();
        List<Path> kept;
        try (Stream<Path> files = Files.walk(bench.cache)) {
            kept = files.filter(file -> file.toString().endsWith(".compiled-rules")).sorted().toList();
        }
        assertTrue(kept.size() >= 2, kept.toString());
        byte[] swapped = Files.readAllBytes(kept.get(0));
        Files.write(kept.get(0), Files.readAllBytes(kept.get(1)));
        Files.write(kept.get(1), swapped);
        Bench.Run again = bench.run(line);
        assertEquals(ExitCode.DONE, again.code(), again.err());
        assertEquals(first, again.out());
    }

    @Test
    @DisplayName("a zip file that is cut off anywhere is refused in words")
    void cutZip() throws IOException {
        Bench bench = bench().file("mine/3-changes/a.dslr", Bench.rule("A", "the driver reports kerb-instability",
                "propose front-bump softer with certainty 0.35")).file("mine/pack.yaml", "name: mine\nversion: 1.0\n"
                + "author: A. Tutor\nneeds: [camberwell 0.1.0]\n");
        assertEquals(ExitCode.DONE, bench.run("rules", "pack", "mine", "-o", "mine.zip").code());
        byte[] whole = Files.readAllBytes(directory.resolve("mine.zip"));
        for (int length = 1; length < whole.length; length += 7) {
            Files.write(directory.resolve("mine.zip"), Arrays.copyOf(whole, length));
            Bench.Run run = bench.run("rules", "check", "mine.zip");
            words(run);
            assertFalse(run.all().contains("null"), length + ": " + run.all());
            assertTrue(run.code() != ExitCode.DONE, run.all());
        }
    }

    @Test
    @DisplayName("a folder of rules that is none, or that nobody may read, ends the watch with a word")
    void watchNothing() {
        Bench.Run run = bench().file("taxes.txt", "12 pounds").run("rules", "watch", "taxes.txt", "--rounds", "1");
        words(run);
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }

    @Test
    @DisplayName("a folder of rules that vanishes while it is watched ends the watch with a word")
    void watchVanishes() throws Exception {
        Bench bench = bench().file("case.yaml", Bench.kerbCase()).file("mine/3-changes/a.dslr", Bench.rule("A",
                "the driver reports kerb-instability", "propose front-bump softer with certainty 0.35"));
        CompletableFuture<Bench.Run> watch =
                CompletableFuture.supplyAsync(() -> bench.run("rules", "watch", "mine", "--case", "case.yaml"));
        Path rules = bench.directory.resolve("mine/3-changes");
        // Nothing tells when the watch has begun: the folder is there again until it was seen to vanish.
        for (int i = 0; i < 200 && !watch.isDone(); i++) {
            TimeUnit.MILLISECONDS.sleep(500);
            Files.deleteIfExists(rules.resolve("a.dslr"));
            Files.deleteIfExists(rules);
            Files.deleteIfExists(rules.getParent());
            TimeUnit.MILLISECONDS.sleep(500);
            if (!watch.isDone()) {
                bench.file("mine/3-changes/a.dslr", "");
            }
        }
        Bench.Run run = watch.get(60, TimeUnit.SECONDS);
        words(run);
        assertEquals("mine: cannot be read: it is gone\n", run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }
}
