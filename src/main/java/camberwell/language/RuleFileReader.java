package camberwell.language;

import camberwell.fact.Reported;
import camberwell.problem.Problem;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a rule file in the rule's own terms and tells every problem with its place. What it does not know it refuses:
 * whatever passes is sentences of the dictionary and nothing else, so that a rule file from a stranger can do no more
 * than a rule may.
 */
public final class RuleFileReader {

    /** A rule file larger than this is refused unread. */
    static final int MOST_CHARACTERS = 512 * 1024;

    private static final int LONGEST_LINE = 1000;
    private static final int MOST_PROBLEMS = 100;
    /** Longer lines resemble no sentence. */
    private static final int LONGEST_SENTENCE = 200;
    private static final int LONGEST_NAME = 140;
    private static final int LARGEST_ANGLE = 45;
    /** Everything that a name may be made of; it is the one free text of a rule that reaches Drools. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N} ,.:;'()/%+°?!&-]*");
    private static final Pattern RULE = Pattern.compile("rule\\s+\"([^\"]*)\"\\s*");
    private static final Pattern ANNOTATION = Pattern.compile("@(\\w+)\\(\"([^\"]*)\"\\)\\s*");
    private static final Pattern RAW = Pattern.compile(
            "(package|import|global|function|declare|query|dialect|expander|unit|salience|agenda-group|ruleflow-group"
            + "|no-loop|lock-on-active|auto-focus|enabled|duration|timer|extends|eval)\\b.*|>.*|.*[;{}$].*"
            + "|.*\\beval\\s*\\(.*"
            + "|/\\*.*|\\*.*|#.*");
    private static final Pattern SPACES = Pattern.compile("\\s+");
    private static final String NO_CERTAINTY =
            "a certainty lies between 0.01 and 1.0 and has at most two decimals, not ";
    /** Drools takes a line that starts so for the end of a section. */
    private static final Pattern RESERVED = Pattern.compile("(when|then|end|rule|query)");
    private static final List<String> ANNOTATIONS = List.of("because", "note", "replaces");

    private final Dictionary dictionary;
    private final Names names;
    private final String file;
    private final Stage stage;
    private final List<Problem> problems = new ArrayList<>();
    private final List<RuleText> rules = new ArrayList<>();
    private final List<RuleText> broken = new ArrayList<>();
    private final Map<String, Integer> lineOfName = new HashMap<>();

    private List<String> lines = List.of();
    private Draft draft;
    private Section section = Section.BETWEEN;

    private enum Section { BETWEEN, HEAD, WHEN, THEN }

    private static final class Draft {
        private String name;
        private int line;
        private int problemsBefore;
        private boolean saysWhen;
        private boolean saysThen;
        private final Map<String, String> annotations = new HashMap<>();
        private final List<Condition> conditions = new ArrayList<>();
        private final List<Line> conclusions = new ArrayList<>();
    }

    public RuleFileReader(Dictionary dictionary, Names names, String file, Stage stage) {
        this.dictionary = dictionary;
        this.names = names;
        this.file = file;
        this.stage = stage;
    }

    /** Every problem met so far. */
    public List<Problem> problems() {
        return problems;
    }

    /** The rules of {@code text}; those with a problem are kept apart, and the problem is told. */
    public RuleFile read(String text) {
        if (text.length() > MOST_CHARACTERS) {
            problem(1, 1, "the file is larger than " + MOST_CHARACTERS / 1024 + " KiB");
            return new RuleFile(file, stage, "", List.of(), List.of());
        }
        lines = text.lines().toList();
        int number = 0;
        for (String line : lines) {
            number++;
            readLine(line, number);
            if (problems.size() >= MOST_PROBLEMS) {
                problem(number, 1, "the rest of the file is not read: " + MOST_PROBLEMS + " problems are enough for now");
                section = Section.BETWEEN;
                break;
            }
        }
        if (section != Section.BETWEEN) {
            problem(number, 1, "the rule \"" + draft.name + "\" has no end");
            broken.add(written());
        }
        return new RuleFile(file, stage, text, List.copyOf(rules), List.copyOf(broken));
    }

    private void readLine(String line, int number) {
        String text = line.strip();
        int column = line.length() - line.stripLeading().length() + 1;
        if (line.length() > LONGEST_LINE) {
            problem(number, 1, "the line is longer than " + LONGEST_LINE + " characters");
            return;
        }
        int odd = oddCharacter(line);
        if (odd >= 0) {
            problem(number, odd + 1, line.charAt(odd) == '\\' ? "a backslash has no place in a rule"
                    : "a control character has no place in a rule");
            return;
        }
        if (text.isEmpty()) {
            return;
        }
        switch (section) {
            case BETWEEN -> between(text, number, column);
            case HEAD -> head(text, number, column);
            case WHEN -> condition(text, number, column);
            case THEN -> conclusion(text, number, column);
        }
    }

