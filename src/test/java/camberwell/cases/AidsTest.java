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

/** Common practice, no source: what is set from the seat is tried before a spanner is picked up. */
@DisplayName("A car with aids")
class AidsTest {

    private static Advice advise(String aids, String complaint) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: {name: a, drive: rear, " + aids
                + "adjusters: {front-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1}, "
                + "rear-anti-roll-bar: {now: 3, min: 1, max: 5, step: 1}, "
                + "brake-bias: {now: 66 %, min: 58 %, max: 72 %, step: 0.5 %}}}\n" + PanelCase.told(complaint)));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "anti-lock        | front-locking, phase: braking             | anti-lock-works-all-the-time | true",
        "anti-lock        | understeer, phase: entry, speed: slow     | anti-lock-works-all-the-time | false",
        "traction-control | wheelspin, phase: exit, speed: slow       | traction-control-out-of-step | true",
        "traction-control | snap-oversteer, phase: exit, speed: slow  | traction-control-out-of-step | true"})
    @DisplayName("is asked about its own aid, first where that is there for just the fault; one of which nobody said so is not")
    void first(String aid, String complaint, String cause, boolean first) {
        Advice advice = advise("aids: [" + aid + "], ", complaint);
        assertTrue(PanelCase.likely(advice, cause), advice.findings().toString());
        assertTrue(PanelCase.habits(advice).contains("set-the-aid-first"), PanelCase.habits(advice).toString());
        assertEquals(first, advice.drivingFirst());
        Advice without = advise("", complaint);
        assertFalse(PanelCase.habits(without).contains("set-the-aid-first"));
        assertEquals(PanelCase.changes(without), PanelCase.changes(advice), "the aid moves nothing on the car");
    }

    @Test
    @DisplayName("is not asked about the other aid, nor about a slide that no aid holds")
    void other() {
        assertFalse(PanelCase.habits(advise("aids: [anti-lock], ", "wheelspin, phase: exit")).contains("set-the-aid-first"));
        assertFalse(PanelCase.habits(advise("aids: [traction-control], ", "oversteer, phase: mid-corner"))
                .contains("set-the-aid-first"));
    }
}
