package camberwell.history;

import camberwell.advice.Advice;
import camberwell.advice.Conflict;
import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.fact.Finding;
import camberwell.learning.Belief;
import camberwell.units.Figures;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** A plan in the making. */
final class Planning {

    /** Changes after which the start set-up comes once more. */
    private static final int BACK_AFTER = 2;
    /** The effort of springs and of what is done on a bench: hours, on a day that has few. */
    private static final int WORKSHOP = 5;

    private final Advice advice;
    private final int laps;
    private final int each;
    private final Optional<Double> scatter;
    private final Optional<Gain> gain;
    private final List<Optimum> optima;
    private final List<Plan.Step> steps = new ArrayList<>();
    private final List<Plan.Left> left = new ArrayList<>();
    private int number;
    private Optional<String> unseen = Optional.empty();

    Planning(Advice advice, int next, int laps, int each, Optional<Double> scatter, Optional<Gain> gain,
            List<Optimum> optima) {
        this.advice = advice;
        this.number = next;
        this.laps = laps;
        this.each = each;
        this.scatter = scatter;
        this.gain = gain;
        this.optima = optima;
    }

    Plan made(boolean baseline, Optional<String> stop) {
        if (baseline && room()) {
            steps.add(Plan.Step.without(Plan.Kind.BASELINE, number++));
        }
        optima.stream().filter(best -> best.told() && best.stepsAway() > 0 && room()).forEach(best ->
                steps.add(new Plan.Step(Plan.Kind.BEST, number++, Optional.empty(), Optional.of(best), 0, Optional.empty(),
                        List.of(),
                        seen())));
        List<RankedChange> planned = new ArrayList<>();
        for (RankedChange change : varied()) {
            Optional<String> reason = against(change, planned);
            if (reason.isPresent()) {
                left.add(new Plan.Left(change.change(), reason.get()));
                continue;
            }
            boolean undo = undo(change);
            steps.add(step(undo ? Plan.Kind.UNDO : Plan.Kind.CHANGE, change));
            planned.add(change);
            if (!undo && planned.size() % BACK_AFTER == 0 && room()) {
                steps.add(Plan.Step.without(Plan.Kind.BACK, number++));
            }
        }
        return new Plan(List.copyOf(steps), List.copyOf(left), each, scatter, gain, optima,
                stop.or(() -> planned.isEmpty() ? unseen : Optional.empty()));
    }

    private boolean room() {
        return steps.size() < laps / (each + Plan.BESIDE);
    }

    /** The least difference that the laps left can show. */
    private Optional<Double> seen() {
        return scatter.map(it -> Gain.seen(laps - steps.size() * (each + Plan.BESIDE), it)).filter(Double::isFinite);
    }

    private boolean undo(RankedChange change) {
        return advice.experience().of(change.change()).filter(Learned::undo).isPresent();
    }

    /** Why a change does not come into the plan. */
    private Optional<String> against(RankedChange change, List<RankedChange> planned) {
        Optional<Optimum> best = optima.stream().filter(it -> it.told()
                && it.adjuster() == change.change().adjuster()).findFirst();
        if (best.isPresent()) {
            return Optional.of("three settings of it were timed, and the quickest is at " + best.get().at()
                    + (best.get().stepsAway() == 0 ? ": nothing is left to find there" : ""));
        }
        Optional<RankedChange> other = planned.stream().filter(it -> pull(change, it)).findFirst();
        if (other.isPresent()) {
            return Optional.of("pulls against " + other.get().change().id()
                    + ": never both; it comes after that one has failed");
        }
        if (!room()) {
            return Optional.of("no laps are left for it");
        }
        Optional<String> lost = undo(change) || !slight(change) ? Optional.empty() : lost(change);
        unseen = unseen.or(() -> lost);
        return lost;
    }

    /** A gain that cannot be seen cannot be kept. */
    private Optional<String> lost(RankedChange change) {
        double chance = Belief.chance(change.score().certainty());
        return gain.flatMap(it -> seen().filter(least -> it.worth(chance) < least).map(least -> "a chance of "
                + Figures.fixed(chance, 2) + " x " + Laps.seconds(it.seconds(), 2) + " = "
                + Laps.seconds(it.worth(chance), 2) + " a lap is less than the " + Laps.seconds(least, 2)
                + " that the laps left can show, and what it is for is slight"));
    }

    /** Whether nothing that it is for could be felt to go away. */
    private static boolean slight(RankedChange change) {
        return change.score().helps().stream().flatMap(help -> help.complaint().report().stream())
                .allMatch(report -> report.severity() == Severity.SLIGHT);
    }

    /**
     * The advice's order, but what takes the car to pieces only when nothing quicker to do is worth half as much, and no
     * second change for the cause just tried while another cause is.
     */
    private List<RankedChange> varied() {
        List<RankedChange> waiting = new ArrayList<>(advice.changes());
        List<RankedChange> order = new ArrayList<>();
        Optional<String> tried = Optional.empty();
        while (!waiting.isEmpty()) {
            RankedChange best = waiting.get(0);
            Optional<String> last = tried;
            List<RankedChange> near = waiting.stream().filter(change -> change == best
                    || change.score().total() >= best.score().total() / 2).toList();
            List<RankedChange> quick = near.stream().filter(change -> change.note().effort() < WORKSHOP).toList();
            List<RankedChange> from = quick.isEmpty() ? near : quick;
            RankedChange next = undo(best) ? best : from.stream().filter(change -> last.isEmpty() || !cause(change).equals(last))
                    .findFirst()
                    .orElse(from.get(0));
            waiting.remove(next);
            order.add(next);
            tried = cause(next);
        }
        return order;
    }

    private Plan.Step step(Plan.Kind kind, RankedChange change) {
        Optional<String> cause = cause(change);
        List<Change> alike = cause.isEmpty() ? List.of() : advice.changes().stream()
                .filter(other -> other != change && cause(other).equals(cause)).map(RankedChange::change).toList();
        return new Plan.Step(kind, number++, Optional.of(change), Optional.empty(), Belief.chance(change.score().certainty()),
                cause, alike, seen());
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
