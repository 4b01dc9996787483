package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The parts of grip are common practice without a source; what follows from them is arithmetic. */
@DisplayName("In a corner a car that could hold 10 m/s² sideways")
class CornerPhaseTest {

    private static final double GRIP = 10;

    @Test
    @DisplayName("brakes with three tenths of that on the way in, and neither brakes nor drives at the apex")
    void entry() {
        assertEquals(-3.0, CornerPhase.ENTRY.longitudinal(GRIP, 20), 1e-12);
        assertEquals(0.0, CornerPhase.MID_CORNER.longitudinal(GRIP, 20), 1e-12);
    }

    @Test
    @DisplayName("is slowed by its engine with the throttle closed, whatever its grip")
    void liftOff() {
        assertEquals(-0.8, CornerPhase.LIFT_OFF.longitudinal(GRIP, 20), 1e-12);
        assertEquals(-0.8, CornerPhase.LIFT_OFF.longitudinal(2 * GRIP, 50), 1e-12);
    }

    @Test
    @DisplayName("drives with two tenths on the way out, and at twice 110 km/h with half as much: its power is what it is")
    void exit() {
        double medium = CornerSpeed.MEDIUM.metresPerSecond();
        assertEquals(2.0, CornerPhase.EXIT.longitudinal(GRIP, medium / 2), 1e-12);
        assertEquals(2.0, CornerPhase.EXIT.longitudinal(GRIP, medium), 1e-12);
        assertEquals(1.0, CornerPhase.EXIT.longitudinal(GRIP, 2 * medium), 1e-12);
    }
}
