package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("Slips around the sentences of a pack: each is told once, at its line")
class PackSlipsTest {

    private static final String SOUND = Bench.rule("Kerbs: softer", "the driver reports kerb-instability",
            "propose front-bump softer with certainty 0.5");
    private static final String RULES = "mine/3-changes/kerbs.dslr";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file(RULES, SOUND);
    }

    private void says(String... expected) {
        assertEquals(List.of(expected), bench.run("rules", "check", "mine").out().lines()
                .filter(line -> line.startsWith("mine/")).toList());
    }

    private void rule(String from, String to, String... expected) {
        bench.file(RULES, SOUND.replace(from, to));
        says(expected);
    }

    @Test
    @DisplayName("a case of the folder that cannot be read, for trying or for a quiz")
    void brokenCases() {
        bench.file("mine/demo-cases/a.yaml", "title: A\ncar: missing.yaml\nreports:\n  - {symptom: understeer}\n")
                .file("mine/quiz-cases/b.yaml", Bench.kerbCase().replace("kerb-instability", "kerb-instabilty"));
        says("mine/demo-cases/a.yaml:2:6: there is no file \"missing.yaml\"",
                "mine/quiz-cases/b.yaml:10:15: \"symptom\" cannot be \"kerb-instabilty\"; did you mean \"kerb-instability\"?");
    }

    @Test
    @DisplayName("drivers' phrases in the wrong place, and notes in a folder of another name")
    void wrongPlace() {
        bench.file("mine/sayings.yaml", "pushes: understeer\n").file("mine/notes/a.md", Bench.note("cause"));
        says("mine/notes/a.md:1:1: notes lie right below knowledge-notes/adjustments, knowledge-notes/readings, "
                + "knowledge-notes/causes, "
                + "knowledge-notes/driving, knowledge-notes/cautions",
                "mine/sayings.yaml:1:1: it is read as knowledge-notes/sayings.yaml and nowhere else");
    }

    @Test
    @DisplayName("an annotation that is misspelt is not missing as well")
    void misspeltAnnotation() {
        rule("@note(", "@notes(", RULES + ":3:5: no annotation @notes is allowed here; did you mean \"note\"?");
        rule("@because(\"The kerb comes faster than the damper lets the wheel move.\")", "@because(Too stiff.)",
                RULES + ":2:5: an annotation reads @because(\"...\"), on one line");
    }

    @Test
    @DisplayName("a name without its quotes, or with one of them")
    void nameWithoutQuotes() {
        rule("\"Kerbs: softer\"", "Kerbs: softer", RULES + ":1:1: a rule's name stands in quotes: rule \"Kerbs: softer\"");
        rule("\"Kerbs: softer\"", "\"Kerbs: softer", RULES + ":1:1: a rule's name stands in quotes: rule \"Kerbs: softer\"");
    }

    @Test
    @DisplayName("a quote inside a rule's name is told once, where it stands, with the name as it may be written")
    void quoteInsideName() {
        rule("\"Kerbs: softer\"", "\"Kerbs: \"much\" softer\"", RULES + ":1:14: a rule's name ends at the next quote; write "
                + "single ones inside it: rule \"Kerbs: 'much' softer\"");
    }

    @Test
    @DisplayName("a keyword with a mark behind it")
    void punctuatedKeyword() {
        rule("when", "when:", RULES + ":4:1: write \"when\" alone on its line");
        rule("then", "Then:", RULES + ":6:1: write \"then\" alone on its line");
        rule("end", "end.", RULES + ":8:1: write \"end\" alone on its line");
    }

    @Test
    @DisplayName("a comment starts with two slashes, and has its line for itself")
    void comments() {
        rule("    the driver", "    // They are tall here.\n    the driver");
        rule("    the driver", "    # They are tall here.\n    the driver",
                RULES + ":5:5: a comment starts with //, on a line of its own: # They are tall here.");
        rule("kerb-instability", "kerb-instability // tall", RULES + ":5:41: a comment stands on a line of its own");
    }

    @Test
    @DisplayName("a threshold in laps may say so")
    void thresholdInLaps() {
        bench.file("mine/thresholds.yaml", "long-run: 8 laps\nold-tyres: 20\n");
        says();
    }
}
