package camberwell.advice;

import camberwell.knowledge.Notes;
import camberwell.learning.Trials;
import camberwell.run.Case;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Adjustment;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What earlier changes make of the order: what is put back, goes on, gives way to another mechanism, or is let go. */
final class AfterRuns {

    private final Case run;
    private final List<Complaint> complaints;
    private final Worth worth;
    private final Ranking ranking;
    private final Sizer sizer;
    private final Leverage leverage;
    private final Weights weights;
    private final Undo undo;
    private final StillOpen open;
    private final LeaveOut leaveOut;
    private final LastChange last;
    private final Doubt doubt;
    /** Every change that was scored. */
    private final List<RankedChange> candidates;
    private Experience experience;

    /**
     * @param ranking by the rules alone; it is put in another order
     * @param experience what the trials of the case said
     * @param candidates every change that was scored
     */
    AfterRuns(Case run, List<Complaint> complaints, Worth worth, Ranking ranking, Experience experience,
            List<RankedChange> candidates, Sizer sizer, Leverage leverage, Notes notes, Weights weights) {
        this.run = run;
        this.complaints = complaints;
        this.worth = worth;
        this.ranking = ranking;
        this.experience = experience;
        this.candidates = candidates;
        this.sizer = sizer;
        this.leverage = leverage;
        this.weights = weights;
        this.undo = new Undo(run, complaints, notes, weights);
        Trials trials = new Trials(run, weights.learning());
        this.open = new StillOpen(run, complaints, trials, leverage);
        this.last = new LastChange(run, complaints, trials, worth::score, open, leverage);
        this.leaveOut = new LeaveOut(run, worth, ranking, open, last, this::isUndo);
        this.doubt = new Doubt(trials, change -> notes.get(change.adjuster().note()).ways().get(change.direction()));
    }

    /**
     * Puts them in order.
     *
     * @return what the trials taught, with what is said of the ways back
     */
    Experience order() {
        if (last.barInVain()) {
            otherMechanism();
        } else if (last.unfelt()) {
            leverage.strongest(ranking.changes()).ifPresent(choice -> ranking.first(choice.change(), choice.why()));
        }
        leaveOut.moreAir();
        leaveOut.beyondWhatWasTried();
        undoFirst();
        if (!putsBack()) {
            goOn();
            halfWhereHarmIsUnclear();
        }
        if (!putsBack()) {
            otherWay();
        }
        leaveOut.whatIsTooCoarse();
        leaveOut.whatUpsetsTheBalance();
        Optional<Change> waitedFor = ranking.advised().stream().filter(worth::waitedFor).findFirst();
        if (putsBack()) {
            bothBeforeBack();
        } else if (waitedFor.isPresent()) {
            ranking.first(waitedFor.get(), "others wait until this is right, and the balance is judged after it");
        } else if (!ranking.isEmpty()) {
            lookAhead();
        }
        if (ranking.isEmpty() && run.conditions().surface() == Surface.DRY) {
            lastResort(LastResort.Asked.NOTHING_LEFT).ifPresent(ranking::add);
        }
        if (ranking.isEmpty()) {
            onceMore();
            ranking.byScore();
        }
        ranking.number();
        return experience;
    }

    /**
     * A bar or spring did nothing: others of them share out the same load transfer, so what works otherwise comes first, but
     * for one that by the model does much more.
     */
    private void otherMechanism() {
        List<Change> advised = ranking.advised();
        Optional<Change> other = advised.stream().filter(change -> !Leverage.ofRollStiffness(change))
                .filter(change -> worth.score(change).helped().stream()
                .anyMatch(it -> it.reported() && !last.came(Outcome.BETTER, it))).findFirst();
        if (other.isPresent() && advised.stream().filter(Leverage::ofRollStiffness)
                .noneMatch(bar -> leverage.muchStronger(bar, last.change()))) {
            ranking.first(other.get(), "a bar or spring did nothing for this, and the others do the same work: something that "
                    + "works otherwise");
        }
    }

    /** What made things worse is put back before anything else is tried. */
    private void undoFirst() {
        List<RankedChange> all = new ArrayList<>(undo.all());
        experience = experience.with(all.stream().map(undo::learned).toList());
        Collections.reverse(all);
        all.forEach(ranking::lead);
    }

    private boolean putsBack() {
        return !ranking.isEmpty() && isUndo(ranking.first().change());
    }

    private boolean isUndo(Change change) {
        return experience.of(change).filter(Learned::undo).isPresent();
    }

