package camberwell.advice;

import camberwell.car.Setting;
import camberwell.physics.Toe;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Sizes a change of toe, one wheel's at a time: about 0.05 to 0.1° (common practice, no source), in the car's steps,
 * with what the new toe costs in drag and what it does to the tyre's temperature.
 */
final class ToeSizer {

    /** A shift that a driver can feel, degrees a wheel. */
    private static final double AIM_DEGREES = 0.08;
    private static final double STRONG = 1.5;
    private static final double SPEED_KMH = 150;
    /** A tyre of a club car at its static load, N/deg: the middle of the open tyre data, see the model's tyre. */
    private static final double STIFFNESS_N_PER_DEGREE = 1000;
    private static final double DEFAULT_RIM_METRES = 17 * 0.0254;

    private final Case run;
    private final List<Complaint> complaints;

    ToeSizer(Case run, List<Complaint> complaints) {
        this.run = run;
        this.complaints = complaints;
    }

    /** How many steps of toe-in can be taken off before the toe is zero. */
    static int stepsToZero(Setting setting) {
        return (int) Math.max(0, Math.floor(setting.now().value() / setting.step().value() + 1e-9));
    }

    Size size(Change change, Setting setting) {
        Axle axle = change.adjuster().axle().orElseThrow();
        double rim = run.car().tyres(axle).rim().map(Quantity::si).orElse(DEFAULT_RIM_METRES);
        double stepDegrees = degrees(setting.step(), rim);
        boolean strong = complaints.stream().anyMatch(complaint -> complaint.weight() >= STRONG);
        int steps = (int) Math.max(1, Math.min(strong ? 2 : 1, Math.round(AIM_DEGREES / stepDegrees)));
        if (AIM_DEGREES / stepDegrees > 2) {
            steps = (int) Math.round(AIM_DEGREES / stepDegrees);
        }
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        if (change.adjuster() == Adjuster.REAR_TOE && change.direction() == Direction.TOE_OUT) {
            steps = Math.min(steps, stepsToZero(setting));
        }
        Quantity to = setting.moved(change.direction(), steps);
        List<String> computation = new ArrayList<>();
        double before = Math.toRadians(degrees(setting.now(), rim));
        double after = Math.toRadians(degrees(to, rim));
        computation.add(String.format(Locale.ROOT, "%d step%s of %s a wheel = %.2f°, %.1f mm at the %.0f mm rim",
                steps, steps == 1 ? "" : "s", setting.step(), steps * stepDegrees,
                Toe.millimetresFromDegrees(steps * stepDegrees, 1000 * rim), 1000 * rim));
        double stiffness = Math.toDegrees(STIFFNESS_N_PER_DEGREE);
        double dragBefore = 2 * Toe.drag(stiffness, before);
        double dragAfter = 2 * Toe.drag(stiffness, after);
        double speed = Unit.KILOMETRE_PER_HOUR.toSi(SPEED_KMH);
        computation.add(String.format(Locale.ROOT, "toe drag of the axle, estimated at %.0f N/deg a tyre: "
                + "%.1f N before, %.1f N after, which is %+.0f W at %.0f km/h", STIFFNESS_N_PER_DEGREE, dragBefore,
                dragAfter, (dragAfter - dragBefore) * speed, SPEED_KMH));
        boolean moreScrub = Math.abs(after) > Math.abs(before);
        computation.add(moreScrub ? "more toe scrubs more: it warms the tyre on a cold track and overheats it on a hot "
                + "one" : "less toe scrubs less: the tyre runs cooler, which a cold track may not forgive");
        return new Size(Optional.of(setting.now()), Optional.of(to), steps, List.of(), computation);
    }

    private static double degrees(Quantity toe, double rimMetres) {
        return toe.unit().dimension() == Unit.Dimension.ANGLE ? toe.in(Unit.DEGREE)
                : Toe.degreesFromMillimetres(toe.in(Unit.MILLIMETRE), 1000 * rimMetres);
    }
}
