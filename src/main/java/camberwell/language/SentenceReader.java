package camberwell.language;

import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one sentence of a rule, or says in the rule's own terms why it is none. */
final class SentenceReader {

    private static final Pattern SPACES = Pattern.compile("\\s+");
    /** Longer lines resemble no sentence. */
    private static final int LONGEST_SENTENCE = 200;
    private static final int LARGEST_ANGLE = 45;
    private static final String NO_CERTAINTY =
            "a certainty lies between 0.01 and 1.0 and has at most two decimals, not ";
    /** Drools takes a line that starts so for the end of a section. */
    private static final Pattern RESERVED = Pattern.compile("(when|then|end|rule|query)");
    static final Pattern RAW = Pattern.compile(
            "(package|import|global|function|declare|query|dialect|expander|unit|salience|agenda-group|ruleflow-group"
            + "|no-loop|lock-on-active|auto-focus|enabled|duration|timer|extends|eval)\\b.*|>.*|.*[;{}$].*"
            + "|.*\\beval\\s*\\(.*"
            + "|/\\*.*|\\*.*|#.*");

    private static final Pattern GAP = Pattern.compile("\\{[A-Za-z-]+}");

    private final Dictionary dictionary;
    private final Names names;
    private final Problems problems;

    /** Where problems go. */
    interface Problems {
        void tell(int line, int column, String message, Optional<String> suggestion);
    }

    SentenceReader(Dictionary dictionary, Names names, Problems problems) {
        this.dictionary = dictionary;
        this.names = names;
        this.problems = problems;
    }

    /** Whether a line is a sentence of that part of a rule, capitals aside. */
    boolean isSentence(boolean condition, String text) {
        return dictionary.match(condition, spaced(text.toLowerCase(Locale.ROOT))).isPresent();
    }

    private static String spaced(String text) {
        return SPACES.matcher(text).replaceAll(" ");
    }

    /** The sentence that a line is; empty where a problem was told. */
    Optional<Line> read(boolean condition, String text, int number, int column) {
        Optional<Map.Entry<Sentence, Map<String, String>>> match = dictionary.match(condition, spaced(text));
        if (match.isEmpty()) {
            unknown(condition, text, number, column);
            return Optional.empty();
        }
        Line line = new Line(match.get().getKey(), match.get().getValue(), text, number, column);
        for (Map.Entry<String, String> word : line.words().entrySet()) {
            if (List.of("finding", "driving", "caution").contains(word.getKey())
                    && !names.forGap(word.getKey()).contains(word.getValue())) {
                tell(number, column + text.indexOf(word.getValue()),
                        "there is no " + word.getKey() + " note \"" + word.getValue() + "\"",
                        Nearest.to(word.getValue(), names.forGap(word.getKey())));
            }
        }
        if (RESERVED.matcher(text).lookingAt()) {
            tell(number, column, "a finding whose name starts with when, then, end, rule or query cannot be "
                    + "asked for");
        }
        checkNumbers(line);
        return moves(line, text, number, column) ? Optional.of(line) : Optional.empty();
    }

    private boolean moves(Line line, String text, int number, int column) {
        if (!line.words().containsKey("direction")) {
            return true;
        }
        Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
        Direction direction = Word.of(Direction.class, line.word("direction"));
        if (!adjuster.directions().contains(direction)) {
            tell(number, column + text.indexOf(" " + direction.id()) + 1, adjuster.id() + " moves "
                    + adjuster.directions().get(0).id() + " or " + adjuster.directions().get(1).id() + ", not "
                    + direction.id());
            return false;
        }
        return true;
    }

    private void checkNumbers(Line line) {
        String certainty = line.words().getOrDefault("certainty", "0.1");
        if (certainty.length() > "0.00".length() || Double.parseDouble(certainty) == 0) {
            tell(line.line(), line.column() + line.text().lastIndexOf(certainty), NO_CERTAINTY + certainty);
        }
        String number = line.words().getOrDefault("number", "0");
        if (number.length() > "00.000".length() || Double.parseDouble(number) > LARGEST_ANGLE
                || number.length() > 1 && number.charAt(0) == '0' && number.charAt(1) != '.') {
            tell(line.line(), line.column() + line.text().lastIndexOf(number),
                    "an angle lies between 0 and " + LARGEST_ANGLE + " degrees and starts with no idle 0, not "
                            + number);
        }
    }

    /** Says whether it is a word that is wrong, or the sentence. */
    private void unknown(boolean condition, String text, int number, int column) {
        Matcher gap = GAP.matcher(text);
        if (gap.find()) {
            tell(number, column + gap.start(), "there is no " + gap.group() + "; a rule for both ends has {axle}, "
                    + "{Axle}, {other-axle} and {Other-axle}");
            return;
        }
        String spaced = spaced(text);
        String small = spaced.toLowerCase(Locale.ROOT);
        if (!small.equals(spaced) && dictionary.match(condition, small).isPresent()) {
            tell(number, column, "sentences are written in small letters", Optional.of(small));
            return;
        }
        for (Sentence sentence : dictionary.sentences()) {
            Optional<List<Sentence.Filled>> filled =
                    sentence.condition() == condition ? sentence.fill(spaced) : Optional.empty();
            if (filled.isPresent()) {
                filled.get().stream().filter(word -> !word.gap().takes(word.word())).forEach(word ->
                        tell(number, column + Math.max(0, text.indexOf(word.word())),
                        wrongWord(word.gap(), word.word()), Nearest.to(word.word(), word.gap().words())));
                return;
            }
        }
        if (RAW.matcher(text).matches()) {
            tell(number, column, raw(text));
        } else if (dictionary.match(!condition, spaced).isPresent()) {
            tell(number, column, "this sentence belongs into " + (condition ? "then" : "when") + ": " + text);
        } else if (spaced.length() > LONGEST_SENTENCE) {
            tell(number, column, "no sentence of the dictionary reads \"" + text + "\"");
        } else {
            Meant.Answer meant = new Meant(dictionary, condition).by(spaced);
            tell(number, column, "no sentence of the dictionary reads \"" + text + "\""
                    + (meant.hint().isEmpty() ? "" : "; " + meant.hint()), meant.suggestion());
        }
    }

    private static String wrongWord(Sentence.Gap gap, String word) {
        return switch (gap.name()) {
            case "certainty" -> word.equals("1") ? "a certainty of 1 is written 1.0"
                    : word.matches("0,[0-9]+") ? "a certainty is written with a point: " + word.replace(',', '.')
                    : NO_CERTAINTY + word;
            case "number" -> "\"" + word + "\" is not a number";
            default -> "\"" + word + "\" is no " + gap.name() + (gap.words().size() <= 8 && !gap.words().isEmpty()
                    ? ": " + String.join(", ", gap.words()) : "");
        };
    }

    static String raw(String text) {
        return "raw Drools is not allowed here, only sentences of the dictionary: " + text;
    }

    private void tell(int line, int column, String message) {
        tell(line, column, message, Optional.empty());
    }

    private void tell(int line, int column, String message, Optional<String> suggestion) {
        problems.tell(line, column, message, suggestion);
    }
}
