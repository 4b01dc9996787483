package camberwell.learning;

import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Witness;
import java.util.List;
import java.util.Optional;

/** The changes that were tried before a case, as they bear on it. A trial is named by its place in the list, from 0. */
public final class Trials {

    /** Settings nearer than this part of a step are the same. */
    private static final double SAME_SETTING = 0.25;

    private final Case run;
    private final List<Tried> tried;
    private final LearningWeights weights;
    private final int latestRun;

    /** The trials of {@code run}. */
    public Trials(Case run, LearningWeights weights) {
        this.run = run;
        this.tried = run.tried();
        this.weights = weights;
        int latest = 0;
        for (Tried each : tried) {
            latest = Math.max(latest, each.trial().run().orElse(0));
        }
        this.latestRun = latest;
    }

    /** How many there are. */
    public int count() {
        return tried.size();
    }

    /** The trial at {@code index}. */
    public Tried get(int index) {
        return tried.get(index);
    }

    /** How heavily the outcome weighs for what it was made for, in [0, 1]. */
    public double weight(int index) {
        Tried.Trial trial = get(index).trial();
        double weight = Math.pow(0.5, runsAgo(index) / weights.halfLife()) / trial.together();
        if (trial.witness().filter(by -> by == Witness.DRIVER).isPresent()) {
            weight *= weights.driverAlone();
        }
        return here(index) ? weight : weight * weights.elsewhere();
    }

    /** Whether it speaks of this surface, track and tyre, and of the car as it is and not as it was long ago. */
    public boolean binding(int index) {
        return here(index) && runsAgo(index) <= weights.halfLife();
    }

    private boolean here(int index) {
        Tried.Trial trial = get(index).trial();
        return !trial.elsewhere() && trial.surface().filter(it -> it != run.conditions().surface()).isEmpty();
    }

    /** Runs since then: as noted, or by the numbers of the runs; else it counts as the last one. */
    private int runsAgo(int index) {
        Tried.Trial trial = get(index).trial();
        return trial.runsAgo().orElseGet(() -> trial.run().map(number -> latestRun - number).orElse(0));
    }

    /** Whether this trial put back what a trial before it had changed in vain or to the worse. */
    public boolean isUndo(int index) {
        Tried undo = get(index);
        int i = first(index) - 1;
        while (i >= 0 && get(i).change().adjuster() != undo.change().adjuster()) {
            i--;
        }
        return i >= 0 && get(i).change().equals(undo.change().opposite()) && !(any(i, Outcome.BETTER)
                && !any(i, Outcome.WORSE)) && sameSteps(get(i), undo);
    }

    /** Whether the trial that the entry at {@code index} is part of had that outcome for some complaint. */
    public boolean any(int index, Outcome outcome) {
        return trial(index).stream().anyMatch(entry -> entry.outcome() == outcome);
    }

    private int first(int index) {
        int first = index;
        while (first > 0 && sameTrial(first - 1, first)) {
            first--;
        }
        return first;
    }

    private static boolean sameSteps(Tried one, Tried other) {
        Optional<Integer> steps = one.moved().steps();
        return steps.isEmpty() || other.moved().steps().isEmpty() || steps.equals(other.moved().steps());
    }

    /**
     * Whether the car still stands as this trial left it: nothing says that it was put back or moved on, neither the
     * trial, nor a later one of the same adjuster, nor the present setting.
     */
    public boolean stillOn(int index) {
        Tried trial = get(index);
        for (int i = index + 1; i < count(); i++) {
            if (get(i).change().adjuster() == trial.change().adjuster()
                    && !(get(i).change().equals(trial.change()) && sameTrial(index, i))) {
                return false;
            }
        }
        Optional<Setting> setting = run.car().setting(trial.change().adjuster());
        return !trial.moved().putBack() && (setting.isEmpty()
                || trial.moved().from().filter(from -> stands(setting.get(), from)).isEmpty()
                && trial.moved().to().filter(to -> !stands(setting.get(), to)).isEmpty());
    }

    private static boolean stands(Setting setting, Quantity at) {
        return Math.abs(setting.stepsUp(at)) < SAME_SETTING;
    }

    /** The trial that the entry at {@code index} is part of: one entry for each complaint that it was judged for. */
    public List<Tried> trial(int index) {
        int last = index;
        while (last + 1 < count() && sameTrial(last, last + 1)) {
            last++;
        }
        return tried.subList(first(index), last + 1);
    }

    /** Whether two entries tell of one trial: one change, judged for several complaints. */
    public boolean sameTrial(int one, int other) {
        Tried first = get(one);
        Tried second = get(other);
        return first.change().equals(second.change()) && first.trial().run().equals(second.trial().run())
                && Math.abs(one - other) == 1 && !first.on().equals(second.on());
    }
}
