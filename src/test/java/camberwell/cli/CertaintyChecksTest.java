package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Certainties that can never act, and measurements that speak against themselves")
class CertaintyChecksTest {

    private static final String KERBS = "the driver reports kerb-instability";
    private static final String ASKS = rule("Hot rims: softer", "hot-rims", "hot-rims is likely",
            "propose front-bump softer with certainty 0.9");

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("mine/knowledge-notes/causes/hot-rims.md", note("cause"));
    }

    private List<String> causes(String... rules) {
        bench.file("mine/2-causes/rims.dslr", String.join("", rules)).file("mine/3-changes/rims.dslr", ASKS);
        return bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/")).toList();
    }

    private static String finds(String name, String when, String certainty) {
        return rule(name, "hot-rims", when, "find hot-rims with certainty " + certainty);
    }

    private static String against(String name, String when) {
        return rule(name, "hot-rims", when, "speak against hot-rims with certainty 0.4");
    }

    @Test
    @DisplayName("two little words that add up to enough are welcome: 0.15 + 0.15 - 0.15 x 0.15 is 0.27 (EMYCIN)")
    void littleWordsAddUp() {
        assertEquals(List.of(), causes(finds("Hot rims", KERBS, "0.15"),
                finds("Hot rims too", "the driver reports bottoming", "0.15")));
    }

    @Test
    @DisplayName("the same two are told where they exclude each other, each at its line")
    void unlessTheyExcludeEachOther() {
        assertEquals(List.of("mine/2-causes/rims.dslr:8:5: \"find hot-rims with certainty 0.15\" never acts: with all that "
                + "can speak for it "
                + "beside, it comes to 0.15, and a finding counts from 0.20 on [check 12]",
                "mine/2-causes/rims.dslr:17:5: \"find hot-rims with certainty 0.15\" never acts: with all that can speak for "
                        + "it beside, it "
                + "comes to 0.15, and a finding counts from 0.20 on [check 12]"),
                causes(finds("Hot rims", KERBS + "\nthe surface is wet", "0.15"),
                        finds("Hot rims too", KERBS + "\nthe surface is dry", "0.15")));
    }

    @Test
    @DisplayName("a rule is no surer than what it stands on, and advice to the driver costs less certainty than a change")
    void standsOnLittle() {
        bench.file("mine/2-causes/rims.dslr", finds("Hot rims", KERBS, "0.3"))
                .file("mine/5-driving/rims.dslr", rule("Hot rims: less kerb", "hot-rims", "hot-rims is likely",
                "advise the driver use-less-kerb with certainty 0.2"))
                .file("mine/3-changes/rims.dslr", rule("Hot rims: softer", "hot-rims", "hot-rims is likely",
                "propose front-bump softer with certainty 0.6"));
        assertEquals(List.of(), bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/"))
                .toList());
        bench.file("mine/3-changes/rims.dslr", rule("Hot rims: softer", "hot-rims", "hot-rims is nearly certain",
                "propose front-bump softer with certainty 0.6"))
                .file("mine/5-driving/rims.dslr", rule("Hot rims: less kerb", "hot-rims", "hot-rims is nearly certain",
                "advise the driver use-less-kerb with certainty 0.2"));
        assertEquals(List.of("mine/2-causes/rims.dslr:7:5: \"find hot-rims with certainty 0.3\" never acts: with all that can "
                + "speak for it "
                + "beside, it comes to 0.30, and a finding counts from 0.60 on [check 12]"),
                bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/")).toList());
    }

    @Test
    @DisplayName("a tread inside its window is no evidence against a finding that a tread above it is evidence for")
    void insideAgainstAbove() {
        assertEquals(List.of("mine/2-causes/rims.dslr:9:1: the rule \"Cool rims\" takes \"the front tyres are inside their "
                + "window\" for "
                + "evidence against \"hot-rims\", of which \"Hot rims\" (mine/2-causes/rims.dslr:1) takes the contrary for "
                        + "evidence: no "
                + "measurement speaks against itself; name the other witness that it contradicts [check 13]"),
                causes(finds("Hot rims", "the front tyres are above their window", "0.5"),
                against("Cool rims", "the front tyres are inside their window")));
    }

    @Test
    @DisplayName("against another witness it may well be held, and so may the opposite reading")
    void againstAnotherWitness() {
        assertEquals(List.of(), causes(finds("Hot rims", "the front tyres are above their window", "0.5"),
                finds("Smell of hot rims", "the driver reports overheating", "0.3"),
                against("Cool rims", "the front tyres are inside their window\nthe driver reports overheating"),
                against("Cold rims", "the front tyres are below their window")));
    }

    @Test
    @DisplayName("the other axle is another measurement, and so is another figure")
    void anotherMeasurement() {
        assertEquals(List.of(), causes(finds("Hot rims", "the front tread is above 90 °C", "0.5"),
                against("Cool rims", "the rear tread is below 90 °C"), against("Cold rims", "the front tread is below 60 °C")));
    }
}
