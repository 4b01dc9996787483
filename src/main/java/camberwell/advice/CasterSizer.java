package camberwell.advice;

import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.physics.SteeringAxis;
import camberwell.run.Case;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sizes a change of caster: about half a degree (common practice, no source), with the camber that it gives in
 * steer.
 */
final class CasterSizer {

    private static final double AIM_DEGREES = 0.5;
    private static final double STEER_DEGREES = 10;
    /** Where the car's file gives none: common practice, no source. */
    private static final double DEFAULT_KINGPIN_DEGREES = 10;

    private final Case run;

    CasterSizer(Case run) {
        this.run = run;
    }

    Size size(Change change, Setting setting) {
        int steps = (int) Math.max(1, Math.round(AIM_DEGREES / setting.step().in(Unit.DEGREE)));
        steps = Math.min(steps, Math.max(1, Bounds.steps(change.adjuster(), setting)));
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        Quantity to = setting.moved(change.direction(), steps);
        Optional<Quantity> kingpin = run.car().dimension(Dimension.KINGPIN_INCLINATION);
        double inclination = kingpin.map(Quantity::si).orElse(Math.toRadians(DEFAULT_KINGPIN_DEGREES));
        double camber = run.car().setting(Adjuster.FRONT_CAMBER).map(front -> front.now())
                .filter(now -> now.unit().dimension() == Unit.Dimension.ANGLE).map(Quantity::si).orElse(0.0);
        List<String> computation = new ArrayList<>();
        computation.add(Figures.fill("camber at %.0f° of steer, from %.1f° straight ahead: outer front "
                + "wheel %s, inner %s (kingpin inclination %.1f°%s)", STEER_DEGREES, Math.toDegrees(camber),
                beforeAfter(setting.now(), to, inclination, camber, -STEER_DEGREES),
                beforeAfter(setting.now(), to, inclination, camber, STEER_DEGREES), Math.toDegrees(inclination),
                kingpin.isPresent() ? "" : ", assumed, the car's file gives none"));
        List<String> extent = List.copyOf(computation);
        computation.add("caster is mostly best left alone: it moves steering weight, self-centring and camber in steer "
                + "all at once, and the alignment must be set again (common practice, no source)");
        return new Size(Optional.of(setting.now()), Optional.of(to), steps, List.of(), List.copyOf(computation), extent);
    }

    private static String beforeAfter(Quantity before, Quantity after, double inclination, double camber,
            double steerDegrees) {
        double steer = Math.toRadians(steerDegrees);
        return Figures.fill("%.2f° before and %.2f° after",
                Math.toDegrees(new SteeringAxis(before.si(), inclination).camber(camber, steer)),
                Math.toDegrees(new SteeringAxis(after.si(), inclination).camber(camber, steer)));
    }
}
