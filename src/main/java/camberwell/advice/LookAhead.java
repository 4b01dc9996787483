package camberwell.advice;

import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.units.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * The next change put to the driven model of this car before it is made, as a run is dear. The rules say what is proposed and
 * in which order; the model only says which of it to pass over: what would hardly be felt, or turn the car round. That a change
 * is tried on a model first, where there is one, is common practice, no source.
 */
final class LookAhead {

    private final Case run;
    private final Forecast forecast;

    /**
     * @param forecast of what is left after a change, where the model shows all that is told
     */
    LookAhead(Case run, Forecast forecast) {
        this.run = run;
        this.forecast = forecast;
    }

    /**
     * After something was tried: the first of the changes after which noticeably less is left.
     *
     * @param ranked best first
     * @return what is to come first instead; empty where the rules' order stands
     */
    Optional<RankedChange> worthARun(List<RankedChange> ranked) {
        for (RankedChange change : ranked) {
            if (change.size().to().isEmpty() || forecast.worthARun(change.change(), change.size().to().get())) {
                return change == ranked.get(0) ? Optional.empty() : Optional.of(change.explained(
                        "by the model of this car, driven, it is the first of these after which noticeably less is left"));
            }
        }
        return Optional.empty();
    }

    /**
     * Of a car at neutral or beyond: the first of the changes after which not more is complained of than before it, by one step
     * where two would be too many. A wheel that locks or spins has levers of its own, which are not given up for a balance that
     * nobody complains of.
     *
     * @param ranked best first
     * @return what is to come first instead; empty where the rules' order stands
     */
    Optional<RankedChange> unturned(List<RankedChange> ranked) {
        if (!forecast.ofBalance()) {
            return Optional.empty();
        }
        for (RankedChange change : ranked) {
            if (change.size().to().isEmpty() || harmless(change, change.size().to().get())) {
                return change == ranked.get(0) ? Optional.empty() : Optional.of(change.explained("the car is at neutral or "
                        + "beyond: by the model of it, driven, this is the first of these that does not turn it round"));
            }
            Optional<Quantity> one = oneStep(change);
            if (one.isPresent() && harmless(change, one.get())) {
                return Optional.of(change.sized(one.get(), 1, "the car is at neutral or beyond: by the model of it, driven, "
                        + change.size().steps() + " steps would turn it round"));
            }
        }
        return Optional.empty();
    }

    private boolean harmless(RankedChange change, Quantity to) {
        return forecast.gain(change.change(), to).orElse(0) >= 0;
    }

    private Optional<Quantity> oneStep(RankedChange change) {
        Optional<Setting> setting = run.car().setting(change.change().adjuster());
        return change.size().steps() < 2 ? Optional.empty()
                : setting.map(it -> it.moved(change.change().direction(), 1));
    }
}
