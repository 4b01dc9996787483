package camberwell.fact;

import java.util.Comparator;
import java.util.List;

/**
 * What one match of one rule concludes. Equal conclusions of two rules stay two facts, since each names its rule: their
 * certainties are combined, not lost. Hashed by that name alone, since premises are long; hash and equality are stated by
 * each, since those that a record has of itself are put together at their first use, which every start would wait for.
 */
public sealed interface Conclusion permits Evidence, Proposal, Preference, Withholding, Driving, Caution {

    /** Always the same of the same conclusions: by rule, the surest first, then by what each stands on and is about. */
    Comparator<Conclusion> ORDER = Comparator.comparing(Conclusion::rule)
            .thenComparing(Comparator.comparingDouble(Conclusion::certainty).reversed())
            .thenComparing(conclusion -> conclusion.premises().stream().map(Premise::mark).toList().toString())
            .thenComparing(Conclusion::about);

    /** The name of the rule that drew it. */
    String rule();

    /** What the rule matched, in the order of its sentences. */
    List<Premise> premises();

    /** The rule's strength times the smallest certainty of its premises; negative where it speaks against. */
    double certainty();

    /** What it is about, in the words of rules: the last thing that two of one rule on the same premises are told apart by. */
    String about();

    /**
     * The name that its author gave to a rule: of one that was read in several ways, since one of some conditions will do, the
     * number of the way stands behind it in brackets. However many of them fire, they are one voice.
     */
    static String voice(String rule) {
        int open = rule.endsWith("]") ? rule.lastIndexOf(" [") : -1;
        return open < 0 ? rule : rule.substring(0, open);
    }

    /** Whether both are one rule's word, on the same premises and with the same certainty, whatever it is about. */
    static boolean sameWord(Conclusion one, Conclusion other) {
        return one.rule().equals(other.rule()) && Double.compare(one.certainty(), other.certainty()) == 0
                && one.premises().equals(other.premises());
    }
}
