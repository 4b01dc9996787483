package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PractiseCommandTest {

    @TempDir
    private Path scratch;

    private record Outcome(int code, String out, String err) {
    }

    private Outcome run(String typed, String... arguments) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8),
                new ByteArrayInputStream(typed.getBytes(StandardCharsets.UTF_8)), Path.of(""), 80, false, false);
        int code = Main.run(console, new Engine(Path.of(""), scratch), arguments);
        return new Outcome(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    @DisplayName("the right change cures the car, and the end says what was wrong and what the advice would have done")
    void cures() {
        Outcome outcome = run("front-anti-roll-bar softer\n", "practise", "--seed", "7");
        assertEquals(0, outcome.code(), outcome.err());
        assertTrue(outcome.out().contains("The driver says:"), outcome.out());
        assertTrue(outcome.out().contains("Wrong was: rear-anti-roll-bar at 1 instead of 2"), outcome.out());
        assertTrue(outcome.out().contains("You: cured with 1 change"), outcome.out());
        assertTrue(outcome.out().contains("The advice: "), outcome.out());
    }

    @Test
    @DisplayName("the wrong change makes it worse, and is told so; what is no change is told what it should be")
    void worse() {
        Outcome outcome = run("front-anti-roll-bar stiffer\nfront-anti-rol-bar softer\nq\n", "practise", "--seed", "7");
        assertEquals(0, outcome.code(), outcome.err());
        assertTrue(outcome.out().contains(": worse. The driver says:"), outcome.out());
        assertTrue(outcome.out().contains("did you mean front-anti-roll-bar"), outcome.out());
        assertTrue(outcome.out().contains("Not cured"), outcome.out());
    }

    @Test
    @DisplayName("whoever ends it has done nothing wrong; a car that is not put right with all changes is told by the exit code")
    void ended() {
        assertEquals(0, run("", "practise", "--seed", "7").code());
        assertEquals(0, run("q\n", "practise", "--seed", "7").code());
        assertEquals(1, run("front-anti-roll-bar stiffer\n", "practise", "--seed", "7", "--changes", "1").code());
    }

    @Test
    @DisplayName("as JSON it has every change with what it took away, and the same seed gives the same")
    void json() throws IOException {
        Outcome outcome = run("rear-anti-roll-bar stiffer 1\n", "practise", "--seed", "7", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(outcome.out());
        assertTrue(json.path("yours").path("cured").asBoolean());
        JsonNode change = json.path("yours").path("changes").get(0);
        assertEquals("better", change.path("outcome").asText());
        assertEquals(0, change.path("complaints-after").asDouble(), 1e-9);
        assertTrue(change.path("told").size() > 0);
        assertEquals(outcome.out(), run("rear-anti-roll-bar stiffer 1\n", "practise", "--seed", "7", "--format",
                "json").out());
    }

    @Test
    @DisplayName("more than two wrong adjusters are no practice")
    void tooMany() {
        assertEquals(2, run("", "practise", "--wrong", "3").code());
    }
}
