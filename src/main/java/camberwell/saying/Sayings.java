package camberwell.saying;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The phrases that are known, from {@code knowledge-notes/sayings.yaml} and from packs. */
public final class Sayings {

    /** The file's name, at home and in a pack. */
    public static final String FILE = "sayings.yaml";

    private static final List<Class<? extends Word>> NARROWING = List.of(Phase.class, CornerSpeed.class, Place.class,
            Severity.class, Occurrence.class, Since.class, Turn.class, Surface.class);

    /** A place in the tree of phrases. */
    static final class Node {
        final Map<String, Node> next = new HashMap<>();
        final List<Meaning> meanings = new ArrayList<>();
    }

    private final Node phrases = new Node();
    private final Map<String, Map<String, List<Meaning.Complaint>>> doings = new LinkedHashMap<>();
    private final Map<String, String> same = new HashMap<>();
    private final Set<String> skipped = new HashSet<>();
    private final Set<String> stems = new HashSet<>();
    private final Set<String> ordinary = new HashSet<>();
    private Spelling spelling;

    private Sayings() {
    }

    /**
     * Reads one text after another; each adds to those before it.
     *
     * @param texts by the name that problems give them
     * @throws ProblemsException if one is no YAML, or has a key or a word that is not known
     */
    public static Sayings read(Map<String, String> texts) {
        Sayings sayings = new Sayings();
        Map<String, JsonNode> roots = new LinkedHashMap<>();
        for (Map.Entry<String, String> text : texts.entrySet()) {
            JsonNode root = tree(text.getKey(), text.getValue());
            roots.put(text.getKey(), root);
            entries(root.path("same")).forEach((word, other) -> sayings.same.put(word, other.asText()));
        }
        for (Map.Entry<String, JsonNode> root : roots.entrySet()) {
            try {
                entries(root.getValue()).forEach(sayings::section);
            } catch (IllegalArgumentException e) {
                throw new ProblemsException(Problem.of(root.getKey(), e.getMessage(), Optional.empty()));
            }
        }
        sayings.spelling = new Spelling(sayings.stems, sayings.ordinary);
        return sayings;
    }

    private static JsonNode tree(String name, String text) {
        try {
            return new ObjectMapper(new YAMLFactory()).readTree(text);
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            throw new ProblemsException(Problem.error(name, at == null ? 1 : at.getLineNr(), at == null ? 1 : at.getColumnNr(),
                    "is no YAML: " + e.getOriginalMessage().lines().findFirst().orElse("")));
        }
    }

    private void section(String name, JsonNode section) {
        switch (name) {
            case "complaints" -> entries(section).forEach((meaning, said) -> add(said, complaint(meaning)));
            case "things" -> entries(section).forEach((thing, said) -> {
                String[] parts = thing.split(" ");
                add(said, new Meaning.Thing(parts[0], parts.length > 1 ? parts[1] : placed(parts[0])));
            });
            case "doings" -> entries(section).forEach(this::doing);
            case "circumstances" -> entries(section).forEach((words, said) -> add(said, circumstance(words, false, false)));
            case "acts" -> entries(section).forEach((words, said) -> add(said, circumstance(words, true, false)));
            case "intensifiers" -> entries(section).forEach((words, said) -> add(said, circumstance(words, false, true)));
            case "fine", "not", "unreal", "others", "plain", "gone", "now", "than" -> add(section.path("said"),
                    Meaning.Sign.valueOf(name.toUpperCase(Locale.ROOT)));
            case "joins" -> entries(section).forEach((join, said) -> add(said,
                    Meaning.Sign.valueOf(join.toUpperCase(Locale.ROOT))));
            case "skip" -> split(section).forEach(word -> skipped.addAll(Tokens.phrase(word, same)));
            case "ordinary" -> split(section).forEach(word -> ordinary.addAll(Tokens.phrase(word, same)));
            case "same" -> {
                // Read before everything else.
            }
            default -> throw new IllegalArgumentException("\"" + name + "\" is no part of a file of sayings");
        }
    }

    private static String placed(String thing) {
        return Word.find(Place.class, thing).map(Place::id).orElse("");
    }

    private void doing(String name, JsonNode doing) {
        add(doing.path("said"), new Meaning.Doing(name));
        Map<String, List<Meaning.Complaint>> table = doings.computeIfAbsent(name, key -> new LinkedHashMap<>());
        entries(doing.path("on")).forEach((thing, meaning) -> {
            List<Meaning.Complaint> complaints = new ArrayList<>();
            if (meaning.isArray()) {
                meaning.forEach(each -> complaints.add(complaint(each.asText())));
            } else {
                complaints.add(complaint(meaning.asText()));
            }
            table.put(thing, List.copyOf(complaints));
        });
    }

