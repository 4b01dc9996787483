package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Common practice, no source: a tyre for the rain has a target of its own, which its maker gives. */
@DisplayName("Tyres for the rain")
class RainTyreTest {

    private static Advice advise(String compound) {
        return PanelCase.advise("corvane-coupe", "conditions: {surface: wet, air: 12 °C, track: 13 °C}\nstint: {"
                + compound + "laps: 7}\n" + PanelCase.tyres("38 37 36 1.70", "38 37 36 1.70", "40 40 38 1.72", "40 40 38 1.72")
                + PanelCase.told("oversteer, phase: exit, speed: slow"));
    }

    @Test
    @DisplayName("are not held against the target of the dry ones, and that is said")
    void ownTarget() {
        Advice advice = advise("compound: wet, ");
        assertEquals(List.of(), PanelCase.changes(advice).stream().filter(change -> change.contains("pressure")).toList());
        assertTrue(advice.doubts().stream().anyMatch(doubt -> doubt.contains("dry tyres") && doubt.contains("maker")));
        assertTrue(PanelCase.changes(advice).get(0).startsWith("rear-"), PanelCase.changes(advice).toString());
        assertTrue(PanelCase.changes(advice).get(0).endsWith("softer"), PanelCase.changes(advice).toString());
    }

    @Test
    @DisplayName("dry tyres that were caught by the rain still are")
    void caughtOut() {
        Advice advice = advise("compound: medium, ");
        assertTrue(PanelCase.likely(advice, "rear-pressure-low"));
        assertFalse(advice.doubts().stream().anyMatch(doubt -> doubt.contains("dry tyres")));
    }

    /** On one set of road tyres the target of the file is right in the rain too; on rain tyres it is not. */
    @Test
    @DisplayName("of which nobody said that they were on: held against the file's target, and told that it is a dry one")
    void unsaid() {
        Advice advice = advise("");
        assertTrue(PanelCase.likely(advice, "rear-pressure-low"));
        assertTrue(advice.doubts().stream().anyMatch(doubt -> doubt.contains("taken to be that of its dry tyres")
                && doubt.contains("nobody said") && doubt.contains("compound: wet")), advice.doubts().toString());
    }
}
