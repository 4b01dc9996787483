package camberwell.rules;

import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The rules that could fire on given premises. One case concerns a tenth of the rules, and Drools takes its time over
 * each rule that it is given, so a single case is put before these alone. A rule is left out only when it cannot fire: a
 * symptom that it asks for is not reported, a reading does not show, or no rule that is left finds what it builds on.
 */
final class RelevantRules {

    private static final Pattern STATE = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");

    private final Set<String> symptoms = new HashSet<>();
    private final Set<String> readings = new HashSet<>();
    private final Set<String> findings = new HashSet<>();

    private RelevantRules(Collection<? extends Premise> premises) {
        for (Premise premise : premises) {
            if (premise instanceof Reported reported) {
                symptoms.add(reported.report().symptom().id());
            } else if (premise instanceof Reading reading) {
                readings.add(reading.place().id() + " " + reading.state().id());
            }
        }
    }

    /** Those of {@code rules}, in their order, that could fire on {@code premises} and on what follows from them. */
    static List<RuleText> of(Collection<RuleText> rules, Collection<? extends Premise> premises) {
        RelevantRules relevant = new RelevantRules(premises);
        List<RuleText> left = new ArrayList<>(rules);
        Set<String> chosen = new HashSet<>();
        boolean more = true;
        while (more) {
            more = false;
            for (var it = left.iterator(); it.hasNext();) {
                RuleText rule = it.next();
                if (rule.conditions().stream().allMatch(relevant::possible)) {
                    it.remove();
                    chosen.add(rule.name());
                    more |= relevant.addFindings(rule);
                }
            }
        }
        return rules.stream().filter(rule -> chosen.contains(rule.name())).toList();
    }

    private boolean addFindings(RuleText rule) {
        boolean added = false;
        for (Line line : rule.conclusions()) {
            if (line.says("find {finding} with certainty {certainty}")) {
                added |= findings.add(line.word("finding"));
            }
        }
        return added;
    }

    private boolean possible(Condition condition) {
        if (condition.negative()) {
            return true;
        }
        Line head = condition.head();
        if (head.words().containsKey("symptom")) {
            return symptoms.contains(head.word("symptom"));
        }
        if (head.words().containsKey("finding")) {
            return findings.contains(head.word("finding"));
        }
        Matcher state = STATE.matcher(head.sentence().drl());
        if (state.find()) {
            String place = head.words().getOrDefault("axle", head.words().get("wheel"));
            return readings.contains(place + " " + state.group(1));
        }
        return true;
    }
}
