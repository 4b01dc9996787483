package camberwell.cli;

import static camberwell.cli.Bench.note;
import static camberwell.cli.Bench.rule;
import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What rules check says of each kind of mistake")
class RuleProblemsTest {

    private static final String KERBS = "the driver reports kerb-instability";
    private static final String SOFTER = "propose front-bump softer with certainty 0.35";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory);
    }

    /** Everything but the numbers of checks, the excerpts, the carets and the last line. */
    private List<String> problems() {
        Bench.Run run = bench.run("rules", "check", "mine");
        assertEquals("", run.err());
        assertEquals(1, run.code(), run.out());
        assertFalse(bench.compiled(), "a check compiles nothing");
        return run.out().lines().filter(line -> line.startsWith("mine/"))
                .map(line -> line.replaceAll(" \\[check [0-9]+]", "")).toList();
    }

    private void says(String... expected) {
        assertEquals(List.of(expected), problems());
    }

    private Bench changes(String text) {
        return bench.file("mine/3-changes/kerbs.dslr", text);
    }

    @Test
    void aSoundFolderHasNothingToSay() {
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        Bench.Run run = bench.run("rules", "check", "mine");
        assertEquals("1 rule and 0 notes checked: all is well\n", run.out());
        assertEquals(0, run.code());
    }

    @Test
    void theBuiltInRulesAreClean() {
        Bench.Run run = bench.run("rules", "check");
        assertTrue(run.out().endsWith("checked: all is well\n"), run.out());
        assertEquals(0, run.code());
    }

    @Test
    void aFolderThatIsNotThereCannotBeRead() {
        for (String command : new String[] {"check", "try", "watch"}) {
            Bench.Run run = bench.run("rules", command, "yours");
            assertEquals("yours: there is no such folder\n", run.err(), command);
            assertEquals(2, run.code());
        }
    }

    @Test
    void aSentenceThatTheDictionaryDoesNotKnow() {
        changes(rule("Kerbs: softer", "the driver complains of kerb-instability", SOFTER));
        says("mine/3-changes/kerbs.dslr:5:5: no sentence of the dictionary reads \"the driver complains of "
                + "kerb-instability\"; did you mean \"the driver reports kerb-instability\"?");
    }

    @Test
    void theExcerptShowsTheLineAndThePlace() {
        changes(rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty 7"));
        assertEquals("""
                mine/3-changes/kerbs.dslr:7:46: a certainty lies between 0.01 and 1.0 and has at most two decimals, \
                not 7
                  7 |     propose front-bump softer with certainty 7
                    |                                              ^
                1 rule and 0 notes checked: 1 problem
                """, bench.run("rules", "check", "mine").out());
    }

    @Test
    void aWordOutsideItsList() {
        changes(rule("Kerbs: softer", KERBS + "\n- at exitt", SOFTER));
        says("mine/3-changes/kerbs.dslr:6:10: \"exitt\" is no phase: braking, entry, lift-off, mid-corner, exit, "
                + "straight, kerbs; did you mean \"exit\"?");
    }

    @Test
    void aFindingThatHasNoNote() {
        changes(rule("Kerbs: softer", "front-tyres-colt is likely", SOFTER));
        says("mine/3-changes/kerbs.dslr:5:5: there is no finding note \"front-tyres-colt\"; did you mean "
                + "\"front-tyres-cold\"?");
    }

    @Test
    void aDirectionThatTheAdjusterDoesNotMove() {
        changes(rule("Kerbs: softer", KERBS, "propose front-bump higher with certainty 0.35"));
        says("mine/3-changes/kerbs.dslr:7:24: front-bump moves softer or stiffer, not higher");
    }

    @Test
    void aSentenceOnTheWrongSide() {
        changes(rule("Kerbs: softer", SOFTER, SOFTER));
        says("mine/3-changes/kerbs.dslr:5:5: this sentence belongs into then: " + SOFTER);
    }

    @Test
    void aConclusionInTheWrongStage() {
        bench.file("mine/2-causes/kerbs.dslr", rule("Kerbs: softer", KERBS, SOFTER));
        says("mine/2-causes/kerbs.dslr:7:5: a rule of the stage 2-causes does not propose; it belongs into 3-changes");
    }

    @Test
    void aDashThatNarrowsNoReport() {
        changes(rule("Kerbs: softer", "the track is cold\n- at exit", SOFTER));
        says("mine/3-changes/kerbs.dslr:6:5: a dash narrows \"the driver reports ...\", which is not what stands "
                + "above it");
    }

    @Test
    void aRuleWithoutANoteOrAReason() {
        changes("rule \"Kerbs: softer\"\nwhen\n    " + KERBS + "\nthen\n    " + SOFTER + "\nend\n");
        says("mine/3-changes/kerbs.dslr:1:1: the rule \"Kerbs: softer\" has no knowledge note: add @note(\"...\")",
                "mine/3-changes/kerbs.dslr:1:1: the rule \"Kerbs: softer\" has no reason: add @because(\"...\")");
    }

    @Test
    void aNoteThatIsNotThere() {
        changes(rule("Kerbs: softer", "front-bumps", KERBS, SOFTER));
        says("mine/3-changes/kerbs.dslr:3:12: there is no knowledge note \"front-bumps\"; did you mean "
                + "\"front-bump\"?");
    }

    @Test
    void aRuleWithoutConditionOrConclusion() {
        changes("rule \"Nothing\"\n    @because(\"So.\")\n    @note(\"front-bump\")\nwhen\nthen\nend\n");
        says("mine/3-changes/kerbs.dslr:1:1: the rule \"Nothing\" concludes nothing",
                "mine/3-changes/kerbs.dslr:1:1: the rule \"Nothing\" has no condition, so it would always apply");
    }

    @Test
    void aRuleThatDoesNotEnd() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("end\n", ""));
        says("mine/3-changes/kerbs.dslr:7:1: the rule \"Kerbs: softer\" has no end");
    }

    @Test
    void aNoteWithoutSourceOrRationale() {
        changes(rule("Kerbs: softer", "hot-rims", KERBS, SOFTER));
        bench.file("mine/knowledge-notes/causes/hot-rims.md",
                "---\ntitle: Hot rims\nkind: cause\nstatement: The rims are hot.\nsources: []\n---\n");
        says("mine/knowledge-notes/causes/hot-rims.md:2:1: the key \"plain\" is missing",
                "mine/knowledge-notes/causes/hot-rims.md:5:10: a note names a source, or says \"common practice, no "
                        + "source\"");
    }

    @Test
    @DisplayName("a slip in a note is told in its own line, though the same word stands further up as well")
    void aSlipFarDownInANote() {
        String text = read(Bench.home().resolve("knowledge-notes/adjustments/front-bump.md"));
        List<String> lines = new ArrayList<>(text.lines().toList());
        int last = lines.lastIndexOf(lines.stream().filter(line -> line.contains("{on: kerb-")).reduce((a, b) -> b)
                .orElseThrow());
        lines.set(last, lines.get(last).replaceFirst("effect: .[0-9]", "effect: 5"));
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        bench.file("mine/knowledge-notes/adjustments/front-bump.md", String.join("\n", lines) + "\n");
        says("mine/knowledge-notes/adjustments/front-bump.md:" + (last + 1) + ":"
                + (lines.get(last).indexOf("effect: 5") + 9)
                + ": \"effect\" should be a whole number from -3 to 3, not \"5\"");
    }

    @Test
    void anAdjustersNoteWithoutRationale() {
        String text = read(Bench.home().resolve("knowledge-notes/adjustments/front-bump.md"))
                .replaceFirst("(?s)rationale:.*?plain:", "plain:");
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        bench.file("mine/knowledge-notes/adjustments/front-bump.md", text);
        says("mine/knowledge-notes/adjustments/front-bump.md:2:1: the key \"rationale\" is missing");
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void aNoteThatNoRuleLeadsTo() {
        bench.file("mine/knowledge-notes/causes/hot-rims.md", note("cause"));
        says("mine/knowledge-notes/causes/hot-rims.md:1:1: no rule leads to the note \"hot-rims\"");
    }

    @Test
    void aNoteThatTakesTheNameOfOneOfAnotherKind() {
        bench.file("mine/knowledge-notes/cautions/front-bump.md", note("caution").replaceFirst("plain.*\n", ""));
        says("mine/knowledge-notes/cautions/front-bump.md:1:1: there is a note of that name already, of the kind "
                + "adjustment: "
                + "knowledge-notes/adjustments/front-bump.md");
    }

    @Test
    @DisplayName("a stranger's folder cannot talk a built-in caution away")
    void aCautionStaysAsItIs() {
        bench.file("mine/knowledge-notes/cautions/support-the-car.md", note("caution").replaceFirst("plain.*\n", ""));
        says("mine/knowledge-notes/cautions/support-the-car.md:1:1: a caution stays as it is, and there is one of "
                + "that name "
                + "already: knowledge-notes/cautions/support-the-car.md");
    }

    @Test
    void aNameThatStandsTwiceInAFile() {
        changes(rule("Kerbs: softer", KERBS, SOFTER) + rule("Kerbs: softer", KERBS + "\n- only once", SOFTER));
        says("mine/3-changes/kerbs.dslr:9:1: the rule \"Kerbs: softer\" stands already at line 1");
    }

    @Test
    void aNameThatABuiltInRuleHas() {
        changes(rule("Front has more toe-out than it can use: take some off", KERBS, SOFTER));
        List<String> problems = problems();
        assertEquals(1, problems.size());
        assertTrue(problems.get(0).matches("mine/3-changes/kerbs.dslr:1:1: the rule \"Front has more toe-out than "
                + "it can "
                + "use: take some off\" stands already in rules/3-changes/toe.dslr:\\d+; if it is to take its "
                + "place, say "
                + "@replaces\\(\"Front has more toe-out than it can use: take some off\"\\)"), problems.get(0));
    }

    @Test
    void aRuleThatReplacesNoneThatIsThere() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("when\n",
                "    @replaces(\"Kerbs unsettle the car: take less of then\")\nwhen\n"));
        says("mine/3-changes/kerbs.dslr:1:1: the rule \"Kerbs: softer\" replaces \"Kerbs unsettle the car: take "
                + "less of "
                + "then\", and no earlier folder has a rule of that name; did you mean \"Kerbs unsettle the car: "
                + "take less "
                + "of them\"?");
    }

    @Test
    @DisplayName("a rule whose conditions exclude each other can never fire")
    void neverFires() {
        String file = "mine/3-changes/kerbs.dslr:1:1: the rule \"Kerbs: softer\" can never fire: ";
        assertAll(
                () -> never("the driver reports oversteer\n- at entry\n- at exit",
                        "nothing is \"the driver reports oversteer at entry at exit\"", file),
                () -> never("the driver reports oversteer\n- at entry\n- not at entry",
                        "nothing is \"the driver reports oversteer at entry not at entry\"", file),
                () -> never("the driver reports overheating\n- at the front tyres\n- at the rear-left tyre",
                        "nothing is \"the driver reports overheating at the front tyres at the rear-left tyre\"", file),
                () -> never("the driver reports oversteer\n- on every lap\n- only once",
                        "nothing is \"the driver reports oversteer on every lap only once\"", file),
                () -> never("front-tyres-cold is likely\nfront-tyres-cold is not likely",
                        "\"front-tyres-cold is likely\" and \"front-tyres-cold is not likely\" exclude each other",
                                file),
                () -> never("front-tyres-cold is nearly certain\nfront-tyres-cold is not likely",
                        "\"front-tyres-cold is nearly certain\" and \"front-tyres-cold is not likely\" exclude "
                                + "each other",
                        file),
                () -> never("the car is front-wheel drive\nthe car is rear-wheel drive",
                        "\"the car is front-wheel drive\" and \"the car is rear-wheel drive\" exclude each other",
                                file),
                () -> never("the car is rear-wheel drive\nthe front wheels are driven",
                        "\"the car is rear-wheel drive\" and \"the front wheels are driven\" exclude each other", file),
                () -> never("the driver reports oversteer\n- at exit\nthe driver does not report oversteer",
                        "\"the driver reports oversteer at exit\" and \"the driver does not report oversteer\" "
                                + "exclude each "
                        + "other", file),
                () -> never("the driver reports oversteer\n- at exit\n- at least strong\n"
                        + "the driver does not report oversteer at exit",
                        "\"the driver reports oversteer at exit at least strong\" and \"the driver does not report "
                        + "oversteer at exit\" exclude each other", file),
                () -> never("the front tyres are above their window\nthe front tyres are below their window",
                        "\"the front tyres are above their window\" and \"the front tyres are below their window\" "
                                + "exclude "
                        + "each other", file),
                () -> never("the front tread is hotter in the middle\nthe front tread temperatures were not read",
                        "\"the front tread is hotter in the middle\" and \"the front tread temperatures were not "
                                + "read\" "
                        + "exclude each other", file),
                () -> never("the caster is more than 7 degrees\nthe caster is less than 6.5 degrees",
                        "\"the caster is more than 7 degrees\" and \"the caster is less than 6.5 degrees\" exclude "
                                + "each "
                        + "other", file),
                () -> never("the rear wheels are toed in\nthe rear wheels are toed out",
                        "\"the rear wheels are toed in\" and \"the rear wheels are toed out\" exclude each other",
                                file),
                () -> never("the car has no adjustable front-toe\nthe front wheels are toed out",
                        "\"the car has no adjustable front-toe\" and \"the front wheels are toed out\" exclude "
                                + "each other",
                        file),
                () -> never("the surface is wet\nthe surface is not wet",
                        "\"the surface is wet\" and \"the surface is not wet\" exclude each other", file),
                () -> never("the track is cold\nthe track is hot",
                        "\"the track is cold\" and \"the track is hot\" exclude each other", file));
    }

    private void never(String when, String why, String file) {
        changes(rule("Kerbs: softer", when, SOFTER));
        says(file + why);
    }

    @Test
    @DisplayName("two reports may well be of the same thing in two places: that is no contradiction")
    void twoReportsAreNoContradiction() {
        changes(rule("Loose twice: softer", "the driver reports oversteer\n- at entry\nthe driver reports oversteer\n"
                + "- at exit\nthe driver does not report oversteer at mid-corner\nthe front tyres are inside their "
                + "window\n"
                + "the front tyres are above their window", SOFTER));
        assertEquals("1 rule and 0 notes checked: all is well\n", bench.run("rules", "check", "mine").out());
    }

    @Test
    void aRuleThatAnotherCovers() {
        changes(rule("Kerbs: softer", KERBS, SOFTER) + rule("Kerbs at exit: softer", KERBS + "\n- at exit", SOFTER));
        says("mine/3-changes/kerbs.dslr:9:1: the rule \"Kerbs at exit: softer\" is covered by \"Kerbs: softer\" "
                + "(mine/3-changes/kerbs.dslr:1), which says the same on less evidence");
    }

    @Test
    void aRuleThatCountsTheSameEvidenceAgain() {
        changes(rule("Kerbs: softer", KERBS, SOFTER)
                + rule("Kerbs: still softer", KERBS, "propose front-bump softer with certainty 0.5"));
        says("mine/3-changes/kerbs.dslr:9:1: the rule \"Kerbs: still softer\" is covered by \"Kerbs: softer\" "
                + "(mine/3-changes/kerbs.dslr:1), which says the same on the same evidence");
    }

    @Test
    @DisplayName("a rule that asks for more and has its own certainty adds evidence, and is welcome")
    void furtherEvidenceIsWelcome() {
        changes(rule("Kerbs: softer", KERBS, SOFTER)
                + rule("Strong kerbs: softer", KERBS + "\n- at least strong",
                "propose front-bump softer with certainty 0.2"));
        assertEquals("2 rules and 0 notes checked: all is well\n", bench.run("rules", "check", "mine").out());
    }

    @Test
    void twoRulesThatSayTheOppositeOnTheSameEvidence() {
        changes(rule("Kerbs: softer", KERBS, SOFTER)
                + rule("Kerbs: not softer", KERBS, "oppose front-bump softer with certainty 0.5"));
        says("mine/3-changes/kerbs.dslr:15:5: \"oppose front-bump softer with certainty 0.5\" is the opposite of what "
                + "\"Kerbs: softer\" (mine/3-changes/kerbs.dslr:7) says on the same evidence: \"" + SOFTER + "\"");
    }

    @Test
    void twoRulesThatMoveAnAdjusterBothWaysOnTheSameEvidence() {
        changes(rule("Kerbs: softer", KERBS + "\nthe track is cold", SOFTER) + rule("Kerbs: stiffer",
                "the track is cold\n" + KERBS, "propose front-bump stiffer with certainty 0.5"));
        says("mine/3-changes/kerbs.dslr:17:5: \"propose front-bump stiffer with certainty 0.5\" is the opposite of "
                + "what "
                + "\"Kerbs: softer\" (mine/3-changes/kerbs.dslr:8) says on the same evidence: \"" + SOFTER + "\"");
    }

    @Test
    void aRuleThatContradictsItself() {
        changes(rule("Kerbs: both", KERBS, SOFTER + "\noppose front-bump softer with certainty 0.2"));
        says("mine/3-changes/kerbs.dslr:7:5: the rule \"Kerbs: both\" says both \"" + SOFTER
                + "\" and \"oppose front-bump softer with certainty 0.2\"");
    }

    @Test
    void aChainThatGoesRoundInCircles() {
        bench.file("mine/knowledge-notes/causes/hot-rims.md", note("cause"));
        bench.file("mine/2-causes/rims.dslr",
                rule("Cold tyres: hot rims", "hot-rims", "front-tyres-cold is likely",
                        "find hot-rims with certainty 0.4")
                + rule("Hot rims: cold tyres", "hot-rims", "hot-rims is likely",
                "find front-tyres-cold with certainty 0.4"));
        says("mine/2-causes/rims.dslr:1:1: these rules go round in circles: front-tyres-cold -> hot-rims (\"Cold "
                + "tyres: hot "
                + "rims\") -> front-tyres-cold (\"Hot rims: cold tyres\")");
    }

    @Test
    void aFindingThatNothingUses() {
        bench.file("mine/knowledge-notes/causes/hot-rims.md", note("cause"));
        bench.file("mine/2-causes/rims.dslr",
                rule("Hot rims", "hot-rims", KERBS, "find hot-rims with certainty 0.4"));
        says("mine/2-causes/rims.dslr:7:5: the finding \"hot-rims\" leads nowhere: no rule asks for it");
    }

    @Test
    void aFindingThatNothingConcludes() {
        bench.file("mine/knowledge-notes/causes/hot-rims.md", note("cause"));
        changes(rule("Hot rims: softer", "hot-rims", "hot-rims is likely", SOFTER));
        says("mine/3-changes/kerbs.dslr:5:5: no rule finds \"hot-rims\"");
    }

    @Test
    void aCertaintyOutOfRange() {
        assertAll(() -> certainty("1.5"), () -> certainty("0.0"), () -> certainty("0.125"),
                () -> certainty("-0.5"));
    }

    @Test
    void aCertaintyWrittenInAnotherWay() {
        changes(rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty 0,5"));
        says("mine/3-changes/kerbs.dslr:7:46: a certainty is written with a point: 0.5");
        changes(rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty 1"));
        says("mine/3-changes/kerbs.dslr:7:46: a certainty of 1 is written 1.0");
    }

    @Test
    void aMissingWhen() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("when\n", ""));
        says("mine/3-changes/kerbs.dslr:4:5: the rule \"Kerbs: softer\" has no when; write when above this line");
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("when\n    " + KERBS + "\n", ""));
        says("mine/3-changes/kerbs.dslr:4:1: the rule \"Kerbs: softer\" has no when; write when and a condition above "
                + "this line");
    }

    @Test
    void aMissingThen() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("then\n", ""));
        says("mine/3-changes/kerbs.dslr:6:5: the rule \"Kerbs: softer\" has no then; write then above this line");
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("then\n    " + SOFTER + "\n", ""));
        says("mine/3-changes/kerbs.dslr:6:1: the rule \"Kerbs: softer\" has no then");
    }

    @Test
    void aMissingEndBeforeTheNextRule() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("end\n", "")
                + rule("Bumps: softer", KERBS + "\n- at least clear", SOFTER));
        says("mine/3-changes/kerbs.dslr:7:1: the rule \"Kerbs: softer\" has no end; write end above the next rule");
    }

    @Test
    void quotesOfAWordProcessor() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replaceAll("\"([^\"]*)\"", "\u201c$1\u201d"));
        says("mine/3-changes/kerbs.dslr:1:6: curly quotes; write straight ones, \" (here and in 2 more lines)");
    }

    @Test
    void quotesInsideAReasonAreAnybodys() {
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("The kerb comes", "The \u201ckerb\u201d comes"));
        assertEquals(0, bench.run("rules", "check", "mine").code());
    }

    @Test
    void spacesThatDoNotBreak() {
        changes(rule("Kerbs: softer", KERBS + "\n- at exit", SOFTER).replace("the driver reports",
                "the\u00a0driver\u00a0reports"));
        says("mine/3-changes/kerbs.dslr:5:8: a space that does not break; write an ordinary one");
    }

    @Test
    void capitals() {
        changes(rule("Kerbs: softer", "The driver reports kerb-instability\n- at exit", SOFTER));
        says("mine/3-changes/kerbs.dslr:5:5: sentences are written in small letters; did you mean \"the driver reports "
                + "kerb-instability\"?");
        changes(rule("Kerbs: softer", KERBS, SOFTER).replace("when\n", "WHEN\n"));
        says("mine/3-changes/kerbs.dslr:4:1: write \"when\" in small letters");
    }

    @Test
    void oneFaultIsToldOnce() {
        changes(rule("Kerbs: softer", "the driver moans about kerbs\n- at exit\n- at least clear\n- on every lap",
                SOFTER));
        assertEquals(1, problems().size());
    }

    @Test
    void filesThatProgramsLeaveBehind() {
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        for (String left : new String[] {"3-changes/kerbs.dslr~", "3-changes/desktop.ini", "3-changes/kerbs.dslr.bak",
            "3-changes/#kerbs.dslr#", "demo-cases/~$kerb.yaml"}) {
            bench.file("mine/" + left, "left behind");
        }
        assertEquals("1 rule and 0 notes checked: all is well\n", bench.run("rules", "check", "mine").out());
    }

    @Test
    void namesThatWouldBePassedOver() {
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        bench.file("mine/Pack.yaml", "name: mine\n").file("mine/demo-cases/kerb.yml", "title: kerb\n");
        says("mine/Pack.yaml:1:1: what a folder says of itself stands in pack.yaml, written so",
                "mine/demo-cases/kerb.yml:1:1: a case ends in .yaml, written so");
    }

    @Test
    void anIdTwice() {
        String one = rule("Kerbs: softer", KERBS, SOFTER).replace("    @note", "    @id(\"TALL-1\")\n    @note");
        changes(one + one.replace("Kerbs: softer", "Kerbs at exit: softer").replace(KERBS, KERBS + "\n    - at exit")
                .replace("0.35", "0.4"));
        says("mine/3-changes/kerbs.dslr:10:1: the id TALL-1 is that of \"Kerbs: softer\" "
                + "(mine/3-changes/kerbs.dslr:1) already");
    }

    @Test
    void whatStandsInAnAnnotation() {
        String rule = rule("Kerbs: softer", KERBS, SOFTER);
        changes(rule.replace("    @note", "    @id(\"kerbs\")\n    @since(\"now\")\n    @status(\"good\")\n    @note"));
        says("mine/3-changes/kerbs.dslr:3:10: an id is two to six capitals, a dash and a number, for instance TALL-7, "
                + "not \"kerbs\"",
                "mine/3-changes/kerbs.dslr:4:13: a version is numbers with points between them, not \"now\"",
                "mine/3-changes/kerbs.dslr:5:14: a rule is on trial, @status(\"trial\"), or it says nothing of it");
        changes(rule.replace("    @note",
                "    @id(\"TALL-1\")\n    @since(\"1.0\")\n    @status(\"trial\")\n    @note"));
        assertEquals(0, bench.run("rules", "check", "mine").code());
    }

    private void certainty(String number) {
        changes(rule("Kerbs: softer", KERBS, "propose front-bump softer with certainty " + number));
        says("mine/3-changes/kerbs.dslr:7:46: a certainty lies between 0.01 and 1.0 and has at most two decimals, not "
                + number);
    }

    @Test
    @DisplayName("an angle is a plain number: 010 would be eight to Java")
    void anAngleOutOfRange() {
        for (String number : List.of("010", "99", "99999999999999999999")) {
            changes(rule("Kerbs: softer", "the caster is more than " + number + " degrees", SOFTER));
            says("mine/3-changes/kerbs.dslr:5:29: an angle lies between 0 and 45 degrees and starts with no idle "
                    + "0, not "
                    + number);
        }
    }

    @Test
    void rawDroolsWhereItIsNotAllowed() {
        changes(rule("Kerbs: softer", KERBS, "insert(new Object());"));
        says("mine/3-changes/kerbs.dslr:7:5: raw Drools is not allowed here, only sentences of the dictionary: "
                + "insert(new Object());");
    }

    @Test
    void aNeedThatIsNotMet() {
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        bench.file("mine/pack.yaml", "name: kerbs\nversion: 1.0\nauthor: A. Tutor\nneeds: [camberwell 9.0, "
                + "wet-days]\n");
        says("mine/pack.yaml:4:9: needs camberwell 9.0, and this is 0.1.0; install a newer camberwell",
                "mine/pack.yaml:4:25: needs wet-days, which is not here; name it with --rules before this one");
    }

    @Test
    void aManifestThatIsWrong() {
        bench.file("mine/pack.yaml", "name: Kerbs!\nversion: one\nautor: A. Tutor\nneeds: much\n");
        says("mine/pack.yaml:1:1: the key \"author\" is missing",
                "mine/pack.yaml:1:7: \"name\" is made of small letters, numbers and dashes, not \"Kerbs!\"",
                "mine/pack.yaml:2:10: \"version\" is numbers with points between them, not \"one\"",
                "mine/pack.yaml:3:1: unknown key \"autor\"; did you mean \"author\"?",
                "mine/pack.yaml:4:8: \"needs\" should be a list, not \"much\"");
    }

    @Test
    @DisplayName("YAML that is none is told in plain words, and names nothing of the program that reads it")
    void aManifestThatIsNoYaml() {
        bench.file("mine/pack.yaml", "{a: b}: c\n");
        says("mine/pack.yaml:1:1: a key should be a word, not keys with values",
                "mine/pack.yaml:1:1: the key \"author\" is missing", "mine/pack.yaml:1:1: the key \"name\" is missing",
                "mine/pack.yaml:1:1: the key \"version\" is missing");
    }

    @Test
    @DisplayName("version 1.10 is the tenth, not the first")
    void tenthVersion() {
        changes(rule("Kerbs: softer", KERBS, SOFTER));
        bench.file("mine/pack.yaml", "name: kerbs\nversion: 1.10\nauthor: A. Tutor\n");
        bench.file("other/pack.yaml", "name: other\nversion: 1.0\nauthor: A. Tutor\nneeds: [kerbs 1.9]\n");
        bench.file("other/3-changes/more.dslr", rule("Kerbs: softer still", KERBS, SOFTER));
        Bench.Run run = bench.run("rules", "check", "mine", "other");
        assertEquals("", run.err());
    }

    @Test
    @DisplayName("all problems of all files in one go")
    void everythingInOneGo() {
        changes(rule("One", "the driver says nothing at all", "propose front-bump sofTer with certainty 0.35"));
        bench.file("mine/2-causes/a.dslr", "nonsense\n");
        assertEquals(3, problems().size());
    }

    @Test
    void asJson() throws Exception {
        changes(rule("Kerbs: softer", KERBS + "\n- at exitt", SOFTER));
        Bench.Run run = bench.run("rules", "check", "mine", "--format", "json");
        JsonNode json = new ObjectMapper().readTree(run.out());
        assertEquals(1, run.code());
        assertEquals(1, json.get("rules").asInt());
        JsonNode problem = json.get("problems").get(0);
        assertEquals("mine/3-changes/kerbs.dslr", problem.get("file").asText());
        assertEquals(6, problem.get("line").asInt());
        assertEquals(10, problem.get("column").asInt());
        assertEquals("exit", problem.get("suggestion").asText());
    }
}
