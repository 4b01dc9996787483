package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PredictCommandTest {

    private static final String COUPE = "demo-cases/cars/corvane-coupe.yaml";

    @TempDir
    private Path scratch;

    private Ran run(int width, String... arguments) {
        return Ran.in(Path.of(""), width, "", InProcess.ENGINE, arguments);
    }

    @Test
    @DisplayName("a softer front bar on the coupe: the whole page, as it was written down")
    void page() throws IOException {
        Path golden = Path.of("src/test/resources/predict/softer-front-bar.txt");
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-anti-roll-bar softer 1");
        assertEquals(0, outcome.code(), outcome.err());
        Golden.check(golden, outcome.out());
    }

    /** A car that pushes comes off the throttle with more lock on, and its nose comes in by more, whatever it does later. */
    @Test
    @DisplayName("where the settled turn and the first second after a lift go two ways, that is said, and only there")
    void twoWays() {
        String[] lift = {"predict", "--car", "src/benchmark/cars/all-wheel-drive-estate.yaml", "--change",
            "front-anti-roll-bar stiffer", "--phase", "lift-off"};
        Ran apart = run(80, lift);
        assertTrue(apart.out().contains("The balance goes towards understeer."), apart.out());
        assertTrue(apart.out().lines().anyMatch(line -> line.startsWith("lift-off") && line.endsWith("towards oversteer")),
                apart.out());
        assertTrue(apart.out().contains("The two tables differ at lift-off."), apart.out());
        // Each says of itself what it shows.
        assertTrue(apart.out().indexOf("Settled: ") < apart.out().indexOf("Driven through a corner"), apart.out());
        assertTrue(apart.out().indexOf("Not settled: ") > apart.out().indexOf("Driven through a corner"), apart.out());
        lift[lift.length - 1] = "mid-corner";
        assertFalse(run(80, lift).out().contains("The two tables differ"));
    }

    @Test
    @DisplayName("on a phone no line is wider than the screen")
    void phone() {
        Ran outcome = run(40, "predict", "--car", COUPE, "--change", "rear-wing more 2", "--speed", "170 km/h");
        assertEquals(0, outcome.code(), outcome.err());
        outcome.out().lines().forEach(line -> assertTrue(line.length() <= 43, line));
    }

    @Test
    @DisplayName("as JSON it has the same figures, with their units")
    void json() throws IOException {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-anti-roll-bar softer", "--format",
                "json", "--phase", "exit");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        assertEquals("exit", json.path("phase").asText());
        assertEquals("oversteer", json.path("towards").asText());
        assertTrue(json.path("limit-balance-after-percent").asDouble()
                < json.path("limit-balance-before-percent").asDouble());
        assertTrue(json.path("characteristic-after").size() > 30);
        json.path("figures").forEach(figure -> assertFalse(figure.path("unit").asText().isEmpty()));
    }

    @Test
    @DisplayName("each phase is told by the driven car, and what the steady corner cannot show is told by it alone")
    void phases() throws IOException {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "rear-anti-roll-bar softer", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        assertEquals(List.of("braking", "entry", "lift-off", "mid-corner", "exit", "kerbs"),
                json.path("phases").findValuesAsText("phase"));
        JsonNode middle = json.path("phases").get(3).path("steer-beyond-the-turn");
        assertTrue(middle.path("after").asDouble() > middle.path("before").asDouble() + 0.02, "towards understeer");
        Ran damper = run(80, "predict", "--car", COUPE, "--change", "front-bump softer 4", "--format", "json");
        JsonNode kerbs = new ObjectMapper().readTree(damper.out()).path("phases").get(5).path("thrown-up");
        assertTrue(kerbs.path("after").asDouble() < kerbs.path("before").asDouble(), "kinder over kerbs");
        assertTrue(new ObjectMapper().readTree(damper.out()).path("figures").isMissingNode());
        assertEquals(0, run(40, "predict", "--car", COUPE, "--change", "front-bump softer 4").code());
    }

    @ParameterizedTest
    @CsvSource({"corner", "lift-off", "kerb", "bumps", "step-steer", "braking-in-a-turn", "power-off", "power-on"})
    @DisplayName("a manoeuvre has its measures, its course over time and a drawing")
    void manoeuvres(String name) throws Exception {
        Path file = scratch.resolve("run.svg");
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-springs stiffer 1", "--manoeuvre", name,
                "--svg", file.toString());
        assertEquals(0, outcome.code(), outcome.err());
        assertTrue(outcome.out().contains("time, s"), outcome.out());
        assertEquals(2, DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())
                .getElementsByTagName("polyline").getLength());
        JsonNode json = new ObjectMapper().readTree(run(80, "predict", "--car", COUPE, "--change",
                "front-springs stiffer 1", "--manoeuvre", name, "--format", "json").out());
        assertEquals(name, json.path("manoeuvre").asText());
        assertTrue(json.path("history-after").size() > 20);
        json.path("measures").forEach(measure -> assertTrue(Double.isFinite(measure.path("after").asDouble())));
    }

    @Test
    @DisplayName("the throttle closed in a turn: a car with its weight in front turns in, as ISO 9816 measures it")
    void powerOff() throws IOException {
        JsonNode json = new ObjectMapper().readTree(run(80, "predict", "--car", "demo-cases/cars/larkspur-hatch.yaml",
                "--change", "rear-anti-roll-bar softer 1", "--manoeuvre", "power-off", "--format", "json").out());
        JsonNode ratio = json.path("measures").get(1);
        assertEquals("yaw-rate-ratio", ratio.path("id").asText());
        assertTrue(ratio.path("before").asDouble() > 1.02, ratio.toString());
        assertTrue(ratio.path("after").asDouble() < ratio.path("before").asDouble(), "a softer rear bar calms it");
    }

    @Test
    @DisplayName("a radius without a speed is driven at the speed that it allows")
    void radius() throws IOException {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "rear-anti-roll-bar stiffer", "--radius",
                "80 m", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        double speed = json.path("speed-kmh").asDouble() / 3.6;
        double lateral = json.path("lateral-acceleration-g").asDouble() * 9.80665;
        // v = sqrt(a R), uniform circular motion.
        assertEquals(80, speed * speed / lateral, 0.5);
    }

    @Test
    @DisplayName("the drawing is a well-formed SVG file, written whole or not at all")
    void svg() throws Exception {
        Path file = scratch.resolve("steer.svg");
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-anti-roll-bar softer 1", "--svg",
                file.toString());
        assertEquals(0, outcome.code(), outcome.err());
        var drawing = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertEquals("svg", drawing.getDocumentElement().getTagName());
        assertEquals(3, drawing.getElementsByTagName("polyline").getLength());
        try (var left = Files.list(scratch)) {
            assertEquals(List.of(), left.filter(it -> it.getFileName().toString().startsWith(".")).toList());
        }
    }

    @Test
    @DisplayName("springs that are numbered and not rated are in no model")
    void numberedSprings(@TempDir Path scratch) throws IOException {
        Path numbered = scratch.resolve("numbered.yaml");
        String coupe = Files.readString(Path.of(COUPE));
        Files.writeString(numbered, coupe.replaceAll("front-springs: \\{.*\\}",
                "front-springs: {now: 3, min: 1, max: 5, step: 1}"));
        Ran outcome = run(80, "predict", "--car", numbered.toString(), "--change", "front-springs softer 1");
        assertEquals(2, outcome.code());
        assertTrue(outcome.err().contains("is not in the models"), outcome.err());
    }

    @Test
    @DisplayName("of less air at the rear the driven car tells, phase by phase")
    void pressure() {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "rear-pressure lower 3");
        assertEquals(0, outcome.code(), outcome.err());
        assertTrue(outcome.out().contains("exit"), outcome.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "front-anti-rol-bar softer 1 | did you mean front-anti-roll-bar softer?",
        "front-anti-roll-bar sofer 1 | did you mean softer?",
        "front-anti-roll-bar softer 9 | has only 3 steps left that way",
        "front-anti-roll-bar softer 0 | steps are a whole number",
        "front-anti-roll-bar | moves softer or stiffer",
        "front-wing more 1 | the Corvane coupe has no front-wing; it is one of"})
    @DisplayName("a change that cannot be made is told in a sentence")
    void wrongChanges(String change, String told) {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", change);
        assertEquals(2, outcome.code());
        assertTrue(outcome.err().contains(told), outcome.err());
        assertEquals("", outcome.out());
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {"--speed | 80 | did you mean \"80 km/h\"?", "--speed | 900 km/h | lies between",
        "--radius | 1 m | lies between", "--phase | apex | is one of", "--surface | snow | is not known here",
        "--manoeuvre | swerve | is not known here"})
    @DisplayName("a turn that makes no sense is told in a sentence")
    void wrongTurns(String option, String value, String told) {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-anti-roll-bar softer", option, value);
        assertEquals(2, outcome.code());
        assertTrue(outcome.err().contains(told), outcome.err());
    }

    @Test
    @DisplayName("a turn that no tyre can hold is no figure, and says so")
    void tooFast() {
        Ran outcome = run(80, "predict", "--car", COUPE, "--change", "front-anti-roll-bar softer", "--speed",
                "200 km/h", "--radius", "40 m");
        assertEquals(2, outcome.code());
        assertTrue(outcome.err().contains("cannot hold that turn"), outcome.err());
    }

    @Test
    @DisplayName("the audit of the built-in rules finds nothing wrong, and says what it held against what")
    void audit() throws IOException {
        Ran outcome = run(80, "rules", "audit", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        assertEquals(0, json.path("counts").path("differs").asInt(), outcome.err());
        assertEquals(0, outcome.code());
        assertEquals(15, json.path("cars").size());
        assertTrue(run(80, "rules", "audit").out().contains("CommonRoad vehicle 2"));
    }
}
