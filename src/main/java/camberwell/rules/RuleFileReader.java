package camberwell.rules;

import camberwell.problem.Problem;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads a rule file in the rule's own terms and tells every problem with its place. What it does not know it refuses:
 * whatever passes is sentences of the dictionary and nothing else, so that a rule file from a stranger can do no more
 * than a rule may.
 */
final class RuleFileReader {

    /** A rule file larger than this is refused unread. */
    static final int MOST_CHARACTERS = 512 * 1024;

    private static final int LONGEST_LINE = 1000;
    private static final int LONGEST_NAME = 140;
    private static final Pattern RULE = Pattern.compile("rule\\s+\"([^\"]*)\"\\s*");
    private static final Pattern ANNOTATION = Pattern.compile("@(\\w+)\\(\"([^\"]*)\"\\)\\s*");
    private static final Pattern RAW = Pattern.compile(
            "(package|import|global|function|declare|query|dialect|expander|unit|salience|agenda-group|ruleflow-group"
            + "|no-loop|lock-on-active|auto-focus|enabled|duration|timer|extends|eval)\\b.*|>.*|.*[;{}$].*|.*\\beval\\s*\\(.*"
            + "|/\\*.*|\\*.*|#.*");
    private static final List<String> ANNOTATIONS = List.of("because", "note", "replaces");

    private final Dictionary dictionary;
    private final Names names;
    private final String file;
    private final Stage stage;
    private final List<Problem> problems = new ArrayList<>();
    private final List<RuleText> rules = new ArrayList<>();

    private Draft draft;
    private Section section = Section.BETWEEN;

    private enum Section { BETWEEN, HEAD, WHEN, THEN }

    private static final class Draft {
        private String name;
        private int line;
        private final Map<String, String> annotations = new HashMap<>();
        private final List<Condition> conditions = new ArrayList<>();
        private final List<Line> conclusions = new ArrayList<>();
    }

    RuleFileReader(Dictionary dictionary, Names names, String file, Stage stage) {
        this.dictionary = dictionary;
        this.names = names;
        this.file = file;
        this.stage = stage;
    }

    /** Every problem met so far. */
    List<Problem> problems() {
        return problems;
    }

    /** The rules of {@code text}; those with a problem are left out, and the problem is kept. */
    RuleFile read(String text) {
        if (text.length() > MOST_CHARACTERS) {
            problem(1, 1, "the file is larger than " + MOST_CHARACTERS / 1024 + " KiB");
            return new RuleFile(file, stage, "", List.of());
        }
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            readLine(line, number);
        }
        if (section != Section.BETWEEN) {
            problem(number, 1, "the rule \"" + draft.name + "\" has no end");
        }
        return new RuleFile(file, stage, text, List.copyOf(rules));
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
            if (c == '\\' || c != '\t' && (Character.isISOControl(c) || Character.getType(c) == Character.FORMAT)) {
                return i;
            }
        }
        return -1;
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
        section = Section.HEAD;
        if (draft.name.isEmpty() || draft.name.length() > LONGEST_NAME) {
            problem(number, column + matcher.start(1), "a rule's name has 1 to " + LONGEST_NAME + " characters");
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
                    Nearest.to(matcher.group(2), allNotes()));
        }
    }

    private Collection<String> allNotes() {
        Collection<String> all = new TreeSet<>(names.adjustments());
        all.addAll(names.findings());
        all.addAll(names.driving());
        all.addAll(names.cautions());
        return all;
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
        Optional<Line> line = sentence(true, text, number, column);
        if (line.isEmpty()) {
            return;
        }
        if (!line.get().sentence().narrowing()) {
            draft.conditions.add(new Condition(line.get(), new ArrayList<>()));
            return;
        }
        Condition above = draft.conditions.isEmpty() ? null : draft.conditions.get(draft.conditions.size() - 1);
        if (above == null || !above.head().says("the driver reports {symptom}")) {
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
        Optional<Line> line = sentence(false, text, number, column);
        line.ifPresent(said -> {
            if (!allowed(said)) {
                problem(number, column, "a rule of the stage " + stage.folder() + " does not " + verb(said)
                        + "; it belongs into " + home(said).folder());
            }
            draft.conclusions.add(said);
        });
    }

    private boolean allowed(Line line) {
        Stage home = home(line);
        return home == stage || home == Stage.READINGS && stage != Stage.CHANGES && stage != Stage.CAUTIONS;
    }

    private static String verb(Line line) {
        String template = line.sentence().template();
        return template.startsWith("speak against") ? "speak against findings" : template.split(" ")[0];
    }

    private static Stage home(Line line) {
        return switch (line.sentence().template().split(" ")[0]) {
            case "find", "speak" -> Stage.READINGS;
            case "propose", "oppose", "withhold" -> Stage.CHANGES;
            case "caution" -> Stage.CAUTIONS;
            default -> Stage.DRIVING;
        };
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
        if (draft.conditions.isEmpty()) {
            problem(draft.line, 1, rule + " has no condition, so it would always apply");
        }
        if (draft.conclusions.isEmpty()) {
            problem(draft.line, 1, rule + " concludes nothing");
        }
        rules.stream().filter(other -> other.name().equals(draft.name)).findFirst().ifPresent(other ->
                problem(draft.line, 1, rule + " stands already at line " + other.line()));
        rules.add(new RuleText(draft.name, stage, draft.annotations.getOrDefault("because", ""),
                draft.annotations.getOrDefault("note", ""), Optional.ofNullable(draft.annotations.get("replaces")),
                file, draft.line, List.copyOf(draft.conditions), List.copyOf(draft.conclusions)));
    }

    private Optional<Line> sentence(boolean condition, String text, int number, int column) {
        Optional<Map.Entry<Sentence, Map<String, String>>> match = dictionary.match(condition, text);
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
        if (line.words().containsKey("direction")) {
            Adjuster adjuster = Word.of(Adjuster.class, line.word("adjuster"));
            Direction direction = Word.of(Direction.class, line.word("direction"));
            if (!adjuster.directions().contains(direction)) {
                problem(number, column + text.indexOf(" " + direction.id()) + 1, adjuster.id() + " moves "
                        + adjuster.directions().get(0).id() + " or " + adjuster.directions().get(1).id() + ", not "
                        + direction.id());
            }
        }
        if ("0.0".equals(line.word("certainty")) || "0.00".equals(line.word("certainty"))) {
            problem(number, column, "a certainty of nothing concludes nothing");
        }
        return Optional.of(line);
    }

    /** Says whether it is a word that is wrong, or the sentence. */
    private void unknown(boolean condition, String text, int number, int column) {
        for (Sentence sentence : dictionary.sentences()) {
            if (sentence.condition() != condition) {
                continue;
            }
            Optional<Matcher> lenient = sentence.matchLeniently(text);
            if (lenient.isEmpty()) {
                continue;
            }
            for (int i = 0; i < sentence.gaps().size(); i++) {
                Sentence.Gap gap = sentence.gaps().get(i);
                String word = lenient.get().group(i + 1);
                if (!gap.takes(word)) {
                    problem(number, column + lenient.get().start(i + 1), wrongWord(gap, word),
                            Nearest.to(word, gap.words()));
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
                    SentenceFinder.nearest(dictionary, condition, text));
        }
    }

    private static String wrongWord(Sentence.Gap gap, String word) {
        return switch (gap.name()) {
            case "certainty" -> "a certainty lies between 0.01 and 1.0 and has at most two decimals, not " + word;
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
        problems.add(Problem.error(file, line, column, message, suggestion));
    }
}
