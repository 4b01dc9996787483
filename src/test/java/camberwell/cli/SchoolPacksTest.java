package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Packs as instructors write them, with nothing but the list of sentences; the rules are invented. */
@DisplayName("A school's own packs: checked, packed, put on the shelf and heard in the advice")
class SchoolPacksTest {

    private static final Path PACKS = Path.of("src", "test", "resources", "packs").toAbsolutePath();

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() throws IOException {
        bench = new Bench(directory);
        try (Stream<Path> files = Files.walk(PACKS)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                bench.file(PACKS.relativize(file).toString().replace('\\', '/'), Files.readString(file));
            }
        }
    }

    private JsonNode json(String... arguments) throws IOException {
        Bench.Run run = bench.run(arguments);
        assertEquals(0, run.code(), run.all());
        return new ObjectMapper().readTree(run.out());
    }

    private static List<String> of(JsonNode list, String first, String second) {
        List<String> words = new ArrayList<>();
        list.forEach(entry -> words.add(entry.get(first).asText() + (second.isEmpty() ? ""
                : " " + entry.get(second).asText())));
        return words;
    }

    @ParameterizedTest
    @DisplayName("at least 25 rules each, all of them well, packed, on the shelf without --rules, and named by list")
    @CsvSource({"front-drive-hatches,1.2", "winged-single-seaters,0.9", "ovals,2.0"})
    void adopted(String name, String version) throws IOException {
        JsonNode checked = json("rules", "check", name, "--format", "json");
        assertEquals(0, checked.get("problems").size(), checked.toString());
        assertTrue(checked.get("rules").asInt() >= 25, checked.toString());
        Bench.Run packed = bench.run("rules", "pack", name, "-o", name + ".zip");
        assertEquals(0, packed.code(), packed.all());
        assertEquals(0, bench.run("rules", "shelf", "add", name + ".zip").code());
        JsonNode listed = json("rules", "list", "--format", "json").get("packs").get(0);
        assertEquals(name + " " + version, listed.get("pack").asText());
        assertEquals(0, listed.get("obstacles").size(), listed.toString());
        assertEquals(1, listed.get("cases").asInt());
    }

    private JsonNode advice(String pack, String run) throws IOException {
        bench.run("rules", "pack", pack, "-o", pack + ".zip");
        bench.run("rules", "shelf", "add", pack + ".zip");
        return json("advise", "--format", "json", "--top", "30", pack + "/demo-cases/" + run + ".yaml");
    }

    @Test
    @DisplayName("cold rears of a light hatch: air first, the bar waits, and the newcomer trails the brake")
    void hatch() throws IOException {
        JsonNode advice = advice("front-drive-hatches", "pushes-in-the-hairpin");
        assertTrue(of(advice.get("findings"), "id", "").containsAll(List.of("rear-never-warms", "front-does-all-the-work")));
        assertEquals("rear-pressure higher", of(advice.get("changes"), "adjuster", "direction").get(0));
        assertEquals("front-drive-hatches 1.2", advice.get("changes").get(0).get("pack").asText());
        assertTrue(of(advice.get("withheld"), "adjuster", "direction").contains("rear-anti-roll-bar stiffer"));
        assertEquals("trail-to-turn", advice.get("driving").get(0).get("note").asText());
        assertEquals("front-drive-hatches 1.2", advice.get("driving").get(0).get("pack").asText());
    }

    @Test
    @DisplayName("a floor that stalls: the nose goes up first, by as much as the instructor says")
    void singleSeater() throws IOException {
        JsonNode first = advice("winged-single-seaters", "bobs-on-the-straight").get("changes").get(0);
        assertEquals("front-ride-height higher", first.get("adjuster").asText() + " " + first.get("direction").asText());
        assertEquals(2, first.get("steps").asInt());
        assertEquals("Floor stalls: front up two millimetres", first.get("put-first").get(0).asText());
    }

    @Test
    @DisplayName("an oval's right front: camber and its own air, and one lane up for the driver")
    void oval() throws IOException {
        JsonNode advice = advice("ovals", "pushes-when-the-right-front-is-hot");
        List<String> changes = of(advice.get("changes"), "adjuster", "direction");
        assertTrue(changes.containsAll(List.of("front-camber more-negative", "front-right-pressure higher")),
                changes::toString);
        assertEquals("up-a-lane", advice.get("driving").get(0).get("note").asText());
    }

    @Test
    @DisplayName("what a pack says otherwise is named: rules that it switches off, thresholds, words and questions")
    void visible() throws IOException {
        String list = bench.run("rules", "list", "--rules", "winged-single-seaters").out().replaceAll("\\s+", " ");
        for (String named : List.of("Switches off the rule \"Kerbs unsettle the car: take less of them\"",
                "Threshold cold-track 18 °C instead of 15 °C", "Threshold long-run 20 laps instead of 15 laps",
                "Words porpoising")) {
            assertTrue(list.contains(named), list);
        }
        assertTrue(bench.run("rules", "list", "--rules", "ovals").out().contains("groove"));
        assertTrue(bench.run("rules", "sentences", "track", "cold", "--rules", "winged-single-seaters").out()
                .contains("cold: below 18 °C"));
    }

    @Test
    @DisplayName("a word of a pack is known with the pack alone, and two packs together do not disturb each other")
    void words() {
        String run = "winged-single-seaters/demo-cases/bobs-on-the-straight.yaml";
        assertEquals(2, bench.run("advise", run).code());
        assertEquals(0, bench.run("advise", "--rules", "ovals", "--rules", "winged-single-seaters", run).code());
        assertTrue(bench.run("rules", "compare", "winged-single-seaters", "winged-single-seaters+ovals", "--cases",
                "winged-single-seaters/demo-cases").out().contains("the advice is the same on all of them"));
    }
}