    /** After what is to be put back: what helped goes on, what went too far goes half way back, or to finer levers. */
    private void goOn() {
        if (last.call() == LastChange.Call.GO_ON && !last.barInVain()) {
            onForARest();
            ranking.first(last.change(), "it helped in the last run and something of what it helps is left: on with it");
        } else if (last.call() == LastChange.Call.BACK) {
            last.sizeBack().ifPresent(size -> {
                RankedChange back = undo.halfBack(last, size);
                ranking.lead(back);
                experience = experience.with(List.of(Undo.learned(back, last)));
            });
        } else if (last.call() == LastChange.Call.FINER && !ranking.isEmpty() && !last.fine(ranking.first().change())) {
            finer();
        }
    }

    /**
     * What helped and would cost more than it brings for the little that is left of what it eased: one step of it, if that harms
     * nothing told. What acts in another part of the corner is no matter of a step more.
     */
    private void onForARest() {
        if (ranking.advised().contains(last.change()) || !worth.holding(last.change()).isEmpty()) {
            return;
        }
        candidates.stream().filter(it -> it.change().equals(last.change()) && !it.score().worthIt()
                && it.score().harmToComplaints() == 0
                && it.score().helped().stream().anyMatch(rest -> rest.reported() && last.came(Outcome.BETTER, rest))).findFirst()
                .ifPresent(it -> take(it.change(), it.score().certainty(), "no more than a rest is left"));
    }

    /** A step the other way of what has just been put back. */
    private void otherWay() {
        Optional<RankedChange> first = ranking.isEmpty() ? Optional.empty() : Optional.of(ranking.first());
        last.otherWay().filter(change -> run.conditions().surface() == Surface.DRY)
                .flatMap(change -> leverage.forecast(run, complaints).filter(Forecast::shows)
                .flatMap(forecast -> new OtherWay(run, worth).of(change, forecast, first))).ifPresent(ranking::lead);
    }

    /** On with what may have harmed, nobody could tell, only by half, and with an eye to that. */
    private void halfWhereHarmIsUnclear() {
        String harm = doubt.unclearOfLast();
        if (!harm.isEmpty()) {
            ranking.replace(each -> each.change().equals(last.change()) ? half(each, harm) : each);
        }
    }

    private RankedChange half(RankedChange change, String harm) {
        String why = "nobody could tell whether " + harm + " came of it: ";
        int steps = change.size().steps() / 2;
        return change.size().from().isEmpty() || steps == 0 ? change.explained(why + "look for that first")
                : change.sized(run.car().setting(change.change().adjuster()).orElseThrow()
                        .moved(change.change().direction(), steps), steps, why + "half as far, and look for that first");
    }

    /** What is left to finer levers: also those that cost more than they bring, since the others cost more still. */
    private void finer() {
        String why = "a whole step of a stronger lever went too far before: a finer one now";
        Predicate<Change> wanted = change -> last.fine(change) && worth.helpsReported(change);
        Optional<Change> fine = ranking.advised().stream().filter(wanted).findFirst();
        if (fine.isPresent()) {
            ranking.first(fine.get(), why);
            return;
        }
        candidates.stream().filter(candidate -> wanted.test(candidate.change()) && !candidate.score().worthIt())
                .map(RankedChange::change).findFirst().ifPresent(change -> {
                    take(change, worth.certainty(change), why);
                    ranking.first(change, "it acts little, and little is left to do");
                });
    }

    /**
     * Puts the next change to the driven model of this car. What the car itself has said outranks the model: what helped goes
     * on unless it would harm. Where all is strong one way and was before the last change it is not asked, as how far off such
     * a car is nobody has said.
     */
    private void lookAhead() {
        Optional<LookAhead> asked = LookAhead.of(run, complaints, leverage, ranking.first());
        boolean unknown = Complaint.farOff(complaints) && !last.tells();
        if (asked.isPresent() && unknown) {
            TwiceAsFar.of(run, last, open, ranking.first()).ifPresent(ranking::lead);
        }
        if (asked.isEmpty() || unknown) {
            return;
        }
        LookAhead ahead = asked.get();
        boolean goesOn = last.call() == LastChange.Call.GO_ON && ranking.first().change().equals(last.change());
        if (!goesOn || ahead.harms(ranking.first())) {
            ahead.worthARun(ranking.changes()).ifPresent(ranking::lead);
        }
        BothWings wings = new BothWings(run, complaints, worth, weights);
        Optional<RankedChange> both = goesOn ? Optional.empty() : leverage.forecast(run, complaints).flatMap(wings::choice)
                .filter(choice -> wings.helped() || ahead.givesWay(ranking.first(), choice.gain())).map(BothWings.Choice::change);
        if (both.isPresent()) {
            ranking.lead(both.get());
            return;
        }
        if (!goesOn && !ahead.isWorthARun(ranking.first())) {
            lastResort(LastResort.Asked.NOTHING_HELPS).ifPresent(ranking::lead);
        }
        while (!ranking.isEmpty() && leverage.beyondNeutral() && !servesTyre(ranking.first()) && ahead.harms(ranking.first())) {
            ranking.withhold(ranking.first().change(), "the car is beyond neutral: by the model of it, driven, this would turn "
                    + "it round", List.of());
        }
    }

