package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Ordinary;
import camberwell.car.Setting;
import camberwell.vocabulary.Adjuster;
import java.util.List;
import java.util.Optional;

/**
 * What stands out on the set-up sheet: a lever that stands far from what is ordinary, and that a change which is for the
 * complaint would bring back, counts double, so that it is looked at before one that does up to twice as much and stands
 * as usual. What others there are makes no difference to it. Common practice, no source.
 */
final class StandsOut {

    private static final double DOUBLE = 2;
    private static final int BENCH = 6;

    private StandsOut() {
    }

    /** What a change is ranked by: what it is worth, more where what it moves stands out. */
    static double worth(Car car, RankedChange change) {
        double total = change.score().total();
        return total > 0 && standsOut(car, change) ? DOUBLE * total : total;
    }

    /** Why a change comes before some that are worth more by themselves; empty where it does not. */
    static Optional<String> why(Car car, List<RankedChange> ranked, RankedChange change) {
        boolean before = ranked.stream().anyMatch(other -> other.rank() > change.rank() && other.firstBy().isEmpty()
                && other.score().total() > change.score().total());
        if (!before || !standsOut(car, change)) {
            return Optional.empty();
        }
        Setting setting = car.setting(change.change().adjuster()).orElseThrow();
        return Optional.of("it stands at " + setting.now().text(setting.decimals()) + ", far from what is ordinary: "
                + "that comes before what would do a little more");
    }

    /** Pressures and brake balance follow what gauge and brakes ask for; what is done on a bench is not done first. */
    private static boolean standsOut(Car car, RankedChange change) {
        Adjuster.Kind kind = change.change().adjuster().kind();
        return change.note().effort() < BENCH && kind != Adjuster.Kind.PRESSURE && kind != Adjuster.Kind.BRAKE_BIAS
                && Ordinary.leadsBack(car, change.change());
    }
}
