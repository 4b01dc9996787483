package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import nu.validator.client.EmbeddedValidator;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The page that is taken home, of a book of runs, of a talk and of a log")
class SheetOfRunsTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));
    private static final Engine ENGINE = InProcess.ENGINE;
    private static final String CASE = HOME.resolve("demo-cases/pushes-in-snaps-out.yaml").toString();
    private static final String COUPE = HOME.resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    private Path folder;

    private Ran run(String typed, String... arguments) {
        Ran ran = Ran.in(folder, 80, typed, ENGINE, arguments);
        assertEquals("", ran.err());
        return ran;
    }

    private String page(String name) throws IOException {
        return Files.readString(folder.resolve(name));
    }

    @Test
    @DisplayName("has the runs, their lap times as JSON has them, what came of each change, and the plan that runs plan makes")
    void ofABook() throws Exception {
        run("", "runs", "add", CASE, "--laps", "out 92.52 92.51 92.38 92.32 92.20 92.37");
        run("", "runs", "add", "--changed", "rear-toe toe-in 2", "--laps", "out 92.35 92.45 92.39 92.27 92.18 92.20",
                "--complaint", "snap-oversteer exit slow slight", "--complaint", "understeer entry slow clear");
        run("", "sheet", "--book", "runs", "-o", "today.html");
        String page = page("today.html");
        assertTrue(page.contains("<h2>The runs so far</h2>"), page);
        assertTrue(page.contains("rear toe, more toe-in, 0.15 \u2192 0.25 deg"), page);
        assertTrue(page.contains("snap oversteer at exit in slow corners: strong \u2192 slight (it helped)"), page);
        JsonNode compared = new ObjectMapper().readTree(run("", "runs", "compare", "1", "2", "--format", "json").out());
        assertTrue(page.contains("lap time"), compared.toString());
        JsonNode plan = new ObjectMapper().readTree(run("", "runs", "plan", "--format", "json").out());
        for (JsonNode planned : plan.path("runs")) {
            assertTrue(page.contains("Run " + planned.path("run").asInt() + ": "), planned.toString());
        }
        EmbeddedValidator checker = new EmbeddedValidator();
        checker.setOutputFormat(EmbeddedValidator.OutputFormat.JSON);
        List<String> wrong = new ArrayList<>();
        new ObjectMapper().readTree(checker.validate(new ByteArrayInputStream(page.getBytes(StandardCharsets.UTF_8))))
                .path("messages").forEach(message -> {
                    if (message.path("type").asText().equals("error")) {
                        wrong.add(message.path("message").asText());
                    }
                });
        assertEquals(List.of(), wrong);
    }

    @Test
    @DisplayName("is written at the end of a debrief, never over a file that is there")
    void ofATalk() throws IOException {
        String typed = "it pushes on the way in, slow corners\ncar\nno\nno\n\nsheet\nsheet tonight.html\nsheet tonight.html\n\n";
        Ran ran = run(typed, "debrief", "--car", COUPE, "--for", "newcomer");
        assertTrue(ran.out().contains("Where? sheet FILE"), ran.out());
        assertTrue(ran.out().contains("Saved: tonight.html"), ran.out());
        assertTrue(ran.out().contains("is there already"), ran.out());
        assertTrue(page("tonight.html").contains("<h2>What was said</h2>"), page("tonight.html"));
    }

    @Test
    @DisplayName("tells what a log shows apart from what the driver said")
    void ofALog() throws IOException {
        Files.writeString(folder.resolve("run3.yaml"), "car: " + COUPE + "\nreports:\n- {symptom: understeer, phase: exit}\n"
                + "- {symptom: oversteer, phase: entry, measured: slip angle of the rear, certainty: 0.6}\n");
        run("", "sheet", "run3.yaml", "-o", "log.html");
        String page = page("log.html");
        String said = page.substring(page.indexOf("What was said"), page.indexOf("What the log shows"));
        assertTrue(said.contains("ndersteer at exit"), said);
        assertFalse(said.contains("versteer at entry"), said);
        assertTrue(page.contains("slip angle of the rear"), page);
    }
}