    private static Meaning.Complaint complaint(String meaning) {
        String[] words = meaning.strip().split(" ");
        return new Meaning.Complaint(Word.of(Symptom.class, words[0]), narrowing(List.of(words).subList(1, words.length)));
    }

    private static Meaning circumstance(String words, boolean act, boolean close) {
        return words.equals("suddenly") ? Meaning.Sign.SUDDENLY
                : new Meaning.Circumstance(narrowing(List.of(words.split(" "))), act, close);
    }

    private static List<Word> narrowing(List<String> ids) {
        List<Word> words = new ArrayList<>();
        for (String id : ids) {
            words.add(NARROWING.stream().flatMap(kind -> List.of(kind.getEnumConstants()).stream())
                    .filter(word -> word.is(id)).map(Word.class::cast).findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("\"" + id + "\" is no word of the vocabulary")));
        }
        return List.copyOf(words);
    }

    private void add(JsonNode said, Meaning meaning) {
        for (String phrase : split(said)) {
            List<String> words = Tokens.phrase(phrase, same);
            Node node = phrases;
            for (String word : words) {
                node = node.next.computeIfAbsent(word, key -> new Node());
                (meaning == Meaning.Sign.PLAIN || meaning == Meaning.Sign.OTHERS ? ordinary : stems).add(word);
            }
            if (!node.meanings.contains(meaning)) {
                node.meanings.add(meaning);
            }
        }
    }

    private static List<String> split(JsonNode said) {
        List<String> phrases = new ArrayList<>();
        for (String phrase : said.asText().split(",")) {
            if (!phrase.isBlank()) {
                expand(phrase, phrases);
            }
        }
        return phrases;
    }

    /** Every phrase that "(no|little) front (grip|bite)" stands for. */
    static void expand(String phrase, List<String> into) {
        int open = phrase.indexOf('(');
        int close = phrase.indexOf(')', open);
        if (open < 0 || close < 0) {
            into.add(phrase.strip());
            return;
        }
        for (String choice : phrase.substring(open + 1, close).split("\\|", -1)) {
            expand(phrase.substring(0, open) + choice + phrase.substring(close + 1), into);
        }
    }

    private static Map<String, JsonNode> entries(JsonNode map) {
        Map<String, JsonNode> entries = new LinkedHashMap<>();
        for (Iterator<Map.Entry<String, JsonNode>> each = map.fields(); each.hasNext();) {
            Map.Entry<String, JsonNode> entry = each.next();
            entries.put(entry.getKey(), entry.getValue());
        }
        return entries;
    }

    /** The root of the tree of phrases. */
    Node phrases() {
        return phrases;
    }

    /** Whether a word may stand in the middle of a phrase without a difference. */
    boolean skipped(String stem) {
        return skipped.contains(stem);
    }

    /** The words of what was said. */
    List<List<Token>> sentences(String said) {
        return Tokens.sentences(said, same, spelling);
    }

    /** What it means that a thing does one of {@code doing} there; empty where that is not known. */
    Optional<List<Meaning.Complaint>> complaints(List<Meaning.Doing> doing, String thing, Optional<Phase> phase) {
        if (phase.isPresent()) {
            for (Meaning.Doing each : doing) {
                List<Meaning.Complaint> there = doings.get(each.name()).get(thing + "@" + phase.get().id());
                if (there != null) {
                    return Optional.of(there);
                }
            }
        }
        for (Meaning.Doing each : doing) {
            List<Meaning.Complaint> there = doings.get(each.name()).get(thing);
            if (there != null) {
                return Optional.of(there);
            }
        }
        return Optional.empty();
    }

    /** Every complaint that one of {@code doing} may be wherever it happens, whatever does it. */
    List<Symptom> mayBe(List<Meaning.Doing> doing) {
        List<Symptom> symptoms = new ArrayList<>();
        for (Meaning.Doing each : doing) {
            doings.get(each.name()).forEach((thing, complaints) -> complaints.stream().map(Meaning.Complaint::symptom)
                    .filter(symptom -> thing.indexOf('@') < 0 && !symptoms.contains(symptom)).forEach(symptoms::add));
        }
        return symptoms;
    }
}
