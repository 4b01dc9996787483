package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.vocabulary.Change;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExplainCommandTest {

    private static final String CASE = "demo-cases/pushes-in-snaps-out.yaml";

    @Test
    @DisplayName("A snap on the way out is followed from the report to rear toe-in, rule by rule")
    void fromReportToChange() {
        String text = explain(80, "--change", "rear-toe toe-in");
        int report = text.indexOf("strong snap oversteer at exit in slow corners");
        int finding = text.indexOf("rear-overdriven-on-exit:");
        int sentence = text.indexOf("    the driver reports snap-oversteer\n    - at exit\n");
        int change = text.indexOf("Hence rear-toe toe-in");
        int ranking = text.indexOf("Its place in the ranking");
        int source = text.indexOf("Source ");
        assertTrue(0 < report && report < finding && finding < sentence && sentence < change && change < ranking
                && ranking < source, text);
        assertTrue(text.contains("Together (EMYCIN):"), text);
        assertTrue(text.contains("rules/2-causes/exit.dslr:"), text);
    }

    @Test
    @DisplayName("A quoted sentence stands in the rule's file, at or below the line that is named")
    void quotesAsWritten() throws IOException {
        JsonNode how = new ObjectMapper().readTree(explain(80, "--format", "json")).path("how").path(0);
        for (JsonNode rule : how.path("rules")) {
            Path file = Path.of(System.getProperty("camberwell.home")).resolve(rule.path("file").asText());
            String below = String.join("\n", Files.readAllLines(file).subList(rule.path("line").asInt() - 1,
                    Files.readAllLines(file).size()));
            assertTrue(below.startsWith("rule \"" + rule.path("rule").asText()), below.lines().findFirst().orElse(""));
            for (JsonNode condition : rule.path("conditions")) {
                assertTrue(below.contains("    " + condition.path("sentence").asText() + "\n"), condition.toString());
            }
            assertEquals(rule.path("certainty").asDouble(),
                    rule.path("strength").asDouble() * rule.path("least-premise").asDouble(), 1e-4);
        }
    }

    @Test
    @DisplayName("JSON tells of every silent rule, sentence by sentence")
    void whyNotAsJson() throws IOException {
        JsonNode why = new ObjectMapper().readTree(explain(80, "--why-not", "rear-wing more", "--format", "json"))
                .path("why-not").path(0);
        assertTrue(why.path("silent").size() > 0, why.toString());
        assertTrue(why.findValues("sentence").size() > why.path("silent").size(), why.toString());
    }

    @Test
    @DisplayName("Every change of the vocabulary can be asked about")
    void everyChange() {
        for (Change change : Change.all()) {
            assertTrue(explain(80, "--why-not", change.id()).contains("\"" + change.id() + "\"?"), change.id());
        }
    }

    @Test
    @DisplayName("What if the snap came on the way in: both pieces of advice stand side by side")
    void whatIf() {
        String text = explain(80, "--if", "reports[1].phase=entry");
        assertTrue(text.contains("as it is") && text.contains("then"), text);
        assertTrue(text.contains("Rear axle overdriven on exit") || text.contains("Rear axle overdriven on"), text);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "--why-not | rear-wing sideways | rear-wing moves less or more",
        "--change | raer-wing more | did you mean rear-wing more?",
        "--if | tyres.front-left.inner | should be PATH=VALUE",
        "--if | tyres.front-left.inner=96 bar | tyres.front-left.inner=96 bar"})
    @DisplayName("What is typed wrongly is answered with what was most likely meant, and exit code 2")
    void typedWrongly(String option, String value, String said) {
        InProcess run = InProcess.run(80, "", "explain", CASE, option, value);
        assertEquals(ExitCode.WRONG_INPUT, run.code());
        assertTrue(run.err().contains(said), run.err());
    }

    @Test
    @DisplayName("--all names every rule that would have found what was not found, and leaves none to a count")
    void all() {
        String some = explain(80, "--why-not", "front-pressure lower");
        Matcher count = Pattern.compile("(\\d+) more would\\s+find").matcher(some.replaceAll("\\s+", " "));
        assertTrue(count.find() && some.replaceAll("\\s+", " ").contains("--all shows them"), some);
        String every = explain(80, "--why-not", "front-pressure lower", "--all").replaceAll("\\s+", " ");
        assertFalse(every.contains("more would find"), every);
        assertTrue(finders(every) >= finders(some.replaceAll("\\s+", " ")) + Integer.parseInt(count.group(1)), every);
    }

    private static int finders(String text) {
        return text.split("would find it, but", -1).length - 1;
    }

    @Test
    @DisplayName("An explanation fits a phone")
    void narrow() {
        for (String option : new String[] {"--change", "--why-not"}) {
            explain(44, option, "rear-toe toe-in").lines().forEach(line -> assertTrue(line.length() <= 44, line));
        }
        explain(44, "--if", "reports[1].phase=entry").lines().forEach(line -> assertTrue(line.length() <= 44, line));
    }

    private static String explain(int width, String... options) {
        String[] arguments = new String[options.length + 2];
        arguments[0] = "explain";
        arguments[1] = CASE;
        System.arraycopy(options, 0, arguments, 2, options.length);
        InProcess run = InProcess.run(width, "", arguments);
        assertEquals(ExitCode.DONE, run.code(), run.err());
        return run.out();
    }

    @Test
    @DisplayName("what if of a complaint that the driver's words make says how to ask")
    void ownWords(@TempDir Path folder) throws IOException {
        Path words = folder.resolve("words.yaml");
        Files.writeString(words, "title: a\ncar: " + Path.of(System.getProperty("camberwell.home"),
                "demo-cases/cars/corvane-coupe.yaml") + "\nsay: it pushes on the way in\n");
        Ran asked = Ran.in(folder, 80, "", InProcess.ENGINE, "explain", words.toString(), "--if", "reports[0].phase=exit");
        assertEquals(2, asked.code());
        assertEquals("--if \"reports[0].phase=exit\": the complaints of this case are the driver's own words: say them "
                + "otherwise, with \"say=it pushes on the way in\", or write them under reports\n", asked.err());
        Ran said = Ran.in(folder, 80, "", InProcess.ENGINE, "explain", words.toString(), "--if", "say=it pushes on the way out");
        assertEquals(0, said.code(), said.err());
        assertTrue(said.out().contains("If say=it pushes on the way out"), said.out());
    }
}
