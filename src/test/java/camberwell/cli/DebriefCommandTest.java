package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Golden;
import camberwell.language.RuleText;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DebriefCommandTest {

    private static final Path HOME = Path.of(System.getProperty("camberwell.home"));
    private static final Engine ENGINE = InProcess.ENGINE;
    private static final String COUPE = HOME.resolve("demo-cases/cars/corvane-coupe.yaml").toString();

    @TempDir
    private Path folder;

    private Ran run(int width, String typed, String... arguments) {
        return Ran.in(folder, width, typed, ENGINE, arguments);
    }

    /** What is said of the talk itself: which question comes next is the rules' matter. */
    private static String talk(String out) {
        return out.lines().filter(line -> !line.startsWith("  ")).collect(Collectors.joining("\n")) + "\n";
    }

    @Test
    @DisplayName("a debrief reads like a talk: commands, a slip of the keyboard, an answer changed later")
    void golden() throws IOException {
        String typed = String.join("\n", "bogus", "it slides", "the front", "back", "why", "help",
                "it pushes in slow corners, and the flux is odd", "change", "back", "understeer at entry in slow corners",
                "change doing", "snap", "quit", "");
        Ran ran = run(80, typed, "debrief", "--car", COUPE);
        assertEquals("", ran.err());
        assertEquals(ExitCode.DONE, ran.code());
        Path golden = HOME.resolve("src/test/resources/debrief/scripted.expected");
        Golden.check(golden, talk(ran.out()));
    }

    @Test
    @DisplayName("advise gives the same advice on the saved case, with the car's file and with a kind of car inside")
    void saves() {
        for (List<String> car : List.of(List.of("--car", COUPE), List.<String>of())) {
            String name = car.isEmpty() ? "kind.yaml" : "coupe.yaml";
            String typed = (car.isEmpty() ? "rear-drive-club\n" : "")
                    + "oversteer exit slow, wheelspin\nreal car\nno\nno\nno\nno\n";
            Ran debrief = run(80, typed, Stream.concat(Stream.of("debrief", "--save", name), car.stream())
                    .toArray(String[]::new));
            assertEquals("", debrief.err());
            Ran advise = run(80, "", "advise", name);
            assertEquals("", advise.err());
            String advice = advise.out().replaceAll("(?m)^\\d+ more with --top \\d+\n\n?", "").strip();
            assertTrue(debrief.out().contains(advice), debrief.out() + "\n-----\n" + advice);
        }
    }

    @Test
    @DisplayName("what was answered before the input ended is saved, and --resume does not ask for it again")
    void resumes() {
        run(80, "understeer entry slow\nquit\n", "debrief", "--car", COUPE, "--save", "a.yaml");
        Ran resumed = run(80, "quit\n", "debrief", "--resume", "a.yaml", "--save", "a.yaml");
        assertEquals(ExitCode.DONE, resumed.code());
        assertFalse(resumed.out().contains("What was the car doing"), resumed.out());
    }

    @Test
    @DisplayName("a driver who says the opposite of what the log shows is asked once which is right")
    void againstTheLog() throws IOException {
        String logged = "car: " + COUPE
                + "\nreports:\n- {symptom: understeer, phase: exit, measured: steering beyond its own line, "
                + "certainty: 0.6}\n";
        for (String answer : List.of("log", "driver", "both")) {
            Files.writeString(folder.resolve("run3.yaml"), logged);
            String typed = "add it oversteers on exit\n" + answer + "\nquit\n";
            Ran ran = run(80, typed, "debrief", "--resume", "run3.yaml");
            assertEquals("", ran.err());
            assertTrue(ran.out().replaceAll("\\s+", " ").contains("Those two do not go together: the log shows"), ran.out());
            String kept = Files.readString(folder.resolve("run3.yaml"));
            assertEquals(!answer.equals("driver"), kept.contains("symptom: understeer"), kept);
            assertEquals(!answer.equals("log"), kept.contains("symptom: oversteer"), kept);
        }
    }

    @Test
    @DisplayName("a newcomer without a car file is asked what was felt and gets one change, in common steps")
    void newcomer() {
        Ran ran = run(80, "rear-drive road\n2\nmid-corner slow\nno\nno\nno\n\n", "debrief", "--for", "newcomer");
        assertTrue(ran.out().contains("the nose runs wide: you turn the wheel, and the car goes on straight"),
                    ran.out());
        assertTrue(ran.out().contains("one common step"), ran.out());
        assertFalse(ran.out().contains("\n2. "), ran.out());
    }

    @Test
    @DisplayName("who is full of a complaint before the kind of car is known is heard, and asked for the car once more")
    void complaintFirst() throws IOException {
        Ran ran = run(80, "the front won't turn in, it's a sim\nthe back slides about and the front won't bite either\n"
                + "both\n4\ndone\n", "debrief", "--save", "a.yaml");
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("Heard: a simulator.\nHeard: understeer at entry.\n\nWhat kind of car is it?"), ran.out());
        assertTrue(ran.out().contains("Heard: oversteer; understeer.\n\nWhat kind of car is it?"), ran.out());
        String kept = Files.readString(folder.resolve("a.yaml"));
        assertTrue(kept.contains("simulator: yes") && kept.contains("symptom: understeer, phase: entry")
                && kept.contains("symptom: oversteer"), kept);
    }

    @Test
    @DisplayName("why not and what if are answered before the advice is given as well")
    void early() {
        Ran ran = run(80, "understeer at entry\nwhy not camber\nwhat if the track was 40 degrees\n"
                + "why no grip at the front on exit?\n", "debrief", "--car", Path.of("demo-cases/cars/corvane-coupe.yaml").toAbsolutePath().toString());
        assertTrue(ran.out().contains("- Front camber more negative: "), ran.out());
        assertTrue(ran.out().contains("If also a track of 40 °C: "), ran.out());
        assertTrue(ran.out().contains("understeer at exit"), ran.out());
    }

    @Test
    @DisplayName("who does not know the kind of car is asked which wheels are driven, and no kind is made up")
    void unknownKind() {
        Ran ran = run(80, "unknown\nrear-wheel drive\noversteer exit slow\nso far\ndone\n", "debrief", "--save", "a.yaml");
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("Then the advice keeps to what every kind of car in this list"), ran.out());
        assertTrue(ran.out().contains("Which wheels are driven?\n  1  front-wheel drive"), ran.out());
        assertTrue(ran.out().contains("- drive: Car of unknown kind, rear-wheel drive"), ran.out());
        assertTrue(ran.out().contains("Car of unknown kind, rear-wheel drive\n"), ran.out());
        assertFalse(ran.out().contains("dry track"), ran.out());
        assertTrue(run(80, "", "advise", "a.yaml").out().contains("Car of unknown kind, rear-wheel drive"));
    }

    @Test
    @DisplayName("who knows neither is told what the answer lacks, and no rule takes any wheels for driven or not")
    void unknownDrive() throws IOException {
        String typed = "unknown\nunknown\nundersteer mid-corner slow strong\nunknown\ndone\n";
        Ran ran = run(80, typed, "debrief", "--save", "a.yaml");
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("Car of unknown kind, driven wheels unknown\n"), ran.out());
        assertEquals(2, ran.out().split("Nobody knows which wheels are driven, so", -1).length - 1, ran.out());
        assertTrue(Files.readString(folder.resolve("a.yaml")).contains("  drive: unknown\n"));
        Ran advise = run(80, "", "advise", "a.yaml", "--format", "json");
        assertEquals("", advise.err());
        List<RuleText> fired = ENGINE.rules().rules().values().stream()
                .filter(rule -> advise.out().contains("\"" + rule.name() + "\"")).toList();
        assertFalse(fired.isEmpty());
        fired.forEach(rule -> assertTrue(rule.conditions().stream().noneMatch(condition -> condition.head().text()
                .matches(".*(wheel drive|wheels are (not )?driven)")), rule.name()));
    }

    @Test
    @DisplayName("the kind of car, remembered later, takes the place of the driven wheels that were said without it")
    void kindRememberedLater() {
        Ran ran = run(80, "unknown\nfront\nundersteer\nchange car\nwinged\nso far\nquit\n", "debrief");
        assertTrue(ran.out().contains("- car: Winged single-seater on slicks, rear-wheel drive"), ran.out());
        String after = ran.out().substring(ran.out().indexOf("Answered"));
        assertFalse(after.contains("- drive:"), after);
        assertTrue(after.contains("- doing: understeer"), after);
    }

    @Test
    @DisplayName("the transcript has every question, its answer and the advice")
    void transcript() throws IOException {
        run(80, "understeer\nentry slow\nreal car\nno\nno\n", "debrief", "--car", COUPE, "--transcript", "talk.md");
        String text = Files.readString(folder.resolve("talk.md"));
        assertTrue(text.startsWith("# Debrief: Corvane coupe\n"), text);
        assertTrue(text.contains("- What was the car doing? In your own words or from the list, the worst first.\n  "
                + "**understeer**\n"), text);
        assertTrue(text.contains("## Advice"), text);
    }

    @Test
    @DisplayName("neither a transcript nor a case is ever written over, and --resume saves where it was read")
    void neverOver() throws IOException {
        run(80, "understeer entry slow\nquit\n", "debrief", "--car", COUPE, "--save", "a.yaml", "--transcript", "a.md");
        String before = Files.readString(folder.resolve("a.md"));
        Ran again = run(80, "understeer\n", "debrief", "--car", COUPE, "--transcript", "a.md");
        assertEquals(ExitCode.WRONG_INPUT, again.code());
        assertTrue(again.err().contains("stands there already"), again.err());
        assertEquals(before, Files.readString(folder.resolve("a.md")));
        run(80, "simulator\nno\nquit\n", "debrief", "--resume", "a.yaml");
        String saved = Files.readString(folder.resolve("a.yaml"));
        assertTrue(saved.contains("simulator: yes"), saved);
        assertFalse(saved.contains("surface"), saved);
        Ran resumed = run(80, "change\nquit\n", "debrief", "--resume", "a.yaml");
        assertFalse(resumed.out().contains("simulator?"), resumed.out());
        assertFalse(resumed.out().contains("read when the car came in?"), resumed.out());
    }

    @Test
    @DisplayName("after the advice the prompt stays open: why, what if, add, save")
    void afterTheAdvice() {
        Ran ran = run(80, "oversteer exit slow\nreal car\nno\nno\nno\nwhy\nwhat if it was wet\nexplain\nadd bottoming\n"
                + "save b.yaml\n", "debrief", "--car", COUPE);
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("In short\n"), ran.out());
        assertTrue(ran.out().contains("If also wet track: "), ran.out());
        assertTrue(ran.out().contains("Heard: bottoming."), ran.out());
        assertTrue(Files.exists(folder.resolve("b.yaml")), ran.out());
    }

    @Test
    @DisplayName("after the advice another change may be asked about: why not that one, in the driver's own words")
    void whyNot() {
        Ran ran = run(80, "oversteer exit slow\nreal car\nno\nno\nno\nwhy not camber?\nwhy not a softer rear bar\nwhy not toe\n"
                + "why not the wipers\n", "debrief", "--car", COUPE);
        assertEquals("", ran.err());
        String out = ran.out().replaceAll("\\s+", " ");
        assertTrue(out.contains("Nothing that was told asks for front camber more negative, or front camber less negative"), out);
        assertTrue(out.contains("- Rear anti-roll bar softer: it is advised: number 1 of "), out);
        assertTrue(out.contains("- Rear toe, less toe-in: "), out);
        assertTrue(out.contains("Why not what? Name what can be changed"), out);
    }

    @Test
    @DisplayName("what was tried before and did not help is not advised again, and is kept with the case")
    void triedBefore() throws IOException {
        Ran ran = run(80, "oversteer exit slow\nreal car\ni tried a softer rear bar already, no difference\nno\nno\nno\n",
                "debrief",
                "--car", COUPE, "--save", "c.yaml");
        assertEquals("", ran.err());
        assertTrue(ran.out().contains("Heard: rear anti-roll bar softer was tried: no difference."), ran.out());
        assertFalse(ran.out().contains("1. Rear anti-roll bar: "), ran.out());
        assertTrue(Files.readString(folder.resolve("c.yaml")).contains("{change: rear-anti-roll-bar softer, outcome: same}"),
                Files.readString(folder.resolve("c.yaml")));
    }

    @Test
    @DisplayName("a complaint that is told in one breath with a change is heard as a complaint")
    void triedAndComplained() {
        Ran ran = run(80, "we softened the rear bar, now it is worse: oversteer on exit\nquit\n", "debrief",
                "--car",
                COUPE);
        assertTrue(ran.out().contains("oversteer at exit"), ran.out());
        assertFalse(ran.out().contains("was tried"), ran.out());
    }

    @Test
    @DisplayName("for a program each question and each answer is an object on a line, and the advice is the last")
    void lines() throws IOException {
        Ran ran = run(80, "it pushes on the way in\nslow\ncar\nno\nno\n\n\n", "debrief", "--car", COUPE, "--format", "jsonl");
        assertEquals("", ran.err());
        List<String> lines = ran.out().lines().toList();
        ObjectMapper json = new ObjectMapper();
        JsonNode first = json.readTree(lines.get(0)).get("question");
        assertEquals("doing", first.get("field").asText());
        assertEquals("understeer", first.get("choices").get(0).asText());
        assertEquals("understeer at entry", json.readTree(lines.get(1)).get("answer").get("heard").asText());
        assertTrue(lines.stream().anyMatch(line -> line.contains("\"assumed\":[\"dry\",")), ran.out());
        JsonNode last = json.readTree(lines.get(lines.size() - 1));
        assertTrue(last.get("advice").get("changes").size() > 0, ran.out());
    }

    @Test
    @DisplayName("for a program what is asked back about is a field of the question")
    void askedBack() throws IOException {
        List<String> lines = run(80, "memorised oversteer on exit\nyes\n", "debrief", "--car", COUPE, "--format", "jsonl").out()
                .lines().toList();
        JsonNode back = new ObjectMapper().readTree(lines.get(2)).get("question");
        assertEquals("memorised oversteer on exit", back.get("not-sure").get("words").asText());
        assertEquals("oversteer at exit", back.get("not-sure").get("may-be").get(0).asText());
        assertEquals("Did you mean oversteer at exit?", back.get("ask").asText());
        assertEquals("yes", back.get("choices").get(0).asText());
        assertEquals("oversteer at exit", new ObjectMapper().readTree(lines.get(3)).get("answer").get("heard").asText());
    }

    @Test
    @DisplayName("on a narrow screen no line of the talk is wider than the screen")
    void narrow() {
        Ran ran = run(40, "understeer, snap\nwhy\nexit\nhelp\nso far\nwhat now\nno\nsim\nno\nno\n\n", "debrief", "--car", COUPE);
        ran.out().lines().forEach(line -> assertTrue(line.length() <= 40, line));
    }

    @Test
    @DisplayName("a file that stands there already is not written over, and a folder that is not there is told at once")
    void refuses() throws IOException {
        Files.writeString(folder.resolve("mine.yaml"), "title: mine\n");
        Ran there = run(80, "understeer\n", "debrief", "--car", COUPE, "--save", "mine.yaml");
        assertEquals(ExitCode.WRONG_INPUT, there.code());
        assertTrue(there.err().contains("stands there already"), there.err());
        Ran nowhere = run(80, "", "debrief", "--car", COUPE, "--save", "no/where.yaml");
        assertEquals(ExitCode.WRONG_INPUT, nowhere.code());
        Ran whom = run(80, "", "debrief", "--for", "newcomr");
        assertEquals(ExitCode.WRONG_INPUT, whom.code());
        assertTrue(whom.err().contains("did you mean newcomer?"), whom.err());
    }
}
