package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
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
        for (String folder : new String[] {"rules", "knowledge-notes", "demo-cases"}) {
            try (Stream<Path> all = Files.walk(DemoCases.HOME.resolve(folder))) {
                for (Path path : all.toList()) {
                    Path to = home.resolve(DemoCases.HOME.relativize(path).toString());
                    if (Files.isDirectory(path)) {
                        Files.createDirectories(to);
                    } else {
                        Files.copy(path, to);
                    }
                }
            }
        }
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
}
