package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("A rule written in a talk: for both ends, with conditions of which one will do, and with a break in between")
class NewRuleTest {

    private static final String FIRST_HALF = String.join("\n", "changes", "either the {axle} tyres are above their window",
            "or the {axle} tread is hotter in the middle", "the driver reports understeer at entry", "",
            "propose {axle}-pressure lower by 0.05 bar with certainty 0.5", "", "Hot {axle} wheels",
                    "Hot {axle} tyres want less air.") + "\n";
    private static final String SECOND_HALF = "\n\n\n\n\n";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory);
    }

    private String written() throws IOException {
        return Files.readString(directory.resolve("mine/3-changes/hot-wheels.dslr"));
    }

    @Test
    @DisplayName("one text for both ends is asked for a name that tells them apart, and passes its own check")
    void bothEnds() throws IOException {
        Bench.Run run = bench.runWith(FIRST_HALF + SECOND_HALF, "rules", "new", "Hot wheels", "--into", "mine");
        assertEquals(0, run.code(), run.all());
        assertTrue(run.out().contains("The rule stands for both ends."), run.out());
        assertEquals("""
                rule "Hot {axle} wheels"
                    @because("Hot {axle} tyres want less air.")
                    @note("hot-wheels")
                when
                    either the {axle} tyres are above their window
                    or the {axle} tread is hotter in the middle
                    the driver reports understeer at entry
                then
                    propose {axle}-pressure lower by 0.05 bar with certainty 0.5
                end
                """, written());
        assertTrue(bench.run("rules", "check", "mine").out().contains("4 rules and 1 note checked: all is well"));
        assertTrue(bench.run("rules", "try", "mine").out().contains("Hot front wheels"));
    }

    @Test
    @DisplayName("answers that are kept are taken again after a break, and nothing of them is left when the rule stands")
    void goesOn() throws IOException {
        Bench.Run broken = bench.runWith(FIRST_HALF, "rules", "new", "Hot wheels", "--into", "mine", "--answers", "half.txt");
        assertEquals(2, broken.code(), broken.all());
        assertFalse(Files.exists(directory.resolve("mine")));
        assertTrue(Files.readString(directory.resolve("half.txt")).contains("\nHot {axle} wheels\n"));
        Bench.Run run = bench.runWith(SECOND_HALF, "rules", "new", "Hot wheels", "--into", "mine", "--answers", "half.txt");
        assertEquals(0, run.code(), run.all());
        assertFalse(run.out().contains("when>"), run.out());
        assertTrue(written().contains("rule \"Hot {axle} wheels\""));
        assertFalse(Files.exists(directory.resolve("half.txt")));
    }

    @Test
    @DisplayName("a stage by its number, a complaint as drivers say it, and a case in which one wheel's camber can be changed")
    void oneWheel() throws IOException {
        Bench.Run run = bench.runWith(String.join("\n", "3", "push", "the driver reports understeer at mid-corner", "",
                "propose front-right-camber more-negative with certainty 0.6", "", "The right front does the work.") + SECOND_HALF
                + "\n", "rules", "new", "Right front", "--into", "mine");
        assertEquals(0, run.code(), run.all());
        assertTrue(run.out().contains("Rules call that understeer: the driver reports understeer"), run.out());
        String made = Files.readString(directory.resolve("mine/demo-cases/right-front.yaml"));
        assertTrue(made.contains("front-right-camber: {") && made.contains("front-left-camber: {"), made);
        assertFalse(made.contains(" front-camber: {"), made);
        assertTrue(bench.run("rules", "try", "mine").out().matches("(?s).*\\* \\d+\\. Right front.*"));
    }

    @Test
    @DisplayName("a name that is taken is told before anything is asked")
    void taken() {
        bench.file("mine/3-changes/own.dslr", Bench.rule("Hot wheels", "the driver reports kerb-instability",
                "propose front-bump softer with certainty 0.5"));
        Bench.Run run = bench.runWith("", "rules", "new", "Hot wheels", "--into", "mine");
        assertEquals(2, run.code());
        assertEquals("mine/3-changes/own.dslr:1: is there already; give the rule another name\n", run.err());
        assertFalse(run.out().contains("Stage"), run.out());
    }

    @Test
    @DisplayName("quit leaves no answers either, and a file with something else in it is left alone")
    void leavesNothing() throws IOException {
        Bench.Run left = bench.runWith("changes\nthe surface is wet\nquit\n", "rules", "new", "Hot wheels", "--into", "mine",
                "--answers",
                "half.txt");
        assertEquals(0, left.code(), left.all());
        assertFalse(Files.exists(directory.resolve("half.txt")));
        bench.file("letter.txt", "Dear Ada\n");
        Bench.Run run = bench.runWith("changes\n", "rules", "new", "Hot wheels", "--into", "mine", "--answers", "letter.txt");
        assertEquals(2, run.code(), run.all());
        assertEquals("letter.txt: is there already, and holds no answers\n", run.err());
        assertEquals("Dear Ada\n", Files.readString(directory.resolve("letter.txt")));
    }

    @Test
    @DisplayName("answers that cannot be kept are told of before the first question")
    void answersNowhere() {
        Bench.Run run = bench.run("rules", "new", "A rule", "--into", "mine", "--answers", "nowhere/a.txt");
        assertEquals("--answers nowhere/a.txt: there is no folder nowhere\n", run.err());
        assertEquals(ExitCode.WRONG_INPUT, run.code());
    }
}
