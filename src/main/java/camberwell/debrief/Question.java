package camberwell.debrief;

import java.util.Collections;
import java.util.List;

/**
 * A question with what hangs on it.
 *
 * @param choices the answers that it was weighed by
 * @param now what the advice comes to without it
 */
public record Question(Topic topic, List<Choice> choices, Outcome now) {

    /**
     * An answer, and what the advice would come to.
     *
     * @param label what a reading that stands for others is called; empty for what can be said in so many words
     */
    public record Choice(String label, Answer answer, Outcome outcome) {

        /** Whether it says one thing only. */
        public boolean single() {
            return !(answer instanceof Answer.Said said) || said.single();
        }
    }

    /** What the answer is expected to tell about the ranking, in bits; every answer is taken to be as likely. */
    public double gain() {
        return Information.gain(Collections.nCopies(choices.size(), 1.0),
                choices.stream().map(choice -> choice.outcome().shares()).toList());
    }

    /** Whether some answer would change the first thing that is told. */
    public boolean decides() {
        return choices.stream().anyMatch(choice -> !choice.outcome().told().equals(now.told()));
    }

    /** Whether some answer would put the changes in another order. */
    public boolean movesRanking() {
        return choices.stream().anyMatch(choice -> !choice.outcome().ranking().equals(now.ranking()));
    }
}
