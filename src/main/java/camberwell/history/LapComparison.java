package camberwell.history;

import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.statistics.Difference;
import camberwell.statistics.Interval;
import camberwell.statistics.Robust;
import camberwell.statistics.SampleSize;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.statistics.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Lap times of runs side by side: B less A, or with a run of A after it B less the mean of both A.
 *
 * @param stints the laps of each run
 * @param fit means and trend; empty where there are too few laps
 * @param difference B less A in seconds, the trend taken out
 * @param welch the same without a trend, where there are two runs
 * @param leastGain the least difference worth having, in seconds
 * @param leastGainGiven whether a person said so; else it is the least that these laps could show
 * @param caveats what else differed between the runs, or is odd about them
 */
public record LapComparison(List<CountedLaps> stints, Optional<StintFit> fit, Optional<Difference> difference,
        Optional<Difference> welch, double leastGain, boolean leastGainGiven, List<String> caveats) {

    private static final double LEVEL = 0.95;
    private static final double FOLLOWS = 0.3;

    /**
     * Compares runs.
     *
     * @param runs A and B, or A, B, A, …, in the order they were driven
     * @param leastGain the least difference worth having, in seconds, if a person said so
     */
    public static LapComparison of(List<Case> runs, Optional<Double> leastGain) {
        List<CountedLaps> stints = runs.stream().map(run -> CountedLaps.of(run.driven().laps())).toList();
        List<String> caveats = new ArrayList<>(caveats(runs));
        int least = stints.stream().mapToInt(CountedLaps::count).min().orElse(0);
        if (least < CountedLaps.FEWEST) {
            return new LapComparison(stints, Optional.empty(), Optional.empty(), Optional.empty(),
                    leastGain.orElse(0.0), leastGain.isPresent(), caveats);
        }
        boolean sameTyres = runs.stream().map(run -> run.driven().sheet().tyreSet()).distinct().count() == 1;
        StintFit fit = StintFit.of(stints.stream().map(CountedLaps::stint).toList(),
                sameTyres ? Trend.COMMON : Trend.OWN);
        Difference difference = runs.size() == 2 ? fit.contrast(-1, 1) : fit.alternating();
        double follows = Robust.lagOne(fit.residuals());
        if (follows > FOLLOWS) {
            caveats.add("neighbouring laps are alike (correlation " + Laps.seconds(follows, 2).replace(" s", "")
                    + "), so " + Laps.count(fit.residuals().length) + " tell no more than "
                    + Math.round(Robust.independent(fit.residuals().length, follows)));
        }
        return new LapComparison(stints, Optional.of(fit), Optional.of(difference), runs.size() == 2
                ? Optional.of(Difference.welch(stints.get(0).stint().seconds(), stints.get(1).stint().seconds()))
                : Optional.empty(), leastGain.orElse(SampleSize.seen(least, SampleSize.POWER) * fit.scatter()),
                leastGain.isPresent(), caveats);
    }

    private static List<String> caveats(List<Case> runs) {
        List<String> caveats = new ArrayList<>();
        differs(runs, "car", run -> Optional.of(run.car().name()), caveats);
        differs(runs, "driver", run -> run.driven().sheet().driver(), caveats);
        differs(runs, "track", run -> run.driven().sheet().track(), caveats);
        differs(runs, "surface", run -> Optional.of(run.conditions().surface().id()), caveats);
        differs(runs, "tyre set", run -> run.driven().sheet().tyreSet(), caveats);
        for (Case run : runs) {
            Driven driven = run.driven();
            CountedLaps.of(driven.laps()).laps().stream().filter(lap -> lap.counts() && !lap.why().isEmpty())
                    .forEach(lap -> caveats.add("run " + driven.sheet().number().orElse(0) + ", lap " + lap.number()
                            + ": " + lap.why()));
        }
        return caveats;
    }

    private static void differs(List<Case> runs, String what, Function<Case, Optional<String>> of,
            List<String> caveats) {
        List<String> values = runs.stream().map(of).flatMap(Optional::stream).distinct().toList();
        if (values.size() > 1) {
            caveats.add("another " + what + " (" + String.join(", ", values) + "): the change is not all that differs");
        }
    }

    /** What the interval says; cannot tell where there are too few laps. */
    public Verdict verdict() {
        return difference.map(it -> Verdict.of(it, leastGain)).orElse(Verdict.CANNOT_TELL);
    }

    /** The 95 % interval of the difference, in seconds. */
    public Optional<Interval> interval() {
        return difference.map(it -> it.interval(LEVEL));
    }

    /** Scatter of one lap about the trend, in seconds. */
    public Optional<Double> scatter() {
        return fit.map(StintFit::scatter);
    }

    /** The least difference that as many laps each show with a chance of 0.8, in seconds. */
    public Optional<Double> seen() {
        return scatter().map(it -> it * SampleSize.seen(fewest(), SampleSize.POWER));
    }

    /** Laps for each run to see {@code seconds}; empty where the scatter is not known. */
    public Optional<Integer> lapsFor(double seconds) {
        return scatter().filter(it -> it > 0 && seconds > 0).map(it -> SampleSize.laps(seconds / it, SampleSize.POWER));
    }

    /** Laps that count in the run that has fewest. */
    public int fewest() {
        return Collections.min(stints.stream().map(CountedLaps::count).toList());
    }
}
