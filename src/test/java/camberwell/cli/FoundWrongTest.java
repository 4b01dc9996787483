package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A script learns from the exit code that a run found something wrong")
class FoundWrongTest {

    @TempDir
    Path home;

    @BeforeEach
    void copy() throws IOException {
        OwnHome.copyTo(home);
    }

    private Ran run(String... arguments) {
        return Ran.in(Path.of(""), 80, "", new Engine(home, home.resolve("cache")), arguments);
    }

    @Test
    @DisplayName("a pressure below the minimum that was given")
    void pressure() {
        String[] fine = {"pressure", "--cold", "1.70bar", "--hot", "2.05bar", "--target", "1.90bar"};
        assertEquals(ExitCode.DONE, run(fine).code());
        assertEquals(ExitCode.FOUND_WRONG, run(Stream.concat(Stream.of(fine), Stream.of("--minimum", "1.60bar"))
                .toArray(String[]::new)).code());
    }

    @Test
    @DisplayName("a note that no rule uses leaves the coverage incomplete")
    void coverage() throws IOException {
        Files.writeString(home.resolve("knowledge-notes/causes/moon-phase.md"), "---\ntitle: Moon\nkind: cause\n"
                + "statement: The moon is full.\nplain: The moon is full.\nsources:\n  - common practice, no source\n"
                + "---\n");
        Ran ran = run("rules", "coverage");
        assertTrue(ran.out().contains("moon-phase"), ran.all());
        assertEquals(ExitCode.FOUND_WRONG, ran.code());
    }

    @Test
    @DisplayName("a note that claims the opposite of what the model shows")
    void audit() throws IOException {
        Path note = home.resolve("knowledge-notes/adjustments/front-anti-roll-bar.md");
        String right = Files.readString(note);
        String wrong = right.replace("    mirrored-except:\n",
                "    mirrored-except:\n      - {on: understeer, phase: mid-corner, effect: +2}\n");
        assertTrue(!wrong.equals(right), "the note says it otherwise now");
        Files.writeString(note, wrong);
        leave("demo-cases/cars", "corvane-coupe.yaml");
        leave("rules/reference-cars", "neutral-rear-drive.yaml");
        assertEquals(ExitCode.FOUND_WRONG, run("rules", "audit").code());
    }

    /** One car of a folder is enough to be contradicted by. */
    private void leave(String folder, String file) throws IOException {
        try (Stream<Path> cars = Files.list(home.resolve(folder))) {
            for (Path car : cars.filter(it -> !it.endsWith(file)).toList()) {
                Files.delete(car);
            }
        }
    }

    @Test
    @DisplayName("a case that cannot be read is wrong input where somebody names it, and wrong with the pack that brings it")
    void cases(@TempDir Path directory) {
        Bench bench = new Bench(directory).file("good.yaml", Bench.kerbCase()).file("bad/bad.yaml", "title: A\n")
                .file("mine/3-changes/a.dslr", Bench.rule("A", "the driver reports kerb-instability",
                        "propose front-bump softer with certainty 0.35"))
                .file("with-case/3-changes/a.dslr", Bench.rule("B", "the driver reports kerb-instability",
                        "propose front-bump softer with certainty 0.35")).file("with-case/demo-cases/bad.yaml", "title: A\n");
        assertEquals(ExitCode.DONE, bench.run("rules", "try", "mine", "--case", "good.yaml").code());
        assertEquals(ExitCode.WRONG_INPUT, bench.run("rules", "try", "mine", "--case", "nosuch.yaml").code());
        assertEquals(ExitCode.WRONG_INPUT, bench.run("rules", "try", "mine", "--case", "good.yaml", "--case", "bad/bad.yaml")
                .code());
        assertEquals(ExitCode.FOUND_WRONG, bench.run("rules", "try", "with-case").code());
        assertEquals(ExitCode.WRONG_INPUT, bench.run("rules", "compare", "built-in", "mine", "--cases", "bad").code());
        assertEquals(ExitCode.FOUND_WRONG, bench.run("rules", "compare", "built-in", "with-case").code());
    }
}
