package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A class: cases of one's own, answers kept, homework handed out and in, and what is known and confused")
class TeachingTest {

    private static final Path PACKS = Path.of("src", "test", "resources", "packs").toAbsolutePath();

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() throws IOException {
        bench = new Bench(directory);
        try (Stream<Path> files = Files.walk(PACKS.resolve("ovals"))) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bench.file(PACKS.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
    }

    private static String question(String out) {
        return out.substring(0, out.indexOf("Your change:"));
    }

    @Test
    @DisplayName("the same seed draws the same cases whatever packs are on")
    void sameCases() {
        String alone = question(bench.run("quiz", "--seed", "11").out());
        assertEquals(alone, question(bench.run("quiz", "--seed", "11", "--rules", "ovals").out()));
    }

    @Test
    @DisplayName("a pack's own cases are asked, judged by the pack's rules, and kept in the pupil's file")
    void own() throws IOException {
        Bench.Run run = bench.runWith("front-anti-roll-bar softer\n", "quiz", "--own", "--rules", "ovals", "--record",
                "ada.yaml");
        assertEquals(0, run.code(), run.all());
        assertTrue(run.out().contains("The right front is done after ten laps"), run.out());
        assertTrue(run.out().contains("Camberwell advises your change too in 1 of 1 case."), run.out());
        bench.runWith("front-anti-roll-bar stiffer\n", "quiz", "--own", "--rules", "ovals", "--record", "ben.yaml");
        bench.runWith("front-anti-roll-bar stiffer\n", "quiz", "--own", "--rules", "ovals", "--record", "ben.yaml");
        JsonNode report = new ObjectMapper().readTree(bench.run("quiz", "report", "ada.yaml", "ben.yaml", "--format",
                "json").out());
        assertEquals(1, report.get("pupils").get(0).get("right").asInt());
        assertEquals(2, report.get("pupils").get(1).get("answers").asInt());
        boolean confused = false;
        for (JsonNode change : report.get("changes")) {
            confused |= change.get("instead").has("front-anti-roll-bar stiffer")
                    && change.get("instead").get("front-anti-roll-bar stiffer").get(0).asText().equals("ben");
        }
        assertTrue(confused, report.toString());
    }

    @Test
    @DisplayName("homework is handed out without the answers, handed in with a name, and marked on the same cases")
    void homework() throws IOException {
        Bench.Run out = bench.run("quiz", "--seed", "7", "--count", "2", "--homework", "monday.yaml");
        assertEquals(0, out.code(), out.all());
        String text = Files.readString(directory.resolve("monday.yaml"));
        assertFalse(text.contains("Camberwell would change"), text);
        Bench.Run nameless = bench.run("quiz", "mark", "monday.yaml");
        assertEquals(2, nameless.code());
        assertTrue(nameless.err().contains("whose answers are these?"), nameless.err());
        bench.file("monday.yaml", text.replace("pupil:\n", "pupil: Ada\n").replaceFirst("    answer:\n",
                "    answer: rear-toe toe-in\n"));
        Bench.Run marked = bench.run("quiz", "mark", "monday.yaml", "--record", "ada.yaml", "--format", "json");
        assertEquals(0, marked.code(), marked.all());
        JsonNode json = new ObjectMapper().readTree(marked.out());
        assertEquals("Ada", json.get("pupil").asText());
        assertEquals("Case 1 of 2, seed 7", json.get("cases").get(0).get("case").asText());
        assertEquals("rear-toe toe-in", json.get("cases").get(0).get("answer").asText());
        assertTrue(json.get("cases").get(1).get("answer").isNull());
        assertTrue(Files.readString(directory.resolve("ada.yaml")).contains("answer: rear-toe toe-in"));
    }
}
