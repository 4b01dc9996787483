package camberwell.advice;

import camberwell.car.Setting;
import camberwell.knowledge.Note;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;

/**
 * A step the other way of what made the car worse and was put back. The car itself has spoken: what it answers to one way it
 * answers to the other way too, whatever speaks against that by rule. Where the driven model of this car agrees, it comes before
 * what does less. Common practice, no source.
 */
final class OtherWay {

    private static final String WHY = "The other way it made the car worse, and was put back. So the car answers to it, and by a "
            + "model of this car, driven, a step this way helps.";

    private final Case run;
    private final Worth worth;

    /** @param worth what is said of each change */
    OtherWay(Case run, Worth worth) {
        this.run = run;
        this.worth = worth;
    }

    /**
     * One step of a change that has not been tried, while it was tried the other way.
     *
     * @param forecast of what is left after a change
     * @param first the change that stands first, if any does
     * @return empty where it cannot be made, or does not clearly more than what stands first
     */
    Optional<RankedChange> of(Change change, Forecast forecast, Optional<RankedChange> first) {
        Optional<Setting> setting = run.car().setting(change.adjuster())
                .filter(it -> it.stepsLeft(change.direction()) > 0 && !run.car().generic());
        if (setting.isEmpty() || !worth.holding(change).isEmpty()) {
            return Optional.empty();
        }
        Quantity to = setting.get().moved(change.direction(), 1);
        double own = first.filter(it -> it.size().to().isPresent())
                .map(it -> forecast.gain(it.change(), it.size().to().get()).orElse(Double.POSITIVE_INFINITY)).orElse(0.0);
        double gain = forecast.gain(change, to).orElse(0);
        return gain < forecast.noticeable() || gain <= own ? Optional.empty()
                : Optional.of(told(change, new Size(Optional.of(setting.get().now()), Optional.of(to), 1, List.of(), List.of())));
    }

    private RankedChange told(Change change, Size size) {
        return worth.ofModel(change, size, WHY, way -> new Note.Way(way.effects(), WHY, "You moved this the other way, that made "
                + "the car worse, and you put it back. So try one step this way.", "What you told before you first moved it "
                + "becomes less.", "It is no better than before, or the car does something new."));
    }
}
