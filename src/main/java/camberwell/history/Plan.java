package camberwell.history;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.statistics.SampleSize;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A test plan for the laps at hand: one change a run, the way back first, the surest and cheapest change next, no two that
 * pull against each other, and the start set-up again after every second change, since track, wind and driver drift
 * (common practice, no source).
 *
 * @param steps the runs to drive, in order
 * @param left what is advised and not in the plan, with the reason
 * @param lapsEach laps to count in each run, without the lap out and the lap in
 * @param scatter of one lap in the last stint that can tell, in seconds
 * @param gain what a change that helps is expected to bring a lap, where the book or a person says so
 * @param optima settings of which three were timed and the middle one was quickest
 * @param stop why to stop before it begins, if there is a reason
 */
public record Plan(List<Step> steps, List<Left> left, int lapsEach, Optional<Double> scatter, Optional<Gain> gain,
        List<Optimum> optima, Optional<String> stop) {

    /** Laps that count where nothing says how many it takes: eight see one and a half times the scatter of a lap. */
    private static final int USUAL_LAPS = 8;
    private static final int MOST_LAPS = 20;
    /** A lap out and a lap in. */
    static final int BESIDE = 2;
    /** Changes in a row that did nothing, before something else is the cause: judgement, no source. */
    private static final int IN_VAIN = 3;

    /** What a run of the plan is for. */
    public enum Kind {
        /** As it stands, to have something to compare with. */
        BASELINE,
        /** Back from what made it worse. */
        UNDO,
        /** To the quickest of three settings, or between them. */
        BEST,
        /** A change to try. */
        CHANGE,
        /** The start set-up once more. */
        BACK
    }

    /**
     * One run of the plan.
     *
     * @param run its number in the book
     * @param change what to change before it; empty for a baseline, for the start set-up and for the quickest setting
     * @param best where to set what has been bracketed; for {@link Kind#BEST} only
     * @param chance that the change helps, in [0, 1]
     * @param cause the finding that it rests on most, by the name of its note
     * @param alike changes that rest on the same finding: they lose with it if nothing comes of it
     * @param seen the least difference, in seconds a lap, that the laps left before it could show; empty where the scatter is
     *     not known, or where they do not make two stints
     */
    public record Step(Kind kind, int run, Optional<RankedChange> change, Optional<Optimum> best, double chance,
            Optional<String> cause, List<Change> alike, Optional<Double> seen) {

        static Step without(Kind kind, int run) {
            return new Step(kind, run, Optional.empty(), Optional.empty(), 0, Optional.empty(), List.of(), Optional.empty());
        }
    }

    /** A change that is advised and not in the plan. */
    public record Left(Change change, String reason) {
    }

    /**
     * Plans the next runs.
     *
     * @param advice on the car as it stands, with the book known
     * @param history of the car
     * @param next number of the next run
     * @param laps that are at hand, the laps out and in among them
     * @param leastGain the least difference a lap worth having, in seconds, if a person said so
     * @param expected what a change that helps brings a lap, if a person said so; else what those of the book brought
     */
    public static Plan of(Advice advice, History history, int next, int laps, Optional<Double> leastGain,
            Optional<Gain> expected) {
        Optional<Double> scatter = scatter(history);
        int each = scatter.isPresent() && leastGain.isPresent() && scatter.get() > 0
                ? Math.max(CountedLaps.FEWEST, Math.min(MOST_LAPS, SampleSize.laps(leastGain.get() / scatter.get(),
                        SampleSize.POWER))) : USUAL_LAPS;
        Optional<Gain> gain = expected.or(() -> Gain.of(history));
        return new Planning(advice, next, laps, each, scatter, gain, Optimum.of(history))
                .made(needsBaseline(advice, history), stop(advice, history));
    }

    /** What a step is worth before it is tried, in seconds a lap: its chance times the gain. */
    public Optional<Double> worth(Step step) {
        return step.change().isEmpty() ? Optional.empty() : gain.map(it -> it.worth(step.chance()));
    }

    /** Whether the laps that are left could show what a step is worth; empty where it is not known. */
    public Optional<Boolean> clockTells(Step step) {
        return worth(step).flatMap(worth -> step.seen().map(seen -> worth >= seen));
    }

    /** Laps out and in among them. */
    public int lapsInAll() {
        return steps.size() * (lapsEach + BESIDE);
    }

    /** The least difference that the laps of a run show against as many others, in seconds. */
    public Optional<Double> seen() {
        return scatter.map(it -> it * SampleSize.seen(lapsEach, SampleSize.POWER));
    }

    private static Optional<Double> scatter(History history) {
        for (int i = history.runs().size() - 1; i >= 0; i--) {
            CountedLaps laps = CountedLaps.of(history.runs().get(i).driven().laps());
            if (laps.count() >= CountedLaps.FEWEST) {
                return Optional.of(StintFit.of(List.of(laps.stint()), Trend.COMMON).scatter());
            }
        }
        return Optional.empty();
    }

    private static boolean needsBaseline(Advice advice, History history) {
        return history.last().filter(run -> CountedLaps.of(run.driven().laps()).count() >= CountedLaps.FEWEST
                && Changes.none(run.car(), advice.run().car())).isEmpty();
    }

    private static Optional<String> stop(Advice advice, History history) {
        List<Report> reports = advice.run().reports();
        if (!reports.isEmpty() && reports.stream().allMatch(report -> report.severity() == Severity.SLIGHT)) {
            return Optional.of("what is left is slight: leave the car, and drive");
        }
        List<Judgement> judgements = history.judgements(Optional.empty());
        List<Judgement> last = judgements.subList(Math.max(0, judgements.size() - IN_VAIN), judgements.size());
        boolean inVain = last.size() == IN_VAIN && last.stream().allMatch(judgement -> judgement.outcomes().stream()
                .allMatch(outcome -> outcome.outcome() == Outcome.SAME || outcome.outcome() == Outcome.UNCLEAR));
        return inVain ? Optional.of("the last three changes did nothing, so the driver, the tyres or the reading are the "
                + "cause; go back to run " + mildest(history) + ", the best known set-up, and look there first")
                : Optional.empty();
    }

    private static int mildest(History history) {
        return history.runs().stream().min(Comparator.comparingInt((Case run) -> run.reports().stream()
                .mapToInt(ComplaintShift::grade).sum())).flatMap(run -> run.driven().sheet().number()).orElse(0);
    }
}
