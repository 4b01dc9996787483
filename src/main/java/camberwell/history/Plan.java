package camberwell.history;

import camberwell.advice.Advice;
import camberwell.advice.Conflict;
import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.fact.Finding;
import camberwell.learning.Belief;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.statistics.SampleSize;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * A test plan for the laps at hand: one change a run, the way back first, the surest and cheapest change next, no two that
 * pull against each other, and the start set-up again after every second change, since track, wind and driver drift
 * (common practice, no source).
 *
 * @param steps the runs to drive, in order
 * @param left what is advised and not in the plan, with the reason
 * @param lapsEach laps to count in each run, without the lap out and the lap in
 * @param scatter of one lap in the last stint that can tell, in seconds
 * @param stop why to stop before it begins, if there is a reason
 */
public record Plan(List<Step> steps, List<Left> left, int lapsEach, Optional<Double> scatter, Optional<String> stop) {

    /** Laps that count where nothing says how many it takes: eight see one and a half times the scatter of a lap. */
    private static final int USUAL_LAPS = 8;
    private static final int MOST_LAPS = 20;
    /** A lap out and a lap in. */
    private static final int BESIDE = 2;
    private static final int BACK_AFTER = 2;
    /** Changes in a row that did nothing, before something else is the cause: judgement, no source. */
    private static final int IN_VAIN = 3;

    /** What a run of the plan is for. */
    public enum Kind {
        /** As it stands, to have something to compare with. */
        BASELINE,
        /** Back from what made it worse. */
        UNDO,
        /** A change to try. */
        CHANGE,
        /** The start set-up once more. */
        BACK
    }

    /**
     * One run of the plan.
     *
     * @param run its number in the book
     * @param change what to change before it; empty for a baseline and for the start set-up
     * @param chance that the change helps, in [0, 1]
     * @param cause the finding that it rests on most, by the name of its note
     * @param alike changes that rest on the same finding: they lose with it if nothing comes of it
     */
    public record Step(Kind kind, int run, Optional<RankedChange> change, double chance, Optional<String> cause,
            List<Change> alike) {

        private static Step without(Kind kind, int run) {
            return new Step(kind, run, Optional.empty(), 0, Optional.empty(), List.of());
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
     */
    public static Plan of(Advice advice, History history, int next, int laps, Optional<Double> leastGain) {
        Optional<Double> scatter = scatter(history);
        int each = scatter.isPresent() && leastGain.isPresent() && scatter.get() > 0
                ? Math.max(CountedLaps.FEWEST, Math.min(MOST_LAPS, SampleSize.laps(leastGain.get() / scatter.get(),
                        SampleSize.POWER))) : USUAL_LAPS;
        Optional<String> stop = stop(advice, history);
        return new Making(advice, next, laps / (each + BESIDE)).made(needsBaseline(advice, history), each, scatter, stop);
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

    /** A plan in the making. */
    private static final class Making {
        private final Advice advice;
        private final int runs;
        private final List<Step> steps = new ArrayList<>();
        private final List<Left> left = new ArrayList<>();
        private int number;

        Making(Advice advice, int next, int runs) {
            this.advice = advice;
            this.number = next;
            this.runs = runs;
        }

        Plan made(boolean baseline, int each, Optional<Double> scatter, Optional<String> stop) {
            if (baseline && runs > 0) {
                steps.add(Step.without(Kind.BASELINE, number++));
            }
            List<RankedChange> planned = new ArrayList<>();
            for (RankedChange change : varied()) {
                Optional<RankedChange> against = planned.stream().filter(other -> pull(change, other)).findFirst();
                if (against.isPresent()) {
                    left.add(new Left(change.change(), "pulls against " + against.get().change().id()
                            + ": never both; it comes after that one has failed"));
                } else if (steps.size() >= runs) {
                    left.add(new Left(change.change(), "no laps are left for it"));
                } else {
                    boolean undo = advice.experience().of(change.change()).filter(Learned::undo).isPresent();
                    steps.add(step(undo ? Kind.UNDO : Kind.CHANGE, change));
                    planned.add(change);
                    if (!undo && planned.size() % BACK_AFTER == 0 && steps.size() < runs) {
                        steps.add(Step.without(Kind.BACK, number++));
                    }
                }
            }
            return new Plan(List.copyOf(steps), List.copyOf(left), each, scatter, stop);
        }

        /** The advice's order, but no second change for the cause just tried while another cause is worth half as much. */
        private List<RankedChange> varied() {
            List<RankedChange> waiting = new ArrayList<>(advice.changes());
            List<RankedChange> order = new ArrayList<>();
            Optional<String> tried = Optional.empty();
            while (!waiting.isEmpty()) {
                RankedChange best = waiting.get(0);
                Optional<String> last = tried;
                RankedChange next = last.isEmpty() || !cause(best).equals(last) ? best : waiting.stream()
                        .filter(change -> !cause(change).equals(last)
                                && change.score().total() >= best.score().total() / 2).findFirst().orElse(best);
                waiting.remove(next);
                order.add(next);
                tried = cause(next);
            }
            return order;
        }

        private Step step(Kind kind, RankedChange change) {
            Optional<String> cause = cause(change);
            List<Change> alike = cause.isEmpty() ? List.of() : advice.changes().stream()
                    .filter(other -> other != change && cause(other).equals(cause)).map(RankedChange::change).toList();
            return new Step(kind, number++, Optional.of(change), Belief.chance(change.score().certainty()), cause, alike);
        }

        /** The finding that most speaks for it. */
        private static Optional<String> cause(RankedChange change) {
            Map<String, Double> weights = new TreeMap<>();
            change.proposals().stream().filter(proposal -> proposal.certainty() > 0).forEach(proposal ->
                    proposal.premises().stream().filter(Finding.class::isInstance).map(Finding.class::cast)
                            .filter(Finding::likely)
                            .forEach(finding -> weights.merge(finding.id(), proposal.certainty(), Double::sum)));
            return weights.entrySet().stream().max(Map.Entry.comparingByValue()).map(Map.Entry::getKey);
        }

        /** Whether two changes ask for opposite things, or one costs what the other is for. */
        private boolean pull(RankedChange one, RankedChange other) {
            boolean named = advice.conflicts().stream().map(Conflict::changes)
                    .anyMatch(changes -> changes.contains(one.change()) && changes.contains(other.change()));
            return named && (spoils(one, other) || spoils(other, one));
        }

        private static boolean spoils(RankedChange one, RankedChange other) {
            return one.score().costs().stream().anyMatch(cost -> other.score().helps().stream()
                    .anyMatch(help -> help.complaint().text().equals(cost.on())));
        }
    }
}
