package camberwell.reading;

import static camberwell.physics.TreadRead.ramp;

import camberwell.units.Quantity;
import camberwell.units.Unit;
import java.util.List;

/**
 * The gauge on the tyres of one axle, warmed to their window.
 *
 * @param read the tyres that it was read on
 * @param off how far they are off their target together, bar; 0 where none was read
 */
record AxlePressures(List<WheelFigures> read, double off) {

    /** Bar off the target; the trade's step of 2 psi (0.14 bar; Northstar Motorsports tech tips) is clear. */
    static final double STARTS = 0.03;
    static final double FULL = 0.13;
    private static final double CLEAR = 0.9;
    /** Bar off the target from which nothing could be clearer. */
    private static final double TOTAL = 0.5;

    /** Those of {@code wheels} whose pressure can be held against a target. */
    static AxlePressures of(List<WheelFigures> wheels) {
        List<WheelFigures> read = wheels.stream().filter(wheel -> wheel.overTargetBar().isPresent()).toList();
        return new AxlePressures(read, read.stream().mapToDouble(wheel -> wheel.overTargetBar().orElseThrow()).average()
                .orElse(0));
    }

    double above() {
        return read.isEmpty() ? 0 : offTarget(off);
    }

    double below() {
        return read.isEmpty() ? 0 : offTarget(-off);
    }

    double atTarget() {
        return read.isEmpty() ? 0 : 1 - ramp(Math.abs(off), STARTS, 2 * STARTS);
    }

    /** How clear a deviation is, bar: clear at the trade's step, and clearer still the further it goes. */
    private static double offTarget(double bar) {
        return CLEAR * ramp(bar, STARTS, FULL) + (1 - CLEAR) * ramp(bar, FULL, TOTAL);
    }

    /** In words: {@code 0.11 bar above the hot target of 1.90 bar}; of two targets without a figure. */
    String against() {
        WheelFigures first = read.get(0);
        return against(first, off, read.stream().map(WheelFigures::target).distinct().count() > 1 ? "their hot targets"
                : target(first));
    }

    static String against(WheelFigures wheel, double offBar) {
        return against(wheel, offBar, target(wheel));
    }

    private static String target(WheelFigures wheel) {
        return "the hot target of " + text(wheel.target().orElseThrow());
    }

    private static String against(WheelFigures wheel, double offBar, String target) {
        String warmed = wheel.warm().equals(wheel.hot()) ? "" : ", warmed to the window as they should be";
        return (Math.abs(offBar) < 0.005 ? "at " + target
                : bar(wheel, Math.abs(offBar)) + (offBar > 0 ? " above " : " below ") + target) + warmed;
    }

    /** A difference of pressure in the unit that the tyre was read in. */
    static String bar(WheelFigures wheel, double bar) {
        Unit unit = wheel.hot().orElseThrow().unit();
        return text(new Quantity(bar * 1e5 / unit.differenceToSi(1), unit));
    }

    static String text(Quantity pressure) {
        return pressure.text(pressure.unit() == Unit.BAR ? 2 : 1);
    }
}
