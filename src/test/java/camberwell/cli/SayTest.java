package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The driver's own words instead of a case, and in one")
class SayTest {

    private static final String CAR = "demo-cases/cars/corvane-coupe.yaml";
    private static final String SAID = "it pushes on the way in and snaps on the way out";

    @TempDir
    private Path directory;

    private static JsonNode json(String text) throws IOException {
        return new ObjectMapper().readTree(text);
    }

    @Test
    @DisplayName("what was said is echoed, and advised on")
    void said() {
        InProcess run = InProcess.run(80, "", "advise", "--say", SAID, "--car", CAR);
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("Heard: understeer at entry; snap oversteer at exit."), run.out());
        assertTrue(run.out().contains("Change one thing at a time"), run.out());
    }

    @Test
    @DisplayName("what nobody said is not told as said: it is named once as taken, and only where it was not said")
    void taken() {
        String unsaid = InProcess.run(80, "", "advise", "--say", SAID, "--car", CAR).out();
        assertTrue(unsaid.contains("Corvane coupe, rear-wheel drive\n"), unsaid);
        assertTrue(unsaid.contains("Taken without being said: dry, plain to feel, on every lap."), unsaid);
        String all = InProcess.run(80, "", "advise", "--say", "strong understeer at entry on every lap, dry track", "--car",
                CAR).out();
        assertTrue(all.contains("Corvane coupe, rear-wheel drive, dry track\n"), all);
        assertFalse(all.contains("Taken without being said"), all);
    }

    @Test
    @DisplayName("as JSON: only the keys that were said, and the words that were not understood")
    void asJson() throws IOException {
        InProcess run = InProcess.run(80, "", "advise", "--format", "json", "--car", CAR, "--say",
                "a bit of push in right-handers, and the flux capacitor hums");
        JsonNode advice = json(run.out());
        assertEquals(json("[{\"symptom\": \"understeer\", \"severity\": \"slight\", \"turn\": \"right\"}]"),
                advice.get("heard"));
        assertEquals(json("[\"flux capacitor hums\"]"), advice.get("not-understood"));
    }

    @Test
    @DisplayName("where nothing is understood nothing is advised, and it says so")
    void nothingUnderstood() {
        InProcess run = InProcess.run(80, "", "advise", "--say", "the flux capacitor hums", "--car", CAR);
        assertEquals(0, run.code());
        assertTrue(run.out().contains("Not understood: \"flux capacitor hums\"."), run.out());
        assertTrue(run.out().contains("Say it in other words."), run.out());
    }

    @Test
    @DisplayName("what is not sure is refused with what it may be, and nothing is advised on it")
    void notSure() throws IOException {
        String said = "memorised oversteer on exit";
        String page = InProcess.run(120, "", "advise", "--say", said, "--car", CAR).out();
        assertTrue(page.contains("Not sure of \"memorised oversteer on exit\": did you mean \"oversteer at exit\"? Then say "
                + "it so."), page);
        JsonNode advice = json(InProcess.run(80, "", "advise", "--format", "json", "--say", said, "--car", CAR).out());
        assertEquals(0, advice.get("heard").size());
        assertEquals(0, advice.get("changes").size());
        assertEquals(json("[{\"words\": \"memorised oversteer on exit\", \"may-be\": [\"oversteer at exit\"]}]"),
                advice.get("not-sure"));
    }

    @Test
    @DisplayName("words want a car, and a case has its own")
    void usage() {
        assertEquals(2, InProcess.run(80, "", "advise", "--say", SAID).code());
        assertEquals(2, InProcess.run(80, "", "advise", "--car", CAR, "demo-cases/pushes-in-snaps-out.yaml").code());
        assertEquals(2, InProcess.run(80, "", "advise").code());
    }

    @Test
    @DisplayName("a case says the same in its say: as in its reports")
    void inACase() throws IOException {
        String car = "car: {name: Practice car, drive: rear, adjusters: {front-anti-roll-bar: {now: 4, min: 1, max: 7, "
                + "step: 1}, rear-toe: {now: 0.1 deg, min: 0 deg, max: 0.4 deg, step: 0.05 deg}}}\n";
        Bench bench = new Bench(directory).file("say.yaml", "title: T\n" + car + "say: " + SAID + "\n")
                .file("reports.yaml", "title: T\n" + car + "reports:\n  - {symptom: understeer, phase: entry}\n"
                        + "  - {symptom: snap-oversteer, phase: exit}\n");
        JsonNode said = json(bench.run("advise", "--format", "json", "say.yaml").out());
        JsonNode reported = json(bench.run("advise", "--format", "json", "reports.yaml").out());
        assertEquals(reported.get("changes"), said.get("changes"));
        assertEquals(2, said.get("heard").size());
        assertTrue(reported.get("heard") == null);
        assertEquals(0, bench.run("explain", "say.yaml").code());
    }

    @Test
    @DisplayName("a surface that is said and one that is written may not differ")
    void twoSurfaces() {
        Bench bench = new Bench(directory).file("case.yaml", Bench.kerbCase() + "say: no grip at the rear in the rain\n");
        Bench.Run run = bench.run("advise", "case.yaml");
        assertEquals(2, run.code());
        assertTrue(run.err().contains("the driver speaks of a wet track"), run.err());
    }

    @Test
    @DisplayName("a rule folder brings phrases of its own")
    void phrasesOfAPack() {
        Bench bench = new Bench(directory).file("mine/knowledge-notes/sayings.yaml",
                "complaints:\n  understeer: goes like a barge\n").file("mine/3-changes/kerbs.dslr",
                        Bench.rule("Kerbs: softer", "the driver reports kerb-instability",
                                "propose front-bump softer with certainty 0.6"));
        Bench.Run run = bench.run("advise", "--rules", "mine", "--say", "goes like a barge", "--car",
                Bench.home().resolve(CAR).toString());
        assertTrue(run.out().contains("Heard: understeer."), run.all());
        bench.file("mine/knowledge-notes/sayings.yaml", "complaints:\n  undersreer: goes like a barge\n");
        Bench.Run wrong = bench.run("advise", "--rules", "mine", "--say", "goes like a barge", "--car",
                Bench.home().resolve(CAR).toString());
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("mine/knowledge-notes/sayings.yaml:2:3: \"undersreer\""), wrong.err());
    }

    @Test
    @DisplayName("terms explains what drivers say by what they mean")
    void termsOfThePaddock() {
        InProcess run = InProcess.run(80, "", "terms", "push");
        assertEquals(0, run.code(), run.err());
        assertTrue(run.out().contains("is what drivers say of understeer"), run.out());
        assertTrue(run.out().contains("The front tyres slide wide first"), run.out());
        assertEquals(2, InProcess.run(80, "", "terms", "flux").code());
    }
}
