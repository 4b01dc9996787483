package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("camberwell rules coverage")
class CoverageCommandTest {

    @Test
    @DisplayName("shows a table, the complaints that rightly get no change, and that nothing is missing")
    void table() {
        Ran run = run("rules", "coverage");
        assertEquals(ExitCode.DONE, run.code(), run.err());
        assertTrue(run.out().contains("understeer         mid-corner  FRA    FRA    FRA\n"), run.out());
        assertTrue(run.out().contains("kerb-instability   kerbs                            FRA\n"), run.out());
        assertTrue(run.out().contains("- 0 complaints without an answer\n"), run.out());
        assertTrue(run.out().contains("- wheelspin: without power no wheel spins\n"), run.out());
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 80), run.out());
    }

    @Test
    @DisplayName("gives the same as JSON: every cell with its changes, or why there is none")
    void json() throws IOException {
        Ran run = run("rules", "coverage", "--format", "json");
        assertEquals(ExitCode.DONE, run.code(), run.err());
        JsonNode coverage = new ObjectMapper().readTree(run.out());
        assertTrue(coverage.path("complete").asBoolean());
        assertEquals(0, coverage.path("never-proposed").size() + coverage.path("never-opposed").size()
                + coverage.path("unused-notes").size());
        assertTrue(coverage.path("cells").size() > 300);
        coverage.path("cells").forEach(cell ->
                assertTrue(cell.has("without") != cell.path("changes").size() > 0, cell.toString()));
    }

    @Test
    @DisplayName("help has an example")
    void help() {
        Ran run = run("rules", "coverage", "--help");
        assertEquals(ExitCode.DONE, run.code());
        assertTrue(run.out().contains("camberwell rules coverage --format json"), run.out());
    }

    private static Ran run(String... arguments) {
        return Ran.in(Path.of(""), 80, "", InProcess.ENGINE, arguments);
    }
}
