package camberwell.audit;

import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;

/**
 * How a claim fares against the model.
 *
 * @param by the note's effect or the rule, in words
 * @param change the change
 * @param claim what is claimed: {@code relieves understeer at mid-corner}
 * @param verdict over all reference cars
 * @param agreeing the cars that agree
 * @param differing the cars on which the model shows the opposite
 * @param reason why the two differ, or why the model cannot show it
 */
public record Judgement(String by, Change change, String claim, Verdict verdict, List<String> agreeing,
        List<String> differing, Optional<String> reason) {

    /** What the comparison gives. */
    public enum Verdict {
        AGREES("agree"),
        /** The model shows the opposite, and the note says why. */
        EXPLAINED("differ, and the note says why"),
        /** The model shows the opposite, and nobody says why. */
        DIFFERS("differ"),
        NOT_REPRESENTED("cannot be represented");

        private final String text;

        Verdict(String text) {
            this.text = text;
        }

        /** In words, of several claims. */
        public String text() {
            return text;
        }
    }
}
