package camberwell.cli;

import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A rule that wants one of several things: \"either\" on one line, \"or\" on the next")
class EitherOrTest {

    private static final String THEN = "propose rear-bump stiffer with certainty 0.5";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("case.yaml", Bench.kerbCase());
    }

    /** The certainty of the change that no built-in rule proposes on kerbs. */
    private double certainty(String when) throws IOException {
        bench.file("mine/3-changes/either.dslr", rule("Either will do", when, THEN));
        Bench.Run run = bench.run("advise", "--format", "json", "--rules", "mine", "case.yaml");
        assertEquals(0, run.code(), run.err());
        JsonNode advice = new ObjectMapper().readTree(run.out());
        for (String list : List.of("changes", "withheld")) {
            for (JsonNode change : advice.get(list)) {
                if (change.get("adjuster").asText().equals("rear-bump") && change.get("direction").asText().equals("stiffer")) {
                    return change.path("certainty").asDouble(0.5);
                }
            }
        }
        return advice.get("conflicts").toString().contains("Either will do") ? 0.5 : 0;
    }

    private List<String> problems(String when) {
        bench.file("mine/3-changes/either.dslr", rule("Either will do", when, THEN));
        return new ArrayList<>(bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/")
                && !line.contains(": warning: ")).toList());
    }

    @Test
    @DisplayName("one that is so is enough, whichever it is")
    void oneIsEnough() throws IOException {
        assertTrue(certainty("either the driver reports kerb-instability\nor the surface is wet") > 0);
        assertTrue(certainty("either the surface is wet\nor the driver reports kerb-instability") > 0);
        assertEquals(0, certainty("either the surface is wet\nor the driver reports oversteer"));
    }

    @Test
    @DisplayName("where all are so, the rule still speaks once, as sure as its surest way")
    void oneVoice() throws IOException {
        double alone = certainty("the driver reports kerb-instability");
        assertEquals(alone, certainty("either the driver reports kerb-instability\nor the surface is dry\n"
                + "or the car is rear-wheel drive"), 1e-9);
    }

    @Test
    @DisplayName("what else is asked has to be so in any case, and a dash narrows the line above it alone")
    void theRestStays() throws IOException {
        assertEquals(0, certainty("the surface is wet\neither the driver reports kerb-instability\nor the driver reports "
                + "understeer"));
        assertEquals(0, certainty("either the driver reports kerb-instability\n    - at exit\nor the surface is wet"));
        assertTrue(certainty("either the driver reports oversteer\n    - at exit\nor the driver reports kerb-instability") > 0);
    }

    @Test
    @DisplayName("two of them in a rule make every pair a way, and more than twelve ways are refused")
    void severalOfThem() {
        String two = "either the surface is dry\nor the surface is damp\n";
        assertEquals(List.of(), problems("the driver reports kerb-instability\n" + two + "the car is rear-wheel drive\n"
                + "either the track is hot\nor the track is cold"));
        String three = "either the surface is dry\nor the surface is damp\nor the surface is wet\n";
        assertTrue(problems(three + "the car is rear-wheel drive\n" + three + "the car has wings\n" + two).get(0)
                .endsWith("a rule has at most 12 ways through its conditions"));
    }

    @Test
    @DisplayName("half of it alone is told at its line, and what is wrong in one way is told once")
    void halfOfIt() {
        assertEquals(List.of("mine/3-changes/either.dslr:5:5: \"either\" wants a line below it that starts with \"or\""),
                problems("either the surface is wet\nthe driver reports kerb-instability"));
        assertEquals(List.of("mine/3-changes/either.dslr:6:5: \"or\" wants a line above it that starts with \"either\""),
                problems("the surface is wet\nor the driver reports kerb-instability"));
        assertEquals(List.of("mine/3-changes/either.dslr:6:23: \"wett\" is no surface: dry, damp, wet; did you mean \"wet\"?"),
                problems("either the driver reports kerb-instability\nor the surface is wett\nthe car is rear-wheel drive"));
        assertEquals(List.of("mine/3-changes/either.dslr:7:24: \"bottomming\" is no symptom; did you mean \"bottoming\"?"),
                problems("either the surface is dry\nor the surface is wet\nthe driver reports bottomming"));
    }

    @Test
    @DisplayName("for both ends as well, and each way goes by its number and letter")
    void forBothEnds() {
        bench.file("mine/3-changes/either.dslr", rule("Either at the {axle}", "front-bump",
                "the driver reports overheating\neither the {axle} tyres are above their window\nor the {axle} wheels are driven",
                "propose {axle}-pressure higher with certainty 0.3").replace("    @note", "    @id(\"EOR-1\")\n    @note"));
        assertTrue(bench.run("rules", "check", "mine").out().contains("4 rules and 0 notes checked: all is well"));
    }

    @Test
    @DisplayName("another pack takes all of its ways out by the name or the id that its author gave it")
    void switchedOffAsOne() {
        bench.file("first/3-changes/either.dslr", rule("Either will do", "the driver reports kerb-instability\n"
                + "either the surface is dry\nor the track is hot", THEN).replace("    @note", "    @id(\"EOR-1\")\n    @note"));
        for (String name : List.of("Either will do", "EOR-1")) {
            bench.file("second/pack.yaml", "name: second\nversion: \"1\"\nauthor: B\nswitch-off: [" + name + "]\n")
                    .file("second/3-changes/other.dslr", rule("Another", "the driver reports bottoming", THEN));
            Bench.Run run = bench.run("advise", "--format", "json", "--rules", "first", "--rules", "second", "case.yaml");
            assertEquals(0, run.code(), run.err());
            assertTrue(!run.out().contains("Either will do"), name);
        }
        bench.file("third/3-changes/new.dslr", rule("In its place", "the driver reports kerb-instability", THEN)
                .replace("    @note", "    @replaces(\"Either will do\")\n    @note"));
        Bench.Run run = bench.run("advise", "--format", "json", "--rules", "first", "--rules", "third", "case.yaml");
        assertEquals(0, run.code(), run.err());
        assertTrue(!run.out().contains("Either will do"), run.out());
    }

    @Test
    @DisplayName("a change goes by a figure: in the car's own steps, one at least, and never beyond its stop")
    void byAFigure() throws IOException {
        String car = Bench.kerbCase().replace("adjusters:", "adjusters:\n    front-pressure: {now: 1.80 bar, min: 1.40 bar, "
                + "max: 1.85 bar, step: 0.02 bar}");
        bench.file("case.yaml", car);
        assertEquals(1.74, to("propose front-pressure lower by 0.06 bar with certainty 0.9"), 1e-9);
        assertEquals(1.78, to("propose front-pressure lower by 0.3 kPa with certainty 0.9"), 1e-9);
        assertEquals(1.84, to("propose front-pressure higher by 0.5 bar with certainty 0.9"), 1e-9);
    }

    private double to(String then) throws IOException {
        bench.file("mine/3-changes/figure.dslr", rule("By a figure", "front-pressure", "the driver reports kerb-instability", then
                + "\nput front-pressure " + then.split(" ")[2] + " first"));
        Bench.Run run = bench.run("advise", "--format", "json", "--rules", "mine", "case.yaml");
        assertEquals(0, run.code(), run.err() + run.out());
        for (JsonNode change : new ObjectMapper().readTree(run.out()).get("changes")) {
            if (change.get("adjuster").asText().equals("front-pressure")) {
                return change.get("to").asDouble();
            }
        }
        throw new AssertionError(run.out());
    }
}
