package camberwell.advice;

import camberwell.car.Setting;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.List;
import java.util.Optional;

/** Sizes a change for the car that it is made on, and shows the computation. */
final class Sizer {

    private final Case run;
    private final TyreReadings tyres;
    private final List<Complaint> complaints;
    private final ModelSizer model;

    Sizer(Case run, TyreReadings tyres, List<Complaint> complaints, Predictions predictions) {
        this.run = run;
        this.tyres = tyres;
        this.complaints = complaints;
        this.model = new ModelSizer(predictions.bench(), complaints);
    }

    /**
     * How far {@code change} goes, or why it cannot be made.
     *
     * @param wanted whether the change will be advised if it can be made: only then the handling model is asked
     * @return empty when the car has no such adjuster
     */
    Optional<Sized> size(Change change, boolean wanted) {
        Adjuster adjuster = change.adjuster();
        if (adjuster.adjustment() == Adjustment.PRESSURE) {
            return new PressureSizer(run, tyres).size(change);
        }
        Optional<Setting> setting = run.car().setting(adjuster);
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        if (run.car().generic()) {
            return Optional.of(new Sized.Possible(new Size(Optional.empty(), Optional.empty(), 1, List.of(),
                    List.of(adjuster.adjustment().commonStep()))));
        }
        Optional<String> stop = stop(change, setting.get());
        if (stop.isPresent()) {
            return Optional.of(new Sized.Impossible(stop.get()));
        }
        return Optional.of(switch (adjuster.adjustment()) {
            case CAMBER -> new CamberSizer(run, tyres).size(change, setting.get());
            case TOE -> new Sized.Possible(new ToeSizer(run, complaints).size(change, setting.get()));
            case CASTER -> new Sized.Possible(new CasterSizer(run).size(change, setting.get()));
            default -> new Sized.Possible(Optional.of(setting.get()).filter(it -> wanted)
                    .flatMap(it -> model.size(change, it))
                    .orElseGet(() -> StepSizer.size(change, setting.get(), complaints)));
        });
    }

    /** Why it cannot move that way at all. */
    private static Optional<String> stop(Change change, Setting setting) {
        Direction direction = change.direction();
        if (change.adjuster() == Adjuster.REAR_TOE && direction == Direction.TOE_OUT
                && ToeSizer.stepsToZero(setting) == 0) {
            return Optional.of("rear toe-out makes a car spin on the throttle; rear toe never goes below zero");
        }
        if (setting.stepsLeft(direction) == 0) {
            Quantity end = setting.sign(direction) > 0 ? setting.max() : setting.min();
            return Optional.of("it stands at its stop, " + end.text(setting.decimals()));
        }
        return Optional.empty();
    }
}
