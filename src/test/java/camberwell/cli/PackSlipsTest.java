package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

    @Test
    @DisplayName("what cannot be read hides nothing else: every fault of every file is told at once")
    void nothingHidden() {
        bench.file("mine/pack.yaml", "name: mine\nauthor: A\n")
                .file("mine/knowledge-notes/causes/zu-heiß.md", Bench.note("cause"))
                .file("mine/3-changes/more.dslr.txt", SOUND)
                .file("mine/thresholds.yaml", "cold-track: 12\n")
                .file(RULES, SOUND.replace("propose front-bump", "propose front-bumb"));
        assertEquals(List.of("mine/3-changes/kerbs.dslr:7", "mine/3-changes/more.dslr.txt:1",
                "mine/knowledge-notes/causes/zu-heiß.md:1", "mine/pack.yaml:1", "mine/thresholds.yaml:1"), places());
    }

    @Test
    @DisplayName("a file of words that cannot be read is told alone: what uses the words is no further mistake")
    void lostWords() {
        bench.file("mine/symptoms.yaml", "kerb-hop:\n\tfelt: it hops\n")
                .file("mine/questions.yaml", "kerb-height:\n  ask: How tall?\n  when: [kerb-hop]\n"
                        + "  answers: {low: low, tall: tall}\n")
                .file("mine/knowledge-notes/sayings.yaml", "complaints:\n  kerb-hop: hops about\n")
                .file("mine/demo-cases/a.yaml", Bench.kerbCase().replace("symptom: kerb-instability", "symptom: kerb-hop"))
                .file(RULES, SOUND.replace("reports kerb-instability", "reports kerb-hop"));
        says("mine/symptoms.yaml:2:1: YAML is indented with spaces; here is a tab");
        bench.file("mine/symptoms.yaml", "kerb-hop:\n  felt: it hops\n   helped-by: {front-bump softer: 1}\n");
        says("mine/symptoms.yaml:3:13: this line is not indented like the ones above it");
    }

    @Test
    @DisplayName("of a finding that is misspelt nothing follows for the rule that finds it")
    void nothingFollows() {
        bench.file("mine/knowledge-notes/causes/hot-rims.md", Bench.note("cause"))
                .file("mine/2-causes/rims.dslr", Bench.rule("Rims", "hot-rims", "the track is hot",
                        "find hot-rims with certainty 0.5"))
                .file(RULES, SOUND.replace("the driver reports kerb-instability", "hot-rimms is likely"));
        says(RULES + ":5:5: there is no finding note \"hot-rimms\"; did you mean \"hot-rims\"?");
    }

    @Test
    @DisplayName("a title that stands twice, also where one of the rules goes several ways, in one file or in two")
    void titleTwice() {
        String ways = SOUND.replace("    the driver reports kerb-instability", "    the driver reports kerb-instability\n"
                + "    either the track is hot\n    or the tyres are old").replace("softer with", "stiffer with");
        bench.file(RULES, SOUND + "\n" + ways);
        int line = (int) SOUND.lines().count() + 2;
        says(RULES + ":" + line + ":1: the rule \"Kerbs: softer\" stands already at line 1");
        bench.file(RULES, SOUND).file("mine/3-changes/other.dslr", ways);
        says("mine/3-changes/other.dslr:1:1: the rule \"Kerbs: softer\" stands already in " + RULES + ":1");
        bench.file("mine/3-changes/other.dslr", SOUND.replace("Kerbs: softer", "KERBS: softer"));
        says("mine/3-changes/other.dslr:1:1: the rule \"KERBS: softer\" stands already in " + RULES + ":1");
        bench.file(RULES, ways).file("mine/3-changes/other.dslr", SOUND);
        says("mine/3-changes/other.dslr:1:1: the rule \"Kerbs: softer\" stands already in " + RULES + ":1");
    }

    @Test
    @DisplayName("a case's answer that its question has not, and one to a question that nobody asks")
    void answers() {
        bench.file("mine/questions.yaml", "kerb-height:\n  ask: How tall?\n  answers: {low: low, tall: tall}\n")
                .file("mine/demo-cases/a.yaml", Bench.kerbCase() + "answers: {kerb-height: high, kerb-hight: low}\n");
        String wrong = "\"kerb-height\" cannot be \"high\"; it is low or tall";
        String nobody = "no rule folder in use asks \"kerb-hight\", so that this answer tells nothing; did you mean "
                + "\"kerb-height\"?";
        says("mine/demo-cases/a.yaml:11:24: " + wrong, "mine/demo-cases/a.yaml:11:42: warning: " + nobody);
        assertTrue(bench.run("rules", "try", "mine").err().contains(wrong));
        assertTrue(bench.run("advise", "--rules", "mine", "mine/demo-cases/a.yaml").err().contains(wrong));
        bench.file("mine/demo-cases/a.yaml", Bench.kerbCase() + "answers: {kerb-hight: low}\n");
        says("mine/demo-cases/a.yaml:11:23: warning: " + nobody);
        assertTrue(bench.run("rules", "try", "mine").err().contains(nobody));
    }

    @Test
    @DisplayName("what is wrong in pack.yaml is told where it stands")
    void inThePackFile() {
        bench.file("mine/pack.yaml", "name: mine\nversion: 1.0\nauthor: A\nneeds: [camberwell 2.0]\nswitch-off: [NONE-99]\n");
        says("mine/pack.yaml:4:9: needs camberwell 2.0, and this is 0.1.0; install a newer camberwell",
                "mine/pack.yaml:5:14: \"switch-off\" names \"NONE-99\", and no earlier folder has a rule of that name");
    }

    @Test
    @DisplayName("hints for a symptom in words of one's own, two conditions in a line, a certainty in %, a road after a dash")
    void hints() {
        bench.file("mine/symptoms.yaml", "pedal-goes-long:\n  felt: the pedal goes long\n");
        rule("reports kerb-instability", "reports a long pedal", RULES + ":5:24: \"a long pedal\" is no symptom; one of your "
                + "own is brought by the file symptoms.yaml; did you mean \"pedal-goes-long\"?");
        rule("the driver reports kerb-instability", "the track is hot and the surface is dry", RULES
                + ":5:5: no sentence of the dictionary reads \"the track is hot and the surface is dry\"; one sentence a line: "
                + "what follows \"and\" stands on the next line");
        rule("certainty 0.5", "certainty 50 %", RULES + ":7:5: no sentence of the dictionary reads \"propose front-bump softer "
                + "with certainty 50 %\"; a certainty is a share of 1: write \"propose front-bump softer with certainty 0.50\"");
        rule("kerb-instability", "kerb-instability\n        - in the wet", RULES + ":6:9: no sentence of the dictionary reads "
                + "\"- in the wet\"; write \"the surface is wet\" as a condition of its own, above the report or below its "
                + "dashes");
    }

    private List<String> places() {
        return bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/"))
                .map(line -> line.substring(0, line.indexOf(':', line.indexOf(':') + 1))).toList();
    }
}
