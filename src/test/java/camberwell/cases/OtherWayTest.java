package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.RankedChange;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A rear-drive car with too little lock on the power: the unloaded rear wheel spins up first and takes the push of the lock with
 * it, so that the car snaps round in fast corners, and pushes and slides by turns elsewhere. Less lock, which is what is made
 * for a push on the power, makes all of it worse. That one then tries the other way is common practice, no source.
 */
@DisplayName("After a step that made the car worse was put back")
class OtherWayTest {

    private static final Path LOOSE = Path.of(System.getProperty("camberwell.home"), "rules/reference-cars",
            "loose-rear-drive.yaml");
    private static final String LESS = "  - {change: differential-power less, steps: 1, from: 2, to: 1, run: 2, outcome: %s, "
            + "on: %s}\n";
    private static final String WORSE = LESS.formatted("better", "snap-oversteer, phase: exit, speed: fast")
            + LESS.formatted("worse", "understeer, phase: exit, speed: medium")
            + LESS.formatted("worse", "understeer, phase: lift-off, speed: fast");
    private static final String BACK = "  - {change: differential-power more, steps: 1, from: 1, to: 2, run: 3, outcome: better, "
            + "on: understeer, phase: exit, speed: medium}\n"
            + "  - {change: differential-power more, steps: 1, from: 1, to: 2, run: 3, outcome: worse, on: snap-oversteer, "
            + "phase: exit, speed: fast}\n";

    private static List<RankedChange> changes(String more, String tried) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + LOOSE + "\nsetup: {differential-power: 2}\n" + more
                + "reports:\n"
                + "  - {symptom: snap-oversteer, phase: exit, speed: fast, severity: strong, occurrence: every-lap}\n"
                + "  - {symptom: understeer, phase: exit, speed: medium, severity: clear, occurrence: every-lap}\n"
                + "  - {symptom: oversteer, phase: mid-corner, speed: slow, severity: slight, occurrence: every-lap}\n"
                + "tried:\n" + tried)).changes();
    }

    @Test
    @DisplayName("a step the other way comes first, since the car answers to it and its model agrees")
    void otherWay() {
        RankedChange first = changes("", WORSE + BACK).get(0);
        assertEquals("differential-power more", first.change().id());
        assertEquals("3", first.size().to().orElseThrow().toString());
        assertTrue(first.why().startsWith("The other way it made the car worse"), first.why());
        assertTrue(first.way().watch().contains("before you first moved it"), first.way().watch());
    }

    @Test
    @DisplayName("not where that was tried before and left, nor in the wet, of which the model has not been asked")
    void notAgain() {
        String beyond = "  - {change: differential-power more, steps: 1, from: 2, to: 3, run: 1, outcome: worse, on: "
                + "understeer, phase: exit, speed: medium}\n";
        assertNotEquals("differential-power more", changes("", beyond + WORSE + BACK).get(0).change().id());
        assertNotEquals("differential-power more", changes("conditions: {surface: wet}\n", WORSE + BACK).get(0).change().id());
    }
}
