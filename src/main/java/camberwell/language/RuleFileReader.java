package camberwell.language;

import camberwell.fact.Reported;
import camberwell.problem.Problem;
import camberwell.vocabulary.Axle;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
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
    private static final int LONGEST_NAME = 140;
    private static final int MOST_SENTENCES = 100;
    /** Everything that a name may be made of; it is the one free text of a rule that reaches Drools. */
    private static final Pattern NAME = Pattern.compile("[\\p{L}\\p{N} ,.:;'()/%+°?!&-]*");
    private static final Pattern RULE = Pattern.compile("rule\\s+\"([^\"]*)\"\\s*");
    private static final Pattern QUOTED_INSIDE = Pattern.compile("rule\\s+\"([^\"]*\"(?!\\s+extends\\s).*)\"\\s*");
    private static final Pattern UNQUOTED = Pattern.compile("rule\\s+(\"[^\"]*|[^\"].*)");

    private final Names names;
    private final String file;
    private final Stage stage;
    private final SentenceReader sentences;
    private final List<Problem> problems = new ArrayList<>();
    /** How often something was wrong, whether it was told already or not. */
    private int met;
    private final List<RuleText> rules = new ArrayList<>();
    private final List<RuleText> broken = new ArrayList<>();
    private final Map<String, Integer> lineOfName = new HashMap<>();
    private final Quirks quirks = new Quirks();

    private List<String> lines = List.of();
    private Draft draft;
    private Section section = Section.BETWEEN;
    /** The end that a rule for both ends is being read for. */
    private Optional<Axle> end = Optional.empty();
    /** The way through conditions of which one will do that is being read, and how many there are. */
    private int way;
    private int ways = 1;
    /** The line after the rule that is being read. */
    private int afterRule;
    private int lastLine = 1;

    private enum Section { BETWEEN, HEAD, WHEN, THEN }

    private static final class Draft {
        private int sentences;
        private String name;
        private int line;
        private int problemsBefore;
        private boolean saysWhen;
        private boolean saysThen;
        /** Whether the last condition could not be read, so that nobody knows what a dash below it narrows. */
        private boolean lost;
        private final Annotations annotations;
        private final List<Condition> conditions = new ArrayList<>();
        private final List<Line> conclusions = new ArrayList<>();

        Draft(Annotations annotations) {
            this.annotations = annotations;
        }
    }

    /** Reads the rules of {@code file}, which are of one stage, by the dictionary and the names of the notes. */
    public RuleFileReader(Dictionary dictionary, Names names, String file, Stage stage) {
        this.names = names;
        this.file = file;
        this.stage = stage;
        this.sentences = new SentenceReader(dictionary, names, this::problem);
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
        int at = 0;
        while (at < lines.size() && problems.size() < MOST_PROBLEMS) {
            afterRule = BothEnds.endOfRule(lines, at);
            List<String> rule = lines.subList(at, afterRule);
            List<List<String>> each = EitherOr.ways(rule);
            ways = each.size();
            List<Optional<Axle>> ends = rule.stream().anyMatch(BothEnds::isOpen)
                    ? List.of(Optional.of(Axle.FRONT), Optional.of(Axle.REAR)) : List.of(Optional.empty());
            for (Optional<Axle> one : ends) {
                end = one;
                for (way = 0; way < ways; way++) {
                    readLines(each.get(way), at);
                }
            }
            end = Optional.empty();
            way = 0;
            at = afterRule;
        }
        if (problems.size() >= MOST_PROBLEMS) {
            problem(lastLine, 1, "the rest of the file is not read: " + MOST_PROBLEMS
                    + " problems are enough for now");
            section = Section.BETWEEN;
        }
        quirks.found().forEach(quirk -> problem(quirk.line(), quirk.column(), quirk.message()));
        return new RuleFile(file, stage, text, List.copyOf(rules), List.copyOf(broken));
    }

    private void readLines(List<String> rule, int from) {
        for (int at = from; at < afterRule && problems.size() < MOST_PROBLEMS; at++) {
            readLine(rule.get(at - from), at + 1);
        }
        if (section != Section.BETWEEN && problems.size() < MOST_PROBLEMS) {
            problem(afterRule, 1, "the rule \"" + draft.name + "\" has no end"
                    + (afterRule < lines.size() ? "; write end above the next rule" : ""));
            broken.add(written());
            section = Section.BETWEEN;
        }
    }

    private void readLine(String asWritten, int number) {
        lastLine = number;
        if (asWritten.length() > LONGEST_LINE) {
            problem(number, 1, "the line is longer than " + LONGEST_LINE + " characters");
            return;
        }
        int odd = Characters.odd(asWritten);
        if (odd >= 0) {
            problem(number, odd + 1, asWritten.charAt(odd) == '\\' ? "a backslash has no place in a rule"
                    : "a control character has no place in a rule");
            return;
        }
        String straight = isAgain() ? new Quirks().straightened(asWritten, number)
                : quirks.straightened(asWritten, number);
        String line = end.map(axle -> BothEnds.at(axle, straight)).orElse(straight);
        String text = line.strip();
        int column = line.length() - line.stripLeading().length() + 1;
        if (text.isEmpty()) {
            return;
        }
        if (section != Section.BETWEEN && text.startsWith("//") && !SentenceReader.RAW.matcher(text).matches()) {
            return;
        }
        Optional<String> keyword = Quirks.miswrittenKeyword(text);
        if (keyword.isPresent()) {
            problem(number, column, "write \"" + keyword.get() + "\" " + (Quirks.isPunctuated(text) ? "alone on its line"
                    : "in small letters"));
            text = Quirks.isPunctuated(text) ? keyword.get() : keyword.get() + text.substring(keyword.get().length());
        }
        switch (section) {
            case BETWEEN -> between(text, number, column);
            case HEAD -> head(text, number, column);
            case WHEN -> condition(text, number, column);
            case THEN -> conclusion(text, number, column);
        }
    }

    private void between(String text, int number, int column) {
        if (text.startsWith("//")) {
            return;
        }
        Matcher matcher = RULE.matcher(text);
        boolean wasWhole = matcher.matches();
        Matcher inside = QUOTED_INSIDE.matcher(text);
        if (!wasWhole && inside.matches()) {
            String name = inside.group(1).replace('"', '\'');
            problem(number, column + text.indexOf('"', inside.start(1)), "a rule's name ends at the next quote; write single "
                    + "ones inside it: rule \"" + name + "\"");
            matcher = RULE.matcher("rule \"" + name + "\"");
        } else if (!wasWhole && UNQUOTED.matcher(text).matches()) {
            // The rest is read as the rule that it was meant to be.
            String name = text.substring("rule".length()).replace("\"", "").strip();
            problem(number, column, "a rule's name stands in quotes: rule \"" + name + "\"");
            matcher = RULE.matcher("rule \"" + name + "\"");
        }
        if (!matcher.matches()) {
            problem(number, column, SentenceReader.RAW.matcher(text).matches() ? SentenceReader.raw(text)
                    : "expected: rule \"its name\"");
            return;
        }
        draft = new Draft(new Annotations(names, this::problem));
        draft.name = matcher.group(1).strip();
        draft.line = number;
        draft.problemsBefore = wasWhole ? met : -1;
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
        String rule = "the rule \"" + draft.name + "\"";
        if (text.equals("when")) {
            section = Section.WHEN;
        } else if (text.equals("end")) {
            problem(number, column, rule + " has no when and no then");
            draft.saysWhen = true;
            draft.saysThen = true;
            finish();
        } else if (text.equals("then")) {
            problem(number, column, rule + " has no when; write when and a condition above this line");
            draft.saysWhen = true;
            section = Section.THEN;
        } else if (!text.startsWith("@") && sentences.isSentence(true, text)) {
            problem(number, column, rule + " has no when; write when above this line");
            section = Section.WHEN;
            condition(text, number, column);
        } else {
            draft.annotations.read(text, number, column);
        }
    }

    private void condition(String text, int number, int column) {
        String rule = "the rule \"" + draft.name + "\"";
        if (text.equals("then")) {
            section = Section.THEN;
            return;
        }
        if (text.equals("when")) {
            problem(number, column, "when stands twice");
            return;
        }
        if (text.equals("end")) {
            problem(number, column, rule + " has no then");
            draft.saysThen = true;
            finish();
            return;
        }
        draft.saysWhen = true;
        if (tooMany(number, column)) {
            return;
        }
        if (!thenFollows(number) && !sentences.isSentence(true, text) && sentences.isSentence(false, text)) {
            problem(number, column, rule + " has no then; write then above this line");
            section = Section.THEN;
            conclusion(text, number, column);
            return;
        }
        boolean or = text.startsWith("or ");
        if (or || text.startsWith("either ") && !text.contains(" or ")) {
            problem(number, column, or ? "\"or\" wants a line above it that starts with \"either\""
                    : lines.get(Math.min(number, lines.size() - 1)).strip().startsWith("or ") ? "a rule has at most "
                    + EitherOr.MOST
                    + " ways through its conditions" : "\"either\" wants a line below it that starts with \"or\"");
            draft.lost = true;
            return;
        }
        List<Line> read = sentences.condition(text, number, column);
        if (read.isEmpty()) {
            draft.lost |= !text.startsWith("-");
            return;
        }
        Line line = read.get(0);
        if (!line.sentence().narrowing()) {
            draft.lost = false;
            draft.conditions.add(Condition.of(line, read.subList(1, read.size())));
            return;
        }
        Condition above = draft.conditions.isEmpty() ? null : draft.conditions.get(draft.conditions.size() - 1);
        if (draft.lost) {
            return;
        }
        if (above == null || above.negative() || !above.head().question().isAbout(Reported.KIND)) {
            problem(number, column, "a dash narrows \"the driver reports ...\", which is not what stands above it");
            return;
        }
        draft.conditions.set(draft.conditions.size() - 1, above.narrowedBy(line));
    }

    /** More sentences than anybody reads in one rule; the compiler would run out of its stack over thousands. */
    private boolean tooMany(int number, int column) {
        draft.sentences++;
        if (draft.sentences == MOST_SENTENCES + 1) {
            problem(number, column, "the rule \"" + draft.name + "\" has more than " + MOST_SENTENCES + " sentences");
        }
        return draft.sentences > MOST_SENTENCES;
    }

    private boolean thenFollows(int number) {
        for (int at = number; at < afterRule; at++) {
            if (lines.get(at).strip().equalsIgnoreCase("then")) {
                return true;
            }
        }
        return false;
    }

    private void conclusion(String text, int number, int column) {
        if (text.equals("end")) {
            finish();
            return;
        }
        if (text.equals("then")) {
            problem(number, column, "then stands twice");
            return;
        }
        draft.saysThen = true;
        if (tooMany(number, column)) {
            return;
        }
        Optional<Line> line = sentences.read(false, text, number, column);
        line.ifPresent(said -> {
            Statement.Verb verb = said.sentence().verb().orElseThrow();
            if (!stage.allows(verb)) {
                problem(number, column, "a rule of the stage " + stage.folder() + " does not " + verb.spoken()
                        + "; it belongs into " + Stage.homesOf(verb));
            }
            draft.conclusions.add(said);
        });
    }

    private void finish() {
        section = Section.BETWEEN;
        String rule = "the rule \"" + draft.name + "\"";
        if (!draft.annotations.has("because")) {
            problem(draft.line, 1, rule + " has no reason: add @because(\"...\")");
        }
        if (!draft.annotations.has("note")) {
            problem(draft.line, 1, rule + " has no knowledge note: add @note(\"...\")");
        }
        if (!draft.saysWhen) {
            problem(draft.line, 1, rule + " has no condition, so it would always apply");
        }
        if (!draft.saysThen) {
            problem(draft.line, 1, rule + " concludes nothing");
        }
        Integer other = lineOfName.putIfAbsent(draft.name.toLowerCase(Locale.ROOT), draft.line);
        draft.name = EitherOr.named(draft.name, way, ways);
        if (other != null && (way == 0 || other != draft.line)) {
            problem(draft.line, 1, rule + (other == draft.line
                    ? " stands for both ends; write {axle} into its name, or {Axle} where it starts"
                    : " stands already at line " + other));
        }
        (met == draft.problemsBefore ? rules : broken).add(written());
    }

    private RuleText written() {
        String which = end.map(axle -> axle == Axle.FRONT ? "F" : "R").orElse("");
        String letter = ways == 1 ? "" : Character.toString('a' + way);
        return new RuleText(draft.name, stage, draft.annotations.text("because"), draft.annotations.text("note"),
                draft.annotations.replaces(which), draft.annotations.standing(which + letter),
                file, draft.line, List.copyOf(draft.conditions), List.copyOf(draft.conclusions));
    }

    private void problem(int line, int column, String message) {
        problem(line, column, message, Optional.empty());
    }

    /** Whether the rule that is being read was read before, for the other end or in another way. */
    private boolean isAgain() {
        return way > 0 || end.equals(Optional.of(Axle.REAR));
    }

    /** Of a rule that is read several times, what is always wrong is told once. */
    private void problem(int line, int column, String message, Optional<String> suggestion) {
        met++;
        String excerpt = line >= 1 && line <= lines.size() ? lines.get(line - 1) : "";
        int written = end.map(axle -> BothEnds.columnAsWritten(axle, excerpt, column)).orElse(column);
        if (isAgain() && problems.stream().anyMatch(told -> told.line() == line
                && told.column() == written)) {
            return;
        }
        problems.add(new Problem(file, line, written, message, suggestion, false,
                excerpt.chars().anyMatch(c -> Characters.isControl((char) c)) ? "" : excerpt));
    }
}
