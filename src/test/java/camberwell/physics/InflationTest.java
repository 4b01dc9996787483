package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Forms: Besselink, Schmeitz and Pacejka, Vehicle System Dynamics 48 S1 (2010); sizes from memory. */
@DisplayName("More air in a tyre")
class InflationTest {

    private static final Pac2002 TYRE = Pac2002.ROAD_245_40R18;
    private static final double LOAD = 3928.5;
    private static final Pac2002 FULLER = new Inflation(0.2).of(TYRE);

    @Test
    @DisplayName("makes it stiffer upwards, and sideways where it is loaded: the more the more it carries")
    void stiffer() {
        assertTrue(new Inflation(0.2).verticalRate() > 1.1);
        double light = gain(0.3 * LOAD);
        double normal = gain(LOAD);
        double heavy = gain(1.6 * LOAD);
        assertTrue(light < normal && normal < heavy, light + " " + normal + " " + heavy);
        assertTrue(normal > 1.01 && heavy < 1.07, normal + " " + heavy);
        // Under a light load the shorter contact takes back what the carcass gains.
        assertEquals(1.0, light, 0.005);
    }

    private static double gain(double load) {
        return FULLER.corneringStiffness(load) / TYRE.corneringStiffness(load);
    }

    @Test
    @DisplayName("takes from its friction, its heat and the length of its contact")
    void less() {
        assertEquals(0.97, FULLER.peakFriction(LOAD) / TYRE.peakFriction(LOAD), 1e-12);
        // SAE J2452's power law, -0.4: 20 % more pressure, 7 % less loss.
        assertEquals(0.9297, new Inflation(0.2).rollingLoss(), 1e-4);
        assertEquals(1 / 1.2, new Inflation(0.2).contactLength(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.5, -0.2, 0.2, 1.0})
    @DisplayName("goes by the published forms: 1 + PPY1 dp, 1 + PPY2 dp and 1 + PPY3 dp, with less air as with more")
    void forms(double change) {
        Pac2002 other = new Inflation(change).of(TYRE);
        assertEquals(TYRE.stiffness() * (1 + 0.35 * change), other.stiffness(), 1e-12);
        assertEquals(TYRE.pky2() * (1 + 0.35 * change), other.pky2(), 1e-12);
        assertEquals(TYRE.friction() * (1 - 0.15 * change), other.friction(), 1e-12);
        assertEquals(1 + 0.7 * change, new Inflation(change).verticalRate(), 1e-12);
    }

    @Test
    @DisplayName("changes nothing where nothing was changed, and is no number from nowhere")
    void nominal() {
        assertSame(TYRE, Inflation.NOMINAL.of(TYRE));
        assertThrows(IllegalArgumentException.class, () -> new Inflation(-0.6));
        assertThrows(IllegalArgumentException.class, () -> new Inflation(Double.NaN));
    }
}
