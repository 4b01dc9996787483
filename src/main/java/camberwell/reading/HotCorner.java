package camberwell.reading;

import static camberwell.physics.TreadRead.ramp;

import camberwell.physics.TreadRead;
import camberwell.run.Case;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Map;
import java.util.Optional;

/**
 * One tyre that is far hotter over its whole width than its partner, by more than the circuit explains: something heats that
 * wheel, a brake that drags before all. Its heat says nothing of the axle's work, and what its gauge reads is that heat's. The
 * limits are common practice, no source.
 *
 * @param wheel the hot one
 * @param over how much hotter than its partner the least hot part of its tread is, K
 * @param clearness in (0, 1]
 * @param text the figures, and what to look at
 */
public record HotCorner(Wheel wheel, double over, double clearness, String text) {

    /** Kelvin over the partner and over what the circuit explains. */
    private static final double STARTS = 15;
    private static final double FULL = 25;
    /** What the loaded side of a circuit that turns one way may have beside, and an axle whose fellow was not read, K. */
    private static final double ALLOWED = 10;
    /** So much over the hottest tyre of the other axle, a partner below its window is no sign of being the odd one, K. */
    private static final double HOTTEST = 5;
    private static final double PLAIN = 0.5;

    /** The clearest one of a case, if there is one. */
    static Optional<HotCorner> of(Case run, Map<Wheel, WheelFigures> wheels) {
        return wheels.values().stream().flatMap(tyre -> of(run, tyre, wheels).stream())
                .max(Comparator.comparingDouble(HotCorner::clearness));
    }

    private static Optional<HotCorner> of(Case run, WheelFigures tyre, Map<Wheel, WheelFigures> wheels) {
        Optional<TreadRead> tread = tyre.tread();
        Optional<TreadRead> partner = tread(wheels, tyre.wheel().partner());
        if (tread.isEmpty() || partner.isEmpty()) {
            return Optional.empty();
        }
        double over = least(tread.get(), partner.get());
        Wheel alongside = Arrays.stream(Wheel.values()).filter(wheel -> wheel.axle() != tyre.wheel().axle()
                && wheel.left() == tyre.wheel().left()).findFirst().orElseThrow();
        Optional<TreadRead> same = tread(wheels, alongside);
        Optional<TreadRead> across = tread(wheels, alongside.partner());
        boolean fellows = same.isPresent() && across.isPresent();
        double shared = fellows ? Math.max(0, same.get().mean() - across.get().mean()) : ALLOWED;
        Turn turns = run.conditions().turns();
        double loaded = turns.oneSided() && tyre.wheel().loadedIn(turns) ? ALLOWED : 0;
        double clearness = ramp(over - shared - loaded, STARTS, FULL);
        boolean partnerCold = wheels.get(tyre.wheel().partner()).offWindow().orElse(0) < 0;
        boolean hottest = fellows && tread.get().mean() > Math.max(same.get().mean(), across.get().mean()) + HOTTEST;
        if (clearness <= 0 || partnerCold && !hottest) {
            return Optional.empty();
        }
        ReadIn in = ReadIn.of(run);
        return Optional.of(new HotCorner(tyre.wheel(), over, clearness, tyre.wheel().id() + " tyre "
                + in.temperature(tread.get().mean()) + ", over its whole width at least " + in.difference(over)
                + " hotter than its partner and by more than the circuit "
                + "explains: look at that corner first, whether its brake drags or its bearing is rough, and how its toe stands. "
                + "What it reads says nothing of the axle; hold its pressure until it has been read again"));
    }

    /** Whether it is plain enough for that tyre's figures not to be built on. */
    boolean plain() {
        return clearness >= PLAIN;
    }

    private static Optional<TreadRead> tread(Map<Wheel, WheelFigures> wheels, Wheel wheel) {
        return Optional.ofNullable(wheels.get(wheel)).flatMap(WheelFigures::tread);
    }

    /** The least of the differences of two treads at inner edge, middle and outer edge, K. */
    private static double least(TreadRead one, TreadRead other) {
        return Math.min(one.middle() - other.middle(), Math.min(one.inner() - other.inner(), one.outer() - other.outer()));
    }
}
