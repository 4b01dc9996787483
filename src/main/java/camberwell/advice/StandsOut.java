package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Ordinary;
import camberwell.car.Setting;
import camberwell.vocabulary.Adjuster;
import java.util.List;
import java.util.Optional;

/**
 * What stands out on the set-up sheet: of the levers that rules propose, one that stands far from what is ordinary and
 * that the change would bring back is looked at first, where it does about as much for what is complained of as the one
 * that would be first else. Common practice, no source.
 */
final class StandsOut {

    /** What is worth less than this part of the first is no match for it. */
    private static final double ABOUT_AS_MUCH = 0.5;

    private static final int BENCH = 6;

    private StandsOut() {
    }

    /** Which of the changes is to come first instead of the first one; empty where that may stay. */
    static Optional<Leverage.Choice> instead(Car car, List<RankedChange> ranked) {
        if (car.generic() || ranked.isEmpty() || !ranked.get(0).firstBy().isEmpty() || !balance(ranked.get(0))
                || Ordinary.leadsBack(car, ranked.get(0).change())) {
            return Optional.empty();
        }
        double least = ABOUT_AS_MUCH * ranked.get(0).score().total();
        for (RankedChange change : ranked) {
            if (balance(change) && change.score().total() >= least && Ordinary.leadsBack(car, change.change())) {
                Setting setting = car.setting(change.change().adjuster()).orElseThrow();
                return Optional.of(new Leverage.Choice(change.change(), "it stands at "
                        + setting.now().text(setting.decimals()) + ", far from what is ordinary: what stands out is looked "
                        + "at first"));
            }
        }
        return Optional.empty();
    }

    /** Pressures and brake balance follow what gauge and brakes ask for; what is done on a bench is not done first. */
    private static boolean balance(RankedChange change) {
        Adjuster.Kind kind = change.change().adjuster().kind();
        return change.note().effort() < BENCH && kind != Adjuster.Kind.PRESSURE && kind != Adjuster.Kind.BRAKE_BIAS;
    }
}
