package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.Trackside;
import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ReadCommandTest {

    private static final Path FOLDER = Path.of("src/test/resources/read");
    private static final String CASE = FOLDER.resolve("warm-afternoon.yaml").toString();

    @ParameterizedTest
    @ValueSource(ints = {80, 40})
    @DisplayName("the reading as people see it, on a screen and on a phone")
    void text(int width) throws IOException {
        Typed typed = Typed.on(width, "", "read", CASE);
        Golden.check(FOLDER.resolve("warm-afternoon-" + width + ".txt"), typed.out());
        assertTrue(typed.out().lines().allMatch(line -> line.length() <= width), typed.out());
        assertEquals(ExitCode.DONE, typed.code());
    }

    @Test
    @DisplayName("the same for programs: figures, then readings with their clearness and which one decides")
    void json() {
        JsonNode read = Typed.run("read --format json " + CASE).json();
        assertEquals("left", read.path("loaded-in-turns").asText());
        JsonNode tyre = read.path("tyres").get(1);
        assertEquals("front-right", tyre.path("wheel").asText());
        assertTrue(tyre.path("loaded").asBoolean());
        assertEquals(24, tyre.path("tread-kelvin").path("inner-less-outer").asDouble());
        assertEquals(1.9, tyre.path("hot-pressure").path("value").asDouble());
        assertEquals("bar", tyre.path("hot-pressure").path("unit").asText());
        assertEquals(89, read.path("mean-tread-celsius").path("front").asDouble());
        JsonNode first = read.path("readings").get(0);
        assertEquals("camber", first.path("about").asText());
        assertEquals("inner-edge-hot", first.path("shows").asText());
        assertEquals(1, first.path("clearness").asDouble());
        assertTrue(first.path("decides").asBoolean());
        assertEquals(2, read.path("doubts").size());
    }

    @Test
    @DisplayName("several cases are one array, or one line each")
    void several() {
        JsonNode both = Typed.run("read --format json " + CASE + " " + CASE).json();
        assertEquals(2, both.size());
        assertEquals(both.get(0), both.get(1));
        assertEquals(2, Typed.run("read --format jsonl " + CASE + " " + CASE).out().lines().count());
    }

    @Test
    @DisplayName("a case without readings says how to take them")
    void nothingMeasured() {
        Typed typed = Typed.piped(Trackside.text("conditions: {track: 27 °C}\n"), "read -");
        assertTrue(typed.out().contains("No tyre was measured."), typed.out());
        assertEquals(0, Typed.piped(Trackside.text(""), "read --format json -").json().path("tyres").size());
    }

    @Test
    @DisplayName("a reading is no advice: nothing is proposed")
    void noAdvice() {
        assertFalse(Typed.run("read " + CASE).out().contains("from -3.0 deg"));
    }

    @Test
    @DisplayName("a case that cannot be read is told of with its place")
    void brokenCase() {
        Typed typed = Typed.piped("title: x\n", "read -");
        assertEquals(ExitCode.WRONG_INPUT, typed.code());
        assertTrue(typed.err().startsWith("-:1:1:"), typed.err());
        assertEquals("", typed.out());
    }
}
