package camberwell.history;

import camberwell.car.Setting;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.statistics.Bracket;
import camberwell.statistics.Difference;
import camberwell.statistics.Interval;
import camberwell.statistics.Stint;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * Three settings of one adjuster, all else alike, of which the middle one was quickest: the quickest of all lies between the
 * outer two, at the vertex of the parabola through them.
 *
 * @param adjuster the one that differed
 * @param tried the three settings in the order of their numbers, each with its lap time
 * @param at the vertex, rounded to a tenth of a step
 * @param from where it lies with 95 %, at the one end; empty where the three do not differ by more than the laps can show
 * @param to the other end
 * @param nearest the setting nearest to it that the car can be set to
 * @param stepsAway steps from the present setting to the nearest one; 0 where it stands there
 */
public record Optimum(Adjuster adjuster, List<Tried> tried, Quantity at, Optional<Quantity> from, Optional<Quantity> to,
        Quantity nearest, int stepsAway) {

    private static final double LEVEL = 0.95;
    private static final int TENTHS = 10;
    /** Settings nearer than this part of a step are the same. */
    private static final double SAME = 0.25;

    /**
     * One of the settings.
     *
     * @param runs that were driven with it
     * @param seconds its lap time at the middle of the stints, the trend taken out
     */
    public record Tried(Quantity setting, List<Integer> runs, double seconds) {
    }

    /** Whether the laps can tell where it is. */
    public boolean told() {
        return from.isPresent();
    }

    /** Every adjuster of the car as it was last driven of which three settings or more were timed and all else was alike. */
    public static List<Optimum> of(History history) {
        List<Optimum> found = new ArrayList<>();
        history.last().ifPresent(last -> last.car().adjusters().forEach((adjuster, setting) ->
                of(sinceRebuilt(history.runs()), last, adjuster, setting).ifPresent(found::add)));
        return List.copyOf(found);
    }

    private static List<Case> sinceRebuilt(List<Case> runs) {
        for (int i = runs.size() - 1; i > 0; i--) {
            if (runs.get(i).driven().sheet().rebuilt()) {
                return runs.subList(i, runs.size());
            }
        }
        return runs;
    }

    private static Optional<Optimum> of(List<Case> runs, Case last, Adjuster adjuster, Setting setting) {
        List<Case> alike = runs.stream().filter(run -> CountedLaps.of(run.driven().laps()).count() >= CountedLaps.FEWEST
                && alike(run, last, adjuster)).toList();
        List<List<Case>> groups = groups(alike, adjuster, setting);
        if (groups.size() < 3) {
            return Optional.empty();
        }
        boolean sameTyres = alike.stream().map(run -> run.driven().sheet().tyreSet()).distinct().count() == 1;
        List<Stint> stints = new ArrayList<>();
        groups.forEach(group -> group.forEach(run -> stints.add(CountedLaps.of(run.driven().laps()).stint())));
        return of(adjuster, setting, groups, StintFit.of(stints, sameTyres ? Trend.COMMON : Trend.OWN));
    }

    /** Whether two runs differ in that adjuster at most, and were driven by one driver on one track and surface. */
    private static boolean alike(Case run, Case last, Adjuster adjuster) {
        Driven.Sheet one = run.driven().sheet();
        Driven.Sheet other = last.driven().sheet();
        return run.car().setting(adjuster).isPresent() && one.driver().equals(other.driver())
                && one.track().equals(other.track()) && run.conditions().surface() == last.conditions().surface()
                && Changes.between(run.car(), last.car()).stream().allMatch(made -> made.change().adjuster() == adjuster);
    }

    private static List<List<Case>> groups(List<Case> runs, Adjuster adjuster, Setting setting) {
        List<Case> ordered = new ArrayList<>(runs);
        ordered.sort(Comparator.comparingDouble(run -> value(run, adjuster, setting)));
        List<List<Case>> groups = new ArrayList<>();
        double group = Double.NEGATIVE_INFINITY;
        for (Case run : ordered) {
            double value = value(run, adjuster, setting);
            if (value - group >= SAME * setting.step().value()) {
                groups.add(new ArrayList<>());
                group = value;
            }
            groups.get(groups.size() - 1).add(run);
        }
        return groups;
    }

    private static double value(Case run, Adjuster adjuster, Setting setting) {
        return run.car().setting(adjuster).orElseThrow().now().in(setting.now().unit());
    }

    private static Optional<Optimum> of(Adjuster adjuster, Setting setting, List<List<Case>> groups, StintFit fit) {
        double[][] weights = weights(groups);
        List<Tried> tried = new ArrayList<>();
        int best = 0;
        for (int g = 0; g < groups.size(); g++) {
            double seconds = 0;
            for (int s = 0; s < weights[g].length; s++) {
                seconds += weights[g][s] * fit.mean(s);
            }
            tried.add(new Tried(groups.get(g).get(0).car().setting(adjuster).orElseThrow().now().to(setting.now().unit()),
                    groups.get(g).stream().map(run -> run.driven().sheet().number().orElse(0)).sorted().toList(), seconds));
            best = seconds < tried.get(best).seconds() ? g : best;
        }
        if (best == 0 || best == groups.size() - 1) {
            return Optional.empty();
        }
        int first = best - 1;
        List<Tried> three = List.copyOf(tried.subList(first, first + 3));
        double[] x = three.stream().mapToDouble(it -> it.setting().value()).toArray();
        double[] y = three.stream().mapToDouble(Tried::seconds).toArray();
        Optional<Interval> interval = Bracket.interval(x, contrast(fit, weights, first), LEVEL);
        return Bracket.vertex(x, y).map(vertex -> {
            Quantity nearest = setting.now().withValue(setting.now().value()
                    + setting.stepsTo(setting.now().withValue(vertex)) * setting.step().value());
            return new Optimum(adjuster, three, rounded(vertex, setting), interval.map(it -> rounded(it.low(), setting)),
                    interval.map(it -> rounded(it.high(), setting)), rounded(nearest.value(), setting),
                    Math.abs(setting.stepsTo(nearest)));
        });
    }

    /** For each setting what each stint counts in its mean: all stints of a setting alike. */
    private static double[][] weights(List<List<Case>> groups) {
        int stints = groups.stream().mapToInt(List::size).sum();
        double[][] weights = new double[groups.size()][stints];
        int at = 0;
        for (int g = 0; g < groups.size(); g++) {
            for (int i = 0; i < groups.get(g).size(); i++) {
                weights[g][at++] = 1.0 / groups.get(g).size();
            }
        }
        return weights;
    }

    private static Function<double[], Difference> contrast(StintFit fit, double[][] weights, int first) {
        return three -> {
            double[] each = new double[weights[0].length];
            for (int g = 0; g < three.length; g++) {
                for (int s = 0; s < each.length; s++) {
                    each[s] += three[g] * weights[first + g][s];
                }
            }
            return fit.contrast(each);
        };
    }

    /** To a tenth of a step, and within the stops. */
    private static Quantity rounded(double value, Setting setting) {
        double tenth = setting.step().value() / TENTHS;
        double within = Math.max(setting.min().value(), Math.min(setting.max().value(), value));
        return setting.now().withValue(Math.rint(Math.rint(within / tenth) * tenth * 1e6) / 1e6);
    }
}
