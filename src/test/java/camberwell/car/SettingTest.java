package camberwell.car;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Direction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class SettingTest {

    private static final Setting CAMBER = degrees(-2.5, -4.0, -1.0, 0.1);

    @Test
    @DisplayName("more negative camber is a smaller number")
    void moreNegative() {
        assertEquals(deg(-2.7), CAMBER.moved(Direction.MORE_NEGATIVE, 2));
        assertEquals(deg(-2.3), CAMBER.moved(Direction.LESS_NEGATIVE, 2));
    }

    @Test
    @DisplayName("a change ends at the stop")
    void stop() {
        assertEquals(15, CAMBER.stepsLeft(Direction.MORE_NEGATIVE));
        assertEquals(deg(-4.0), CAMBER.moved(Direction.MORE_NEGATIVE, 99));
        assertEquals(0, degrees(-4.0, -4.0, -1.0, 0.1).stepsLeft(Direction.MORE_NEGATIVE));
    }

    @Test
    @DisplayName("a last step that would run into the stop is not taken")
    void noHalfStep() {
        assertEquals(2, degrees(-3.0, -4.0, -1.0, 0.4).stepsLeft(Direction.MORE_NEGATIVE));
    }

    @Test
    @DisplayName("a damper whose clicks are counted from fully closed gets softer with the number")
    void countedFromClosed() {
        Setting damper = new Setting(clicks(10), clicks(0), clicks(20), clicks(2), true);
        assertEquals(clicks(12), damper.moved(Direction.SOFTER, 1));
        assertEquals(clicks(8), damper.moved(Direction.STIFFER, 1));
        assertEquals(5, damper.stepsLeft(Direction.SOFTER));
    }

    @Test
    @DisplayName("a target in another unit is so many of the car's own steps away")
    void stepsTo() {
        Setting pressure = new Setting(new Quantity(27, Unit.PSI), new Quantity(24, Unit.PSI),
                new Quantity(34, Unit.PSI), new Quantity(0.5, Unit.PSI), false);
        // 1.93 bar = 27.99 psi (1 psi = 6.894 757 kPa, NIST SP 811).
        assertEquals(2, pressure.stepsTo(new Quantity(1.93, Unit.BAR)));
        assertEquals(-2, pressure.stepsTo(new Quantity(26, Unit.PSI)));
    }

    @Test
    @DisplayName("a setting in another unit is read in the car's, to a tenth of a step")
    void otherUnit() {
        Setting springs = new Setting(new Quantity(800, Unit.POUND_PER_INCH), new Quantity(650, Unit.POUND_PER_INCH),
                new Quantity(950, Unit.POUND_PER_INCH), new Quantity(50, Unit.POUND_PER_INCH), false);
        // 150 N/mm = 856.5 lb/in (1 lbf/in = 0.175 126 8 N/mm, NIST SP 811).
        assertEquals(new Quantity(855, Unit.POUND_PER_INCH),
                springs.withNow(new Quantity(150, Unit.NEWTON_PER_MILLIMETRE)).now());
        assertEquals(deg(-2.57), CAMBER.withNow(deg(-2.57)).now());
    }

    @Test
    @DisplayName("a setting is shown with the digits of its step")
    void decimals() {
        assertEquals(1, CAMBER.decimals());
        assertEquals(2, degrees(0.1, -0.3, 0.3, 0.05).decimals());
        assertEquals(2, degrees(-0.25, -1, 1, 0.5).decimals());
    }

    @Property
    @Label("there and back by as many steps is where it was, and never beyond a stop")
    void thereAndBack(@ForAll @IntRange(min = -40, max = -10) int tenths, @ForAll @IntRange(max = 40) int steps) {
        Setting setting = degrees(tenths / 10.0, -4.0, -1.0, 0.1);
        int taken = Math.min(steps, setting.stepsLeft(Direction.MORE_NEGATIVE));
        Setting moved = setting.withNow(setting.moved(Direction.MORE_NEGATIVE, steps));
        assertTrue(moved.now().value() >= -4.0);
        assertEquals(setting.now(), moved.moved(Direction.LESS_NEGATIVE, taken));
    }

    @Test
    @DisplayName("stops the wrong way round, a step of nothing and mixed units are refused")
    void refused() {
        assertThrows(IllegalArgumentException.class, () -> degrees(-2, -1, -4, 0.1));
        assertThrows(IllegalArgumentException.class, () -> degrees(-2, -4, -1, 0));
        assertThrows(IllegalArgumentException.class,
                () -> new Setting(deg(1), deg(0), clicks(3), deg(1), false));
    }

    private static Setting degrees(double now, double min, double max, double step) {
        return new Setting(deg(now), deg(min), deg(max), deg(step), false);
    }

    private static Quantity deg(double value) {
        return new Quantity(value, Unit.DEGREE);
    }

    private static Quantity clicks(double value) {
        return new Quantity(value, Unit.POSITION);
    }
}
