package camberwell.history;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.statistics.Verdict;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Witness;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What came of the changes before a run. Lap times and complaints are two answers: both are shown, and never added.
 *
 * @param before the run that it is held against
 * @param run the run with the changes
 * @param again the run after it with the old settings, where there is one
 * @param changes what was changed
 * @param laps the lap times, where both have some
 * @param shifts the complaints
 * @param outcomes what is learned from it, one entry for each change and complaint
 */
public record Judgement(Case before, Case run, Optional<Case> again, List<Made> changes, Optional<LapComparison> laps,
        List<ComplaintShift> shifts, List<Tried> outcomes) {

    /**
     * Judges {@code run} against {@code before}.
     *
     * @param earlier the run before {@code before}, if there is one: what goes back to it beside a new change is no trial
     * @param again the run after it with the settings of {@code before}, if there is one
     * @param leastGain the least difference in lap time worth having, in seconds, if a person said so
     */
    public static Judgement of(Optional<Case> earlier, Case before, Case run, Optional<Case> again,
            Optional<Double> leastGain) {
        List<Made> changes = Changes.between(before.car(), run.car());
        List<Case> driven = new ArrayList<>(List.of(before, run));
        again.filter(it -> !it.driven().laps().isEmpty()).ifPresent(driven::add);
        Optional<LapComparison> laps = before.driven().laps().isEmpty() || run.driven().laps().isEmpty()
                ? Optional.empty() : Optional.of(LapComparison.of(driven, leastGain));
        List<ComplaintShift> shifts = ComplaintShift.between(before.reports(), run.reports());
        List<Tried> outcomes = new ArrayList<>();
        List<Made> trials = trials(changes, earlier, before);
        for (Made change : trials) {
            outcomes.addAll(outcomes(change, trials.size(), before, run, again, laps, shifts));
        }
        return new Judgement(before, run, again, changes, laps, shifts, List.copyOf(outcomes));
    }

    /** What came of changes after which the driver says that nothing is wrong: each complaint of the run before is gone. */
    public static List<Tried> nothingWrong(List<Made> changes, Case before) {
        List<Tried> outcomes = new ArrayList<>();
        for (Made made : changes) {
            for (Report report : before.reports()) {
                outcomes.add(new Tried(made.change(), made.moved(), Outcome.BETTER, ComplaintShift.on(report),
                        Tried.Trial.UNNOTED));
            }
        }
        return List.copyOf(outcomes);
    }

    /** A change that only puts back the one before, while something new is tried, is not one of several at once. */
    private static List<Made> trials(List<Made> changes, Optional<Case> earlier, Case before) {
        List<Made> last = earlier.map(it -> Changes.between(it.car(), before.car())).orElse(List.of());
        List<Made> fresh = changes.stream().filter(change -> last.stream().noneMatch(made ->
                made.change().equals(change.change().opposite()) && made.moved().from().equals(change.moved().to())))
                .toList();
        return fresh.isEmpty() ? changes : fresh;
    }

    private static List<Tried> outcomes(Made made, int together, Case before, Case run, Optional<Case> again,
            Optional<LapComparison> laps, List<ComplaintShift> shifts) {
        Driven driven = run.driven();
        List<Tried> said = driven.judged().stream().filter(it -> it.change().equals(made.change())).toList();
        if (!said.isEmpty()) {
            return said.stream().map(it -> new Tried(it.change(), made.moved(), it.outcome(), it.on(),
                    trial(run, together, it.trial().witness().orElse(Witness.DRIVER)))).toList();
        }
        if (otherDriver(before, run)) {
            return List.of(new Tried(made.change(), made.moved(), Outcome.UNCLEAR, Tried.On.ALL,
                    trial(run, together, Witness.DRIVER)));
        }
        Outcome byLaps = laps.map(it -> outcome(it.verdict())).orElse(Outcome.UNCLEAR);
        List<Tried> outcomes = new ArrayList<>();
        for (ComplaintShift shift : shifts) {
            Witness witness = shift.outcome() == byLaps ? Witness.LAPS
                    : again.filter(it -> confirmed(shift, run, it)).isPresent() ? Witness.COMPLAINTS : Witness.DRIVER;
            outcomes.add(new Tried(made.change(), made.moved(), shift.outcome(), shift.on(),
                    trial(run, together, witness)));
        }
        if (outcomes.isEmpty()) {
            Outcome verdict = driven.verdict().orElse(byLaps);
            outcomes.add(new Tried(made.change(), made.moved(), verdict, Tried.On.ALL, trial(run, together,
                    verdict == byLaps ? Witness.LAPS : Witness.DRIVER)));
        }
        return outcomes;
    }

    private static boolean otherDriver(Case before, Case run) {
        Optional<String> one = before.driven().sheet().driver();
        Optional<String> other = run.driven().sheet().driver();
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    /** Whether what the change did went away with it. */
    private static boolean confirmed(ComplaintShift shift, Case run, Case again) {
        return ComplaintShift.between(run.reports(), again.reports()).stream().anyMatch(back ->
                back.on().equals(shift.on()) && (shift.outcome() == Outcome.SAME ? back.outcome() == Outcome.SAME
                        : shift.outcome() == Outcome.BETTER ? back.outcome() == Outcome.WORSE
                        : back.outcome() == Outcome.BETTER));
    }

    private static Outcome outcome(Verdict verdict) {
        return switch (verdict) {
            case FASTER, PERHAPS_FASTER -> Outcome.BETTER;
            case SLOWER, PERHAPS_SLOWER -> Outcome.WORSE;
            case NO_DIFFERENCE -> Outcome.SAME;
            case CANNOT_TELL -> Outcome.UNCLEAR;
        };
    }

    private static Tried.Trial trial(Case run, int together, Witness witness) {
        int laps = CountedLaps.of(run.driven().laps()).count();
        return new Tried.Trial(run.driven().sheet().number(), Optional.empty(),
                laps == 0 ? Optional.empty() : Optional.of(laps), together, Optional.of(witness),
                Optional.of(run.conditions().surface()), false);
    }
}
