package camberwell.vocabulary;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("What can be changed on a car")
class AdjusterTest {

    @ParameterizedTest
    @EnumSource
    @DisplayName("a made-up car stands at a plausible setting, on its grid of steps, with room both ways")
    void typical(Adjuster adjuster) {
        Typical typical = adjuster.typical();
        for (Quantity end : new Quantity[] {typical.min(), typical.now(), typical.max()}) {
            assertTrue(adjuster.measure().holds(end), end.toString());
        }
        double down = (typical.now().value() - typical.min().value()) / typical.step().value();
        double up = (typical.max().value() - typical.now().value()) / typical.step().value();
        assertTrue(down >= 2 - 1e-9 && up >= 2 - 1e-9, down + " steps down, " + up + " up");
        assertEquals(Math.rint(down), down, 1e-6);
        assertEquals(Math.rint(up), up, 1e-6);
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("its name says its end of the car, and what it adjusts")
    void named(Adjuster adjuster) {
        String end = adjuster.wheel().map(wheel -> wheel.id() + "-").orElse(adjuster.axle()
                .map(axle -> axle.id() + "-").orElse(""));
        assertEquals(adjuster.id(), end + adjuster.adjustment().id());
        assertEquals(adjuster.directions(), adjuster.adjustment().directions());
        adjuster.axle().filter(axle -> adjuster.wheel().isEmpty()).ifPresent(axle ->
                assertEquals(Optional.of(adjuster), Adjuster.of(adjuster.adjustment(), axle)));
    }

    @ParameterizedTest
    @EnumSource
    @DisplayName("the first direction lowers the number, and the second is the way back")
    void directions(Adjustment adjustment) {
        Direction lowers = adjustment.directions().get(0);
        assertTrue(!lowers.raises() && lowers.opposite().raises());
        assertEquals(lowers.opposite(), adjustment.directions().get(1));
    }

    @Test
    @DisplayName("tyres come first: toe, camber and pressure act on the tyre itself, all else on the balance")
    void tyresFirst() {
        assertEquals("toe camber pressure", Arrays.stream(Adjustment.values()).filter(Adjustment::ofTyre)
                .map(Adjustment::id).collect(Collectors.joining(" ")));
    }

    @Test
    @DisplayName("only what has clicks, holes or ramps may be counted either way; angles and heights have their signs")
    void counted() {
        assertEquals("anti-roll-bar springs bump rebound wing differential-preload differential-power "
                + "differential-coast", Arrays.stream(Adjustment.values()).filter(Adjustment::countedEitherWay)
                .map(Adjustment::id).collect(Collectors.joining(" ")));
    }

    @Test
    @DisplayName("a slipped decimal point or a wrong unit is no plausible setting")
    void plausible() {
        assertTrue(Adjuster.FRONT_TOE.measure().holds(new Quantity(2, Unit.MILLIMETRE)));
        assertTrue(!Adjuster.FRONT_TOE.measure().holds(new Quantity(2, Unit.INCH)), "toe in inches is not offered");
        assertTrue(!Adjuster.FRONT_CAMBER.measure().holds(new Quantity(-25, Unit.DEGREE)));
        assertTrue(Adjuster.REAR_SPRINGS.measure().holds(new Quantity(450, Unit.POUND_PER_INCH)));
        assertTrue(!Adjuster.REAR_LEFT_PRESSURE.measure().holds(new Quantity(28, Unit.BAR)), "that was psi");
        assertEquals("a setting of the front anti-roll bar", Adjuster.FRONT_ANTI_ROLL_BAR.measure().noun());
    }
}
