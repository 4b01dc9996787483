package camberwell.explain;

import camberwell.language.RuleText;
import camberwell.vocabulary.Change;
import java.util.List;

/**
 * Why a change is not advised.
 *
 * @param reasons each a sentence, the one that decides first
 * @param sum the rules that did propose or oppose it
 * @param withholding the rules that hold it back
 * @param silent the rules that would have proposed it, those first that lack least
 * @param gone the rules that propose it and that a pack has taken out of use
 */
public record WhyNot(Change change, List<String> reasons, Sum sum, List<Step> withholding, List<Silent> silent, List<Gone> gone) {

    /**
     * A rule out of use.
     *
     * @param fate what became of it: {@code switched off by wet-days 2.0}
     */
    public record Gone(RuleText rule, String fate) {
    }

    /** Copies the lists. */
    public WhyNot {
        reasons = List.copyOf(reasons);
        withholding = List.copyOf(withholding);
        silent = List.copyOf(silent);
        gone = List.copyOf(gone);
    }
}
