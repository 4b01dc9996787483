package camberwell.cases;

import static camberwell.cases.PanelCase.likely;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Common practice, no source: one wheel far hotter than its partner over the whole tread has a brake that drags or a bearing that
 * goes. The gas in it is hot for that reason, so its hot pressure asks for nothing.
 */
@DisplayName("One hot corner")
class HotCornerTest {

    private static Advice advise(String turns, String frontLeft, String frontRight, String rearLeft, String rearRight) {
        return PanelCase.advise("corvane-coupe", "conditions: {surface: dry, air: 20 °C, track: 27 °C, turns: " + turns + "}\n"
                + PanelCase.tyres(frontLeft, frontRight, rearLeft, rearRight).replace("hot-pressure", "cold-pressure: 1.60 bar, "
                + "hot-pressure"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"both", "left", "right"})
    @DisplayName("stops the car whichever way the circuit turns, is named, and its pressure is held")
    void stops(String turns) {
        Advice advice = advise(turns, "88 85 83 1.85", "88 85 83 1.85", "86 84 82 1.84", "120 119 116 2.15");
        assertEquals("check-for-damage", advice.halt().orElseThrow().name());
        assertTrue(advice.doubts().get(0).startsWith("rear-right tyre 118 °C, over its whole width at least 34 K hotter"),
                advice.doubts().toString());
        assertEquals(List.of(), PanelCase.changes(advice));
        assertTrue(advice.withheld().stream().anyMatch(held -> held.change().id().equals("rear-right-pressure lower")
                && held.reason().contains("held until")), advice.withheld().toString());
        assertFalse(likely(advice, "rear-works-harder"));
        assertFalse(likely(advice, "rear-tyres-overheated"));
    }

    @Test
    @DisplayName("the other corners keep their say: a tyre that is short of air is still told of")
    void others() {
        Advice advice = advise("both", "88 85 83 1.68", "88 85 83 1.85", "86 84 82 1.84", "120 119 116 2.15");
        assertEquals(List.of("front-left-pressure higher"), PanelCase.changes(advice));
    }

    @Test
    @DisplayName("a circuit that turns left heats both right tyres: that is no fault of a corner")
    void circuit() {
        Advice advice = advise("left", "78 76 74 1.84", "100 98 96 1.90", "78 76 74 1.84", "108 106 104 1.92");
        assertTrue(advice.tyres().hotCorner().isEmpty());
        assertTrue(advice.halt().isEmpty());
    }

    @Test
    @DisplayName("one hot edge is a matter of camber or toe, and a partner that alone is cold is itself the odd one")
    void notThat() {
        assertTrue(advise("both", "88 85 83 1.85", "88 85 83 1.85", "86 84 82 1.84", "125 98 90 1.90").tyres().hotCorner()
                .isEmpty());
        assertTrue(advise("both", "88 85 83 1.85", "88 85 83 1.85", "58 57 56 1.70", "86 84 82 1.84").tyres().hotCorner()
                .isEmpty());
    }
}
