package camberwell.explain;

import camberwell.language.Condition;
import camberwell.language.Line;
import camberwell.language.RuleText;
import java.util.List;
import java.util.Optional;

/**
 * A rule that would have concluded something and did not fire.
 *
 * @param rule as it was written
 * @param conclusion the sentence in it that would have concluded it
 * @param asked its conditions
 */
public record Silent(RuleText rule, Line conclusion, List<Asked> asked) {

    /**
     * A condition of it.
     *
     * @param holds whether it is met
     * @param sentences it and its dashes, each with what there is instead
     * @param doubt where it asks for a finding that is not likely: why it is not
     */
    public record Asked(Condition condition, boolean holds, List<Sentence> sentences, Optional<Doubt> doubt) {
    }

    /**
     * A sentence as it was written.
     *
     * @param held whether it holds of the fact that comes nearest to what is asked
     * @param observed what there is; empty for a dash under a sentence that holds of nothing
     */
    public record Sentence(Line line, boolean held, String observed) {
    }

    /**
     * Why a finding is not likely.
     *
     * @param sum the rules that do speak for or against it
     * @param silent the rules that would have found it, those first that lack least; their own doubts are left out
     */
    public record Doubt(String finding, Sum sum, List<Silent> silent) {
    }

    /** The sentences that do not hold; a dash under a sentence that holds of nothing is not among them. */
    public List<Sentence> failed() {
        return asked.stream().filter(asked -> !asked.holds()).flatMap(asked -> asked.sentences().stream())
                .filter(sentence -> !sentence.held() && !sentence.observed().isEmpty()).toList();
    }
}
