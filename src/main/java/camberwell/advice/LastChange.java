package camberwell.advice;

import camberwell.car.Setting;
import camberwell.learning.Trials;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;

/**
 * What the last change calls for, by what came of it and what is complained of now. One that helped goes on while there is
 * something left of what it helps. One that went too far, so that the complaint turned round, goes half way back; where it was
 * one step, the rest is left to finer levers, unless what it brought is more than slight. One step that left the car worse on
 * the whole goes back, though it did what it was made for. What is slight once something has helped is a rest, and left to
 * finer levers. Common practice, no source; halving is how any bracketed quantity is found.
 */
final class LastChange {

    /** What to do with it. */
    enum Call {
        GO_ON, BACK, FINER, NOTHING
    }

    private static final Set<Adjuster.Kind> FINE = Set.of(Adjuster.Kind.TOE, Adjuster.Kind.CAMBER, Adjuster.Kind.PRESSURE);
    /** What is left by less than this is worth keeping, whatever came in its place. */
    private static final double MOST_GONE = 0.5;
    /** Half as much again as was told before is worse on the whole, whatever has gone. */
    private static final double WORSE = 1.5;
    /** What is left by more than this is as much as it was. */
    private static final double AS_MUCH = 0.9;

    private final Case run;
    private final List<Complaint> complaints;
    private final Trials trials;
    private final Function<Change, Score> worth;
    private final StillOpen open;
    private final Leverage leverage;
    private final int last;
    private final Call call;

    /**
     * @param worth what a change is worth by its note
     * @param open what the trials leave open
     * @param leverage how much bars and springs do on this car
     */
    LastChange(Case run, List<Complaint> complaints, Trials trials, Function<Change, Score> worth, StillOpen open,
            Leverage leverage) {
        this.run = run;
        this.complaints = complaints;
        this.trials = trials;
        this.worth = worth;
        this.open = open;
        this.leverage = leverage;
        this.last = trials.count() - 1;
        this.call = judge();
    }

    /** What it calls for. */
    Call call() {
        return call;
    }

    private Call judge() {
        boolean speaks = last >= 0 && trials.get(last).trial().together() == 1 && trials.binding(last)
                && trials.stillOn(last) && !trials.isUndo(last);
        boolean helped = speaks && trials.any(last, Outcome.BETTER);
        double more = helped ? helps(change()) : 0;
        double back = helped ? helps(change().opposite()) : 0;
        if (helped && steps() == 1 && worse() && !triedTheOtherWay()) {
            return Call.BACK;
        }
        if (more > back) {
            return open.room(change()) > 0 && !(slight() && leverage.onEdge(change(), complaints)) ? Call.GO_ON : Call.FINER;
        }
        if (back > more && turnedRound() && (steps() > 1 ? open.room(change().opposite()) > 0 : worthGoingBack())) {
            return Call.BACK;
        }
        return back > more || !strong() && open.overshot().isPresent() || slight() && eased() ? Call.FINER : Call.NOTHING;
    }

    /** The change. */
    Change change() {
        return trials.get(last).change();
    }

    /** The trial, one entry for each complaint that it was judged for. */
    List<Tried> trial() {
        return trials.trial(last);
    }

    /** How far it is to go back: half of what it was moved, the whole of one step. */
    Optional<Size> sizeBack() {
        Optional<Setting> setting = run.car().setting(change().adjuster());
        int moved = steps();
        int steps = Math.max(1, Math.min(moved / 2, open.room(change().opposite())));
        if (setting.isEmpty() || run.car().generic() || setting.get().stepsLeft(change().direction().opposite()) < steps) {
            return Optional.empty();
        }
        Quantity to = setting.get().moved(change().direction().opposite(), steps);
        String why = moved > 1 ? "it was moved " + moved + " steps and went too far: half of them back"
                : worse() ? "more is wrong than before it: back by the one step"
                : "one step was too much: back by it, and on with a finer lever";
        return Optional.of(new Size(Optional.of(setting.get().now()), Optional.of(to), steps, List.of(), List.of(why)));
    }

    /** Where what made the car worse has just been put back: the way of that step, if it was never tried beyond. */
    Optional<Change> otherWay() {
        boolean back = last >= 0 && trials.binding(last) && trials.isUndo(last);
        for (int i = last; back && i >= 0; i--) {
            Tried trial = trials.get(i);
            boolean beyond = trial.change().equals(change()) && !trials.isUndo(i);
            boolean inVain = trial.change().equals(change().opposite()) && !trials.any(i, Outcome.WORSE);
            if (beyond || inVain) {
                return Optional.empty();
            }
        }
        return back ? Optional.of(change()) : Optional.empty();
    }

    /** The last change, where it helped, harmed nothing and still stands. */
    Optional<Change> helped() {
        return last >= 0 && trials.get(last).trial().together() == 1 && trials.binding(last) && trials.stillOn(last)
                && !trials.isUndo(last) && trials.any(last, Outcome.BETTER) && !trials.any(last, Outcome.WORSE)
                ? Optional.of(change()) : Optional.empty();
    }

    /**
     * Whether a change is finer than a step of a bar or a spring; one of a wing is, where only fast corners call, and a bar or
     * spring that moves this car much less than the one that turned it round.
     */
    boolean fine(Change change) {
        return FINE.contains(change.adjuster().kind())
                || open.overshot().filter(coarse -> leverage.finer(change, coarse)).isPresent()
                || change.adjuster().kind() == Adjuster.Kind.WING
                && complaints.stream().filter(Complaint::reported)
                        .allMatch(complaint -> complaint.speed().filter(CornerSpeed.FAST::equals).isPresent());
    }

