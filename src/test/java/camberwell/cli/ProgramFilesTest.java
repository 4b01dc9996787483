package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import camberwell.reading.Ramps;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The check of the built-in rules looks at every file that the program reads beside them")
class ProgramFilesTest {

    @TempDir
    Path home;

    @TempDir
    Path elsewhere;

    @BeforeEach
    void copy() throws IOException {
        OwnHome.copyTo(home);
    }

    private Ran run(Path directory, String... arguments) {
        return Ran.in(directory, 100, "", new Engine(home, home.resolve("cache")), arguments);
    }

    private void change(String file, String from, String to) throws IOException {
        String text = Files.readString(home.resolve(file));
        assertTrue(text.contains(from), file + " says it otherwise now: " + from);
        Files.writeString(home.resolve(file), text.replace(from, to));
    }

    /** What the check says where one thing in a file is changed, and then the file as it was again. */
    private List<String> found(String file, String from, String to) throws IOException {
        byte[] right = Files.readAllBytes(home.resolve(file));
        change(file, from, to);
        Ran ran = run(home, "rules", "check");
        Files.write(home.resolve(file), right);
        assertEquals(ExitCode.FOUND_WRONG, ran.code(), ran.all());
        return ran.out().lines().filter(line -> line.startsWith(file)).toList();
    }

    @Test
    @DisplayName("the limits of a log, drivers' phrases, the trade's words, weights, kinds of cars and what is written in DRL")
    void others() throws IOException {
        assertEquals(2, found("rules/observation.yaml", "  turn-on:", "  turn-onn:").size(), "one missing, one unknown");
        assertEquals(1, found("knowledge-notes/sayings.yaml", "\ncomplaints:", "\ncomplaint:").size());
        assertFalse(found("knowledge-notes/terms.yaml", "meaning:", "meanning:").isEmpty());
        assertEquals(2, found("rules/weights.yaml", "  risk:", "  risky:").size());
        String kind = "rules/car-classes/all-wheel-drive-saloon.yaml";
        assertEquals(2, found(kind, "\ndrive:", "\ndrivve:").size());
        assertEquals(1, found("rules/combine.drl", "then", "thn").size());
    }

    @Test
    @DisplayName("a threshold that is changed where it is shown: it is built in, and to be stated in a pack")
    void thresholds() throws IOException {
        assertEquals(List.of("rules/thresholds.yaml:4:13: \"cold-track\" is built in and is not read from here: it is 15 °C; "
                + "state it otherwise in the thresholds.yaml of a rule folder"),
                found("rules/thresholds.yaml", "cold-track: 15", "cold-track: 12"));
        for (String ramp : Ramps.shown().keySet()) {
            String line = Files.readString(home.resolve("rules/thresholds.yaml")).lines()
                    .filter(it -> it.startsWith("  " + ramp + ":")).findFirst().orElseThrow();
            List<String> found = found("rules/thresholds.yaml", line, line.replaceFirst("\\[[0-9.]+", "[0.01"));
            assertEquals(1, found.size(), line);
            assertTrue(found.get(0).contains("\"" + ramp + "\" is built in"), found.get(0));
        }
    }

    @Test
    @DisplayName("a fault is named so that it can be found from where the person is")
    void places() throws IOException {
        Path weights = home.resolve("rules/weights.yaml");
        change("rules/weights.yaml", "  risk:", "  risky:");
        for (String[] line : List.of(new String[] {"rules", "check"},
                new String[] {"advise", DemoCases.HOME.resolve("demo-cases/pushes-in-snaps-out.yaml").toString()})) {
            Ran ran = run(elsewhere, line);
            assertTrue(ran.all().startsWith(weights + ":"), ran.all());
        }
        change("rules/weights.yaml", "  risky:", "  risk:");
        change("rules/2-causes/aero.dslr", "\nwhen", "\nwhn");
        Ran check = run(elsewhere, "rules", "check");
        assertTrue(check.out().startsWith(home.resolve("rules/2-causes/aero.dslr") + ":"), check.all());
        change("rules/2-causes/aero.dslr", "\nwhn", "\nwhen");
        change("rules/dictionary.dsl", "\n[when]", "\nwhen]");
        Ran sentences = run(elsewhere, "rules", "sentences");
        assertEquals(ExitCode.WRONG_INPUT, sentences.code());
        assertTrue(sentences.err().startsWith(home.resolve("rules/dictionary.dsl") + ":"), sentences.err());
    }
}
