package camberwell.advice;

import camberwell.car.Setting;
import camberwell.fact.Proposal;
import camberwell.knowledge.Note;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/**
 * Both wings moved the same way as one change. One wing alone shifts the balance of the air; both together set how hard it
 * presses in all, and how much it drags, which the driven wheels have to work against. So where one wing alone has put right one
 * part of a fast corner and not another, both are moved, and the balance is held. The rear wing makes most of the drag (J. Katz,
 * Race Car Aerodynamics, Bentley, 1995, cited from memory), so it goes at least as far as the front. That wings are moved in
 * pairs for this is common practice, no source; how far each goes is asked of the driven model of the car.
 */
final class BothWings {

    private static final int MOST_STEPS = 3;
    private static final int MOST_FRONT = 2;
    private static final int MOST_IN_VAIN = 2;
    private static final String WHY = "One wing alone has put right one part of the fast corners and not another. Both wings the "
            + "same way hold the balance and change how hard the air presses in all, and how much it drags. How far each goes "
            + "is what a model of this car does most with, driven; nothing but that model speaks for it.";

    private final Case run;
    private final Optional<Setting> front;
    private final Optional<Setting> rear;
    private final List<Complaint> complaints;
    private final Worth worth;
    private final Weights weights;

    /**
     * @param complaints of the case
     * @param worth what is said of each change
     */
    BothWings(Case run, List<Complaint> complaints, Worth worth, Weights weights) {
        this.run = run;
        this.front = run.car().setting(Adjuster.FRONT_WING);
        this.rear = run.car().setting(Adjuster.REAR_WING);
        this.complaints = complaints.stream().filter(Complaint::reported).toList();
        this.worth = worth;
        this.weights = weights;
    }

    /** What is told of both wings moved, and by how many words less would be left by the model. */
    record Choice(RankedChange change, double gain) {
    }

    /** Whether both were moved before the last run, and that helped and harmed nothing: it goes on. */
    boolean helped() {
        List<List<Tried>> pairs = pairs();
        return !pairs.isEmpty() && !run.tried().isEmpty() && helped(pairs.get(pairs.size() - 1))
                && pairs.get(pairs.size() - 1).contains(run.tried().get(run.tried().size() - 1));
    }

    private static boolean helped(List<Tried> pair) {
        return pair.stream().anyMatch(it -> it.outcome() == Outcome.BETTER)
                && pair.stream().noneMatch(it -> it.outcome() == Outcome.WORSE);
    }

    /** What was tried with both wings as one change, run by run. */
    private List<List<Tried>> pairs() {
        Map<Integer, List<Tried>> byRun = new TreeMap<>();
        run.tried().stream().filter(it -> it.change().adjuster().kind() == Adjuster.Kind.WING && it.trial().together() == 2)
                .forEach(it -> byRun.computeIfAbsent(it.trial().run().orElse(0), fresh -> new ArrayList<>()).add(it));
        return byRun.values().stream().filter(tried -> tried.stream().map(it -> it.change().adjuster()).distinct().count() == 2
                && tried.stream().map(it -> it.change().direction()).distinct().count() == 1).toList();
    }

    /** The two wings after which least is left; empty where none has helped alone yet, or it would hardly be felt. */
    Optional<Choice> choice(Forecast forecast) {
        boolean fast = complaints.stream().anyMatch(it -> it.symptom().ofBalance()
                && it.speed().filter(speed -> speed == CornerSpeed.FAST).isPresent());
        boolean alone = run.tried().stream().anyMatch(it -> it.change().adjuster().kind() == Adjuster.Kind.WING
                && it.outcome() == Outcome.BETTER);
        if (!fast || !alone || front.isEmpty() || rear.isEmpty() || run.car().generic()) {
            return Optional.empty();
        }
        Optional<Choice> best = Optional.empty();
        double most = forecast.noticeable();
        for (Direction way : Adjuster.REAR_WING.directions()) {
            for (int steps = 1; open(way) && steps <= Math.min(MOST_STEPS, rear.get().stepsLeft(way)); steps++) {
                for (int with = 1; with <= Math.min(steps, Math.min(MOST_FRONT, front.get().stepsLeft(way))); with++) {
                    Size rearSize = size(rear.get(), way, steps);
                    Size frontSize = size(front.get(), way, with);
                    double gain = forecast.gain(new Change(Adjuster.REAR_WING, way), rearSize.to().orElseThrow(),
                            new Change(Adjuster.FRONT_WING, way), frontSize.to().orElseThrow()).orElse(0);
                    if (gain > most) {
                        most = gain;
                        best = Optional.of(new Choice(told(way, rearSize, frontSize), gain));
                    }
                }
            }
        }
        return best;
    }

    /**
     * What rules hold against one wing alone is no word against both, but what holds one back holds both; and a rear wing that
     * was moved that way twice in vain, alone or in a pair that nobody wrote down as one, is not moved so again.
     */
    private boolean open(Direction way) {
        Change rearWing = new Change(Adjuster.REAR_WING, way);
        long tried = trials(it -> it.change().equals(rearWing));
        long helped = trials(it -> it.change().equals(rearWing) && it.outcome() == Outcome.BETTER);
        return tried - helped < MOST_IN_VAIN && worth.holding(new Change(Adjuster.REAR_WING, way)).isEmpty()
                && worth.holding(new Change(Adjuster.FRONT_WING, way)).isEmpty()
                && pairs().stream().allMatch(pair -> pair.get(0).change().direction() != way || helped(pair));
    }

    /** How many runs tell of such an outcome: a change is judged once for each complaint, and made once. */
    private long trials(Predicate<Tried> such) {
        return run.tried().stream().filter(such).map(it -> it.trial().run()).distinct().count();
    }

    private static Size size(Setting setting, Direction way, int steps) {
        Quantity to = setting.moved(way, steps);
        return new Size(Optional.of(setting.now()), Optional.of(to), steps, List.of(), List.of());
    }

    private RankedChange told(Direction way, Size rearSize, Size frontSize) {
        Change change = new Change(Adjuster.REAR_WING, way);
        RankedChange candidate = worth.candidate(change, weights.leastCertainty());
        Note.Way told = new Note.Way(candidate.way().effects(), WHY, "Move both wings the same way, in one go. By a computer "
                + "model of your car they do together what one of them alone does not.", "Fast corners feel alike from the way "
                + "in to the way out, and slow ones as before.", "Fast corners are worse in any part than before.");
        return new RankedChange(1, change, rearSize, candidate.score(),
                List.of(new Proposal(change, weights.leastCertainty(), LastResort.WORD, List.of())), Optional.of(WHY), List.of(),
                candidate.note(), told, Optional.of(new RankedChange.Beside(new Change(Adjuster.FRONT_WING, way), frontSize)));
    }
}
