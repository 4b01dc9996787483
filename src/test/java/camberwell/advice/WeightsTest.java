package camberwell.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The weights of the ranking, as they are read")
class WeightsTest {

    private static final Path BUILT_IN = Path.of("rules", "weights.yaml");

    @TempDir
    Path folder;

    @Test
    @DisplayName("the built-in ones: a complaint that comes once, or is slight, weighs less")
    void builtIn() {
        Weights weights = Weights.read(BUILT_IN);
        assertEquals(List.of(true, true), List.of(
                weights.occurrence().get(Occurrence.ONCE) < weights.occurrence().get(Occurrence.EVERY_LAP),
                weights.severity().get(Severity.SLIGHT) < weights.severity().get(Severity.STRONG)));
        // EMYCIN's threshold (Buchanan and Shortliffe, 1984).
        assertEquals(0.2, weights.leastCertainty());
    }

    @Test
    @DisplayName("a decimal comma is told with its place and what was meant")
    void comma() throws IOException {
        assertEquals(List.of("19:18: \"0,2\" has a decimal comma; did you mean \"0.2\"?"),
                problems("least-certainty: 0.2", "least-certainty: 0,2"));
        // Inside braces YAML itself sees a value of 0 and a key of 7.
        assertEquals(List.of("4:41: \"0,7\" has a decimal comma; did you mean \"0.7\"?"),
                problems("some-laps: 0.7", "some-laps: 0,7"));
    }

    @Test
    @DisplayName("what is missing, unknown or no number is told, all at once")
    void slips() throws IOException {
        String text = Files.readString(BUILT_IN).replace("clear: 1.0, ", "").replace("  risk:", "  risky:")
                .replace("driving-first: 0.4", "driving-first: 1.4").replace("clear-majority: 0.15",
                        "clear-majority: [much]");
        List<String> told = told(text);
        assertEquals(List.of("the severity \"clear\" is missing", "the weight \"risk\" is missing",
                "unknown weight \"risky\"; did you mean \"risk\"?",
                "\"driving-first\" should be a number from 0 to 1, not \"1.4\"",
                "\"clear-majority\" should be a number from 0 to 10, not a list"),
                told.stream().map(it -> it.replaceFirst("^[0-9]+:[0-9]+: ", "")).toList());
    }

    private List<String> problems(String right, String wrong) throws IOException {
        return told(Files.readString(BUILT_IN).replace(right, wrong));
    }

    private List<String> told(String text) throws IOException {
        Path file = Files.writeString(folder.resolve("weights.yaml"), text);
        return assertThrows(ProblemsException.class, () -> Weights.read(file)).problems().stream().map(Problem::text)
                .map(it -> it.substring(file.toString().length() + 1)).toList();
    }
}
