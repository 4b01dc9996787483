package camberwell.advice;

import camberwell.car.Setting;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
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
    private final Predictions predictions;

    Sizer(Case run, TyreReadings tyres, Predictions predictions) {
        this.run = run;
        this.tyres = tyres;
        this.predictions = predictions;
    }

    /**
     * How far {@code change} goes, or why it cannot be made.
     *
     * @param helped the complaints that it is made for, the one it helps most first
     * @param wanted whether the change will be advised if it can be made: only then the handling model is asked
     * @return empty when the car has no such adjuster
     */
    Optional<Sized> size(Change change, List<Complaint> helped, boolean wanted) {
        Adjuster adjuster = change.adjuster();
        if (adjuster.adjustment() == Adjustment.PRESSURE) {
            return new PressureSizer(run, tyres).size(change);
        }
        Optional<Setting> known = run.car().setting(adjuster);
        if (known.isEmpty()) {
            return Optional.empty();
        }
        if (run.car().generic()) {
            return Optional.of(new Sized.Possible(new Size(Optional.empty(), Optional.empty(), 1, List.of(),
                    List.of(adjuster.adjustment().commonStep()))));
        }
        Setting setting = known.get();
        Optional<String> reason = stop(change, setting).or(() -> Bounds.tooCoarse(adjuster, setting));
        return Optional.of(reason.isPresent() ? new Sized.Impossible(reason.get())
                : sized(change, setting, helped, wanted));
    }

    private Sized sized(Change change, Setting setting, List<Complaint> helped, boolean wanted) {
        boolean counted = setting.now().unit().dimension() == Unit.Dimension.COUNT;
        Adjustment adjustment = change.adjuster().adjustment();
        if (adjustment == Adjustment.BRAKE_BIAS) {
            return new BrakeSizer(run.car(), run.conditions().surface()).size(change, setting, helped,
                    run.tried().stream().anyMatch(tried -> tried.change().equals(change)));
        }
        if (adjustment == Adjustment.CAMBER && !counted) {
            return new CamberSizer(run, tyres).size(change, setting);
        }
        if (adjustment == Adjustment.TOE && !counted) {
            return new Sized.Possible(new ToeSizer(run, helped).size(change, setting));
        }
        if (adjustment == Adjustment.CASTER && !counted) {
            return new Sized.Possible(new CasterSizer(run).size(change, setting));
        }
        return new Sized.Possible(new StepSizer(run.conditions().surface(),
                wanted ? predictions.bench() : Optional.empty(), helped).size(change, setting));
    }

    /** Why that adjuster cannot move that way at all, whatever else there is to say; of a pressure its own sizer tells. */
    Optional<String> stop(Change change) {
        return run.car().generic() || change.adjuster().adjustment() == Adjustment.PRESSURE ? Optional.empty()
                : run.car().setting(change.adjuster()).flatMap(setting -> stop(change, setting));
    }

    private static Optional<String> stop(Change change, Setting setting) {
        Direction direction = change.direction();
        if (change.adjuster() == Adjuster.REAR_TOE && direction == Direction.TOE_OUT
                && setting.now().unit().dimension() != Unit.Dimension.COUNT && ToeSizer.stepsToZero(setting) == 0) {
            return Optional.of("rear toe-out makes a car spin on the throttle; rear toe never goes below zero");
        }
        if (setting.stepsLeft(direction) == 0) {
            Quantity end = setting.sign(direction) > 0 ? setting.max() : setting.min();
            return Optional.of((setting.now().equals(end) ? "it stands at its stop, "
                    : "less than a step is left to its stop, ") + end.text(setting.decimals()));
        }
        return Optional.empty();
    }
}
