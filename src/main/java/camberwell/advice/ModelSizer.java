package camberwell.advice;

import camberwell.car.Setting;
import camberwell.model.Bench;
import camberwell.units.Figures;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * Sizes what moves the car's balance by the handling model: as many of the car's own steps as move the limit balance by
 * about one percent, at most three. That a driver feels a percent, and that one goes no further at a time, is common
 * practice, no source. Brake balance goes rearward by no more than StepSizer's modest shift, whatever the model says: a
 * steady state does not show the rear wheel that locks over a bump.
 */
final class ModelSizer {

    private static final double AIM = 0.01;
    /** A step that moves less is not sized by this. */
    private static final double LEAST = 0.0005;
    private static final int MOST_STEPS = 3;
    private static final Set<Adjuster> SIZED = Set.of(Adjuster.FRONT_ANTI_ROLL_BAR, Adjuster.REAR_ANTI_ROLL_BAR,
            Adjuster.FRONT_SPRINGS, Adjuster.REAR_SPRINGS, Adjuster.FRONT_WING, Adjuster.REAR_WING, Adjuster.BRAKE_BIAS,
            Adjuster.DIFFERENTIAL_PRELOAD, Adjuster.DIFFERENTIAL_COAST);
    private static final Set<Symptom> BALANCE =
            Set.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER);

    private final Optional<Complaint> complaint;
    private final Optional<Bench> bench;

    ModelSizer(Optional<Bench> bench, List<Complaint> complaints) {
        this.bench = bench;
        this.complaint = complaints.stream().filter(it -> BALANCE.contains(it.symptom()))
                .max(Comparator.comparingDouble(Complaint::weight));
    }

    /** How far the change goes; empty where the model cannot size it. */
    Optional<Size> size(Change change, Setting setting) {
        if (!SIZED.contains(change.adjuster())) {
            return Optional.empty();
        }
        Situation situation = Situation.of(change.adjuster(), complaint);
        if (bench.isEmpty()) {
            return Optional.empty();
        }
        OptionalDouble shift = bench.get().limitBalanceShift(change, situation.phase(),
                situation.speed().metresPerSecond());
        return shift.isPresent() && Math.abs(shift.getAsDouble()) >= LEAST
                ? Optional.of(size(change, setting, situation, Math.abs(shift.getAsDouble()))) : Optional.empty();
    }

    private static Size size(Change change, Setting setting, Situation situation, double shift) {
        int steps = (int) Math.max(1, Math.min(MOST_STEPS, Math.round(AIM / shift)));
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        List<String> computation = new ArrayList<>();
        int rearward = StepSizer.modestBias(setting);
        boolean held = change.adjuster() == Adjuster.BRAKE_BIAS && change.direction() == Direction.REARWARD
                && steps > rearward;
        String unit = setting.step().unit().symbol().isEmpty() ? "" : " of " + setting.step();
        computation.add(Figures.fill("by the model one step%s moves the limit balance by "
                        + "%.1f % at %s and %.0f km/h; a modest shift is about 1 %: %d step%s", unit, 100 * shift,
                        Predicted.phase(situation.phase()), 3.6 * situation.speed().metresPerSecond(), steps,
                        steps == 1 ? "" : "s"));
        if (held) {
            steps = rearward;
            computation.add("of which " + setting.step().withValue(steps * setting.step().value())
                    + " at a time: a rear axle that locks spins the car");
        }
        return new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(), steps)), steps,
                List.of(), List.copyOf(computation));
    }
}