    private static int oddCharacter(String line) {
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            boolean plain = c >= ' ' && c <= '~';
            if (c == '\\' || !plain && c != '\t' && isControl(c)) {
                return i;
            }
        }
        return -1;
    }

    /** Whether a character could hide or move what a person sees: controls, format characters, odd line ends. */
    public static boolean isControl(char c) {
        return switch (Character.getType(c)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR,
                    Character.PRIVATE_USE, Character.UNASSIGNED -> true;
            default -> false;
        };
    }

    private void between(String text, int number, int column) {
        if (text.startsWith("//")) {
            return;
        }
        Matcher matcher = RULE.matcher(text);
        if (!matcher.matches()) {
            if (RAW.matcher(text).matches()) {
                problem(number, column, raw(text));
            } else {
                problem(number, column, "expected: rule \"its name\"", Optional.empty());
            }
            return;
        }
        draft = new Draft();
        draft.name = matcher.group(1).strip();
        draft.line = number;
        draft.problemsBefore = problems.size();
        section = Section.HEAD;
        if (draft.name.isEmpty() || draft.name.length() > LONGEST_NAME) {
            problem(number, column + matcher.start(1), "a rule's name has 1 to " + LONGEST_NAME + " characters");
        }
        if (!NAME.matcher(draft.name).matches()) {
            problem(number, column + matcher.start(1), "a rule's name is made of letters, numbers and plain "
                    + "punctuation");
        }
        if ((draft.name + " ").contains("expander ")) {
            problem(number, column + matcher.start(1), "the word \"expander\" has no place in a rule's name");
        }
    }

    private void head(String text, int number, int column) {
        if (text.equals("when")) {
            section = Section.WHEN;
            return;
        }
        Matcher matcher = ANNOTATION.matcher(text);
        if (!matcher.matches()) {
            problem(number, column, text.startsWith("@") ? "an annotation reads @because(\"...\"), on one line"
                    : RAW.matcher(text).matches() ? raw(text)
                    : "expected @because(\"...\"), @note(\"...\") or when");
            return;
        }
        String key = matcher.group(1);
        if (!ANNOTATIONS.contains(key)) {
            problem(number, column, "no annotation @" + key + " is allowed here", Nearest.to(key, ANNOTATIONS));
        } else if (draft.annotations.putIfAbsent(key, matcher.group(2).strip()) != null) {
            problem(number, column, "@" + key + " stands twice");
        } else if (matcher.group(2).isBlank()) {
            problem(number, column, "@" + key + " is empty");
        } else if (key.equals("note") && !names.hasNote(matcher.group(2).strip())) {
            problem(number, column + matcher.start(2), "there is no knowledge note \"" + matcher.group(2) + "\"",
                    Nearest.to(matcher.group(2), names.all()));
        }
    }

    private void condition(String text, int number, int column) {
        if (text.equals("then")) {
            section = Section.THEN;
            return;
        }
        if (text.equals("end")) {
            problem(number, column, "the rule \"" + draft.name + "\" has no then");
            finish();
            return;
        }
        draft.saysWhen = true;
        Optional<Line> line = sentence(true, text, number, column);
        if (line.isEmpty()) {
            return;
        }
        if (!line.get().sentence().narrowing()) {
            draft.conditions.add(new Condition(line.get(), new ArrayList<>()));
            return;
        }
        Condition above = draft.conditions.isEmpty() ? null : draft.conditions.get(draft.conditions.size() - 1);
        if (above == null || above.negative() || !above.head().question().isAbout(Reported.KIND)) {
            problem(number, column, "a dash narrows \"the driver reports ...\", which is not what stands above it");
            return;
        }
        above.narrowings().add(line.get());
    }

    private void conclusion(String text, int number, int column) {
        if (text.equals("end")) {
            finish();
            return;
        }
        draft.saysThen = true;
        Optional<Line> line = sentence(false, text, number, column);
        line.ifPresent(said -> {
            Statement.Verb verb = said.sentence().verb().orElseThrow();
            if (!stage.allows(verb)) {
                problem(number, column, "a rule of the stage " + stage.folder() + " does not " + verb.spoken()
                        + "; it belongs into " + Stage.homeOf(verb).folder());
            }
            draft.conclusions.add(said);
        });
    }

    private void finish() {
        section = Section.BETWEEN;
        String rule = "the rule \"" + draft.name + "\"";
        if (!draft.annotations.containsKey("because")) {
            problem(draft.line, 1, rule + " has no reason: add @because(\"...\")");
        }
        if (!draft.annotations.containsKey("note")) {
            problem(draft.line, 1, rule + " has no knowledge note: add @note(\"...\")");
        }
        if (!draft.saysWhen) {
            problem(draft.line, 1, rule + " has no condition, so it would always apply");
        }
        if (!draft.saysThen) {
            problem(draft.line, 1, rule + " concludes nothing");
        }
        Integer other = lineOfName.putIfAbsent(draft.name, draft.line);
        if (other != null) {
            problem(draft.line, 1, rule + " stands already at line " + other);
        }
        (problems.size() == draft.problemsBefore ? rules : broken).add(written());
    }

    private RuleText written() {
        return new RuleText(draft.name, stage, draft.annotations.getOrDefault("because", ""),
                draft.annotations.getOrDefault("note", ""), Optional.ofNullable(draft.annotations.get("replaces")),
                file, draft.line, List.copyOf(draft.conditions), List.copyOf(draft.conclusions));
    }

    private Optional<Line> sentence(boolean condition, String text, int number, int column) {
        Optional<Map.Entry<Sentence, Map<String, String>>> match =
                dictionary.match(condition, SPACES.matcher(text).replaceAll(" "));
        if (match.isEmpty()) {
            unknown(condition, text, number, column);
            return Optional.empty();
        }
        Line line = new Line(match.get().getKey(), match.get().getValue(), text, number, column);
        for (Map.Entry<String, String> word : line.words().entrySet()) {
            if (List.of("finding", "driving", "caution").contains(word.getKey())
                    && !names.forGap(word.getKey()).contains(word.getValue())) {
                problem(number, column + text.indexOf(word.getValue()),
                        "there is no " + word.getKey() + " note \"" + word.getValue() + "\"",
                        Nearest.to(word.getValue(), names.forGap(word.getKey())));
            }
        }
        if (RESERVED.matcher(text).lookingAt()) {
            problem(number, column, "a finding whose name starts with when, then, end, rule or query cannot be "
                    + "asked for");
        }
        if (line.words().containsKey("direction")) {
            Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
            Direction direction = Word.of(Direction.class, line.word("direction"));
            if (!adjuster.directions().contains(direction)) {
                problem(number, column + text.indexOf(" " + direction.id()) + 1, adjuster.id() + " moves "
                        + adjuster.directions().get(0).id() + " or " + adjuster.directions().get(1).id() + ", not "
                        + direction.id());
                return Optional.empty();
            }
        }
        checkNumbers(line);
        return Optional.of(line);
    }

    private void checkNumbers(Line line) {
        String certainty = line.words().getOrDefault("certainty", "0.1");
        if (certainty.length() > "0.00".length() || Double.parseDouble(certainty) == 0) {
            problem(line.line(), line.column() + line.text().lastIndexOf(certainty), NO_CERTAINTY + certainty);
        }
        String number = line.words().getOrDefault("number", "0");
        if (number.length() > "00.000".length() || Double.parseDouble(number) > LARGEST_ANGLE
                || number.length() > 1 && number.charAt(0) == '0' && number.charAt(1) != '.') {
            problem(line.line(), line.column() + line.text().lastIndexOf(number),
                    "an angle lies between 0 and " + LARGEST_ANGLE + " degrees and starts with no idle 0, not "
                            + number);
        }
    }

    /** Says whether it is a word that is wrong, or the sentence. */
    private void unknown(boolean condition, String text, int number, int column) {
        String spaced = SPACES.matcher(text).replaceAll(" ");
        for (Sentence sentence : dictionary.sentences()) {
            Optional<List<Sentence.Filled>> filled =
                    sentence.condition() == condition ? sentence.fill(spaced) : Optional.empty();
            if (filled.isEmpty()) {
                continue;
            }
            for (Sentence.Filled word : filled.get()) {
                if (!word.gap().takes(word.word())) {
                    problem(number, column + Math.max(0, text.indexOf(word.word())), wrongWord(word.gap(), word.word()),
                            Nearest.to(word.word(), word.gap().words()));
                }
            }
            return;
        }
        if (RAW.matcher(text).matches()) {
            problem(number, column, raw(text));
        } else if (SentenceFinder.isSentence(dictionary, !condition, text)) {
            problem(number, column, "this sentence belongs into " + (condition ? "then" : "when") + ": " + text);
        } else {
            problem(number, column, "no sentence of the dictionary reads \"" + text + "\"",
                    text.length() > LONGEST_SENTENCE ? Optional.empty()
                            : SentenceFinder.nearest(dictionary, condition, text));
        }
    }

    private static String wrongWord(Sentence.Gap gap, String word) {
        return switch (gap.name()) {
            case "certainty" -> NO_CERTAINTY + word;
            case "number" -> "\"" + word + "\" is not a number";
            default -> "\"" + word + "\" is no " + gap.name() + (gap.words().size() <= 8 && !gap.words().isEmpty()
                    ? ": " + String.join(", ", gap.words()) : "");
        };
    }

    private static String raw(String text) {
        return "raw Drools is not allowed here, only sentences of the dictionary: " + text;
    }

    private void problem(int line, int column, String message) {
        problem(line, column, message, Optional.empty());
    }

    private void problem(int line, int column, String message, Optional<String> suggestion) {
        String excerpt = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
        problems.add(new Problem(file, line, column, message, suggestion, false,
                excerpt.chars().anyMatch(c -> isControl((char) c)) ? "" : excerpt));
    }
}
