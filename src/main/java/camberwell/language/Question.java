package camberwell.language;

import camberwell.fact.Attribute;
import camberwell.fact.Kind;
import camberwell.fact.Passing;
import camberwell.fact.Premise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a condition asks of one fact.
 *
 * @param kind of the fact
 * @param negative whether it asks that there is no such fact
 * @param asks what the fact has to answer, all of it; what it leaves open passes nothing
 */
public record Question(Kind kind, boolean negative, List<Ask> asks) implements Meaning {

    /**
     * One thing asked of a fact.
     *
     * @param attribute what is asked
     * @param passing the answers that pass
     */
    public record Ask(Attribute attribute, Passing passing) {

        /** Whether {@code fact}, which is of the attribute's kind, answers so. */
        boolean holdsOf(Premise fact) {
            return passing.isRange() ? passing.lets(fact.number(attribute.name()))
                    : passing.lets(fact.word(attribute.name()));
        }
    }

    /** Copies the list. */
    public Question {
        asks = List.copyOf(asks);
    }

    /** Whether {@code fact} is as asked, signs aside: a negative question is met when no fact is. */
    public boolean holdsOf(Premise fact) {
        if (fact.kind() != kind) {
            return false;
        }
        for (Ask ask : asks) {
            if (!ask.holdsOf(fact)) {
                return false;
            }
        }
        return true;
    }

    /** Whether {@code other} asks the same; as {@link #equals}, which goes through all that the kind can be asked. */
    public boolean sameAs(Question other) {
        if (kind != other.kind || negative != other.negative || asks.size() != other.asks.size()) {
            return false;
        }
        for (int i = 0; i < asks.size(); i++) {
            Ask mine = asks.get(i);
            Ask others = other.asks.get(i);
            if (!mine.attribute().name().equals(others.attribute().name())
                    || !mine.passing().words().equals(others.passing().words())
                    || !mine.passing().equals(others.passing())) {
                return false;
            }
        }
        return true;
    }

    /** The same with more asked of the fact. */
    Question narrowedBy(List<Ask> more) {
        List<Ask> all = new ArrayList<>(asks);
        all.addAll(more);
        return new Question(kind, negative, all);
    }

    /** The answers that pass for an attribute; empty where it is not asked. */
    public Optional<Passing> passing(String attribute) {
        Passing passing = null;
        for (Ask ask : asks) {
            if (ask.attribute().name().equals(attribute)) {
                passing = passing == null ? ask.passing() : passing.and(ask.passing());
            }
        }
        return Optional.ofNullable(passing);
    }

    /** The one word that passes for an attribute, where it is asked for one. */
    public Optional<String> word(String attribute) {
        return passing(attribute).filter(passing -> passing.words().size() == 1)
                .map(passing -> passing.words().iterator().next());
    }

    /** Whether it is about facts of that kind. */
    public boolean isAbout(Kind other) {
        return kind == other;
    }
}
