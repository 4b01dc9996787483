package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.observe.MadeLogs;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

@DisplayName("A pack's own word for a complaint, in cases and books that are read without any advice")
class PackInBookTest {

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("mine/pack.yaml", "name: kerbs\nversion: 1.0\nauthor: A. Tutor\n"
                + "needs: [camberwell 0.1.0]\n").file("mine/symptoms.yaml", "kerb-hop:\n  felt: the car hops three times\n"
                + "  helped-by: {front-bump softer: 2}\n")
                .file("mine/3-changes/kerbs.dslr", Bench.rule("Kerbs: softer", "the driver reports kerb-hop",
                        "propose front-bump softer with certainty 0.5"))
                .file("case.yaml", Bench.kerbCase().replace("symptom: kerb-instability", "symptom: kerb-hop"));
    }

    private String done(String... arguments) {
        Bench.Run run = bench.run(arguments);
        assertEquals(0, run.code(), String.join(" ", arguments) + "\n" + run.all());
        return run.out();
    }

    private void twoRuns() {
        done("runs", "add", "case.yaml", "--laps", "out 92.5 92.4 92.3", "--book", "book", "--rules", "mine");
        done("runs", "add", "--changed", "front-bump softer", "--complaint", "kerb-hop slight", "--laps", "out 92.4 92.3 92.2",
                "--book", "book", "--rules", "mine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"list", "show 2", "compare 1 2", "judge", "judge 2 better --on kerb-hop", "plan", "draw"})
    @DisplayName("a book that has it is read where the pack is named with --rules, and where it is on the shelf")
    void book(String command) {
        twoRuns();
        assertTrue(done(("runs " + command + " --book book --rules mine").split(" ")).length() > 0);
        done("rules", "pack", "mine", "-o", "kerbs.zip");
        done("rules", "shelf", "add", "kerbs.zip");
        assertTrue(done(("runs " + command + " --book book").split(" ")).length() > 0);
    }

    @Test
    @DisplayName("without the pack it is said that a pack may be missing, in a case and in what is typed")
    void missing() {
        String hint = "a pack's own word wants its pack: --rules DIR";
        Bench.Run read = bench.run("read", "case.yaml");
        assertEquals(ExitCode.WRONG_INPUT, read.code());
        assertTrue(read.err().contains(hint), read.err());
        Bench.Run typed = bench.run("runs", "add", "--complaint", "kerb-hop", "--book", "book");
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().contains("is no word of a complaint"), typed.err());
        assertTrue(typed.err().contains(hint), typed.err());
    }

    @Test
    @DisplayName("read and observe take a case that has it")
    void read() {
        assertTrue(done("read", "case.yaml", "--rules", "mine").contains("Kerbs"));
        bench.file("run.csv", MadeLogs.clean());
        done("observe", "run.csv", "--with", "case.yaml", "--rules", "mine");
        done("rules", "pack", "mine", "-o", "kerbs.zip");
        done("rules", "shelf", "add", "kerbs.zip");
        done("read", "case.yaml");
        done("observe", "run.csv", "--with", "case.yaml");
    }
}