    /** What a change relieves of what is reported. */
    private double helps(Change change) {
        double sum = 0;
        for (Score.Help help : worth.apply(change).helps()) {
            sum += help.complaint().reported() ? help.effect() * help.complaint().weight() : 0;
        }
        return sum;
    }

    /** What is reported now that its opposite relieves. */
    List<Score.Help> relievedByGoingBack() {
        return worth.apply(change().opposite()).helps().stream().filter(help -> help.complaint().reported()).toList();
    }

    /**
     * Whether it has turned round: what going back relieves got worse, or is told of the very place where the opposite was put
     * right, as no place of a corner has had both. What is told of another place may have been there before.
     */
    private boolean turnedRound() {
        return relievedByGoingBack().stream().anyMatch(help -> trial().stream().anyMatch(entry ->
                entry.outcome() == Outcome.WORSE && help.complaint().is(entry.on())
                || entry.outcome() == Outcome.BETTER && opposite(entry.on(), help.complaint())));
    }

    private static boolean opposite(Tried.On on, Complaint complaint) {
        boolean loose = complaint.symptom().loose();
        boolean turned = on.symptom().filter(it -> loose ? it == Symptom.UNDERSTEER
                : complaint.symptom() == Symptom.UNDERSTEER && it.loose()).isPresent();
        return turned && complaint.is(new Tried.On(Optional.of(complaint.symptom()), on.where(), on.phase(), on.speed()));
    }

    /** Of one step: whether it brought more than it took, and one has not just come from there. */
    private boolean worthGoingBack() {
        int balance = 0;
        for (Tried entry : trial()) {
            balance += entry.outcome() == Outcome.WORSE ? 1 : entry.outcome() == Outcome.BETTER ? -1 : 0;
        }
        return (strong() || balance > 0) && !triedTheOtherWay() && left() >= MOST_GONE;
    }

    private boolean triedTheOtherWay() {
        for (int i = 0; i < last; i++) {
            if (trials.get(i).change().equals(change().opposite()) && trials.binding(i)) {
                return true;
            }
        }
        return false;
    }

    /** Whether something that was tried has helped: what is slight then is a rest. */
    private boolean eased() {
        for (int i = last; i >= 0; i--) {
            if (trials.binding(i) && trials.get(i).outcome() == Outcome.BETTER) {
                return true;
            }
        }
        return false;
    }

    private boolean slight() {
        return complaints.stream().flatMap(complaint -> complaint.report().stream())
                .allMatch(report -> report.severity() == Severity.SLIGHT);
    }

    /** Whether something is strong. */
    boolean strong() {
        return complaints.stream().flatMap(complaint -> complaint.report().stream())
                .anyMatch(report -> report.severity() == Severity.STRONG);
    }

    private int steps() {
        Tried.Moved moved = trials.get(last).moved();
        Optional<Setting> setting = run.car().setting(change().adjuster());
        Optional<Integer> counted = setting.flatMap(now -> moved.from()
                .map(from -> Math.abs(now.stepsTo(from.to(now.now().unit())))));
        return Math.max(1, moved.steps().or(() -> counted).orElse(1));
    }

    /** All that is told now over all that was told before it, in words; 1 where that run is not known. */
    double left() {
        double before = run.earlier().isEmpty() ? 0 : Forecast.words(run.earlier().get(run.earlier().size() - 1).reports());
        return before > 0 ? Forecast.words(run.reports()) / before : 1;
    }

    /** Whether it took nothing of what was told, and no step has turned the car round yet. */
    boolean tookNothing() {
        return left() >= AS_MUCH && open.overshot().isEmpty();
    }

    /** Whether it says how far off the car is: most of what was told went, or a step has turned the car round. */
    boolean tells() {
        return left() < MOST_GONE || open.overshot().isPresent();
    }

    /** Whether on the whole the car is clearly worse than before it, whatever has gone. */
    boolean worse() {
        return left() >= WORSE;
    }

    /**
     * Whether it was a bar or spring that did nothing for what is worst now. How far off a balance is that is strongly complained
     * of nobody has said, so one step may be too little for it; a wheel that spins or locks is no matter of so many steps.
     */
    boolean barInVain() {
        return last >= 0 && trials.binding(last) && Leverage.ofRollStiffness(change())
                && complaints.stream().flatMap(complaint -> complaint.report().stream())
                .noneMatch(report -> report.severity() == Severity.STRONG && report.symptom().ofBalance())
                && (trial().stream().allMatch(entry -> entry.outcome() == Outcome.SAME)
                || leftTheWorst());
    }

    /** Whether something helped, harmed nothing, and did nothing for what is worst now, which is no matter of balance. */
    boolean leftTheWorst() {
        return last >= 0 && !trials.any(last, Outcome.WORSE) && worst(complaint -> came(Outcome.SAME, complaint)
                && !complaint.symptom().ofBalance()) > worst(complaint -> came(Outcome.BETTER, complaint));
    }

    /** The weight of the worst of such complaints that are told now; 0 for none. */
    private double worst(Predicate<Complaint> such) {
        return complaints.stream().filter(Complaint::reported).filter(such).mapToDouble(Complaint::weight).max().orElse(0);
    }

    /** Whether that came of it for a complaint. */
    boolean came(Outcome outcome, Complaint complaint) {
        return trial().stream().anyMatch(entry -> entry.outcome() == outcome && complaint.is(entry.on()));
    }

    /** Whether nothing of it was felt on something strong: the lever was too weak for that. */
    boolean unfelt() {
        return last >= 0 && trials.binding(last) && strong() && !trials.any(last, Outcome.BETTER)
                && !trials.any(last, Outcome.WORSE);
    }
}
