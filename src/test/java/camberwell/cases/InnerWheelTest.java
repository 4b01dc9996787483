package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Common practice, no source: the load that moves across the car is shared by both axles, so that what one bar takes of it is
 * spared the inner wheel of the other axle. T. D. Gillespie, Fundamentals of Vehicle Dynamics, 1992, ch. 6, has the sharing.
 */
@DisplayName("The inner driven wheel that spins on an open differential")
class InnerWheelTest {

    private static final String CAR = """
            title: a
            car:
              name: Pellow roadster
              drive: %s
              adjusters:
                front-pressure: {now: 1.8 bar, min: 1.6 bar, max: 2.6 bar, step: 0.05 bar}
                rear-pressure: {now: 1.8 bar, min: 1.6 bar, max: 2.6 bar, step: 0.05 bar}
                front-anti-roll-bar: {now: %s, min: 1, max: 3, step: 1}
                rear-anti-roll-bar: {now: %s, min: 1, max: 3, step: 1}
              tyres:
                front: {window: [65 °C, 95 °C], hot-target: 2.15 bar, cold-minimum: 1.5 bar}
                rear: {window: [65 °C, 95 °C], hot-target: 2.15 bar, cold-minimum: 1.5 bar}
            conditions: {surface: %s, air: 18 °C, track: 26 °C}
            %sreports:
              - {symptom: wheelspin, phase: exit, speed: slow, severity: strong, occurrence: every-lap}
            %s""";

    private static Advice advise(String drive, int front, int rear, String surface, String tyres, String more) {
        return Paddock.advise(Trackside.yaml(CAR.formatted(drive, front, rear, surface, tyres, more)));
    }

    @Test
    @DisplayName("its own bar softer first, and at its stop the other bar stiffer, of either drive")
    void mirror() {
        assertEquals("rear-anti-roll-bar softer", PanelCase.changes(advise("rear", 2, 2, "dry", "", "")).get(0));
        assertEquals("front-anti-roll-bar stiffer", PanelCase.changes(advise("rear", 2, 1, "dry", "", "")).get(0));
        assertEquals("rear-anti-roll-bar stiffer", PanelCase.changes(advise("front", 1, 2, "dry", "", "")).get(0));
    }

    @Test
    @DisplayName("not the front bar stiffer where the nose already pushes")
    void push() {
        String pushes = "  - {symptom: understeer, phase: mid-corner, speed: slow, severity: clear, occurrence: every-lap}\n";
        assertFalse(PanelCase.changes(advise("rear", 2, 1, "dry", "", pushes)).contains("front-anti-roll-bar stiffer"));
    }

    @ParameterizedTest
    @CsvSource({"1, it stands at its stop", "2, With the rear pressures this far below target"})
    @DisplayName("a bar that waits for the pressures is held for them, one at its stop for that")
    void stop(int rear, String reason) {
        StringBuilder tyres = new StringBuilder("tyres:\n");
        for (String wheel : List.of("front-left", "front-right", "rear-left", "rear-right")) {
            boolean front = wheel.startsWith("front");
            tyres.append("  %s: {inner: 86 °C, middle: 82 °C, outer: 84 °C, cold-pressure: %s bar, hot-pressure: %s bar}\n"
                    .formatted(wheel, front ? "1.80" : "1.60", front ? "2.15" : "1.92"));
        }
        Advice advice = advise("rear", 3, rear, "dry", tyres.toString(), "");
        assertTrue(advice.withheld().stream().anyMatch(held -> held.change().id().equals("rear-anti-roll-bar softer")
                && held.reason().startsWith(reason)), advice.withheld().toString());
    }
}
