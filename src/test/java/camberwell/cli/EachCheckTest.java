package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.language.Check;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Each numbered check trips on its seeded fault, and no other does")
class EachCheckTest {

    private static final Pattern NUMBER = Pattern.compile("\\[check ([0-9]+)]");
    private static final String KERBS = "the driver reports kerb-instability";
    private static final String SOFTER = "propose front-bump softer with certainty 0.35";
    private static final String CHANGES = "mine/3-changes/kerbs.dslr";
    private static final String CAUSES = "mine/2-causes/rims.dslr";
    private static final String NOTE = "mine/knowledge-notes/causes/hot-rims.md";
    private static final String FINDS = "find hot-rims with certainty 0.4";

    @TempDir
    private Path directory;

    @ParameterizedTest
    @EnumSource
    void trips(Check check) {
        Bench bench = new Bench(directory);
        seed(check, bench);
        Bench.Run run = bench.run("rules", "check", "mine");
        assertEquals(1, run.code(), run.all());
        List<String> tripped = NUMBER.matcher(run.out()).results().map(MatchResult::group).distinct().toList();
        assertEquals(List.of("[check " + check.number() + "]"), tripped, run.out());
    }

    /** A folder with that fault and none besides. */
    private static void seed(Check check, Bench bench) {
        switch (check) {
            case NEVER_FIRES -> bench.file(CHANGES, rule("Kerbs: softer", "the surface is wet\nthe surface is dry", SOFTER));
            case SAYS_BOTH -> bench.file(CHANGES, rule("Kerbs: both", KERBS, SOFTER
                    + "\npropose front-bump stiffer with certainty 0.2"));
            case OPPOSITE -> bench.file(CHANGES, rule("Kerbs: down", KERBS, "propose front-pressure lower with certainty 0.3")
                    + rule("Kerbs: up", KERBS, "propose front-left-pressure higher with certainty 0.3"));
            case COVERED -> bench.file(CHANGES, rule("Kerbs: softer", KERBS, SOFTER)
                    + rule("Kerbs at exit: softer", KERBS + "\n- at exit", SOFTER));
            case CIRCLE -> bench.file(NOTE, note("cause")).file(CAUSES,
                    rule("Hot rims", "hot-rims", "front-tyres-cold is likely", FINDS)
                    + rule("Cold tyres", "hot-rims", "hot-rims is likely", "find front-tyres-cold with certainty 0.4"));
            case LEADS_NOWHERE -> bench.file(NOTE, note("cause")).file(CAUSES, rule("Hot rims", "hot-rims", KERBS, FINDS));
            case NOBODY_FINDS -> bench.file(NOTE, note("cause"))
                    .file(CHANGES, rule("Hot rims: softer", "hot-rims", "hot-rims is likely", SOFTER));
            case NO_WAY_TO -> bench.file(NOTE, note("cause")).file(CHANGES, rule("Kerbs: softer", KERBS, SOFTER));
            case TWICE -> bench.file(CHANGES, rule("Kerbs: softer", KERBS + "\n" + KERBS, SOFTER));
            case LACKS -> bench.file(CHANGES, rule("Kerbs: softer",
                    KERBS + "\nthe car has no adjustable front-bump", SOFTER));
            case DEAD_CHAIN -> bench.file(NOTE, note("cause"))
                    .file(CAUSES, rule("Hot rims", "hot-rims", KERBS + "\nthe surface is wet", FINDS))
                    .file(CHANGES, rule("Hot rims: softer", "hot-rims", "hot-rims is likely\nthe surface is dry", SOFTER));
            case NEVER_ACTS -> bench.file(NOTE, note("cause"))
                    .file(CAUSES, rule("Hot rims", "hot-rims", KERBS, "find hot-rims with "
                    + "certainty 0.1") + rule("Hot rims too", "hot-rims", "the driver reports bottoming",
                    "find hot-rims with certainty 0.1"))
                    .file(CHANGES, rule("Hot rims: softer", "hot-rims", "hot-rims is likely",
                    "propose front-bump softer with certainty 0.9"));
            case COMPLEMENT -> bench.file(NOTE, note("cause"))
                    .file(CAUSES, rule("Hot rims", "hot-rims", "the front tread is above 90 °C",
                    FINDS) + rule("Cool rims", "hot-rims", "the front tread is below 90 °C",
                            "speak against hot-rims with certainty 0.4"))
                    .file(CHANGES, rule("Hot rims: softer", "hot-rims", "hot-rims is likely",
                    "propose front-bump softer with certainty 0.9"));
            default -> throw new IllegalStateException("no fault is seeded for " + check);
        }
    }

    @Test
    @DisplayName("has a number of its own, and is listed with it")
    void listed() {
        Bench.Run run = new Bench(directory).run("rules", "check", "--list");
        assertEquals(0, run.code());
        assertEquals(Check.values().length,
                new HashSet<>(Arrays.stream(Check.values()).map(Check::number).toList()).size());
        for (Check check : Check.values()) {
            assertTrue(run.out().contains(String.valueOf(check.number())), check.name());
        }
    }
}
