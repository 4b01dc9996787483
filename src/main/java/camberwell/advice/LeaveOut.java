package camberwell.advice;

import camberwell.run.Case;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.function.Predicate;

/** What the trials so far take out of the order of changes, or make smaller; each with its reason, and never a way back. */
final class LeaveOut {

    private final Case run;
    private final Worth worth;
    private final Ranking ranking;
    private final StillOpen open;
    private final LastChange last;
    private final Predicate<Change> isUndo;

    /**
     * @param open what the trials leave open
     * @param last the last of them
     * @param isUndo whether a change puts back what was tried
     */
    LeaveOut(Case run, Worth worth, Ranking ranking, StillOpen open, LastChange last, Predicate<Change> isUndo) {
        this.run = run;
        this.worth = worth;
        this.ranking = ranking;
        this.open = open;
        this.last = last;
        this.isUndo = isUndo;
    }

    /** No change goes as far as a setting from which one has come away for the better. */
    void beyondWhatWasTried() {
        for (RankedChange change : ranking.changes()) {
            int room = open.room(change.change());
            if (room == 0) {
                ranking.withhold(change.change(), "a step of it leads back to a setting that was tried, and the car has "
                        + "none between: live with what is left, or choose between the two", List.of());
            } else if (room < change.size().steps()) {
                shorten(change, room, "no further: beyond lies a setting that was tried");
            }
        }
    }

    /** A wing or the rake brought nothing for this, and harm: what else moves the balance of the air would do the same. */
    void moreAir() {
        for (Change change : ranking.advised()) {
            if (sharesHarm(change)) {
                ranking.withhold(change, "another wing or ride height did nothing for this and made something else worse, and "
                        + "they all shift the balance of the air: look for what works otherwise", List.of());
            }
        }
    }

    boolean sharesHarm(Change change) {
        return StillOpen.ofAir(change) && worth.score(change).helped().stream()
                .filter(Complaint::reported).anyMatch(open::airHarmed);
    }

    /**
     * What turned the car round in one step, and what moves it as much, is not tried again. Where something is strong, that
     * is only what by the model moves it as much as the change that has just turned it round.
     */
    void whatIsTooCoarse() {
        if (open.overshot().isEmpty()) {
            return;
        }
        for (RankedChange coarse : ranking.changes()) {
            int most = last.strong() ? open.stepsWithin(coarse.change())
                    : Leverage.ofRollStiffness(coarse.change()) && !last.fine(coarse.change()) ? 0 : Integer.MAX_VALUE;
            if (isUndo.test(coarse.change()) || most >= coarse.size().steps()) {
                continue;
            }
            if (most == 0) {
                ranking.withhold(coarse.change(), "a whole step of such a lever turned the car round before: live with what is "
                        + "left, or look for a finer step", List.of());
            } else {
                shorten(coarse, most, "no further: one step of another lever turned the car round, and more of this would too");
            }
        }
    }

    /** Where a bar or spring has put the balance right, another one that is for something else would only upset it. */
    void whatUpsetsTheBalance() {
        if (!open.balanced()) {
            return;
        }
        for (Change change : ranking.advised()) {
            if (Leverage.ofRollStiffness(change) && !isUndo.test(change)) {
                ranking.withhold(change, "bars and springs have put the balance right, and this is for something else: look for "
                        + "what leaves the balance alone", List.of());
            }
        }
    }

    private void shorten(RankedChange change, int steps, String why) {
        RankedChange shorter = change.sized(run.car().setting(change.change().adjuster()).orElseThrow()
                .moved(change.change().direction(), steps), steps, why);
        ranking.replace(each -> each == change ? shorter : each);
    }
}
