package camberwell.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What a rule cannot fire without, and what it finds: enough to leave it out of a case that it does not concern.
 *
 * @param rule the rule's name
 * @param needed {@code symptom understeer}, {@code reading front even-tread}, {@code finding front-tyres-cold}
 * @param found the findings that it speaks for
 */
record Needs(String rule, List<String> needed, List<String> found) {

    static final String SYMPTOM = "symptom ";
    static final String READING = "reading ";
    static final String FINDING = "finding ";
    private static final Pattern STATE = Pattern.compile("shows\\(\"([a-z-]+)\"\\)");

    static Needs of(RuleText rule) {
        List<String> needed = new ArrayList<>();
        for (Condition condition : rule.conditions()) {
            Line head = condition.head();
            if (condition.negative()) {
                continue;
            }
            Matcher state = STATE.matcher(head.sentence().drl());
            if (head.words().containsKey("symptom")) {
                needed.add(SYMPTOM + head.word("symptom"));
            } else if (head.words().containsKey("finding")) {
                needed.add(FINDING + head.word("finding"));
            } else if (state.find()) {
                needed.add(READING + head.words().getOrDefault("axle", head.words().get("wheel")) + " "
                        + state.group(1));
            }
        }
        List<String> found = rule.conclusions().stream().filter(line -> line.sentence().verb().equals("find"))
                .map(line -> line.word("finding")).toList();
        return new Needs(rule.name(), List.copyOf(needed), found);
    }
}
