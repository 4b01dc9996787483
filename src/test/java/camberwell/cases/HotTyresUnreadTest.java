package camberwell.cases;

import static camberwell.cases.PanelCase.advise;
import static camberwell.cases.PanelCase.changes;
import static camberwell.cases.PanelCase.habits;
import static camberwell.cases.PanelCase.said;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Common practice, no source: without a gauge too much air, too little, heat and wear feel alike. */
@DisplayName("Tyres that the driver calls overheated and nobody has read")
class HotTyresUnreadTest {

    private static final String DAY = "conditions: {surface: dry, air: 26 °C, track: 35 °C}\n";
    private static final String LATE = "occurrence: every-lap, since: late-run";
    private static final String FRONT = "overheating, where: front";
    private static final String REAR = "overheating, where: rear";

    private static Advice told(String... reports) {
        return advise("corvane-coupe", DAY + said(LATE, reports));
    }

    private static boolean asksToRead(Advice advice) {
        return advice.cautions().stream().anyMatch(caution -> caution.name().equals("read-the-hot-tyres"));
    }

    @ParameterizedTest
    @ValueSource(strings = {FRONT, REAR, "understeer, phase: mid-corner", "oversteer, phase: exit"})
    @DisplayName("are read before any air goes in or out, and the driver spares them first")
    void readFirst(String complaint) {
        Advice advice = told(complaint);
        assertTrue(asksToRead(advice), advice.cautions().toString());
        assertTrue(habits(advice).contains("ease-the-pace-late-in-the-run"), habits(advice).toString());
        assertTrue(changes(advice).stream().noneMatch(change -> change.contains("pressure")), changes(advice).toString());
    }

    @Test
    @DisplayName("at one end: that end is given a little less to do, with the hands at the front and the foot at the rear")
    void oneEnd() {
        Advice front = told(FRONT);
        assertEquals(List.of("front-anti-roll-bar softer"), changes(front));
        assertTrue(habits(front).contains("smooth-hands"), habits(front).toString());
        Advice rear = told(REAR);
        assertEquals(List.of("rear-anti-roll-bar softer"), changes(rear));
        assertTrue(habits(rear).contains("squeeze-the-throttle"), habits(rear).toString());
    }

    @Test
    @DisplayName("at both ends: no bar, which would only hand the heat from one to the other; nor where nobody said which end")
    void bothEnds() {
        for (Advice advice : List.of(told(FRONT, REAR), told("overheating"))) {
            assertEquals(List.of(), changes(advice));
            assertTrue(advice.drivingFirst(), habits(advice).toString());
            assertTrue(asksToRead(advice));
        }
    }

    @Test
    @DisplayName("and were read after all: nobody is asked to read them again")
    void read() {
        String tyre = "108 104 100 2.05";
        assertFalse(asksToRead(advise("corvane-coupe", DAY + PanelCase.tyres(tyre, tyre, tyre, tyre) + said(LATE, FRONT, REAR))));
    }

    @Test
    @DisplayName("what the tread looks like is told like a reading: torn shoulders ask for camber, a worn middle for less air")
    void look() {
        assertEquals("front-camber more-negative", changes(told(FRONT, "hot-outer-edge, where: front")).get(0));
        assertEquals("rear-pressure lower", changes(told(REAR, "hot-middle, where: rear")).get(0));
    }
}
