package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.explain.DemoCases;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.w3c.dom.Document;

@DisplayName("camberwell runs: the book of runs")
class RunsCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final String CASE = "demo-cases/pushes-in-snaps-out.yaml";
    private static final String A = "out 92.52 92.51 92.38 92.32 92.20 92.37 92.26 92.23";
    private static final String B = "out 92.35 92.45 92.39 92.27 92.20 92.18 92.10 92.12";

    @TempDir
    private Path folder;

    private InProcess runs(String... words) {
        List<String> all = new ArrayList<>(List.of("runs"));
        all.addAll(List.of(words));
        all.addAll(List.of("--book", folder.resolve("book").toString()));
        return InProcess.run(80, "", all.toArray(String[]::new));
    }

    private InProcess add(String... words) {
        List<String> all = new ArrayList<>(List.of("add"));
        all.addAll(List.of(words));
        all.addAll(List.of("--date", "2026-05-03T10:20"));
        InProcess done = runs(all.toArray(String[]::new));
        assertEquals(0, done.code(), done.err());
        return done;
    }

    private void twoRuns() {
        add(CASE, "--driver", "Ada", "--track", "Home", "--laps", A);
        add("--changed", "rear-toe toe-in 2", "--laps", B, "--complaint", "snap-oversteer exit slow slight",
                "--complaint", "understeer entry slow clear");
    }

    private static JsonNode json(InProcess done) throws IOException {
        assertEquals(0, done.code(), done.err());
        return JSON.readTree(done.out());
    }

    @Test
    @DisplayName("a run carries on from the last one, and says what was changed and what came of it")
    void carriesOn() throws IOException {
        twoRuns();
        JsonNode second = json(runs("show", "2", "--format", "json"));
        assertEquals("Ada", second.path("driver").asText());
        assertEquals("0.25 deg", second.path("setup").path("rear-toe").asText());
        assertEquals("rear-toe toe-in", second.path("changed").path(0).path("change").asText());
        JsonNode judgement = second.path("judgement");
        assertEquals("faster, perhaps by little", judgement.path("lap-times").path("verdict").asText());
        assertEquals("snap-oversteer", judgement.path("complaints").path(1).path("on").asText());
        assertEquals("better", judgement.path("complaints").path(1).path("outcome").asText());
        assertEquals("laps", judgement.path("outcomes").path(1).path("judged-by").asText());
    }

    @Test
    @DisplayName("a run is told in the driver's own words, in its case or beside it, and what was understood stands in the book")
    void ownWords() throws IOException {
        Path said = folder.resolve("said.yaml");
        Files.writeString(said, "car: " + DemoCases.HOME.resolve("demo-cases/cars/corvane-coupe.yaml")
                + "\nsay: pushes on the way in\n");
        assertTrue(add(said.toString()).out().contains("Heard: understeer at entry."));
        assertTrue(add("--changed", "front-bump softer", "--say", "still pushes a bit on the way in, and the flux is odd").out()
                .contains("Not understood: \"flux\""));
        assertTrue(Files.readString(folder.resolve("book/0001-corvane-coupe.yaml"))
                .contains("{symptom: understeer, phase: entry}"));
        assertEquals("better", json(runs("show", "2", "--format", "json")).path("judgement").path("complaints").path(0)
                .path("outcome").asText());
        assertEquals(ExitCode.WRONG_INPUT, runs("add", "--say", "flux").code());
    }

    @Test
    @DisplayName("where the driver says that nothing is wrong, each complaint of the run before is better")
    void fine() throws IOException {
        Path said = folder.resolve("said.yaml");
        Files.writeString(said, "car: " + DemoCases.HOME.resolve("demo-cases/cars/corvane-coupe.yaml")
                + "\nsay: pushes on the way in, loose off\n");
        add(said.toString());
        add("--changed", "front-bump softer", "--say", "fine");
        JsonNode outcomes = json(runs("show", "2", "--format", "json")).path("judgement").path("outcomes");
        assertEquals(2, outcomes.size());
        assertEquals("better", outcomes.path(0).path("outcome").asText());
        assertEquals("understeer", outcomes.path(0).path("on").asText());
        assertEquals("better", outcomes.path(1).path("outcome").asText());
    }

    @Test
    @DisplayName("the car's file may be edited later: each run keeps the settings that were driven")
    void wholeSetup() throws IOException {
        Path car = folder.resolve("car.yaml");
        Files.writeString(car, Files.readString(DemoCases.HOME.resolve("demo-cases/cars/corvane-coupe.yaml")));
        add("--car", car.toString(), "--laps", A);
        Files.writeString(car, Files.readString(car).replace("rear-toe: {now: 0.15 deg", "rear-toe: {now: 0.30 deg"));
        assertEquals("0.15 deg", json(runs("show", "1", "--format", "json")).path("setup").path("rear-toe").asText());
    }

    @Test
    @DisplayName("where nothing was changed nothing helped: the complaints are less, the same or more")
    void nothingChanged() {
        twoRuns();
        add("--laps", B, "--complaint", "understeer entry slow clear");
        String text = runs("compare", "2", "3").out();
        assertTrue(text.contains("slight -> none (less of it)") && text.contains("clear -> clear (the same)"), text);
        assertTrue(runs("compare", "1", "2").out().contains("strong -> slight (it helped)"));
    }

    @Test
    @DisplayName("runs are compared with the trend taken out, and told what they cannot tell")
    void compare() throws IOException {
        twoRuns();
        JsonNode laps = json(runs("compare", "1", "2", "--least-gain", "0.05 s", "--format", "json")).path("lap-times");
        assertEquals(-0.09125, laps.path("difference").asDouble(), 1e-6);
        assertEquals(-0.15896, laps.path("interval-95").path(0).asDouble(), 1e-5);
        assertEquals("faster, perhaps by little", laps.path("verdict").asText());
        String text = runs("compare", "1", "2").out();
        assertTrue(text.contains("out: lap 1 out-lap"), text);
        assertTrue(text.contains("8 laps each show 0.09 s"), text);
    }

    @Test
    @DisplayName("advise and explain know the book: what helped goes on, with what it did to the certainty")
    void advise() throws IOException {
        twoRuns();
        Path book = folder.resolve("book");
        JsonNode advice = json(InProcess.run(80, "", "advise", "--book", book.toString(), "--format", "json"));
        assertEquals("Run 2", advice.path("case").asText());
        JsonNode tried = Stream.concat(stream(advice.path("changes")), stream(advice.path("withheld")))
                .filter(change -> change.path("adjuster").asText().equals("rear-toe")
                        && change.path("direction").asText().equals("toe-in")).findFirst().orElseThrow().path("tried");
        assertEquals("better", tried.path("outcome").asText());
        assertTrue(tried.path("certainty-after").asDouble() > tried.path("certainty-before").asDouble());
        String explained = InProcess.run(80, "", "explain", book.resolve("0002-corvane-coupe.yaml").toString(), "--book",
                book.toString(), "--change", "rear-toe toe-in").out();
        assertTrue(explained.contains("What came of it"), explained);
        assertFalse(InProcess.run(80, "", "explain", book.resolve("0002-corvane-coupe.yaml").toString(), "--change",
                "rear-toe toe-in").out().contains("What came of it"), "without the book nothing was tried");
    }

    @Test
    @DisplayName("of several cars in one book the one that is named is advised on, else the one that ran last")
    void severalCars() throws IOException {
        twoRuns();
        String hatch = DemoCases.HOME.resolve("demo-cases/cars/larkspur-hatch.yaml").toAbsolutePath().toString();
        Files.writeString(folder.resolve("hatch-run.yaml"), "title: H\ncar: " + hatch
                + "\nreports: [{symptom: oversteer, phase: lift-off}]\n");
        String book = folder.resolve("book").toString();
        assertEquals(0, InProcess.run(80, "", "runs", "add", folder.resolve("hatch-run.yaml").toString(), "--book", book).code());
        assertTrue(InProcess.run(80, "", "advise", "--book", book).out().contains("Larkspur hatch"));
        assertTrue(InProcess.run(80, "", "advise", "--book", book, "--car", "Corvane coupe").out().contains("Corvane coupe"));
        InProcess nobody = InProcess.run(80, "", "advise", "--book", book, "--car", "Nobody");
        assertTrue(nobody.err().contains("has no run of a car called \"Nobody\""), nobody.err());
        assertEquals(2, nobody.code());
    }

    @Test
    @DisplayName("a judgement that is said stands above what was felt and timed")
    void judge() throws IOException {
        twoRuns();
        JsonNode judged = json(runs("judge", "2", "worse", "--on", "understeer entry", "--format", "json"));
        assertEquals(1, judged.path("outcomes").size());
        assertEquals("worse", judged.path("outcomes").path(0).path("outcome").asText());
        assertEquals("understeer", judged.path("outcomes").path(0).path("on").asText());
        assertTrue(Files.readString(folder.resolve("book/0002-corvane-coupe.yaml")).contains("judged:"));
    }

    @Test
    @DisplayName("a plan for the laps at hand: one change a run, what it teaches, and when to stop")
    void plan() throws IOException {
        twoRuns();
        JsonNode plan = json(runs("plan", "--laps", "40", "--format", "json"));
        assertEquals(8, plan.path("laps-each").asInt());
        assertEquals(4, plan.path("runs").size());
        assertEquals(3, plan.path("runs").path(0).path("run").asInt());
        String text = runs("plan", "--laps", "40", "--least-gain", "0.1 s").out();
        assertTrue(text.contains("Teaches") && text.contains("Stop when"), text);
        assertTrue(runs("plan", "--laps", "5").out().contains("Too few laps"));
    }

    @Test
    @DisplayName("the course of the runs is drawn in characters and as SVG, which is not written over")
    void draw() throws Exception {
        twoRuns();
        String text = runs("draw").out();
        assertTrue(text.contains("Rear toe") && text.contains("0  +2"), text);
        assertTrue(text.contains("Snap oversteer at exit in slow corners"), text);
        Path file = folder.resolve("runs.svg");
        assertEquals(0, runs("draw", "-o", file.toString()).code());
        Document svg = DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile());
        assertEquals("svg", svg.getDocumentElement().getTagName());
        assertTrue(svg.getElementsByTagName("circle").getLength() >= 16, "every lap that counts is drawn");
        assertEquals(2, runs("draw", "-o", file.toString()).code());
    }

    @Test
    @DisplayName("undo takes the last run out and keeps it")
    void undo() throws IOException {
        twoRuns();
        assertEquals(0, runs("undo").code());
        assertEquals(1, json(runs("list", "--format", "json")).size());
        assertTrue(Files.exists(folder.resolve("book/taken-back/0002-corvane-coupe.yaml")));
    }

    @Test
    @DisplayName("several cars and drivers share a book, and each car has its own history")
    void several() throws IOException {
        twoRuns();
        add("demo-cases/a-valve-lets-go.yaml", "--driver", "Ben");
        add("--car", "corvane", "--laps", A);
        JsonNode last = json(runs("show", "4", "--format", "json"));
        assertEquals("Corvane coupe", last.path("car").asText());
        assertEquals("0.25 deg", last.path("setup").path("rear-toe").asText());
        assertEquals(3, json(runs("list", "--car", "corvane", "--format", "json")).size());
        assertEquals(1, json(runs("list", "--driver", "Ben", "--format", "json")).size());
    }

    @ParameterizedTest
    @ValueSource(strings = {"add --laps 92.41,fats", "add --changed rear-wings", "add --set rear-toe=3", "show 9",
        "show seven", "compare 1", "compare 1 1", "compare 1 2 3 4", "judge 1", "add --complaint pushing",
        "add --complaint entry", "add --date tomorrow", "judge 2 --on understeer", "compare 1 2 --least-gain much",
        "list --car nobody --last 0", "add --changed rear-toe_toe-in_99", "judge 2 good"})
    @DisplayName("what is wrong is told in a line, with exit code 2, and nothing is entered")
    void wrong(String line) throws IOException {
        twoRuns();
        InProcess done = runs(Stream.of(line.split(" ")).map(word -> word.replace('_', ' ')).toArray(String[]::new));
        assertEquals(2, done.code(), done.out());
        assertFalse(done.err().isBlank());
        assertFalse(done.err().contains("\tat "), done.err());
        assertEquals(2, json(runs("list", "--format", "json")).size());
    }

    @Test
    @DisplayName("where there is no book, it is said how one begins, and none is begun by looking")
    void none() {
        InProcess done = InProcess.run(80, "", "runs", "list", "--book", folder.resolve("nowhere").toString());
        assertEquals(2, done.code());
        assertTrue(done.err().contains("runs add"), done.err());
        assertFalse(Files.exists(folder.resolve("nowhere")));
    }

    @ParameterizedTest
    @ValueSource(ints = {40, 80})
    @DisplayName("fits the screen")
    void width(int columns) {
        twoRuns();
        for (String line : List.of("list", "show 2", "compare 1 2", "judge", "plan", "draw")) {
            List<String> words = new ArrayList<>(List.of("runs"));
            words.addAll(List.of(line.split(" ")));
            words.addAll(List.of("--book", folder.resolve("book").toString()));
            String out = InProcess.run(columns, "", words.toArray(String[]::new)).out();
            assertTrue(out.lines().allMatch(it -> it.length() <= columns || !it.contains(" ")), out);
        }
    }

    private static Stream<JsonNode> stream(JsonNode array) {
        List<JsonNode> all = new ArrayList<>();
        array.forEach(all::add);
        return all.stream();
    }
}