    /** A tyre whose gauge was read is set right whatever that does to the balance, which is judged on a tyre that is right. */
    private static boolean servesTyre(RankedChange change) {
        return change.change().adjuster().adjustment() == Adjustment.PRESSURE
                && change.score().helps().stream().anyMatch(help -> !help.complaint().reported());
    }

    /**
     * One wing that made one part of the fast corners worse, while another part still calls for it: both wings the same way come
     * before it is put back, where by the model of this car they do much more.
     */
    private void bothBeforeBack() {
        RankedChange back = ranking.first();
        boolean alone = back.change().adjuster().kind() == Adjuster.Kind.WING && back.beside().isEmpty();
        if (alone && worth.helpsReported(back.change().opposite())) {
            LookAhead.of(run, complaints, leverage, back).flatMap(ahead -> leverage.forecast(run, complaints)
                    .flatMap(new BothWings(run, complaints, worth, weights)::choice)
                    .filter(choice -> ahead.givesWay(back, choice.gain()))).map(BothWings.Choice::change).ifPresent(both -> {
                        ranking.drop(back.change().adjuster());
                        ranking.lead(both);
                    });
        }
    }

    /** What the model of this car does most with, where nothing that rules propose does enough. */
    private Optional<RankedChange> lastResort(LastResort.Asked asked) {
        Predicate<Change> free = change -> !ranking.advised().contains(worth.named(change))
                && open.mayBeTried(worth.named(change)) && worth.holding(change).isEmpty() && open.room(change) > 0
                && worth.certainty(worth.named(change)) >= 0 && worth.score(change).harmToComplaints() == 0
                && !leaveOut.sharesHarm(worth.named(change));
        Optional<Forecast> forecast = leverage.forecast(run, complaints).filter(Forecast::shows);
        return leverage.toDrive().map(car -> new LastResort(car, forecast, complaints, this::lastSize, free))
                .flatMap(model -> last.helped().flatMap(model::again).or(() -> model.choice(asked)))
                .map(choice -> worth.ofModel(worth.named(choice.change()), choice.size(), asked.why(choice),
                        way -> asked.told(choice, way, complaints)));
    }

    private Optional<Size> lastSize(Change change) {
        return sizer.size(change, List.of(), true).filter(Sized.Possible.class::isInstance)
                .map(sized -> ((Sized.Possible) sized).size());
    }

    /** What did nothing that was felt, once: when nothing else is left, one more step of it may be felt, if it does no harm. */
    private void onceMore() {
        Change justTried = run.tried().get(run.tried().size() - 1).change();
        List<Change> again = ranking.out().stream().filter(experience::onceMore)
                .filter(change -> !open.balanced() || !Leverage.ofRollStiffness(change))
                .filter(change -> worth.candidate(change, before(change)).score().worthIt()).toList();
        for (Change change : again) {
            if (!change.equals(justTried) || again.size() == 1) {
                take(change, before(change), "it did nothing that was felt the first time, and nothing else is left: once more");
            }
        }
        ranking.changes().forEach(this::leaveIfHarmful);
    }

    /** A car has changed since something of it was felt last: what did nothing then may turn it round now. */
    private void leaveIfHarmful(RankedChange again) {
        if (LookAhead.of(run, complaints, leverage, again).filter(ahead -> ahead.harms(again)).isPresent()) {
            ranking.withhold(again.change(), "it did nothing that was felt the first time, and by the model of this car, driven, "
                    + "it would turn it round now: live with what is left", List.of());
        }
    }

    /** What the rules alone think of a change that was tried. */
    private double before(Change change) {
        return experience.of(change).map(Learned::before).orElseGet(() -> worth.certainty(change));
    }

    /** Takes in what was withheld, if it can be made. */
    private void take(Change change, double certainty, String why) {
        RankedChange candidate = worth.candidate(change, certainty);
        Optional<Sized> sized = sizer.size(change, candidate.score().helped(), true);
        if (sized.isPresent() && sized.get() instanceof Sized.Possible possible
                && candidate.score().certainty() >= weights.leastCertainty()) {
            ranking.add(candidate.sized(possible.size()).explained(why));
        }
    }
}
