package camberwell.language;

import camberwell.fact.Attribute;
import camberwell.units.Quantity;
import camberwell.units.Range;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** Reads one sentence of a rule, or says in the rule's own terms why it is none. */
final class SentenceReader {

    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final int LARGEST_ANGLE = 45;
    static final String NO_CERTAINTY =
            "a certainty lies between 0.01 and 1.0 and has at most two decimals, not ";
    /** Drools takes a line that starts so for the end of a section. */
    private static final Pattern RESERVED = Pattern.compile("(when|then|end|rule|query)");
    static final Pattern RAW = Pattern.compile(
            "(package|import|global|function|declare|query|dialect|expander|unit|salience|agenda-group|ruleflow-group"
            + "|no-loop|lock-on-active|auto-focus|enabled|duration|timer|extends|eval)\\b.*|>.*|.*[;{}$].*"
            + "|.*\\beval\\s*\\(.*"
            + "|/\\*.*|\\*.*|#.*");

    private final Dictionary dictionary;
    private final Names names;
    private final Problems problems;
    private final Misread misread;

    /** A sentence with its words, of which nobody knows yet whether they make sense. */
    private record Written(Sentence sentence, Map<String, String> words, String text, int line, int column) {

        String word(String gap) {
            return words.get(gap);
        }
    }

    /** Where problems go. */
    interface Problems {
        void tell(int line, int column, String message, Optional<String> suggestion);
    }

    SentenceReader(Dictionary dictionary, Names names, Problems problems) {
        this.dictionary = dictionary;
        this.names = names;
        this.problems = problems;
        this.misread = new Misread(dictionary, names, problems);
    }

    /** Whether a line is a sentence of that part of a rule which makes sense as it stands, with whatever narrows it. */
    static boolean reads(Dictionary dictionary, Names names, boolean condition, String text) {
        List<String> problems = new ArrayList<>();
        SentenceReader reader = new SentenceReader(dictionary, names, (line, column, message, suggestion) ->
                problems.add(message));
        boolean known = condition ? dictionary.match(true, text).isPresent() || dictionary.spread(text).isPresent()
                : dictionary.match(false, text).isPresent();
        return known && !(condition ? reader.condition(text, 1, 1)
                : reader.read(false, text, 1, 1).map(List::of).orElse(List.of()))
                .isEmpty() && problems.isEmpty();
    }

    /** Whether a line is a sentence of that part of a rule, capitals aside. */
    boolean isSentence(boolean condition, String text) {
        String small = spaced(text.toLowerCase(Locale.ROOT));
        return dictionary.match(condition, small).isPresent() || condition && dictionary.spread(small).isPresent();
    }

    static String spaced(String text) {
        return Rewording.tidied(text.contains("  ") || text.indexOf('\t') >= 0 ? SPACES.matcher(text).replaceAll(" ") : text);
    }

    /**
     * The condition that a line is, and what narrows it on the same line; empty where a problem was told.
     *
     * @param text as it was written
     */
    List<Line> condition(String text, int number, int column) {
        String spaced = spaced(text);
        Optional<Map.Entry<Sentence, Map<String, String>>> match = dictionary.match(true, spaced);
        if (match.isPresent()) {
            return line(match.get(), text, number, column).map(List::of).orElse(List.of());
        }
        Optional<Dictionary.Spread> spread = dictionary.spread(spaced);
        if (spread.isPresent()) {
            List<Line> lines = new ArrayList<>();
            line(spread.get().head(), spread.get().headText(), number, column).ifPresent(lines::add);
            for (String narrowing : spread.get().texts()) {
                read(true, narrowing, number, column + Math.max(0, text.indexOf(narrowing.substring(2)))).ifPresent(lines::add);
            }
            return lines;
        }
        int reported = dictionary.reported(spaced);
        String[] words = spaced.split(" ");
        if (reported > 0 && reported < words.length) {
            // What narrows the report is told by itself: the rest of the line is well.
            String rest = String.join(" ", Arrays.asList(words).subList(reported, words.length));
            if (words[reported].equals("and")) {
                tell(number, column + Math.max(0, text.indexOf(rest)), "one sentence a line: what follows \"and\" stands on the "
                        + "next line");
                return List.of();
            }
            misread.tell(true, "- " + rest, number, column + Math.max(0, text.indexOf(rest)) - 2);
            return List.of();
        }
        misread.tell(true, text, number, column);
        return List.of();
    }

    /** The sentence that a line is; empty where a problem was told. */
    Optional<Line> read(boolean condition, String text, int number, int column) {
        Optional<Map.Entry<Sentence, Map<String, String>>> match = dictionary.match(condition, spaced(text));
        if (match.isEmpty()) {
            misread.tell(condition, text, number, column);
            return Optional.empty();
        }
        return line(match.get(), text, number, column);
    }

    /** The line that a sentence with its words is; empty where a problem was told. */
    private Optional<Line> line(Map.Entry<Sentence, Map<String, String>> match, String text, int number, int column) {
        Written line = new Written(match.getKey(), match.getValue(), text, number, column);
        for (Map.Entry<String, String> word : line.words().entrySet()) {
            if (List.of("finding", "driving", "caution").contains(word.getKey())
                    && !names.forGap(word.getKey()).contains(word.getValue())) {
                String other = otherwise(word.getValue());
                tell(number, column + text.indexOf(word.getValue()),
                        "there is no " + word.getKey() + " note \"" + word.getValue() + "\"" + other,
                        other.isEmpty() ? Nearest.to(word.getValue(), names.forGap(word.getKey())) : Optional.empty());
            }
        }
        if (RESERVED.matcher(text).lookingAt()) {
            tell(number, column, "a finding whose name starts with when, then, end, rule or query cannot be "
                    + "asked for");
        }
        checkNumbers(line);
        return moves(line, text, number, column) && inUnit(line) ? sensible(line) : Optional.empty();
    }

