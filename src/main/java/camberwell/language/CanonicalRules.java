package camberwell.language;

import java.util.List;

/**
 * Rules written anew from what was understood of them: names of plain letters, and sentences of the dictionary with
 * words from its lists. Reasons and notes stay behind, since nothing that fires needs them.
 */
public final class CanonicalRules {

    private CanonicalRules() {
    }

    /** Those rules as text, one after the other. */
    public static String of(List<RuleText> rules) {
        StringBuilder text = new StringBuilder();
        for (RuleText rule : rules) {
            text.append("rule \"").append(rule.name()).append("\"\nwhen\n");
            for (Condition condition : rule.conditions()) {
                line(condition.head(), text);
                condition.narrowings().forEach(narrowing -> line(narrowing, text));
            }
            text.append("then\n");
            rule.conclusions().forEach(conclusion -> line(conclusion, text));
            text.append("end\n\n");
        }
        return text.toString();
    }

    private static void line(Line line, StringBuilder text) {
        text.append("    ").append(line.sentence().filled(line.words())).append('\n');
    }
}
