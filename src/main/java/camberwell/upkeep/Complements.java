package camberwell.upkeep;

import camberwell.fact.Passing;
import camberwell.fact.Reading;
import camberwell.language.Asked;
import camberwell.language.Condition;
import camberwell.language.Question;
import camberwell.language.RuleText;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/**
 * Whether a rule takes it for evidence against a finding that a measurement is not what another rule takes for evidence for it.
 * That counts one measurement twice: where it speaks for the finding less, it has said so by then. What another witness says may
 * well be held against it: the rule has then a condition more than the measurement.
 */
final class Complements {

    private Complements() {
    }

    /** The condition of {@code against} that is the complement of one of {@code forIt}, and all that it has of its own. */
    static Optional<Condition> of(RuleText forIt, RuleText against, List<Asked> asksForIt) {
        for (Condition condition : against.conditions()) {
            if (forIt.conditions().stream().anyMatch(other -> complement(condition.question(), other.question()))
                    && against.conditions().stream().allMatch(other -> other == condition || known(Asked.of(other), asksForIt))) {
                return Optional.of(condition);
            }
        }
        return Optional.empty();
    }

    private static boolean known(Asked asked, List<Asked> given) {
        return given.stream().anyMatch(one -> one.within(asked));
    }

    private static boolean complement(Question one, Question other) {
        if (one.negative() || other.negative() || !one.isAbout(other.kind())) {
            return false;
        }
        return one.isAbout(Reading.KIND) ? reading(one, other) : figure(one, other);
    }

    private static boolean reading(Question one, Question other) {
        Optional<Reading.State> shows = one.word("shows").map(id -> Word.of(Reading.State.class, id));
        Optional<Reading.State> shown = other.word("shows").map(id -> Word.of(Reading.State.class, id));
        return one.word("place").isPresent() && one.word("place").equals(other.word("place")) && shows.isPresent()
                && shown.isPresent()
                && (shows.get().isRestOf(shown.get()) || shown.get().isRestOf(shows.get()));
    }

    /** Above a figure and below the same one. */
    private static boolean figure(Question one, Question other) {
        for (Question.Ask ask : one.asks()) {
            Optional<Passing> passing = other.passing(ask.attribute().name());
            if (ask.passing().isRange() && passing.isPresent()
                    && (ask.passing().above() == passing.get().below() || ask.passing().below() == passing.get().above())) {
                return true;
            }
        }
        return false;
    }
}
