package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class RollCamberTest {

    @Test
    @DisplayName("2° of roll with half of it taken back: -3° stand at -2° outside and at -4° inside")
    void staticCamberStandsTheOuterTyreUp() {
        assertEquals(-2.0, RollCamber.outer(-3.0, 2.0, 0.5), 1e-12);
        assertEquals(-4.0, RollCamber.inner(-3.0, 2.0, 0.5), 1e-12);
    }

    // CommonRoad vehicle models (TUM): vehicle 1 front -0.623 rad/m on a track of 1.390 m.
    @Test
    void gainFromWheelTravel() {
        assertEquals(0.433, RollCamber.gainFromTravel(-0.623, 1.390), 5e-4);
    }

    @Property
    void fullGainKeepsTheWheelUpright(@ForAll @DoubleRange(min = -0.08, max = 0) double camber,
            @ForAll @DoubleRange(min = 0, max = 0.1) double roll) {
        assertEquals(camber, RollCamber.outer(camber, roll, 1), 1e-15);
        assertEquals(camber + roll, RollCamber.outer(camber, roll, 0), 1e-15);
        assertEquals(2 * camber, RollCamber.outer(camber, roll, 0.3) + RollCamber.inner(camber, roll, 0.3), 1e-15);
    }
}
