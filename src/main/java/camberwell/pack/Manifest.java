package camberwell.pack;

import camberwell.language.RuleFileReader;
import camberwell.problem.Problem;
import camberwell.vocabulary.Nearest;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * What a rule folder says of itself in {@code pack.yaml}.
 *
 * @param name letters, numbers and dashes
 * @param version numbers with points between them
 * @param author whoever answers for the rules
 * @param needs what it builds on: {@code camberwell} or another folder's name, and from which version on
 */
public record Manifest(String name, String version, String author, List<String> needs) {

    /** The version of this camberwell. */
    public static final String CAMBERWELL = "0.1.0";

    private static final List<String> KEYS = List.of("name", "version", "author", "needs");
    private static final Pattern NAME = Pattern.compile("[a-z][a-z0-9-]{0,59}");
    private static final Pattern VERSION = Pattern.compile("[0-9]{1,4}(\\.[0-9]{1,4}){0,3}");

    /** Reads one; empty, with the problems noted, when something is wrong with it. */
    static Optional<Manifest> read(String file, String text, List<Problem> problems) {
        int before = problems.size();
        JsonNode root;
        try {
            root = new ObjectMapper(YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build())
                    .readTree(text);
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : Math.max(1, e.getLocation().getLineNr());
            problems.add(Problem.error(file, line, 1, "does not parse: "
                    + e.getOriginalMessage().lines().findFirst().orElse("")));
            return Optional.empty();
        }
        List<String> lines = text.lines().toList();
        root.fieldNames().forEachRemaining(key -> {
            if (!KEYS.contains(key)) {
                problems.add(Problem.error(file, lineOf(key, lines), 1, "unknown key \"" + key + "\"",
                        Nearest.to(key, KEYS)));
            }
        });
        String name = root.path("name").asText();
        String version = root.path("version").asText();
        String author = root.path("author").asText().strip();
        if (!NAME.matcher(name).matches()) {
            problems.add(Problem.error(file, lineOf("name", lines), 1,
                    "name is made of small letters, numbers and dashes, not \"" + printable(name) + "\""));
        }
        if (!VERSION.matcher(version).matches()) {
            problems.add(Problem.error(file, lineOf("version", lines), 1,
                    "version is numbers with points between them, not \"" + printable(version) + "\""));
        }
        if (author.isEmpty() || author.length() > 100 || !printable(author).equals(author)) {
            problems.add(Problem.error(file, lineOf("author", lines), 1, "author is missing, or no plain text"));
        }
        List<String> needs = new ArrayList<>();
        root.path("needs").forEach(need -> needs.add(need.asText().strip()));
        if (root.has("needs") && !root.path("needs").isArray() || needs.stream().anyMatch(need -> !isNeed(need))) {
            problems.add(Problem.error(file, lineOf("needs", lines), 1,
                    "needs is a list of names with a version, for instance [camberwell " + CAMBERWELL + "]"));
        }
        return problems.size() == before
                ? Optional.of(new Manifest(name, version, author, List.copyOf(needs))) : Optional.empty();
    }

    private static boolean isNeed(String need) {
        String[] words = need.split(" ");
        return words.length <= 2 && NAME.matcher(words[0]).matches()
                && (words.length == 1 || VERSION.matcher(words[1]).matches());
    }

    private static int lineOf(String key, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).startsWith(key)) {
                return i + 1;
            }
        }
        return 1;
    }

    private static String printable(String text) {
        return text.chars().filter(c -> !RuleFileReader.isControl((char) c)).limit(100)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    /** Those needs that neither this camberwell nor the folders before meet. */
    List<String> unmet(List<Manifest> before) {
        return needs.stream().filter(need -> {
            String[] words = need.split(" ");
            String least = words.length > 1 ? words[1] : "0";
            return !(words[0].equals("camberwell") && compare(CAMBERWELL, least) >= 0)
                    && before.stream().noneMatch(other -> other.name.equals(words[0])
                    && compare(other.version, least) >= 0);
        }).toList();
    }

    private static int compare(String one, String other) {
        int[] a = Arrays.stream(one.split("\\.")).mapToInt(Integer::parseInt).toArray();
        int[] b = Arrays.stream(other.split("\\.")).mapToInt(Integer::parseInt).toArray();
        return Arrays.compare(Arrays.copyOf(a, 4), Arrays.copyOf(b, 4));
    }
}
