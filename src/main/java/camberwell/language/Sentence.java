package camberwell.language;

import camberwell.fact.Reported;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A sentence of the dictionary.
 *
 * @param condition whether it stands in {@code when} rather than in {@code then}
 * @param narrowing whether it starts with a dash and narrows the sentence above it
 * @param template the sentence with its gaps, for instance {@code the driver reports {symptom}}
 * @param gaps the gaps in their order
 * @param topic the dictionary's heading above it
 * @param mapping what it means
 * @param fixed the pieces of text around the gaps, one more than there are gaps
 * @param meaning what it means to a person, where its words leave something open; thresholds stand in braces
 */
public record Sentence(boolean condition, boolean narrowing, String template, List<Gap> gaps, String topic, Mapping mapping,
        List<String> fixed, String meaning) {

    /** What units have besides letters; the point stands for the degree sign, which Drools' lexer does not know. */
    private static final String UNIT_CHARACTERS = "./%";

    /**
     * A gap to be filled with a word.
     *
     * @param name for instance {@code phase}
     * @param words the closed list; empty for numbers and for names of notes
     * @param open what else Drools lets into it; empty where there is a closed list
     */
    public record Gap(String name, List<String> words, Optional<Pattern> open) {

        static Gap of(String name, String regex) {
            return isList(regex) ? new Gap(name, List.of(regex.replace('.', '°').split("\\|")), Optional.empty())
                    : new Gap(name, List.of(), Optional.of(Pattern.compile(regex)));
        }

        private static boolean isList(String regex) {
            return regex.chars().allMatch(c -> c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '-' || c == '|'
                    || UNIT_CHARACTERS.indexOf(c) >= 0);
        }

        /** Whether {@code word} may fill it, as far as the dictionary can tell. */
        public boolean takes(String word) {
            return open.map(pattern -> pattern.matcher(word).matches()).orElseGet(() -> words.contains(word));
        }
    }

    /** A word where a gap is, and its first letter's place in the line, from 0. */
    record Filled(Gap gap, String word, int at) {
    }

    /**
     * Reads the left side of a dictionary line.
     *
     * @param right what it means to Drools
     * @param known the gaps met so far, by what stands in the braces: many sentences have the same
     * @throws IllegalArgumentException if the right side is no pattern on a fact and no conclusion
     */
    static Sentence parse(boolean condition, String left, String right, String topic, Map<String, Gap> known) {
        List<Gap> gaps = new ArrayList<>();
        List<String> fixed = new ArrayList<>();
        StringBuilder template = new StringBuilder();
        int at = 0;
        int open = left.indexOf('{');
        while (open >= 0) {
            int close = left.indexOf('}', open);
            Gap gap = known.computeIfAbsent(left.substring(open + 1, close), text -> Gap.of(
                    text.substring(0, text.indexOf(':')), text.substring(text.indexOf(':') + 1)));
            gaps.add(gap);
            fixed.add(left.substring(at, open));
            template.append(left, at, open).append('{').append(gap.name()).append('}');
            at = close + 1;
            open = left.indexOf('{', at);
        }
        fixed.add(left.substring(at));
        template.append(left.substring(at));
        boolean narrowing = template.charAt(0) == '-';
        return new Sentence(condition, narrowing, template.toString(), List.copyOf(gaps), topic,
                MappingReader.read(condition, narrowing, right), List.copyOf(fixed), "");
    }

    /**
     * The words in the gaps of {@code line}, by gap, if it is this sentence from first to last letter.
     *
     * @param line with single spaces between its words
     */
    Optional<Map<String, String>> match(String line) {
        Optional<List<Filled>> filled = fill(line);
        if (filled.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> words = new LinkedHashMap<>();
        for (Filled word : filled.get()) {
            if (!word.gap().takes(word.word())) {
                return Optional.empty();
            }
            words.put(word.gap().name(), word.word());
        }
        return Optional.of(words);
    }

    /** As {@link #match}, but with any word in any gap, to tell a wrong word from a wrong sentence. */
    Optional<List<Filled>> fill(String line) {
        if (!line.startsWith(fixed.get(0)) || !line.endsWith(fixed.get(gaps.size()))) {
            return Optional.empty();
        }
        List<Filled> filled = new ArrayList<>(gaps.size());
        int at = fixed.get(0).length();
        for (int i = 0; i < gaps.size(); i++) {
            String after = fixed.get(i + 1);
            int end = i + 1 == gaps.size() ? line.length() - after.length() : line.indexOf(after, at);
            if (end <= at || !isWord(line, at, end)) {
                return Optional.empty();
            }
            filled.add(new Filled(gaps.get(i), line.substring(at, end), at));
            at = end + after.length();
        }
        return at == line.length() ? Optional.of(filled) : Optional.empty();
    }

    private static boolean isWord(String line, int from, int to) {
        for (int i = from; i < to; i++) {
            if (line.charAt(i) == ' ') {
                return false;
            }
        }
        return true;
    }

    /** The same sentence with what it means to a person. */
    Sentence meaning(String text) {
        return new Sentence(condition, narrowing, template, gaps, topic, mapping, fixed, text);
    }

    /** Why it makes no sense with some words that fit its gaps, each tried in its turn. */
    Optional<String> nonsense() {
        for (Gap gap : gaps) {
            for (String word : gap.words()) {
                Map<String, String> words = exampleWords();
                words.put(gap.name(), word);
                Optional<String> wrong = nonsense(sensible(words));
                if (wrong.isPresent() && mapping instanceof Mapping.Pattern) {
                    return wrong;
                }
            }
        }
        return nonsense(sensible(exampleWords()));
    }

    /** Those words with a direction and a unit that their adjuster has, where others stand there. */
    public Map<String, String> sensible(Map<String, String> words) {
        Optional<Adjuster> adjuster = Optional.ofNullable(words.get("adjuster")).flatMap(id -> Word.find(Adjuster.class, id));
        if (adjuster.isEmpty()) {
            return words;
        }
        Map<String, String> sensible = new LinkedHashMap<>(words);
        List<String> directions = adjuster.get().directions().stream().map(Word::id).toList();
        sensible.computeIfPresent("direction", (gap, word) -> directions.contains(word) ? word : directions.get(0));
        List<String> units = adjuster.get().measure().units().stream().flatMap(unit -> unit.symbols().stream()).toList();
        gap("unit").ifPresent(gap -> sensible.computeIfPresent("unit", (name, word) -> units.contains(word) ? word
                : gap.words().stream().filter(units::contains).findFirst().orElse(word)));
        return units.stream().anyMatch(word -> word.equals(sensible.getOrDefault("unit", word))) ? sensible
                : sensibleFor(words);
    }

    /** An adjuster that stands in that unit. */
    private Map<String, String> sensibleFor(Map<String, String> words) {
        Map<String, String> other = new LinkedHashMap<>(words);
        other.put("adjuster", Adjuster.FRONT_CAMBER.id());
        return sensible(other);
    }

    private Optional<Gap> gap(String name) {
        return gaps.stream().filter(gap -> gap.name().equals(name)).findFirst();
    }

    private Optional<String> nonsense(Map<String, String> words) {
        try {
            mapping.filled(words);
            return Optional.empty();
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** Whether dashes may narrow it: it asks for a complaint. */
    boolean narrowable() {
        return condition && !narrowing && mapping instanceof Mapping.Pattern pattern && !pattern.negative()
                && pattern.kind() == Reported.KIND;
    }

    /** What a conclusion does; empty for a condition. */
    public Optional<Statement.Verb> verb() {
        return mapping instanceof Mapping.Consequence consequence ? Optional.of(consequence.verb()) : Optional.empty();
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
        return filled(sensible(exampleWords()));
    }

    /** A number that looks like one that somebody would write there. */
    private String figure() {
        String unit = gap("unit").map(gap -> gap.words().get(0)).orElse("");
        return switch (unit) {
            case "°C" -> template.contains("tread") ? "95" : "30";
            case "bar" -> template.contains("grows") || template.contains("more than") ? "0.1" : "1.9";
            case "deg" -> "0.2";
            default -> template.contains("weighs") ? "1000" : template.contains("position") ? "5"
                    : template.contains("steps") ? "2" : template.endsWith(" K") || template.contains(" K ") ? "10" : "30";
        };
    }

    private Map<String, String> exampleWords() {
        Map<String, String> words = new LinkedHashMap<>();
        for (Gap gap : gaps) {
            words.put(gap.name(), switch (gap.name()) {
                case "certainty" -> "0.5";
                case "number" -> "3.0";
                case "figure" -> figure();
                case "steps" -> "2";
                case "question" -> "kerb-height";
                case "answer" -> "tall";
                case "finding" -> "front-tyres-cold";
                case "driving" -> "slow-in";
                case "caution" -> "wet-track-pressure";
                case "other", "against", "another" -> gap.words().get(1);
                default -> gap.words().get(0);
            });
        }
        return words;
    }
}
