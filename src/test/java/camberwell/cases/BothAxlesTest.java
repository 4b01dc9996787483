package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Common practice, no source: "the tyres" are all four of them until somebody says which. */
@DisplayName("A complaint of tyres that names no axle")
class BothAxlesTest {

    private static Advice advise(String rest) {
        return PanelCase.advise("corvane-coupe", rest);
    }

    @ParameterizedTest
    @ValueSource(strings = {"slow-warm-up", "overheating", "graining", "hot-inner-edge", "hot-outer-edge", "hot-middle",
        "cold-middle"})
    @DisplayName("is of both, and has an answer")
    void answered(String symptom) {
        Advice advice = advise(PanelCase.told(symptom));
        assertFalse(advice.answers().get(0).nothing(), advice.answers().toString());
        assertTrue(advice.findings().stream().anyMatch(finding -> finding.id().startsWith("front-")));
        assertTrue(advice.findings().stream().anyMatch(finding -> finding.id().startsWith("rear-")));
    }

    @Test
    @DisplayName("and one that names it is of that one alone")
    void named() {
        Advice advice = advise(PanelCase.told("overheating, where: rear"));
        assertTrue(PanelCase.likely(advice, "rear-tyres-overheated"));
        assertFalse(PanelCase.likely(advice, "front-tyres-overheated"));
    }

    @Test
    @DisplayName("the pyrometer tells which end of a car whose tyres never come in is meant")
    void read() {
        Advice advice = advise(PanelCase.tyres("60 58 56 1.80", "60 58 56 1.80", "90 87 85 1.85", "90 87 85 1.85")
                + PanelCase.told("slow-warm-up"));
        assertTrue(PanelCase.likely(advice, "front-tyres-cold"));
        assertFalse(PanelCase.likely(advice, "rear-tyres-cold"));
    }

    @Test
    @DisplayName("all four cold: one driving habit for all, not to work them and to spare them at once")
    void oneHabit() {
        Advice advice = advise("conditions: {air: 6 °C, track: 8 °C}\n" + PanelCase.tyres("50 47 45 1.70", "50 47 46 1.70",
                "48 46 44 1.70", "49 46 45 1.70") + PanelCase.told("slow-warm-up, severity: strong"));
        assertEquals(List.of("warm-the-tyres"), PanelCase.habits(advice).stream().filter(habit -> habit.contains("tyres"))
                .toList());
        assertTrue(advice.driving().stream().filter(habit -> habit.note().name().equals("warm-the-tyres"))
                .allMatch(habit -> habit.note().practice().orElseThrow().tryNext().contains("while the wheel is straight")));
        assertFalse(advice.answers().get(0).nothing());
    }
}
