package camberwell.observe;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;

/** A few made-up logs as texts, for tests of what reads them. */
public final class MadeLogs {

    private MadeLogs() {
    }

    /** Six laps at 10 Hz of a car that pushes in the middle of fast corners and slides out of slow ones. */
    public static String pushesAndSlides() {
        return text(MadeRun.on(Circuit.seven()).with(Slide.of(3, Phase.MID_CORNER, CornerSpeed.FAST))
                .with(Slide.of(-5, Phase.EXIT, CornerSpeed.SLOW)), true);
    }

    /** The same car without a fault. */
    public static String clean() {
        return text(MadeRun.on(Circuit.seven()), false);
    }

    /** A car without a fault on another circuit. */
    public static String elsewhere() {
        return text(MadeRun.on(Circuit.closed(true)), false);
    }

    /** Two laps of it alone: short, and enough to say something of. */
    public static String twoLaps() {
        return text(MadeRun.on(Circuit.seven()).with(Slide.of(3, Phase.MID_CORNER, CornerSpeed.FAST)), true, 4);
    }

    private static String text(MadeRun run, boolean positions) {
        return text(run, positions, 6);
    }

    private static String text(MadeRun run, boolean positions, int laps) {
        run.laps = laps;
        LogText text = LogText.plain();
        text.every = 10;
        if (positions) {
            text.positions();
        }
        return text.write(run);
    }
}
