package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Common practice, no source: a car for turns of one direction has its wheels filled and leaned unlike on purpose. A tyre leaks
 * where it falls behind what was set in that very wheel, not where it was set lower than the other.
 */
@DisplayName("A car set for turns of one direction")
class StaggerTest {

    private static final String CAR = """
            title: a
            car:
              name: Pellow oval car
              drive: rear
              kind: stock-car
              adjusters:
                front-left-camber: {now: %s deg, min: -3.5 deg, max: 1.0 deg, step: 0.25 deg}
                front-right-camber: {now: -2.5 deg, min: -4.0 deg, max: 0.0 deg, step: 0.25 deg}
                front-left-pressure: {now: %s bar, min: 1.20 bar, max: 2.20 bar, step: 0.05 bar}
                front-right-pressure: {now: 1.70 bar, min: 1.20 bar, max: 2.20 bar, step: 0.05 bar}
                front-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1}
              tyres:
                front: {window: [70 °C, 95 °C], %s, cold-minimum: 1.20 bar, rim: 15 in, diameter: 610 mm}
            conditions: {surface: dry, air: 22 °C, track: 33 °C%s}
            tyres:
              front-left: {inner: 82 °C, middle: 80 °C, outer: 78 °C, cold-pressure: %s bar, hot-pressure: %s bar}
              front-right: {inner: 88 °C, middle: 86 °C, outer: 84 °C, cold-pressure: 1.70 bar, hot-pressure: 2.00 bar}
            reports:
              - {symptom: understeer, phase: mid-corner, speed: medium, turn: left, severity: clear, occurrence: every-lap}
            """;
    private static final String AXLE = "hot-target: 2.00 bar";

    private static Advice advise(String leftCamber, String set, String targets, String turns, String cold, String hot) {
        return Paddock.advise(Trackside.yaml(CAR.formatted(leftCamber, set, targets, turns, cold, hot)));
    }

    // (1.50 + 1.013) * (2.00 + 1.013) / (1.70 + 1.013) - 1.013 = 1.778: what keeps the difference that was set
    @ParameterizedTest
    @CsvSource({"1.72, false", "1.78, false", "1.90, false", "2.00, false", "1.52, true"})
    @DisplayName("the lower tyre may keep its difference or lose it as it warms; only one that falls behind both is short of air")
    void lower(String hot, boolean leak) {
        Advice advice = advise("-1.5", "1.50", AXLE, ", turns: left", "1.50", hot);
        assertEquals(leak, advice.halt().isPresent(), () -> hot + ": " + advice.halt());
        assertEquals(leak, PanelCase.changes(advice).contains("front-left-pressure higher"), PanelCase.changes(advice).toString());
    }

    @Test
    @DisplayName("set alike, the same reading of one tyre alone is a leak")
    void alike() {
        assertTrue(advise("-2.5", "1.70", AXLE, ", turns: left", "1.50", "1.72").halt().isPresent());
    }

    @Test
    @DisplayName("the direction of the complaint tells the loaded side as the circuit does")
    void bySaying() {
        Advice advice = advise("-1.5", "1.50", AXLE, "", "1.50", "1.78");
        assertTrue(advice.halt().isEmpty(), advice.halt().toString());
        assertTrue(PanelCase.changes(advice).contains("front-anti-roll-bar softer"), PanelCase.changes(advice).toString());
    }

    @Test
    @DisplayName("a push in lefts alone is what a car that leans its wheels for lefts is set for, and asks for a like corner the "
            + "other way of a car that leans alike; neither has damage for it")
    void oneSided() {
        for (String lean : new String[] {"-1.5", "-2.5"}) {
            Advice advice = advise(lean, "1.70", AXLE, "", "1.70", "2.00");
            assertFalse(PanelCase.likely(advice, "car-not-symmetrical"), lean);
            assertEquals(lean.equals("-2.5"), advice.cautions().stream()
                    .anyMatch(caution -> caution.name().equals("compare-both-directions")), lean);
        }
    }

    @Test
    @DisplayName("a wheel that is given a target of its own is held to that one")
    void own() {
        String own = "left-hot-target: 1.60 bar, right-hot-target: 2.00 bar";
        Advice advice = advise("-1.5", "1.50", own, ", turns: left", "1.50", "1.78");
        assertTrue(advice.halt().isEmpty(), advice.halt().toString());
        assertTrue(PanelCase.changes(advice).contains("front-left-pressure lower"), PanelCase.changes(advice).toString());
    }
}
