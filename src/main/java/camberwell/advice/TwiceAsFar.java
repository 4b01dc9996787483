package camberwell.advice;

import camberwell.car.Setting;
import camberwell.run.Case;
import java.util.Optional;

/**
 * How far a bar or spring goes where all is strong one way and the last change took nothing of it: twice as far. How far off
 * such a car is nobody can tell until something turns round, and steps that double find that soonest; that is how a minimum
 * is bracketed (W. H. Press et al., Numerical Recipes, Cambridge, ch. 10.1, cited from memory).
 */
final class TwiceAsFar {

    private TwiceAsFar() {
    }

    /** The change, gone twice as far as it would; empty where no room is left, or it is no bar or spring. */
    static Optional<RankedChange> of(Case run, LastChange last, StillOpen open, RankedChange change) {
        Optional<Setting> setting = run.car().setting(change.change().adjuster());
        if (!last.tookNothing() || setting.isEmpty() || run.car().generic() || !Leverage.ofRollStiffness(change.change())) {
            return Optional.empty();
        }
        int steps = Math.min(2 * change.size().steps(), Math.min(open.room(change.change()),
                setting.get().stepsLeft(change.change().direction())));
        return steps <= change.size().steps() ? Optional.empty()
                : Optional.of(change.sized(setting.get().moved(change.change().direction(), steps), steps,
                "all is as strong as before the last change: twice as far, to find where it turns round"));
    }
}
