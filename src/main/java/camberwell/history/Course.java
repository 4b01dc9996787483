package camberwell.history;

import camberwell.run.Case;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.statistics.Interval;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.vocabulary.Adjuster;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A history as it is drawn: lap times with the trend out, the path of each setting that was moved, and how bad each
 * complaint was, run by run.
 *
 * @param numbers of the runs
 * @param stints the lap times of each run; empty where too few count
 * @param settings for each adjuster that was moved, its steps from the first run up or down
 * @param complaints for each complaint its severity, 0 for none to 3 for strong
 */
public record Course(List<Integer> numbers, List<Optional<Times>> stints, Map<Adjuster, List<Double>> settings,
        Map<String, List<Integer>> complaints) {

    private static final double LEVEL = 0.95;

    /**
     * The laps of one run.
     *
     * @param level each counted lap's time, moved to the middle of the stint by the trend, in seconds
     * @param mean of them
     * @param interval of the mean, at 95 %
     * @param dropped how many laps do not count
     */
    public record Times(List<Double> level, double mean, Interval interval, int dropped) {
    }

    /** The course of the last {@code most} runs of a history. */
    public static Course of(History history, int most) {
        List<Case> runs = history.runs().subList(Math.max(0, history.runs().size() - most), history.runs().size());
        List<Integer> numbers = new ArrayList<>();
        List<Optional<Times>> stints = new ArrayList<>();
        Map<Adjuster, List<Double>> settings = new LinkedHashMap<>();
        for (Case run : runs) {
            numbers.add(run.driven().sheet().number().orElse(0));
            stints.add(times(CountedLaps.of(run.driven().laps())));
            for (Made made : Changes.between(runs.get(0).car(), run.car())) {
                settings.put(made.change().adjuster(), List.of());
            }
        }
        settings.replaceAll((adjuster, none) -> runs.stream().map(run -> run.car().setting(adjuster)
                .map(setting -> runs.get(0).car().setting(adjuster).map(first -> -setting.stepsUp(first.now())).orElse(0.0))
                .orElse(0.0)).toList());
        Map<String, List<Integer>> complaints = new LinkedHashMap<>();
        runs.forEach(run -> run.reports().forEach(report -> complaints.put(name(report), List.of())));
        complaints.replaceAll((name, none) -> runs.stream().map(run -> run.reports().stream()
                .filter(report -> name(report).equals(name)).mapToInt(report -> report.severity().ordinal() + 1).max()
                .orElse(0)).toList());
        return new Course(numbers, stints, settings, complaints);
    }

    private static String name(Report report) {
        return new Tried.On(Optional.of(report.symptom()), report.where(), report.phase(), report.speed()).text();
    }

    private static Optional<Times> times(CountedLaps laps) {
        if (laps.count() < CountedLaps.FEWEST) {
            return Optional.empty();
        }
        StintFit fit = StintFit.of(List.of(laps.stint()), Trend.COMMON);
        List<Double> level = new ArrayList<>();
        for (double residual : fit.residuals()) {
            level.add(fit.mean(0) + residual);
        }
        return Optional.of(new Times(level, fit.mean(0), fit.level(0).interval(LEVEL),
                laps.laps().size() - laps.count()));
    }
}
