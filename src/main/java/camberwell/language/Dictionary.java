package camberwell.language;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
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

    private static final Pattern LINE = Pattern.compile("\\[(when|then)]((?:[^={]|\\{[^}]*})+)=(.*)");

    private final String text;
    /** Read when first asked for: to fire rules that were compiled before, nobody needs them. */
    private List<Sentence> sentences;

    Dictionary(String text) {
        this.text = text;
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
            if (line.startsWith("#")) {
                topic = line.substring(1).trim();
                continue;
            }
            Matcher matcher = LINE.matcher(line);
            if (!matcher.matches()) {
                throw new IllegalArgumentException("dictionary line " + number + " is no sentence: " + line);
            }
            try {
                sentences.add(Sentence.parse(matcher.group(1).equals("when"), matcher.group(2), matcher.group(3), topic,
                        gaps));
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException("dictionary line " + number + ": " + e.getMessage(), e);
            }
        }
        return List.copyOf(sentences);
    }

    /** The file as it stands. */
    public String text() {
        return text;
    }

    /**
     * Every sentence, in the file's order.
     *
     * @throws IllegalArgumentException if a line is neither a comment nor a mapping
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
