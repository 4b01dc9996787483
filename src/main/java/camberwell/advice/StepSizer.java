package camberwell.advice;

import camberwell.car.Setting;
import camberwell.model.Bench;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes what is set in clicks, positions, rates, heights and torques: one step, and two for a strong complaint on a dry
 * road, never beyond {@link Bounds}. In the wet a step moves less, and that is no reason to take more of them. What a
 * step does to the balance is told by the handling model, where the complaint is. That this is how one goes about it is
 * common practice, no source.
 */
final class StepSizer {

    /** Of a spring's rate. */
    private static final double SPRING_PART = 0.05;
    /** Of the clearance, and the most of it, millimetres. */
    private static final double HEIGHT_PART = 0.05;
    private static final double HEIGHT_MILLIMETRES = 2.5;
    /** A limit balance that moves by this is felt, so that one step is enough whatever the complaint. */
    private static final double FELT = 0.02;
    private static final double LEAST = 0.0005;

    private final Surface surface;
    private final Optional<Bench> bench;
    private final List<Complaint> helped;

    /**
     * @param bench the car as the handling model sees it, when it is to be asked
     * @param helped the complaints that the change is made for, the one it helps most first
     */
    StepSizer(Surface surface, Optional<Bench> bench, List<Complaint> helped) {
        this.surface = surface;
        this.bench = bench;
        this.helped = helped;
    }

    Size size(Change change, Setting setting) {
        List<String> computation = new ArrayList<>();
        Situation situation = Situation.of(change.adjuster(), helped.stream().findFirst());
        OptionalDouble shift = shift(change, situation);
        int steps = steps(change.adjuster(), setting, shift, computation);
        int left = setting.stepsLeft(change.direction());
        if (steps > left) {
            steps = left;
            computation.add("no further: there it stands at its stop");
        }
        List<String> extent = List.copyOf(computation);
        if (shift.isPresent()) {
            computation.add(Figures.fill("by the model one step moves the limit balance by %.1f %s at %s and %.0f km/h",
                    100 * Math.abs(shift.getAsDouble()), "%", Predicted.phase(situation.phase()),
                    3.6 * situation.speed().metresPerSecond()));
        }
        return new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(), steps)), steps,
                List.of(), List.copyOf(computation), extent);
    }

    private OptionalDouble shift(Change change, Situation situation) {
        if (bench.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble shift = bench.get().limitBalanceShift(change, situation.phase(),
                situation.speed().metresPerSecond());
        return shift.isPresent() && Math.abs(shift.getAsDouble()) >= LEAST ? shift : OptionalDouble.empty();
    }

    private int steps(Adjuster adjuster, Setting setting, OptionalDouble shift, List<String> computation) {
        int bound = Math.max(1, Bounds.steps(adjuster, setting));
        boolean strong = surface == Surface.DRY && (adjuster.kind() == Adjuster.Kind.STIFFNESS
                ? Complaint.mostlyStrong(helped) : Complaint.strong(helped));
        double aim = aim(setting);
        if (aim > 0) {
            int steps = (int) Math.max(1, Math.round((strong ? 2 : 1) * aim / setting.step().value()));
            Quantity shown = setting.now().withValue(Math.rint((strong ? 2 : 1) * aim * 10) / 10);
            computation.add("a modest shift is about " + shown + "; the car moves in steps of " + setting.step());
            return Math.min(bound, steps);
        }
        boolean felt = shift.isPresent() && Math.abs(shift.getAsDouble()) >= FELT;
        if (strong && !felt && bound > 1) {
            computation.add("two steps, since the complaint is strong");
            return 2;
        }
        computation.add("one step of the car's own, " + setting.step().text(setting.decimals()) + ", then run again");
        return 1;
    }

    /** What a modest shift is, in the setting's own unit, where it is not simply a step; 0 where it is. */
    private static double aim(Setting setting) {
        Quantity now = setting.now();
        return switch (now.unit().dimension()) {
            case STIFFNESS -> SPRING_PART * now.value();
            case LENGTH -> now.unit().fromSi(Unit.MILLIMETRE.toSi(now.value() <= 0 ? HEIGHT_MILLIMETRES
                    : Math.min(HEIGHT_MILLIMETRES, HEIGHT_PART * now.in(Unit.MILLIMETRE))));
            default -> 0;
        };
    }
}
