package camberwell.advice;

import camberwell.car.Ordinary;
import camberwell.car.Setting;
import camberwell.fact.Day;
import camberwell.physics.Toe;
import camberwell.run.Case;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sizes a change of toe, one wheel's at a time: 0.05 to 0.1° (common practice, no source), one step or two of most
 * cars, with what the new toe costs in drag and what it does to the tyre's temperature. A rear that is toed out is
 * brought to toe-in at once, however many steps that takes: half a toe-out still spins the car, and a rear at zero
 * toes out under load by the give of its bushes (common practice, no source).
 */
final class ToeSizer {

    /** A shift that a driver can feel, degrees a wheel, and the one for a strong complaint or where toe is far off. */
    private static final double AIM_DEGREES = 0.05;
    private static final double STRONG_AIM_DEGREES = 0.1;
    private static final double SPEED_KMH = 150;
    private static final double DEFAULT_RIM_METRES = 17 * 0.0254;

    private final Case run;
    private final List<Complaint> helped;

    ToeSizer(Case run, List<Complaint> helped) {
        this.run = run;
        this.helped = helped;
    }

    /** How many steps of toe-in can be taken off before the toe is zero; none of a toe-out. */
    static int stepsToZero(Setting setting) {
        return (int) Math.max(0, Math.floor(setting.now().value() / setting.step().value() + 1e-9));
    }

    /** How many steps of toe-in bring a toe-out back to zero at least. */
    private static int stepsOutOfToeOut(Setting setting) {
        return (int) Math.max(0, Math.ceil(-setting.now().value() / setting.step().value() - 1e-9));
    }

    Size size(Change change, Setting setting) {
        Axle axle = change.adjuster().axle().orElseThrow();
        Optional<Quantity> given = run.car().tyres(axle).rim();
        double rim = given.map(Quantity::si).orElse(DEFAULT_RIM_METRES);
        boolean rear = change.adjuster() == Adjuster.REAR_TOE;
        boolean driven = run.car().drive().filter(drive -> drive.drives(Axle.REAR)).isPresent();
        int outOfToeOut = rear && driven && change.direction() == Direction.TOE_IN ? stepsOutOfToeOut(setting) : 0;
        boolean far = Complaint.strong(helped) || outOfToeOut == 0 && Ordinary.leadsBack(run.car(), change);
        double aim = far ? STRONG_AIM_DEGREES : AIM_DEGREES;
        int steps = (int) Math.max(1, Math.round(aim / degrees(setting.step(), rim)));
        steps = Math.min(steps, Math.max(1, Bounds.steps(change.adjuster(), setting)));
        steps += outOfToeOut;
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        if (rear && change.direction() == Direction.TOE_OUT) {
            steps = Math.min(steps, stepsToZero(setting));
        }
        Quantity to = setting.moved(change.direction(), steps);
        double before = degrees(setting.now(), rim);
        double after = degrees(to, rim);
        double millimetres = Math.abs(Toe.millimetresFromDegrees(after, 1000 * rim)
                - Toe.millimetresFromDegrees(before, 1000 * rim));
        List<String> computation = new ArrayList<>();
        computation.add(Figures.fill("%d step%s of %s a wheel = %.2f° or %.1f mm a wheel, %.1f mm in "
                + "total, across the %.0f mm "
                + "rim%s", steps, steps == 1 ? "" : "s", setting.step(), Math.abs(after - before),
                millimetres, 2 * millimetres, 1000 * rim, given.isPresent() ? "" : ", assumed, the car's file "
                + "gives none"));
        if (outOfToeOut > 0) {
            computation.add("out of the toe-out at once: a car whose rear wheels are toed out spins on the throttle");
        }
        computation.add(drag(TyreStiffness.of(run.car(), axle), before, after));
        List<String> extent = List.copyOf(computation);
        computation.add(heat(Math.abs(after) > Math.abs(before)));
        return new Size(Optional.of(setting.now()), Optional.of(to), steps, List.of(), List.copyOf(computation), extent);
    }

    private static String drag(TyreStiffness tyre, double before, double after) {
        double dragBefore = 2 * Toe.drag(tyre.newtonsPerRadian(), Math.toRadians(before));
        double dragAfter = 2 * Toe.drag(tyre.newtonsPerRadian(), Math.toRadians(after));
        double watts = (dragAfter - dragBefore) * Unit.KILOMETRE_PER_HOUR.toSi(SPEED_KMH);
        return Figures.fill("toe drag of the axle on the straight: %.1f N before, %.1f N after, "
                + "%+.0f W at %.0f km/h; an estimate with %s", dragBefore, dragAfter, watts, SPEED_KMH, tyre.source());
    }

    /** What the scrub does to the tread on this track. */
    private String heat(boolean more) {
        Day day = new Day(run.conditions());
        String track = run.conditions().track().map(Quantity::toString).orElse("");
        if (more) {
            return "more toe scrubs more, and scrub heats: " + (day.coldTrack()
                    ? "on this cold track of " + track + " it helps the tyre to warm"
                    : day.hotTrack() ? "on this hot track of " + track + " watch that the tread does not overheat"
                    : "it warms the tyre on a cold track and overheats it on a hot one");
        }
        return "less toe scrubs less: " + (day.coldTrack()
                ? "on this cold track of " + track + " the tyre loses warmth that it needs"
                : day.hotTrack() ? "on this hot track of " + track + " the tyre runs cooler, which it welcomes"
                : "the tyre runs cooler, welcome on a hot track, not on a cold one");
    }

    private static double degrees(Quantity toe, double rimMetres) {
        return toe.unit().dimension() == Unit.Dimension.ANGLE ? toe.in(Unit.DEGREE)
                : Toe.degreesFromMillimetres(toe.in(Unit.MILLIMETRE), 1000 * rimMetres);
    }
}
