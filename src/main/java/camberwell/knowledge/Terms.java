package camberwell.knowledge;

import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The trade's vocabulary in plain words, from {@code knowledge-notes/terms.yaml}. */
public final class Terms {

    private final Map<String, Term> terms;

    private Terms(Map<String, Term> terms) {
        this.terms = Collections.unmodifiableMap(terms);
    }

    /**
     * Reads the file: groups of words, each a line or a map with {@code meaning}, {@code felt}, {@code see} and
     * {@code drawing}, which names one of the group {@code drawings}.
     *
     * @throws IllegalArgumentException if a word stands there twice or has no meaning
     */
    public static Terms read(Path file) throws IOException {
        JsonNode root = new ObjectMapper(new YAMLFactory()).readTree(Files.readString(file));
        Map<String, Term> terms = new LinkedHashMap<>();
        JsonNode drawings = ((ObjectNode) root).remove("drawings");
        root.fields().forEachRemaining(group -> group.getValue().fields().forEachRemaining(entry -> {
            JsonNode node = entry.getValue();
            String meaning = node.isTextual() ? node.asText() : node.path("meaning").asText();
            List<String> see = new ArrayList<>();
            node.path("see").forEach(word -> see.add(word.asText()));
            Term term = new Term(entry.getKey(), group.getKey(), meaning.strip(),
                    Optional.of(node.path("felt").asText()).filter(felt -> !felt.isEmpty()), see,
                    drawings.path(node.path("drawing").asText()).asText().lines().toList());
            if (meaning.isBlank() || terms.put(entry.getKey(), term) != null) {
                throw new IllegalArgumentException("terms.yaml: " + entry.getKey() + " needs one meaning");
            }
        }));
        return new Terms(terms);
    }

    /** Every word, in the file's order. */
    public List<Term> all() {
        return List.copyOf(terms.values());
    }

    /** The word of that name, written with hyphens or spaces. */
    public Optional<Term> find(String name) {
        return Optional.ofNullable(terms.get(name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-")));
    }

    /** The word that was most likely meant. */
    public Optional<String> nearest(String name) {
        return Nearest.to(name.strip().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-"), terms.keySet());
    }

    /** How a newcomer is told of a word of the vocabulary. */
    public String felt(Word word) {
        return find(word.id()).flatMap(Term::felt).orElse(word.spoken());
    }
}
