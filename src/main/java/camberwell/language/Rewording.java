package camberwell.language;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** A line as it would read with what is written together and apart put right: {@code front left} is {@code front-left}. */
final class Rewording {

    private static final Pattern DRIVE = Pattern.compile("\\b(front|rear|all|four)[ -]wheel[ -]drive[n]?\\b");
    private static final Pattern SHORT = Pattern.compile("\\b([fFrRaA4])[wW][dD]\\b");
    private static final Pattern UNIT = Pattern.compile("(?<=[0-9])(°C|°F|bar|kPa|psi|deg|mm|kg|K|%|Nm|N/mm|lb/in)(?= |$)");
    private static final Pattern ONE_STEP = Pattern.compile(" by 1 step ");
    private static final int LONGEST = 4;

    private Rewording() {
    }

    /** Units stand apart from their numbers, and one step is a step: nobody needs to be told. */
    static String tidied(String line) {
        boolean figures = false;
        for (int i = 0; i < line.length() && !figures; i++) {
            figures = line.charAt(i) >= '0' && line.charAt(i) <= '9';
        }
        return figures ? ONE_STEP.matcher(UNIT.matcher(line).replaceAll(" $1")).replaceAll(" by 1 steps ") : line;
    }

    /** The line with words joined that stand in some list joined, and the driven wheels as they are written. */
    static String joined(String line, Dictionary dictionary) {
        Set<String> known = new HashSet<>();
        dictionary.sentences().forEach(sentence -> sentence.gaps().forEach(gap -> known.addAll(gap.words())));
        String drive = SHORT.matcher(DRIVE.matcher(line).replaceAll(match -> (match.group(1).equals("four") ? "all"
                : match.group(1)) + "-wheel drive")).replaceAll(match -> switch (match.group(1).toLowerCase(Locale.ROOT)) {
                    case "f" -> "front-wheel drive";
                    case "r" -> "rear-wheel drive";
                    default -> "all-wheel drive";
                });
        String[] words = drive.split(" ");
        List<String> joined = new ArrayList<>();
        int at = 0;
        while (at < words.length) {
            int to = Math.min(words.length, at + LONGEST);
            while (to > at + 1 && !known.contains(String.join("-", List.of(words).subList(at, to)))) {
                to--;
            }
            joined.add(String.join("-", List.of(words).subList(at, to)));
            at = to;
        }
        return String.join(" ", joined);
    }
}
