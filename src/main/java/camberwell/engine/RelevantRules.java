package camberwell.engine;

import camberwell.fact.Premise;
import camberwell.language.Needs;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Set;

/**
 * The rules that could fire on given premises. One case concerns a part of the rules, and Drools takes its time over each
 * rule that it is given, so a single case is put before these alone. A rule is left out only when it cannot fire: a
 * symptom that it asks for is not reported, or not there, a reading does not show, the car or the surface is another, a
 * number is not in its range, what it wants absent is there, or no rule that is left finds what it builds on.
 */
final class RelevantRules {

    private RelevantRules() {
    }

    /** The names of those rules that could fire on {@code premises} and on what follows from them. */
    static Set<String> of(Collection<Needs> rules, Collection<? extends Premise> premises) {
        Set<String> there = new HashSet<>();
        premises.forEach(premise -> Needs.give(premise, there));
        Set<String> chosen = new HashSet<>();
        List<Needs> left = new ArrayList<>(rules);
        boolean more = true;
        while (more) {
            more = false;
            for (Iterator<Needs> it = left.iterator(); it.hasNext();) {
                Needs rule = it.next();
                if (rule.metBy(there)) {
                    it.remove();
                    if (!rule.askedOf(premises)) {
                        continue;
                    }
                    chosen.add(rule.rule());
                    for (String finding : rule.found()) {
                        more |= there.add(Needs.given(finding));
                    }
                }
            }
        }
        return chosen;
    }
}
