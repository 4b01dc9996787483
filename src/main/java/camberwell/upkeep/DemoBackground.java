package camberwell.upkeep;

import camberwell.fact.Passing;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** What a made-up case says of stint, driver, answers and earlier changes, to pass what conditions ask of the run. */
final class DemoBackground {

    private final Map<String, Passing> asked = new TreeMap<>();

    void enter(String attribute, Passing passing) {
        asked.merge(attribute, passing, Passing::and);
    }

    /** The keys of the case, or nothing. */
    String text() {
        List<String> stint = new ArrayList<>();
        word("compound", "compound: ", stint);
        count("tyre laps", "tyre-laps: ", "", stint);
        count("laps", "laps: ", "", stint);
        count("fuel in kg", "fuel: ", " kg", stint);
        List<String> driver = new ArrayList<>();
        word("level", "level: ", driver);
        List<String> wants = new ArrayList<>();
        List<String> answers = new ArrayList<>();
        List<String> tried = new ArrayList<>();
        asked.forEach((attribute, passing) -> {
            if (attribute.startsWith("wants ") && passing.lets("yes")) {
                wants.add(attribute.substring("wants ".length()));
            } else if (attribute.startsWith("answer to ")) {
                answers.add(attribute.substring("answer to ".length()) + ": " + first(passing));
            } else if (attribute.startsWith("outcome of ")) {
                tried.add("{change: " + attribute.substring("outcome of ".length()).replace(':', ' ') + ", outcome: "
                        + first(passing) + "}");
            }
        });
        if (asked.containsKey("last change") || asked.containsKey("last outcome")) {
            tried.add("{change: " + (asked.containsKey("last change") ? first(asked.get("last change")).replace(':', ' ')
                    : "front-toe toe-in") + ", outcome: " + (asked.containsKey("last outcome")
                    ? first(asked.get("last outcome")) : "same") + "}");
        }
        if (!wants.isEmpty()) {
            driver.add("wants: [" + String.join(", ", wants) + "]");
        }
        StringBuilder text = new StringBuilder();
        map("stint", stint, text);
        map("driver", driver, text);
        map("answers", answers, text);
        if (!tried.isEmpty()) {
            text.append("tried:\n");
            tried.forEach(one -> text.append("  - ").append(one).append('\n'));
        }
        return text.toString();
    }

    private void word(String attribute, String key, List<String> into) {
        if (asked.containsKey(attribute)) {
            into.add(key + first(asked.get(attribute)));
        }
    }

    private void count(String attribute, String key, String unit, List<String> into) {
        Passing passing = asked.get(attribute);
        if (passing != null) {
            boolean above = passing.above() > -Double.MAX_VALUE;
            boolean below = passing.below() < Double.MAX_VALUE;
            double value = above && below ? (passing.above() + passing.below()) / 2 : above ? passing.above() + 1
                    : passing.below() / 2;
            into.add(key + (long) Math.ceil(value) + unit);
        }
    }

    private static String first(Passing passing) {
        return passing.words().stream().findFirst().orElse("");
    }

    private static void map(String key, List<String> entries, StringBuilder text) {
        if (!entries.isEmpty()) {
            text.append(key).append(": {").append(String.join(", ", entries)).append("}\n");
        }
    }
}