    /** What a name is that is no note of the kind that is wanted. */
    private String otherwise(String name) {
        return names.driving().contains(name) ? "; it is that of a driving note"
                : names.cautions().contains(name) ? "; it is that of a caution"
                : names.findings().contains(name) ? "; it is that of a finding"
                : names.adjustments().contains(name) ? "; it is that of an adjuster"
                : dictionary.lists().get("symptom").contains(name) ? "; it is a symptom, which a driver reports" : "";
    }

    /** Whether the adjuster that a sentence asks about stands in that unit. */
    private boolean inUnit(Written line) {
        String unit = line.words().get("unit");
        if (unit == null || !line.words().containsKey("adjuster")) {
            return true;
        }
        Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
        List<String> units = adjuster.measure().units().stream().flatMap(it -> it.symbols().stream()).toList();
        if (!units.contains(unit)) {
            List<String> shown = adjuster.measure().units().stream().map(Unit::symbol).filter(it -> !it.isEmpty()).toList();
            tell(line.line(), line.column() + Math.max(0, line.text().indexOf(" " + unit)) + 1, adjuster.id()
                    + (shown.isEmpty() ? " is set to a position, not in " : " is set in " + String.join(" or ", shown)
                    + ", not in ") + unit);
            return false;
        }
        return true;
    }

    /** Whether a pack asks that question, and offers that answer. */
    private boolean known(Written line, String question) {
        Map<String, Set<String>> questions = names.questions();
        String answer = line.word("answer");
        if (!questions.containsKey(question)) {
            tell(line.line(), line.column() + line.text().indexOf(question), "there is no question \"" + question
                    + "\"; questions stand in questions.yaml", Nearest.to(question, questions.keySet()));
            return false;
        }
        if (!questions.get(question).contains(answer)) {
            tell(line.line(), line.column() + line.text().lastIndexOf(answer), "\"" + answer + "\" is no answer to "
                    + question + ": " + String.join(", ", questions.get(question)),
                    Nearest.to(answer, questions.get(question)));
            return false;
        }
        return true;
    }

    /** The line with what it means, where that makes sense: the number is one that a tyre, a day or a car can have. */
    private Optional<Line> sensible(Written written) {
        Line line;
        try {
            line = Line.of(written.sentence(), written.words(), written.text(), written.line(), written.column());
        } catch (IllegalArgumentException e) {
            tell(written.line(), written.column(), e.getMessage());
            return Optional.empty();
        }
        String other = line.words().getOrDefault("against", line.words().get("another"));
        if (other != null && (other.equals(line.words().get("place")) || other.equals(line.words().get("symptom")))) {
            tell(line.line(), line.column() + Math.max(0, line.text().lastIndexOf(other)), "\"" + other
                    + "\" is held against itself");
            return Optional.empty();
        }
        String named = line.words().get("question");
        if (named != null && !known(written, named)) {
            return Optional.empty();
        }
        String figure = line.words().get("figure");
        Optional<String> tooFar = line.meaning() instanceof Statement.Propose proposed ? HowFar.wrong(proposed)
                : Optional.empty();
        if (tooFar.isPresent()) {
            tell(line.line(), line.column() + Math.max(0, line.text().indexOf(" " + figure)) + 1, tooFar.get());
            return Optional.empty();
        }
        return figure == null || !(line.meaning() instanceof Question question) || possible(line, question, figure)
                ? Optional.of(line) : Optional.empty();
    }

    private boolean possible(Line line, Question question, String figure) {
        Attribute asked = question.asks().get(question.asks().size() - 1).attribute();
        Optional<Range> range = asked.measure().flatMap(measure -> measure.range(asked.unit().orElseThrow()));
        Quantity said = new Quantity(Double.parseDouble(figure), asked.unit().orElse(Unit.POSITION));
        if (range.isPresent() && !range.get().holds(said)) {
            tell(line.line(), line.column() + Math.max(0, line.text().indexOf(figure)), asked.measure().get().noun()
                    + " lies between " + range.get() + ", not at " + said);
            return false;
        }
        return true;
    }

    private boolean moves(Written line, String text, int number, int column) {
        if (!line.words().containsKey("direction")) {
            return true;
        }
        Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
        Direction direction = Word.of(Direction.class, line.word("direction"));
        if (!adjuster.directions().contains(direction)) {
            tell(number, column + text.indexOf(" " + direction.id()) + 1, WrongWords.moves(adjuster, direction.id()),
                    Synonyms.direction(direction.id(), adjuster));
            return false;
        }
        return true;
    }

    private void checkNumbers(Written line) {
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

    static String raw(String text) {
        if (text.startsWith("#")) {
            return "a comment starts with //, on a line of its own: " + text;
        }
        return "raw Drools is not allowed here, only sentences of the dictionary: " + text;
    }

    private void tell(int line, int column, String message) {
        tell(line, column, message, Optional.empty());
    }

    private void tell(int line, int column, String message, Optional<String> suggestion) {
        problems.tell(line, column, message, suggestion);
    }
}
