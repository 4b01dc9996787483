package camberwell.advice;

import camberwell.car.Setting;
import camberwell.fact.Proposal;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.learning.Belief;
import camberwell.learning.Trials;
import camberwell.run.Case;
import camberwell.run.Tried;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Severity;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The way back from changes that made things worse and are still on the car: the exact old value, before all else,
 * since it is the only change of which one knows what comes of it.
 */
final class Undo {

    private static final double WHOLE_EFFECT = 3;

    private final Case run;
    private final List<Complaint> complaints;
    private final Notes notes;
    private final Weights weights;
    private final Trials trials;
    private final Doubt doubt;

    Undo(Case run, List<Complaint> complaints, Notes notes, Weights weights) {
        this.run = run;
        this.complaints = complaints;
        this.notes = notes;
        this.weights = weights;
        this.trials = new Trials(run, weights.learning());
        this.doubt = new Doubt(trials, change -> notes.get(change.adjuster().note()).ways().get(change.direction()));
    }

    /** What is to be put back, the last trial first. */
    List<RankedChange> all() {
        List<RankedChange> undos = new ArrayList<>();
        for (int i = trials.count() - 1; i >= 0; i--) {
            Tried trial = trials.get(i);
            boolean worse = trial.outcome() == Outcome.WORSE && !doubt.of(i) && !mixed(i) && !trials.isUndo(i)
                    && trials.stillOn(i) && trials.binding(i);
            if (worse && undos.stream().noneMatch(it -> it.change().adjuster() == trial.change().adjuster())) {
                size(trial).ifPresent(size -> undos.add(undo(trial, size)));
            }
        }
        return asOne(undos);
    }

    /** Two wings that were moved as one change go back as one. */
    private List<RankedChange> asOne(List<RankedChange> undos) {
        for (RankedChange back : undos) {
            Optional<RankedChange> other = undos.stream().filter(it -> it != back && together(it, back)).findFirst();
            if (other.isPresent()) {
                List<RankedChange> all = new ArrayList<>(undos);
                all.set(all.indexOf(back), back.with(new RankedChange.Beside(other.get().change(), other.get().size())));
                all.remove(other.get());
                return all;
            }
        }
        return undos;
    }

    private boolean together(RankedChange one, RankedChange other) {
        return run.tried().stream().filter(it -> it.trial().together() == 2 && it.trial().run().isPresent()
                && it.change().adjuster().kind() == Adjuster.Kind.WING && it.change().equals(one.change().opposite()))
                .anyMatch(it -> run.tried().stream().anyMatch(its -> its.trial().run().equals(it.trial().run())
                && its.change().adjuster().kind() == Adjuster.Kind.WING && its.change().equals(other.change().opposite())));
    }

    /**
     * Whether it helped as well: then one would only trade the complaints back. What it was not made for may have got better by
     * luck, or by the driver's caution; where what it was made for got worse, that is no reason to leave it.
     */
    private boolean mixed(int index) {
        List<Tried> better = trials.trial(index).stream().filter(entry -> entry.outcome() == Outcome.BETTER).toList();
        boolean missed = doubt.madeFor(trials.get(index)) && better.stream().noneMatch(doubt::madeFor);
        return !better.isEmpty() && !missed;
    }

    /** What the way back rests on. */
    Learned learned(RankedChange undo) {
        Change there = undo.change().opposite();
        Tried trial = run.tried().stream().filter(it -> it.change().equals(there) && it.outcome() == Outcome.WORSE)
                .reduce((one, later) -> later).orElseThrow();
        double certainty = undo.score().certainty();
        return new Learned(undo.change(), there, Outcome.WORSE, List.of(trial), 0, 1, 0, certainty, certainty, true);
    }

    private Optional<Size> size(Tried trial) {
        Optional<Setting> setting = run.car().setting(trial.change().adjuster());
        int noted = trial.moved().steps().orElse(1);
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        if (run.car().generic()) {
            return Optional.of(new Size(Optional.empty(), Optional.empty(), noted, List.of(),
                    List.of("as far back as it was moved")));
        }
        Setting now = setting.get();
        Quantity to = trial.moved().from().map(it -> it.to(now.now().unit()))
                .orElseGet(() -> now.moved(trial.change().direction().opposite(), noted));
        int steps = Math.abs(now.stepsTo(to));
        boolean reachable = steps > 0 && to.compareTo(now.min()) >= 0 && to.compareTo(now.max()) <= 0;
        String how = trial.moved().from().isPresent() ? "back to the setting before the change"
                : trial.moved().steps().isPresent() ? "as many steps back as it was moved"
                : "one step back: how far it was moved was not noted";
        return reachable ? Optional.of(new Size(Optional.of(now.now()), Optional.of(to), steps, List.of(),
                List.of(how))) : Optional.empty();
    }

    private RankedChange undo(Tried trial, Size size) {
        List<Score.Help> helps = complaints.stream().filter(Complaint::reported)
                .filter(complaint -> complaint.is(trial.on()))
                .map(complaint -> new Score.Help(complaint, WHOLE_EFFECT)).toList();
        return back(trial, size, helps, new Note.Way(List.of(), "It was moved the other way " + trial.text()
                + ". Go back to what you know before you try the next thing.",
                "You changed this the other way, and it did not get better but worse. So put it back first.",
                "The car is as it was before that change.",
                "The car is worse without that change than it was with it."));
    }

    /** The way back of a change that helped and went too far. */
    RankedChange halfBack(LastChange last, Size size) {
        String found = last.worse() && size.steps() == 1 ? ". Something of it helped, but on the whole more is wrong than before."
                : ". It went too far: what was complained of has turned round, so the place for it lies between.";
        return back(last.trial().get(0), size, last.relievedByGoingBack(), new Note.Way(List.of(), "It was moved the other way "
                + Tried.text(last.trial()) + found,
                "You changed this the other way, and that was too much of a good thing. So go back part of the way.",
                "What you felt before that change and what you feel now are both gone, or nearly.",
                "What you felt before that change is back."));
    }

    /** What the way back of a change that went too far rests on. */
    static Learned learned(RankedChange back, LastChange last) {
        double certainty = back.score().certainty();
        return new Learned(back.change(), last.change(), Outcome.WORSE, last.trial(), 0, 1, 0, certainty, certainty,
                true);
    }

    private RankedChange back(Tried trial, Size size, List<Score.Help> helps, Note.Way way) {
        Change back = trial.change().opposite();
        Note note = notes.get(back.adjuster().note());
        double certainty = Belief.certainty(weights.learning().worse());
        double relief = helps.isEmpty() ? weights.severity().get(Severity.CLEAR)
                : helps.stream().mapToDouble(help -> help.complaint().weight()).sum();
        Score score = new Score(certainty, relief, 0, 0, weights.effort() * (note.effort() - 1),
                weights.risk() * note.risk(), helps, List.of());
        return new RankedChange(0, back, size, score, List.of(new Proposal(back, certainty, Learned.RULE, List.of())),
                Optional.empty(), List.of(), note, way);
    }
}
