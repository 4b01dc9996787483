package camberwell.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What a driver complains of: built-in words, and those that an instructor brings")
class SymptomTest {

    @Test
    @DisplayName("a word that is brought is known everywhere, after the built-in ones, until it is taken back")
    void brought() {
        List<String> builtIn = Word.ids(Symptom.class);
        try (Symptom.Brought porpoising = Symptom.bring("porpoising", "the car bobs at speed", false,
                Optional.empty())) {
            assertSame(porpoising.symptom(), Word.of(Symptom.class, "porpoising"));
            assertEquals(builtIn.size(), porpoising.symptom().ordinal());
            assertTrue(Symptom.COLD_MIDDLE.compareTo(porpoising.symptom()) < 0);
            assertEquals("porpoising", Word.ids(Symptom.class).get(builtIn.size()));
            assertEquals(Optional.empty(), porpoising.symptom().senseless(Phase.STRAIGHT));
        }
        assertEquals(builtIn, Word.ids(Symptom.class));
    }

    @Test
    @DisplayName("no word is brought twice, over a built-in one, or in another spelling than all others")
    void refused() {
        assertThrows(IllegalArgumentException.class, () -> Symptom.bring("understeer", "x", false, Optional.empty()));
        assertThrows(IllegalArgumentException.class, () -> Symptom.bring("Tank Slapper", "x", false,
                Optional.empty()));
        assertFalse(Word.find(Symptom.class, "Tank Slapper").isPresent());
    }

    @Test
    @DisplayName("a complaint is senseless where what it needs is missing: power, brakes, a turn of the wheel, a kerb")
    void senseless() {
        assertTrue(Symptom.WHEELSPIN.senseless(Phase.LIFT_OFF).isPresent(), "no power, no wheelspin");
        assertTrue(Symptom.FRONT_LOCKING.senseless(Phase.LIFT_OFF).isPresent(), "no brakes, no locked wheel");
        assertTrue(Symptom.UNDERSTEER.senseless(Phase.STRAIGHT).isPresent());
        assertTrue(Symptom.KERB_INSTABILITY.senseless(Phase.EXIT).isPresent());
        assertEquals(Optional.empty(), Symptom.OVERSTEER.senseless(Phase.LIFT_OFF), "the classic of lifting");
        assertEquals(Optional.empty(), Symptom.WANDERING.senseless(Phase.STRAIGHT));
    }

    @Test
    @DisplayName("the front runs wide, locks and steers; the rear steps out and snaps; a tyre's word takes a place")
    void ends() {
        assertEquals(Optional.of(Axle.FRONT), Symptom.UNDERSTEER.axle());
        assertEquals(Optional.of(Axle.REAR), Symptom.SNAP_OVERSTEER.axle());
        assertEquals(Optional.empty(), Symptom.WHEELSPIN.axle(), "it is the driven one");
        assertEquals(List.of(Symptom.SLOW_WARM_UP, Symptom.OVERHEATING, Symptom.GRAINING, Symptom.HOT_INNER_EDGE,
                Symptom.HOT_OUTER_EDGE, Symptom.HOT_MIDDLE, Symptom.COLD_MIDDLE),
                Arrays.stream(Symptom.values()).filter(Symptom::ofTyre).toList());
    }
}
