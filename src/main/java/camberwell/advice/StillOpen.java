package camberwell.advice;

import camberwell.car.Setting;
import camberwell.learning.Trials;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Symptom;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Predicate;

/**
 * What the trials so far leave open: how far a change may go, and which levers have turned out too coarse, or of no use, for
 * what is left. Common practice, no source.
 */
final class StillOpen {

    /** What lies between two settings is looked for about half way. */
    private static final double ABOUT_HALF = 0.6;

    private final Case run;
    private final List<Complaint> complaints;
    private final Trials trials;
    private final Leverage leverage;
    private final int last;

    /** @param leverage how much bars and springs do on this car */
    StillOpen(Case run, List<Complaint> complaints, Trials trials, Leverage leverage) {
        this.run = run;
        this.complaints = complaints;
        this.trials = trials;
        this.leverage = leverage;
        this.last = trials.count() - 1;
    }

    /**
     * How many steps a change may go before it comes to a setting of which the opposite is known to be complained of:
     * where the change the other way began, and helped. What lies between has to be looked for between. It holds as long
     * as nothing else has moved the car since.
     */
    int room(Change change) {
        Optional<Setting> setting = run.car().setting(change.adjuster());
        int room = Integer.MAX_VALUE;
        for (int i = last; i >= 0 && setting.isPresent() && !run.car().generic(); i--) {
            Tried trial = trials.get(i);
            if (trial.change().adjuster() != change.adjuster()) {
                if (trials.any(i, Outcome.BETTER) || trials.any(i, Outcome.WORSE)) {
                    break;
                }
            } else if (trial.change().equals(change.opposite()) && trials.binding(i) && trials.any(i, Outcome.BETTER)
                    && trial.moved().from().isPresent()) {
                int steps = setting.get().sign(change.direction())
                        * setting.get().stepsTo(trial.moved().from().get().to(setting.get().now().unit()));
                room = steps > 0 ? Math.min(room, steps - 1) : room;
            }
        }
        return room;
    }

    /** Whether a change may be made: it was not tried, or it helped the last time and harmed nothing. */
    boolean mayBeTried(Change change) {
        for (int i = last; i >= 0; i--) {
            if (trials.get(i).change().equals(change)) {
                return trials.any(i, Outcome.BETTER) && !trials.any(i, Outcome.WORSE);
            }
        }
        return true;
    }

    /** The change of which one step has turned the car round before, the last one if there were several. */
    Optional<Change> overshot() {
        for (int i = last; i >= 0; i--) {
            if (trials.get(i).change().adjuster().kind() == Adjuster.Kind.STIFFNESS && turnedInOneStep(i)) {
                return Optional.of(trials.get(i).change());
            }
        }
        return Optional.empty();
    }

    /**
     * How many steps of a bar or spring move the car less than the one step of another that has just turned it round, put back
     * or not: what is right lies between, so about half as far. 0 where a single one moves it as much; all where none turned it
     * round, or nobody knows how much it moves.
     */
    int stepsWithin(Change change) {
        int i = lastProper();
        if (i < 0 || !Leverage.ofRollStiffness(change) || !turnedInOneStep(i)
                || trials.get(i).change().adjuster() == change.adjuster()) {
            return Integer.MAX_VALUE;
        }
        OptionalDouble times = leverage.times(change, trials.get(i).change());
        return times.isEmpty() ? Integer.MAX_VALUE : times.getAsDouble() >= 1 ? 0
                : Math.max(1, (int) (ABOUT_HALF / times.getAsDouble()));
    }

    /**
     * Whether the last trial, put back or not, moved the balance of the air, brought nothing for such a complaint, and made
     * something worse; other levers of it do the same work.
     */
    boolean airHarmed(Complaint complaint) {
        int i = lastProper();
        return i >= 0 && trials.binding(i) && ofAir(trials.get(i).change()) && !trials.any(i, Outcome.BETTER)
                && trials.any(i, Outcome.WORSE) && trials.trial(i).stream().anyMatch(entry -> complaint.is(entry.on()));
    }

    /** Wings and, on a car that has some, the rake that ride heights set. */
    static boolean ofAir(Change change) {
        return change.adjuster().kind() == Adjuster.Kind.WING || change.adjuster().kind() == Adjuster.Kind.HEIGHT;
    }

    /** Whether a bar or spring took away what was wrong with the balance, and nothing is wrong with it now. */
    boolean balanced() {
        boolean complained = complaints.stream().anyMatch(complaint -> complaint.reported()
                && complaint.symptom().ofBalance());
        for (int i = last; i >= 0 && !complained; i--) {
            if (trials.binding(i) && trials.stillOn(i) && Leverage.ofRollStiffness(trials.get(i).change())
                    && told(trials.trial(i), Outcome.BETTER, Symptom::ofBalance)) {
                return true;
            }
        }
        return false;
    }

    /** The last trial that did not only put back what was tried before; -1 where there is none. */
    private int lastProper() {
        int i = last;
        while (i >= 0 && trials.isUndo(i)) {
            i--;
        }
        return i;
    }

    private boolean turnedInOneStep(int index) {
        return trials.binding(index) && trials.get(index).moved().steps().filter(steps -> steps > 1).isEmpty()
                && turned(trials.trial(index));
    }

    private static boolean turned(List<Tried> entries) {
        return told(entries, Outcome.BETTER, Symptom.UNDERSTEER::equals) && told(entries, Outcome.WORSE, Symptom::loose)
                || told(entries, Outcome.BETTER, Symptom::loose) && told(entries, Outcome.WORSE, Symptom.UNDERSTEER::equals);
    }

    private static boolean told(List<Tried> entries, Outcome outcome, Predicate<Symptom> such) {
        return entries.stream().anyMatch(entry -> entry.outcome() == outcome
                && entry.on().symptom().filter(such).isPresent());
    }
}
