package camberwell.fact;

import camberwell.vocabulary.Change;
import java.util.List;

/** One rule's word that a change comes before the others, if it is advised at all. */
public record Preference(Change change, double certainty, String rule, List<Premise> premises) implements Conclusion {

    @Override
    public String about() {
        return change.id();
    }

    @Override
    public int hashCode() {
        return rule.hashCode();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Preference preference && Conclusion.sameWord(this, preference)
                && change.equals(preference.change);
    }
}
