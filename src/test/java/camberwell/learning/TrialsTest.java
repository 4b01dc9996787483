package camberwell.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.input.CaseReader;
import camberwell.run.Case;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("How heavily a trial weighs, and whether it is still on the car")
class TrialsTest {

    private static final LearningWeights WEIGHTS = new LearningWeights(4, 0.5, 0.5, 0.5, 10, 0.9);

    private static Trials trials(String... tried) {
        String text = """
                car:
                  name: A car
                  drive: rear
                  adjusters: {front-anti-roll-bar: {now: 3, min: 1, max: 7, step: 1}}
                reports: [{symptom: understeer}]
                tried:
                """ + "  - " + String.join("\n  - ", tried) + "\n";
        Case run = new CaseReader().read("-", new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)),
                Path.of("")).run();
        return new Trials(run, WEIGHTS);
    }

    private static double weight(String keys) {
        return trials("{change: front-anti-roll-bar softer, outcome: same" + keys + "}").weight(0);
    }

    @Test
    @DisplayName("half for the driver's word alone, for another place and every ten runs; one of k for k changes at once")
    void weights() {
        assertEquals(1, weight(""));
        assertEquals(0.5, weight(", judged-by: driver"));
        assertEquals(1, weight(", judged-by: laps"));
        assertEquals(0.25, weight(", together: 4"));
        assertEquals(0.5, weight(", elsewhere: yes"));
        assertEquals(0.5, weight(", surface: wet"));
        assertEquals(1, weight(", surface: dry"));
        assertEquals(0.287175, weight(", runs-ago: 8, elsewhere: yes"), 1e-6);
        assertEquals(0.870551, weight(", runs-ago: 2"), 1e-6);
    }

    @Test
    @DisplayName("where runs are numbered, the last one is the measure of age")
    void ageByNumber() {
        Trials trials = trials("{change: front-anti-roll-bar softer, outcome: same, run: 3}",
                "{change: front-anti-roll-bar stiffer, outcome: same, run: 13}");
        assertEquals(0.5, trials.weight(0), 1e-12);
        assertEquals(1, trials.weight(1), 1e-12);
    }

    @Test
    @DisplayName("a setting that is back where it was, or moved on, or said to be put back, is no longer on the car")
    void stillOn() {
        String softer = "{change: front-anti-roll-bar softer, outcome: worse, ";
        assertTrue(trials(softer + "steps: 1}").stillOn(0));
        assertTrue(trials(softer + "from: 4, to: 3}").stillOn(0));
        assertFalse(trials(softer + "from: 3, to: 2}").stillOn(0));
        assertFalse(trials(softer + "from: 6, to: 5}").stillOn(0));
        assertFalse(trials(softer + "put-back: yes}").stillOn(0));
        assertFalse(trials(softer + "steps: 1}", "{change: front-anti-roll-bar stiffer, outcome: better}").stillOn(0));
    }

    @Test
    @DisplayName("the way back after what did not help is an undo and no trial of its own")
    void undo() {
        String back = "{change: front-anti-roll-bar stiffer, outcome: better, steps: 1}";
        assertTrue(trials("{change: front-anti-roll-bar softer, outcome: worse, steps: 1}", back).isUndo(1));
        assertTrue(trials("{change: front-anti-roll-bar softer, outcome: same}", back).isUndo(1));
        assertFalse(trials("{change: front-anti-roll-bar softer, outcome: worse, steps: 2}", back).isUndo(1));
        assertFalse(trials("{change: front-anti-roll-bar softer, outcome: better, steps: 1}", back).isUndo(1));
    }
}
