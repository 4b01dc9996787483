package camberwell.language;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Text;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The sentences that rules are written in. The file is an ordinary Drools DSL mapping, which Drools itself uses to turn
 * a rule into DRL; it is read here too, so that problems can be told in the rule's own words.
 */
public final class Dictionary {

    /** A report has no fewer words: the driver reports understeer. */
    private static final int FEWEST_WORDS = 3;
    private static final Pattern LINE = Pattern.compile("\\[(when|then)]((?:[^={]|\\{[^}]*})+)=(.*)");

    /** A comment that tells what the sentence above it means. */
    private static final String MEANING = "#:";

    /** How problems name it. */
    private static final String FILE = "rules/dictionary.dsl";
    private static final String END_OF_SYMPTOMS = "|cold-middle}";

    private final String text;
    /** Without the words that packs bring. */
    private final String base;
    private final List<String> brought;
    /** Read when first asked for: to fire rules that were compiled before, nobody needs them. */
    private List<Sentence> sentences;

    Dictionary(String text) {
        this(text, text, List.of());
    }

    private Dictionary(String text, String base, List<String> brought) {
        this.text = text;
        this.base = base;
        this.brought = List.copyOf(brought);
    }

    /** The same sentences with more words for complaints. */
    public Dictionary with(List<String> symptoms) {
        return symptoms.isEmpty() ? this : new Dictionary(base.replace(END_OF_SYMPTOMS, "|cold-middle|"
                + String.join("|", symptoms) + "}"), base, symptoms);
    }

    /** Reads a dictionary file. */
    public static Dictionary read(Path file) throws IOException {
        return new Dictionary(Files.readString(file));
    }

    private static List<Sentence> parse(String text) {
        List<Sentence> sentences = new ArrayList<>();
        Map<String, Sentence.Gap> gaps = new HashMap<>();
        String topic = "";
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.isBlank()) {
                continue;
            }
            if (line.startsWith(MEANING)) {
                int last = sentences.size() - 1;
                sentences.set(last, sentences.get(last).meaning(line.substring(MEANING.length()).strip()));
                continue;
            }
            if (line.startsWith("#")) {
                topic = line.substring(1).trim();
                continue;
            }
            Matcher matcher = LINE.matcher(line);
            if (!matcher.matches()) {
                throw wrong(number, line, "this line is neither a comment nor a sentence with its meaning behind a =");
            }
            try {
                sentences.add(Sentence.parse(matcher.group(1).equals("when"), matcher.group(2), matcher.group(3), topic,
                        gaps));
            } catch (IllegalArgumentException e) {
                throw wrong(number, line, e.getMessage());
            }
        }
        return List.copyOf(sentences);
    }

    private static ProblemsException wrong(int number, String line, String message) {
        return new ProblemsException(new Problem(FILE, number, 1, message, Optional.empty(), false, Text.line(line)));
    }

    /** The file as it stands. */
    public String text() {
        return base;
    }

    /** What Drools needs of it for rules: where they have a word that a pack brought, the file with that word. */
    public String textFor(String rules) {
        return brought.stream().anyMatch(rules::contains) ? text : base;
    }

    /**
     * Every sentence, in the file's order.
     *
     * @throws ProblemsException if a line is neither a comment nor a mapping
     */
    public synchronized List<Sentence> sentences() {
        if (sentences == null) {
            sentences = parse(text);
        }
        return sentences;
    }

    /**
     * The sentence that {@code line} is, with its words, if it is one.
     *
     * @param line with single spaces between its words
     */
    public Optional<Map.Entry<Sentence, Map<String, String>>> match(boolean condition, String line) {
        for (Sentence sentence : sentences()) {
            if (sentence.condition() == condition) {
                Optional<Map<String, String>> words = sentence.match(line);
                if (words.isPresent()) {
                    return Optional.of(Map.entry(sentence, words.get()));
                }
            }
        }
        return Optional.empty();
    }

    /** Whether a line is a condition, be it a report with what narrows it on the same line. */
    public boolean isCondition(String line) {
        return match(true, line).isPresent() || spread(line).isPresent();
    }

    /** Whether a line narrows a report as it stands, without its dash. */
    private Optional<Map.Entry<Sentence, Map<String, String>>> narrowing(String text) {
        return match(true, "- " + text);
    }

    /**
     * What narrows a report, said on its own line: {@code the driver reports understeer at entry in slow corners}.
     *
     * @param head the sentence, with its words
     * @param texts what narrows it, as it would stand below with a dash
     */
    record Spread(Map.Entry<Sentence, Map<String, String>> head, String headText, List<String> texts) {
    }

    /** The parts of a line that says in one what may stand below with dashes, if it is one. */
    Optional<Spread> spread(String line) {
        String[] words = withoutCommas(line);
        for (int split = words.length - 1; split >= FEWEST_WORDS; split--) {
            String headText = join(words, 0, split);
            Optional<Map.Entry<Sentence, Map<String, String>>> head = match(true, headText)
                    .filter(entry -> entry.getKey().narrowable());
            if (head.isPresent()) {
                List<String> texts = new ArrayList<>();
                if (narrowings(words, split, texts)) {
                    return Optional.of(new Spread(head.get(), headText, texts));
                }
            }
        }
        return Optional.empty();
    }

    /** The longest beginning of a line that is a report which can be narrowed, in words; 0 where there is none. */
    int reported(String line) {
        String[] words = withoutCommas(line);
        for (int split = words.length - 1; split >= FEWEST_WORDS; split--) {
            if (match(true, join(words, 0, split)).filter(entry -> entry.getKey().narrowable()).isPresent()) {
                return split;
            }
        }
        return 0;
    }

    /** Between what narrows a report a comma or an "and" does no harm. */
    private static String[] withoutCommas(String line) {
        String[] words = line.split(" ");
        for (int i = 0; i < words.length - 1; i++) {
            words[i] = words[i].endsWith(",") ? words[i].substring(0, words[i].length() - 1) : words[i];
        }
        return words;
    }

    /** Whether all of that narrows a report. */
    boolean narrows(String text) {
        return narrowings(withoutCommas(text), 0, new ArrayList<>());
    }

    private boolean narrowings(String[] words, int from, List<String> texts) {
        if (from == words.length) {
            return true;
        }
        if (words[from].equals("and") && from + 1 < words.length && !texts.isEmpty()) {
            return narrowings(words, from + 1, texts);
        }
        for (int to = words.length; to > from; to--) {
            String text = join(words, from, to);
            if (narrowing(text).isPresent()) {
                texts.add("- " + text);
                if (narrowings(words, to, texts)) {
                    return true;
                }
                texts.remove(texts.size() - 1);
            }
        }
        return false;
    }

    private static String join(String[] words, int from, int to) {
        return String.join(" ", Arrays.asList(words).subList(from, to));
    }

    /** Every sentence that asks a fact for what it has no answer to, with whatever words that fit; for the build. */
    public List<String> problems() {
        List<String> problems = new ArrayList<>();
        int number = 0;
        int index = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (line.startsWith("[")) {
                Sentence sentence = sentences().get(index++);
                String where = "dictionary line " + number + ": ";
                sentence.nonsense().ifPresent(message -> problems.add(where + message));
            }
        }
        return problems;
    }

    /** The closed list behind every gap name. */
    public Map<String, List<String>> lists() {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        sentences().forEach(sentence -> sentence.gaps().forEach(gap -> lists.putIfAbsent(gap.name(), gap.words())));
        return lists;
    }
}
