package camberwell.advice;

import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/**
 * The next change put to the driven model of this car before it is made, as a run is dear. The rules say what is proposed and
 * in which order; the model only says which of it to pass over: what would hardly be felt, or turn the car round. That a change
 * is tried on a model first, where there is one, is common practice, no source.
 */
final class LookAhead {

    /** Words more that are clearly harm. */
    private static final double HARM = 2;
    /** Words less that are clearly more of a gain. */
    private static final double CLEARLY = 1;
    /** What does so many times as much comes before what rules put first. */
    private static final double MUCH = 3;
    /** Part of the first one's score that is near to it, and how many changes are looked at then. */
    private static final double NEAR = 0.8;
    private static final int LEADING = 4;
    /** What does less than so many times as much is merely a little more. */
    private static final double MORE = 2;

    private final Case run;
    private final Forecast forecast;

    /** @param forecast of what is left after a change */
    LookAhead(Case run, Forecast forecast) {
        this.run = run;
        this.forecast = forecast;
    }

    /**
     * What looks ahead in a case: on a dry road, where the model shows all that is told, and no rule puts a change first.
     *
     * @param first the change that stands first
     */
    static Optional<LookAhead> of(Case run, List<Complaint> complaints, Leverage leverage, RankedChange first) {
        return !first.firstBy().isEmpty() || run.conditions().surface() != Surface.DRY ? Optional.empty()
                : leverage.forecast(run, complaints).filter(Forecast::shows).map(forecast -> new LookAhead(run, forecast));
    }

    /**
     * After something was tried: the change after which least is left, where after the first of them hardly less is left than
     * before it, or very much more than after this. Which of several that all help comes first is else for the rules to say.
     *
     * @param ranked best first
     * @return what is to come first instead; empty where the rules' order stands
     */
    Optional<RankedChange> worthARun(List<RankedChange> ranked) {
        return instead(ranked, forecast.noticeable(), forecast::gain, "by the model of this car, driven, hardly less is "
                + "left after what stood before it, and noticeably less is left after this");
    }

    /**
     * Of a car at neutral or beyond, where a step may turn it round: the change after which least is complained of, where clearly
     * more is after the first of them. A wheel that locks or spins has levers of its own, which are not given up for a balance
     * that nobody complains of.
     *
     * @param ranked best first
     * @return what is to come first instead; empty where the rules' order stands
     */
    Optional<RankedChange> unturned(List<RankedChange> ranked) {
        // One step may lose such a car where nothing is felt of it yet.
        return forecast.ofBalance() ? instead(ranked, -harm(), forecast::gainEverywhere,
                "the car is at neutral or beyond: by the "
                + "model of it, driven, what stood before this would turn it round") : Optional.empty();
    }

    /** Whether the rules set the first of the changes so little apart from the second that the model may choose. */
    static boolean near(List<RankedChange> ranked) {
        return ranked.size() > 1 && ranked.get(1).score().total() >= NEAR * ranked.get(0).score().total();
    }

    /**
     * Of the changes that the rules set little apart, the one that does most where something is told, where the first of them
     * does next to nothing there, or this very much more. What merely does less keeps its place.
     *
     * @param ranked best first
     * @return what is to come first instead; empty where the rules' order stands
     */
    Optional<RankedChange> worthLeading(List<RankedChange> ranked) {
        List<RankedChange> leading = ranked.stream()
                .filter(change -> change.score().total() >= NEAR * ranked.get(0).score().total()).limit(LEADING).toList();
        forecast.driveWhereTold(leading);
        double own = gain(forecast::gainWhereTold, ranked.get(0), ranked.get(0).size().to()).orElse(Double.POSITIVE_INFINITY);
        RankedChange best = ranked.get(0);
        double most = Math.max(MORE * own, forecast.noticeable());
        for (RankedChange change : own == Double.POSITIVE_INFINITY ? List.<RankedChange>of() : leading) {
            double gain = gain(forecast::gainWhereTold, change, change.size().to()).orElse(Double.NEGATIVE_INFINITY);
            if (gain > most) {
                most = gain;
                best = change;
            }
        }
        return best == ranked.get(0) || stands(own, most, forecast.noticeable()) ? Optional.empty()
                : Optional.of(best.explained("by the model of this car, driven, what stood before it, for which as much speaks, "
                + "does next to nothing where something is told, or much less than this"));
    }

    /** Whether a change of which enough is expected keeps its place before one of which more is. */
    private static boolean stands(double own, double most, double enough) {
        return own >= enough && (most < MUCH * own || most - own < CLEARLY);
    }

    /** Whether a change gives way to one after which so many words less are left: it does next to nothing, or much less. */
    boolean givesWay(RankedChange change, double gain) {
        OptionalDouble own = gain(forecast::gain, change, change.size().to());
        return own.isPresent() && !stands(own.getAsDouble(), gain, forecast.noticeable());
    }

    /** Whether noticeably less is left after a change than before it, or the model does not know what is changed. */
    boolean isWorthARun(RankedChange change) {
        return change.size().to().isEmpty() || forecast.worthARun(change.change(), change.size().to().get());
    }

    /** Whether clearly more is left after a change than before it. */
    boolean harms(RankedChange change) {
        return gain(forecast::gain, change, change.size().to()).orElse(0) < -harm();
    }

    private double harm() {
        return Math.max(HARM, forecast.noticeable());
    }

    private Optional<RankedChange> instead(List<RankedChange> ranked, double enough,
            BiFunction<Change, Quantity, OptionalDouble> asked, String why) {
        double own = gain(asked, ranked.get(0), ranked.get(0).size().to()).orElse(Double.POSITIVE_INFINITY);
        if (own == Double.POSITIVE_INFINITY || enough < 0 && own >= enough) {
            return Optional.empty();
        }
        RankedChange best = ranked.get(0);
        double most = Math.max(own, forecast.noticeable());
        for (RankedChange change : ranked) {
            for (Optional<Quantity> to : List.of(change.size().to(), oneStep(change))) {
                double gain = gain(asked, change, to).orElse(Double.NEGATIVE_INFINITY);
                if (gain > most) {
                    most = gain;
                    best = to.equals(change.size().to()) ? change.explained(why)
                            : change.sized(to.get(), 1, "by the model of this car, driven, one step does more than "
                            + change.size().steps());
                }
            }
        }
        return stands(own, most, enough) || best == ranked.get(0) ? Optional.empty() : Optional.of(best);
    }

    private static OptionalDouble gain(BiFunction<Change, Quantity, OptionalDouble> asked, RankedChange change,
            Optional<Quantity> to) {
        return to.isEmpty() ? OptionalDouble.empty() : asked.apply(change.change(), to.get());
    }

    private Optional<Quantity> oneStep(RankedChange change) {
        Optional<Setting> setting = run.car().setting(change.change().adjuster());
        return change.size().steps() < 2 ? Optional.empty()
                : setting.map(it -> it.moved(change.change().direction(), 1));
    }
}
