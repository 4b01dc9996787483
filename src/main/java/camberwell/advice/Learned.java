package camberwell.advice;

import camberwell.run.Tried;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Outcome;
import java.util.List;

/**
 * What earlier trials say of a change.
 *
 * @param change the change that is spoken of
 * @param of the change that was tried: the same one, or the way there when this is the way back
 * @param outcome of the last trial that bears on the case
 * @param last that trial, one entry for each complaint that it was judged for
 * @param better how often it helped, of {@code judged}
 * @param judged how often it could be told
 * @param before certainty by the rules alone, in [-1, 1]
 * @param evidence what the outcomes add to it, as one more witness, in [-1, 1]
 * @param after certainty with the outcomes
 * @param undo whether this is the way back from what made things worse
 */
public record Learned(Change change, Change of, Outcome outcome, List<Tried> last, int better, int judged, double before,
        double evidence, double after, boolean undo) {

    /** The name under which outcomes speak beside the rules. */
    public static final String RULE = "What came of it";

    /** In words: {@code on run 4, 9 laps: no effect on understeer at entry; helped 1 of 3 times}. */
    public String text() {
        String text = Tried.text(last) + (judged > 1 ? "; helped " + better + " of " + judged + " times" : "");
        return of.equals(change) ? text : of.id() + " " + text;
    }
}
