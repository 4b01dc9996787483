package camberwell.advice;

import camberwell.knowledge.Effect;
import camberwell.knowledge.Note;
import camberwell.learning.Trials;
import camberwell.run.Tried;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Witness;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * What got worse by one driver's word and need not be laid at the door of a change. Drivers forget a complaint in one
 * run and tell it again in the next, and take one part of a corner for another; and some of what is new is nothing that
 * the change acts on. Lap times, and a run with the old settings, are beyond doubt. Common practice, no source.
 */
final class Doubt {

    private final Trials trials;
    private final Function<Change, Note.Way> ways;

    /** @param ways what a change does, by its note */
    Doubt(Trials trials, Function<Change, Note.Way> ways) {
        this.trials = trials;
        this.ways = ways;
    }

    /** Whether the entry says that something got worse, and that is no word against the change. */
    boolean of(int index) {
        Tried trial = trials.get(index);
        return trial.outcome() == Outcome.WORSE && (elsewhere(trial)
                || trial.trial().witness().filter(by -> by == Witness.DRIVER).isPresent() && trial.on().symptom().isPresent()
                && (noMatterOf(index) || toldAgain(index) || moved(index)));
    }

    /**
     * The change does not act on what is new. Where it acts on it in another part of the corner, and did nothing good
     * either, the part is what the driver may have mistaken: then it is a word against it.
     */
    private boolean noMatterOf(int index) {
        Tried trial = trials.get(index);
        return effects(trial).isEmpty() && !told(index, false)
                && (trials.any(index, Outcome.BETTER) || ways.apply(trial.change()).effects().stream()
                .noneMatch(effect -> effect.on() == trial.on().symptom().orElseThrow()));
    }

    /**
     * Whether nobody could tell if the change brought what by its note it may well bring: that is no verdict, but half a word
     * against it, as it is as likely as not.
     */
    boolean mayHaveHarmed(Tried trial) {
        if (trial.outcome() != Outcome.UNCLEAR || trial.on().symptom().isEmpty() || elsewhere(trial)) {
            return false;
        }
        List<Effect> effects = effects(trial);
        return !effects.isEmpty() && effects.stream().allMatch(effect -> effect.effect() < 0);
    }

    /** What the last change may have brought, nobody could tell: {@code front locking under braking}; blank for nothing. */
    String unclearOfLast() {
        return trials.count() == 0 ? "" : trials.trial(trials.count() - 1).stream().filter(this::mayHaveHarmed)
                .map(trial -> trial.on().text()).collect(Collectors.joining(", "));
    }

    /** Brakes do nothing where nobody brakes. */
    private static boolean elsewhere(Tried trial) {
        return trial.change().adjuster() == Adjuster.BRAKE_BIAS && trial.on().phase()
                .filter(phase -> phase != Phase.BRAKING && phase != Phase.ENTRY).isPresent();
    }

    /** What the note says that the change does to what got worse. */
    private List<Effect> effects(Tried trial) {
        Tried.On on = trial.on();
        return ways.apply(trial.change()).effects().stream().filter(effect -> effect.on() == on.symptom().orElseThrow()
                && agree(effect.phase(), on.phase()) && agree(effect.speed(), on.speed())).toList();
    }

    /** Whether the change is for what this entry tells of, by its note; an entry without a symptom tells of all it is for. */
    boolean madeFor(Tried trial) {
        return trial.on().symptom().isEmpty() || effects(trial).stream().anyMatch(effect -> effect.effect() > 0);
    }

    /** Told before, not told in between, back by a change that is for it: it was forgotten. */
    private boolean toldAgain(int index) {
        Tried trial = trials.get(index);
        List<Effect> effects = effects(trial);
        if (effects.isEmpty() || effects.stream().anyMatch(effect -> effect.effect() <= 0)) {
            return false;
        }
        return told(index, true);
    }

    /** Whether an earlier trial tells of the same, and that it got better or went, if that is asked. */
    private boolean told(int index, boolean better) {
        Tried trial = trials.get(index);
        for (int i = index - 1; i >= 0; i--) {
            Tried earlier = trials.get(i);
            if (!earlier.trial().run().equals(trial.trial().run()) && (!better || earlier.outcome() == Outcome.BETTER)
                    && earlier.on().symptom().equals(trial.on().symptom()) && agree(earlier.on().phase(), trial.on().phase())
                    && agree(earlier.on().speed(), trial.on().speed())) {
                return true;
            }
        }
        return false;
    }

    /** The same is gone in the part of the corner next to it, in the same trial. */
    private boolean moved(int index) {
        Tried.On on = trials.get(index).on();
        return trials.trial(index).stream().anyMatch(entry -> entry.outcome() == Outcome.BETTER
                && entry.on().symptom().equals(on.symptom()) && entry.on().speed().equals(on.speed())
                && neighbours(entry.on().phase(), on.phase()));
    }

    private static boolean neighbours(Optional<Phase> one, Optional<Phase> other) {
        return one.isPresent() && other.isPresent() && one.get() != other.get()
                && (inCorner(one.get()) && other.get() == Phase.MID_CORNER
                || one.get() == Phase.MID_CORNER && inCorner(other.get()));
    }

    private static boolean inCorner(Phase phase) {
        return phase == Phase.ENTRY || phase == Phase.LIFT_OFF || phase == Phase.EXIT;
    }

    private static <T> boolean agree(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }
}
