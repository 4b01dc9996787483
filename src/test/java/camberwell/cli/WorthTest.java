package camberwell.cli;

import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What rules check says of a proposal that comes to little, and explain of a rule that is out of use")
class WorthTest {

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("case.yaml", Bench.kerbCase());
    }

    private List<String> warnings(String when, String then) {
        bench.file("mine/3-changes/kerbs.dslr", rule("A rule of one's own", when, then));
        Bench.Run run = bench.run("rules", "check", "mine");
        assertEquals(0, run.code(), run.all());
        return run.out().lines().filter(line -> line.contains("warning: ")).toList();
    }

    @Test
    @DisplayName("a change whose note does nothing for the complaint would come last, however sure the rule")
    void nothingForTheComplaint() {
        assertEquals(List.of("mine/3-changes/kerbs.dslr:7:5: warning: the note \"caster\" names nothing that caster more does "
                + "for wheelspin, so "
                + "that the change comes last; state it in a note of your own, in the helped-by of a word of your own, or put "
                        + "the change "
                + "first"), warnings("the driver reports wheelspin", "propose caster more with certainty 1.0"));
    }

    @Test
    @DisplayName("one that the note calls worse is told so")
    void worse() {
        List<String> warnings = warnings("the driver reports overheating", "propose front-pressure lower with certainty 0.5");
        assertTrue(warnings.size() == 1 && warnings.get(0).contains("says that front-pressure lower makes it worse: overheating"),
                warnings.toString());
    }

    @Test
    @DisplayName("the surest rule that proposes the contrary for the same complaint is named, and where the two meet the advice "
            + "says that rules are at odds, not complaints")
    void contrary() {
        List<String> warnings = warnings("the driver reports understeer\n    - at mid-corner",
                "propose front-anti-roll-bar stiffer with certainty 0.8");
        assertEquals(1, warnings.size(), warnings.toString());
        assertTrue(warnings.get(0).matches(".*makes it worse: understeer, and \".+\" \\(rules/3-changes/[a-z-]+\\.dslr:\\d+\\) "
                + "proposes the contrary with certainty 0\\.\\d+;.*"), warnings.get(0));
        bench.file("bar.yaml", "name: Bar car\ndrive: rear\nadjusters:\n"
                + "  front-anti-roll-bar: {now: 4, min: 1, max: 7, step: 1}\n");
        String advice = bench.run("advise", "--rules", "mine", "--say", "pushes mid corner", "--car", "bar.yaml").out()
                .replaceAll("\\s+", " ");
        assertTrue(advice.contains("Two rules are at odds: \""), advice);
        assertTrue(advice.contains("\"A rule of one's own\" (mine/3-changes/kerbs.dslr:1) is for front anti-roll bar "
                + "stiffer"), advice);
        assertFalse(advice.contains("What is complained of pulls"), advice);
    }

    @Test
    @DisplayName("nothing is said where the note does help, where the change is put first, or where it answers a reading")
    void nothingToSay() {
        assertEquals(List.of(), warnings("the driver reports kerb-instability", "propose front-bump softer with certainty 0.4"));
        assertEquals(List.of(), warnings("the driver reports wheelspin",
                "propose caster more with certainty 0.4\nput caster more first"));
        assertEquals(List.of(), warnings("the driver reports wheelspin\nthe front tread is above 90 °C",
                "propose caster more with certainty 0.4"));
    }

    @Test
    @DisplayName("--why-not names the rules that a pack has replaced or switched off, and the pack")
    void outOfUse() {
        bench.file("mine/pack.yaml", "name: own-way\nversion: \"1.2\"\nauthor: A\nswitch-off: [PRES-14]\n")
                .file("mine/3-changes/kerbs.dslr", rule("A rule of one's own", "the driver reports kerb-instability",
                "propose front-bump softer with certainty 0.4"));
        Bench.Run run = bench.run("explain", "case.yaml", "--rules", "mine", "--why-not", "front-pressure lower");
        assertEquals(0, run.code(), run.all());
        assertTrue(run.out().contains("Rules that propose it and are out of use"), run.out());
        assertTrue(run.out().replaceAll("\\s+", " ").contains("(PRES-14): switched off by own-way 1.2"), run.out());
        Bench.Run json = bench.run("explain", "case.yaml", "--rules", "mine", "--why-not", "front-pressure lower", "--format",
                "json");
        assertTrue(json.out().replaceAll("\\s+", "").contains("\"fate\":\"switchedoffbyown-way1.2\""), json.out());
    }
}
