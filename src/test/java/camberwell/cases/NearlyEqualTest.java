package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A differential that locks as the throttle closes holds the driven wheels together and the car straight, in slow corners most.
 * That one tries on a model what rules of thumb leave open is common practice, no source.
 */
@DisplayName("Where as much speaks for one change as for another, the driven model of the car chooses")
class NearlyEqualTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/corvane-coupe.yaml");

    private static Advice advise(String surface) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + CAR + "\nconditions: {surface: " + surface + "}\nreports:\n"
                + "  - {symptom: understeer, phase: lift-off, speed: slow, severity: clear, occurrence: every-lap}\n"));
    }

    @Test
    @DisplayName("what does most where something is told comes first, and says why")
    void theModelChooses() {
        RankedChange first = advise("dry").changes().get(0);
        assertTrue(first.size().computation().stream().anyMatch(line -> line.contains("for which as much speaks")),
                first.change() + " " + first.size().computation());
    }

    /** A differential that locks harder on the power pushes in slow corners; the front bar turns this car round in fast ones. */
    @Test
    @DisplayName("a car that is loose somewhere is not begun with what turns it round there, though it pushes where it is told of")
    void looseElsewhere() {
        String told = "  - {symptom: understeer, phase: %s, speed: %s, severity: %s, occurrence: every-lap}\n";
        Path loose = Path.of(System.getProperty("camberwell.home"), "rules/reference-cars/loose-rear-drive.yaml");
        RankedChange first = Paddock.advise(Trackside.yaml("title: a\ncar: " + loose + "\nsetup: {differential-power: 6}\nreports:\n"
                + told.formatted("mid-corner", "slow", "strong") + told.formatted("mid-corner", "medium", "slight")
                + told.formatted("lift-off", "slow", "slight") + told.formatted("exit", "medium", "slight"))).changes().get(0);
        assertTrue(!first.change().id().equals("front-anti-roll-bar softer"), first.change().id());
    }

    @Test
    @DisplayName("on a wet road it is not asked, as no model of tyres knows the road")
    void dryRoadsOnly() {
        assertEquals("front-anti-roll-bar softer", advise("wet").changes().get(0).change().id());
    }
}
