package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Common practice, no source: what stands out on the set-up sheet is looked at first, if it is for the complaint at all. */
@DisplayName("What stands far from what is ordinary")
class StandsOutTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/corvane-coupe.yaml");

    private static Advice advise(String setup, String report) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + CAR + "\nsetup: {" + setup + "}\nreports:\n  - {symptom: "
                + report + ", occurrence: every-lap}\n"));
    }

    private static String first(String setup, String report) {
        return advise(setup, report).changes().get(0).change().id();
    }

    @Test
    @DisplayName("a slide with the front bar at its softest: that bar stiffer, before the rear one, which stands as usual")
    void bar() {
        assertEquals("rear-anti-roll-bar softer", first("front-anti-roll-bar: 3, rear-anti-roll-bar: 3",
                "oversteer, phase: mid-corner, severity: clear"));
        RankedChange change = advise("front-anti-roll-bar: 1, rear-anti-roll-bar: 3",
                "oversteer, phase: mid-corner, severity: clear").changes().get(0);
        assertEquals("front-anti-roll-bar stiffer", change.change().id());
        assertTrue(change.size().computation().stream().anyMatch(line -> line.startsWith("it stands at 1, far from")));
    }

    @Test
    @DisplayName("the same bar is no matter for a push, which it would make worse")
    void notForThat() {
        assertTrue(advise("front-anti-roll-bar: 1", "understeer, phase: mid-corner, severity: clear").changes().stream()
                .noneMatch(change -> change.change().id().equals("front-anti-roll-bar stiffer")));
    }

    @Test
    @DisplayName("what is done on a bench does not come first for standing out")
    void bench() {
        assertEquals("rear-anti-roll-bar softer", first("differential-coast: 1",
                "oversteer, phase: entry, speed: medium, severity: clear"));
    }
}
