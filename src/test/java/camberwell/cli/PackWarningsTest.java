package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("What rules check says of a pack that can be read and does not do what its author thinks")
class PackWarningsTest {

    private static final String HOP = "kerb-hop:\n  felt: the car hops three times\n  helped-by: {front-bump softer: 2}\n";

    @TempDir
    private Path directory;
    private Bench bench;

    @BeforeEach
    void open() {
        bench = new Bench(directory).file("mine/symptoms.yaml", HOP)
                .file("mine/3-changes/kerbs.dslr", Bench.rule("Kerbs: softer", "the driver reports kerb-hop",
                        "propose front-bump softer with certainty 0.5"));
    }

    private List<String> told() {
        return bench.run("rules", "check", "mine").out().lines().filter(line -> line.startsWith("mine/")).toList();
    }

    @Test
    @DisplayName("a file whose name is not quite what is read is named with what was meant; a car's that a case names is not")
    void misnamed() {
        bench.file("mine/threshold.yaml", "cold-track: 12 °C\n")
                .file("mine/knowledge-notes/saying.yaml", "complaints:\n  a: b\n")
                .file("mine/symptoms.yml", HOP).file("mine/quiz-case/a.yaml", Bench.kerbCase())
                .file("mine/weights.yaml", "halt: 1\n").file("mine/read me.txt", "Hello")
                .file("mine/bowl.yaml", "name: Bowl\ndrive: rear\n")
                .file("mine/demo-cases/a.yaml", "title: A\ncar: ../bowl.yaml\nreports:\n  - {symptom: kerb-hop}\n");
        String unread = ":1:1: warning: this file is not read";
        assertEquals(List.of("mine/knowledge-notes/saying.yaml" + unread + "; did you mean \"knowledge-notes/sayings.yaml\"?",
                "mine/quiz-case/a.yaml" + unread + "; did you mean \"quiz-cases/a.yaml\"?",
                "mine/symptoms.yml" + unread + "; did you mean \"symptoms.yaml\"?",
                "mine/threshold.yaml" + unread + "; did you mean \"thresholds.yaml\"?",
                "mine/weights.yaml" + unread + "; of a folder are pack.yaml, thresholds.yaml, symptoms.yaml, questions.yaml, "
                        + "knowledge-notes/sayings.yaml"), told());
    }

    @Test
    @DisplayName("a name with umlauts or accents is refused with its plain spelling")
    void umlauts() {
        bench.file("mine/symptoms.yaml", "schiebt-über:\n  felt: it pushes\n  helped-by: {front-bump softer: 2}\n" + HOP)
                .file("mine/questions.yaml", "größe:\n  ask: Is the kerb high?\n  answers: {très: it is, no: it is not}\n");
        List<String> told = told();
        for (String offered : List.of("schiebt-ueber", "groesse", "tres")) {
            assertTrue(told.stream().anyMatch(line -> line.endsWith("letters, numbers and dashes; did you mean \"" + offered
                    + "\"?")), offered + ": " + told);
        }
    }

    @Test
    @DisplayName("a word that no rule asks for is named, and the advice says that a rule is missing rather than asks for more")
    void unasked() {
        bench.file("mine/3-changes/kerbs.dslr", Bench.rule("Kerbs: softer", "the driver reports kerb-instability",
                "propose front-bump softer with certainty 0.5"));
        assertEquals(List.of("mine/symptoms.yaml:1:1: warning: no rule asks for \"kerb-hop\", so that a complaint of it gets no "
                + "answer: what it is helped by only weighs what a rule proposes"), told());
        String advice = bench.file("case.yaml", Bench.kerbCase().replace("symptom: kerb-instability", "symptom: kerb-hop"))
                .run("advise", "--rules", "mine", "case.yaml").out().replaceAll("\\s+", " ");
        assertTrue(advice.contains("A rule is missing: the word for the complaint comes from a pack"), advice);
        assertFalse(advice.contains("Say more of what the car does"), advice);
    }

    @Test
    @DisplayName("phrases: an open bracket, one phrase for two complaints, and one that is taken for another without the pack")
    void phrases() {
        bench.file("mine/knowledge-notes/sayings.yaml", "complaints:\n  kerb-hop: does the (hop|, hoppity hop, pushes wide\n"
                + "  bottoming: hoppity hop\n");
        String file = "mine/knowledge-notes/sayings.yaml:";
        assertEquals(List.of(file + "2:13: warning: without this folder \"pushes wide\" is understood as understeer; with it "
                + "that is gone", file + "2:3: the phrase \"does the (hop|\" has a bracket without its other half",
                file + "3:3: the phrase \"hoppity hop\" is given to \"kerb-hop\" too; a phrase has one meaning"),
                told().stream().sorted().toList());
    }

    @Test
    @DisplayName("a change that is misspelt is told with the one that was meant, and with the ways of its own adjuster")
    void change() {
        bench.file("mine/symptoms.yaml", HOP.replace("front-bump softer: 2", "rear-presure higher: 2, front-toe more: 1"));
        List<String> told = told();
        assertEquals(2, told.size(), told.toString());
        assertTrue(told.get(0).endsWith("is no change; did you mean \"rear-pressure higher\"?"), told.get(0));
        assertTrue(told.get(1).contains("front-toe toe-in") && told.get(1).contains("front-toe toe-out"), told.get(1));
    }

    @Test
    @DisplayName("terms explains a pack's word, by its name and as drivers say it")
    void terms() {
        bench.file("mine/knowledge-notes/sayings.yaml", "complaints:\n  kerb-hop: hoppity hop\n");
        assertTrue(bench.run("terms", "--rules", "mine", "kerb-hop").out().contains("The car hops three times."));
        assertTrue(bench.run("terms", "--rules", "mine", "hoppity hop").out().contains("is what drivers say of kerb hop"));
        assertTrue(bench.run("terms", "--rules", "mine").out().contains("kerb-hop"));
    }

    @Test
    @DisplayName("phrases so short that they stand in ordinary sayings and turn them round")
    void greedy() {
        bench.file("mine/knowledge-notes/sayings.yaml", "complaints:\n  kerb-hop: hops three times\n  understeer: slides\n");
        List<String> told = told();
        assertEquals(1, told.stream().filter(line -> line.contains("the phrase \"slides\" stands in ordinary sayings and takes "
                + "them over: \"the rear slides on exit\" is understood as oversteer without it and as understeer with it"))
                .count(), told.toString());
        assertTrue(told.stream().noneMatch(line -> line.contains("hops")), told.toString());
    }

    @Test
    @DisplayName("a phrase that has \"is\" is understood of what was")
    void inThePast() {
        bench.file("mine/knowledge-notes/sayings.yaml", "complaints:\n"
                + "  kerb-hop: she is a pogo stick, (nose is|tail is) a frog\n")
                .file("car.yaml", "name: C\ndrive: rear\nadjusters:\n  front-bump: {now: 4, min: 1, max: 7, step: 1}\n");
        for (String said : List.of("she is a pogo stick", "she was a pogo stick", "the nose is a frog")) {
            String out = bench.run("advise", "--rules", "mine", "--car", "car.yaml", "--say", said).out();
            assertTrue(out.contains("Heard: kerb hop"), said + ": " + out);
        }
    }
}
