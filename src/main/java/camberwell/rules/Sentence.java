package camberwell.rules;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A sentence of the dictionary.
 *
 * @param condition whether it stands in {@code when} rather than in {@code then}
 * @param narrowing whether it starts with a dash and narrows the sentence above it
 * @param template the sentence with its gaps, for instance {@code the driver reports {symptom}}
 * @param gaps the gaps in their order
 * @param topic the dictionary's heading above it
 * @param drl what it means to Drools
 */
public record Sentence(boolean condition, boolean narrowing, String template, List<Gap> gaps, String topic, String drl,
        Pattern strict, Pattern lenient) {

    private static final Pattern ANY_WORD = Pattern.compile("[\\w.-]+");
    private static final Pattern CLOSED_LIST = Pattern.compile("[a-z-]+(\\|[a-z-]+)*");

    /**
     * A gap to be filled with a word.
     *
     * @param name for instance {@code phase}
     * @param pattern what Drools lets into it
     * @param words the closed list; empty for numbers and for names of notes
     */
    public record Gap(String name, Pattern pattern, List<String> words) {

        Gap(String name, String regex) {
            this(name, Pattern.compile(regex),
                    CLOSED_LIST.matcher(regex).matches() ? List.of(regex.split("\\|")) : List.of());
        }

        /** Whether {@code word} may fill it, as far as the dictionary can tell. */
        boolean takes(String word) {
            return pattern.matcher(word).matches();
        }
    }

    /** Reads the left side of a dictionary line. */
    static Sentence parse(boolean condition, String left, String drl, String topic) {
        List<Gap> gaps = new ArrayList<>();
        StringBuilder template = new StringBuilder();
        StringBuilder strict = new StringBuilder();
        StringBuilder lenient = new StringBuilder();
        int at = 0;
        while (at < left.length()) {
            int open = left.indexOf('{', at);
            String fixed = open < 0 ? left.substring(at) : left.substring(at, open);
            String quoted = Pattern.quote(fixed).replace(" ", "\\E\\s+\\Q");
            template.append(fixed);
            strict.append(quoted);
            lenient.append(quoted);
            if (open < 0) {
                break;
            }
            int close = left.indexOf('}', open);
            int colon = left.indexOf(':', open);
            Gap gap = new Gap(left.substring(open + 1, colon), left.substring(colon + 1, close));
            gaps.add(gap);
            template.append('{').append(gap.name()).append('}');
            strict.append('(').append(gap.pattern().pattern()).append(')');
            lenient.append('(').append(ANY_WORD.pattern()).append(')');
            at = close + 1;
        }
        return new Sentence(condition, template.charAt(0) == '-', template.toString(), List.copyOf(gaps), topic, drl,
                Pattern.compile(strict.toString()), Pattern.compile(lenient.toString()));
    }

    /** The words in the gaps of {@code line}, by gap, if it is this sentence from first to last letter. */
    Optional<Map<String, String>> match(String line) {
        return words(strict.matcher(line));
    }

    /** As {@link #match}, but with any word in any gap, to tell a wrong word from a wrong sentence. */
    Optional<Matcher> matchLeniently(String line) {
        Matcher matcher = lenient.matcher(line);
        return matcher.matches() ? Optional.of(matcher) : Optional.empty();
    }

    private Optional<Map<String, String>> words(Matcher matcher) {
        if (!matcher.matches()) {
            return Optional.empty();
        }
        Map<String, String> words = new LinkedHashMap<>();
        for (int i = 0; i < gaps.size(); i++) {
            words.put(gaps.get(i).name(), matcher.group(i + 1));
        }
        return Optional.of(words);
    }

    /** The sentence with those words in its gaps. */
    public String filled(Map<String, String> words) {
        String text = template;
        for (Map.Entry<String, String> word : words.entrySet()) {
            text = text.replace("{" + word.getKey() + "}", word.getValue());
        }
        return text;
    }

    /** The sentence with the first word of each list in its gaps. */
    public String example() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            words.put(gap.name(), switch (gap.name()) {
                case "certainty" -> "0.5";
                case "number" -> "3.0";
                case "finding" -> "front-tyres-cold";
                case "driving" -> "slow-in";
                case "caution" -> "wet-track-pressure";
                case "other" -> gap.words().get(1);
                default -> gap.words().get(0);
            });
        }
        return filled(words);
    }
}
