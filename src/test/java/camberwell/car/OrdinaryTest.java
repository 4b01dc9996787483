package camberwell.car;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Standing;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** The ranges of what is ordinary are common practice, no source. */
@DisplayName("How an adjuster stands")
class OrdinaryTest {

    private static Set<Standing> standing(Adjuster adjuster, double now, double min, double max, Unit unit) {
        Setting setting = new Setting(new Quantity(now, unit), new Quantity(min, unit), new Quantity(max, unit),
                new Quantity(unit == Unit.POSITION ? 1 : 0.05, unit), false);
        return Ordinary.standing(new Car("Any car", Optional.of(Drive.REAR), Map.of(adjuster, setting), Map.of(), Map.of(),
                false), adjuster);
    }

    @Test
    @DisplayName("toe in degrees or millimetres tells which way the wheels point, toe in clicks does not")
    void toe() {
        assertEquals(Set.of(Standing.TOED_IN, Standing.ORDINARY), standing(Adjuster.FRONT_TOE, 0.05, -0.3, 0.3, Unit.DEGREE));
        assertEquals(Set.of(Standing.TOED_OUT, Standing.FAR_TOED_OUT),
                standing(Adjuster.FRONT_TOE, -0.25, -0.3, 0.3, Unit.DEGREE));
        assertEquals(Set.of(Standing.TOED_IN), standing(Adjuster.FRONT_TOE, 3, -4, 4, Unit.MILLIMETRE));
        assertEquals(Set.of(), standing(Adjuster.FRONT_TOE, 5, 0, 10, Unit.POSITION));
    }

    @Test
    @DisplayName("of three holes none is far from the middle; of more the ends are, as in any finer range")
    void holes() {
        for (double hole : new double[] {1, 2, 3}) {
            assertEquals(Set.of(Standing.ORDINARY), standing(Adjuster.FRONT_ANTI_ROLL_BAR, hole, 1, 3, Unit.POSITION));
        }
        assertEquals(Set.of(Standing.BEYOND_ORDINARY), standing(Adjuster.FRONT_ANTI_ROLL_BAR, 4, 1, 4, Unit.POSITION));
        assertEquals(Set.of(Standing.BEYOND_ORDINARY), standing(Adjuster.FRONT_ANTI_ROLL_BAR, 5, 1, 5, Unit.POSITION));
        assertEquals(Set.of(Standing.SHORT_OF_ORDINARY), standing(Adjuster.FRONT_ANTI_ROLL_BAR, 1, 1, 5, Unit.POSITION));
    }

    @Test
    @DisplayName("a wheel's camber is held against its axle's range, but for a wheel that leans out on purpose")
    void camber() {
        assertEquals(Set.of(Standing.ORDINARY), standing(Adjuster.FRONT_RIGHT_CAMBER, -3, -5, -1, Unit.DEGREE));
        assertEquals(Set.of(Standing.BEYOND_ORDINARY), standing(Adjuster.FRONT_RIGHT_CAMBER, -4, -5, -1, Unit.DEGREE));
        assertEquals(Set.of(), standing(Adjuster.FRONT_LEFT_CAMBER, 4, 2, 6, Unit.DEGREE));
    }
}
