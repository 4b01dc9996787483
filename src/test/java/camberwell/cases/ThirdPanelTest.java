package camberwell.cases;

import static camberwell.cases.PanelCase.advise;
import static camberwell.cases.PanelCase.change;
import static camberwell.cases.PanelCase.changes;
import static camberwell.cases.PanelCase.told;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** A third engineer's panel, likewise written down before the program was asked. Common practice, no source. */
@DisplayName("A race engineer's third panel")
class ThirdPanelTest {

    /** A club saloon whose file tells no spring and no bar. */
    private static final String SALOON = """
            title: a
            car:
              name: a saloon
              kind: saloon
              drive: rear
              adjusters:
                rear-toe: {now: 0.15 deg, min: 0.00 deg, max: 0.35 deg, step: 0.05 deg}
                front-springs: {now: 90 N/mm, min: 60 N/mm, max: 120 N/mm, step: 10 N/mm}
                front-anti-roll-bar: {now: 4, min: 1, max: 6, step: 1}
                rear-anti-roll-bar: {now: 2, min: 1, max: 4, step: 1}
                brake-bias: {now: 63 %, min: 58 %, max: 70 %, step: 1 %}
              tyres:
                front: {window: [75 °C, 100 °C], hot-target: 2.05 bar, rim: 17 in}
                rear: {window: [75 °C, 100 °C], hot-target: 2.05 bar, rim: 17 in}
              dimensions: {wheelbase: 2.72 m, mass: 1410 kg, front-weight: 51 %, cg-height: 0.49 m}
            """;

    @Test
    @DisplayName("in fast corners a winged car is set right with its wings, wherever in the corner it is")
    void wingInFastCorners() {
        for (String phase : new String[] {"", ", phase: entry", ", phase: mid-corner", ", phase: exit"}) {
            assertEquals("front-wing more", changes(advise("tessel-single-seater", told("understeer, speed: fast" + phase))).get(0),
                    phase);
            assertEquals("rear-wing more", changes(advise("tessel-single-seater", told("oversteer, speed: fast" + phase))).get(0),
                    phase);
        }
    }

    @Test
    @DisplayName("how near to neutral a car is, a class of car does not tell: a car that pushes gets a bar before a weak lever")
    void classTellsNoBalance() {
        Advice advice = Paddock.advise(Trackside.yaml(SALOON + told("understeer, phase: mid-corner")));
        assertTrue(changes(advice).get(0).endsWith("anti-roll-bar softer") || changes(advice).get(0)
                .endsWith("anti-roll-bar stiffer"), changes(advice).toString());
        assertFalse(advice.changes().stream().anyMatch(each -> each.size().computation().toString().contains("neutral or beyond")));
    }

    @Test
    @DisplayName("what is strong in one phase alone is not far off everywhere: the next bar does not go to its stop")
    void notToTheStop() {
        Advice advice = Paddock.advise(Trackside.yaml(SALOON + told("understeer, phase: entry, speed: slow, severity: strong")
                + "tried: [{change: front-springs softer, steps: 1, outcome: same}]\n"));
        assertEquals(2.0, change(advice, "front-anti-roll-bar softer").size().to().orElseThrow().value());
    }
}
