package camberwell.knowledge;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.MissingNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;

/** Reads one note: YAML front matter between two lines of three dashes, then prose. Tells every problem of the file. */
final class NoteReader {

    private static final ObjectMapper YAML = new ObjectMapper(
            YAMLFactory.builder().enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION).build());
    private static final List<String> EFFECT_KEYS =
            List.of("on", "effect", "phase", "speed", "where", "drive", "surface", "when");
    private static final int LAST_ORDER = 9;
    private static final String MIRRORED = "mirrored";
    private static final String MIRRORED_EXCEPT = "mirrored-except";
    private static final List<String> DIFFERENCE_KEYS = List.of("way", "on", "phase", "rule", "because");
    private static final List<String> TROUBLE_KEYS = List.of("on", "phase", "speed", "where");
    private static final List<String> WORDING_KEYS = List.of("when", "text");
    private static final List<String> WAY_KEYS = List.of("effects", "rationale", "plain", "watch", "put-back");

    private final String file;
    private final String name;
    private final Note.Kind kind;
    private final List<String> lines;
    private final List<Variant> variants = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    /**
     * @param file for messages
     * @param name the name of the note
     * @param kind the kind of the folder that it lies in
     */
    NoteReader(String file, String name, Note.Kind kind, String text) {
        this.file = file;
        this.name = name;
        this.kind = kind;
        this.lines = text.lines().toList();
    }

    /** @throws ProblemsException with everything that is wrong with the file */
    Note read() {
        int end = lines.isEmpty() || !lines.get(0).equals("---") ? -1 : lines.subList(1, lines.size()).indexOf("---");
        if (end < 0) {
            throw new ProblemsException(List.of(Problem.error(file, 1, 1,
                    "a note starts with front matter between two lines of ---")));
        }
        JsonNode head = parse(String.join("\n", lines.subList(1, end + 1)));
        Note note = note(head, String.join("\n", lines.subList(end + 2, lines.size())).strip());
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        return note;
    }

    private JsonNode parse(String yaml) {
        try {
            JsonNode head = YAML.readTree(yaml);
            if (!head.isObject()) {
                throw new ProblemsException(List.of(Problem.error(file, 2, 1, "the front matter has no keys")));
            }
            return head;
        } catch (JsonProcessingException e) {
            int line = e.getLocation() == null ? 1 : e.getLocation().getLineNr();
            throw new ProblemsException(List.of(Problem.error(file, line + 1, 1,
                    "the front matter does not parse: " + e.getOriginalMessage().lines().findFirst().orElse(""))));
        }
    }

    private Note note(JsonNode head, String prose) {
        List<String> allowed = new ArrayList<>(List.of("title", "kind", "sources"));
        switch (kind) {
            case ADJUSTMENT -> allowed.addAll(List.of("summary", "effects", "rationale", "plain", "watch", "put-back",
                    "effort", "risk", "model", "model-differs", "contested"));
            case READING, CAUSE -> allowed.addAll(List.of("statement", "plain", "shows-as", "contested"));
            case DRIVING -> allowed.addAll(List.of("statement", "plain", "try", "feel", "car-or-driver"));
            case CAUTION -> allowed.addAll(List.of("statement", "plain", "when", "order"));
        }
        head.fieldNames().forEachRemaining(key -> {
            if (!allowed.contains(key)) {
                problem(key, "unknown key \"" + key + "\"", Nearest.to(key, allowed));
            }
        });
        String said = text(head, "kind");
        if (!said.isEmpty() && !kind.is(said)) {
            problem("kind", "this note lies among the " + kind.folder() + ", so its kind is " + kind.id(),
                    Optional.of(kind.id()));
        }
        boolean adjustment = kind == Note.Kind.ADJUSTMENT;
        return new Note(name, kind, text(head, "title"), text(head, adjustment ? "summary" : "statement"),
                adjustment || kind == Note.Kind.CAUTION && !head.has("plain") ? "" : text(head, "plain"),
                adjustment ? ways(head) : Map.of(), adjustment ? number(head, "effort", 1, 5) : 1,
                adjustment ? number(head, "risk", 0, 3) : 0,
                adjustment ? Optional.of(text(head, "model")).filter(model -> !model.equals("represented"))
                        : Optional.empty(),
                differences(head), head.has("shows-as") ? trouble(head.path("shows-as")) : Optional.empty(),
                head.has("contested") ? Optional.of(text(head, "contested")) : Optional.empty(),
                kind == Note.Kind.DRIVING ? Optional.of(new Note.Practice(text(head, "try"), text(head, "feel"),
                        text(head, "car-or-driver"))) : Optional.empty(),
                when(head), head.has("order") ? number(head, "order", 1, 9) : LAST_ORDER, List.copyOf(variants),
                sources(head), prose);
    }

    private Map<Direction, Note.Way> ways(JsonNode head) {
        Map<Direction, Note.Way> ways = new EnumMap<>(Direction.class);
        Optional<Adjuster> adjuster = Word.find(Adjuster.class, name);
        if (adjuster.isEmpty()) {
            problem("title", "a note on an adjustment is named after its adjuster, and there is no adjuster \"" + name
                    + "\"", Nearest.to(name, Word.ids(Adjuster.class)));
            return ways;
        }
        List<String> directions = adjuster.get().directions().stream().map(Word::id).toList();
        for (String key : WAY_KEYS) {
            head.path(key).fieldNames().forEachRemaining(word -> {
                if (!directions.contains(word)) {
                    problem(word, name + " moves " + String.join(" or ", directions) + ", not " + word,
                            Nearest.to(word, directions));
                }
            });
        }
        Map<Direction, List<Effect>> effects = effects(head.path("effects"), adjuster.get().directions());
        for (Direction direction : adjuster.get().directions()) {
            ways.put(direction, new Note.Way(effects.get(direction), text(head, "rationale", direction),
                    text(head, "plain", direction), text(head, "watch", direction),
                    text(head, "put-back", direction)));
        }
        return ways;
    }

    /** The effects of each direction; one of the two may be the other mirrored. */
    private Map<Direction, List<Effect>> effects(JsonNode node, List<Direction> directions) {
        Map<Direction, List<Effect>> effects = new EnumMap<>(Direction.class);
        for (Direction direction : directions) {
            JsonNode said = node.path(direction.id());
            if (!said.path(MIRRORED_EXCEPT).isArray() && !said.asText().equals(MIRRORED)) {
                if (!said.isArray() || said.isEmpty()) {
                    problem("effects", "no effects are given for " + direction.id() + ": list them, or say "
                            + "\"" + MIRRORED + "\" or \"" + MIRRORED_EXCEPT + ": [...]\"", Optional.empty());
                }
                effects.put(direction, listed(said));
            }
        }
        for (Direction direction : directions) {
            if (!effects.containsKey(direction)) {
                if (!effects.containsKey(direction.opposite())) {
                    problem("effects", "of " + direction.id() + " and " + direction.opposite().id() + " one at most "
                            + "is the other mirrored", Optional.empty());
                }
                effects.put(direction, mirrored(effects.getOrDefault(direction.opposite(), List.of()),
                        node.path(direction.id())));
            }
        }
        return effects;
    }

    /** What the way back does: the opposite, save where it is said. */
    private List<Effect> mirrored(List<Effect> there, JsonNode back) {
        if (back.isObject()) {
            keys(back, List.of(MIRRORED_EXCEPT), "effects");
        }
        List<Effect> excepted = listed(back.path(MIRRORED_EXCEPT));
        List<Effect> all = new ArrayList<>();
        for (Effect effect : there) {
            if (excepted.stream().noneMatch(effect::sameAs)) {
                all.add(effect.mirrored());
            }
        }
        all.addAll(excepted);
        return List.copyOf(all);
    }

    private List<Effect> listed(JsonNode list) {
        List<Effect> effects = new ArrayList<>();
        list.forEach(entry -> effect(entry).ifPresent(read -> {
            if (effects.stream().anyMatch(read::sameAs)) {
                problem(read.on().id(), "two effects on " + read.text() + " in the same circumstances",
                        Optional.empty());
            }
            effects.add(read);
        }));
        return List.copyOf(effects);
    }

    private List<Note.Difference> differences(JsonNode head) {
        List<Note.Difference> differences = new ArrayList<>();
        for (JsonNode entry : head.path("model-differs")) {
            keys(entry, DIFFERENCE_KEYS, "model-differs");
            if (!entry.has("on") && !entry.has("rule")) {
                problem("model-differs", "model-differs names what it is on, or the rule", Optional.empty());
            }
            differences.add(new Note.Difference(word(entry, "way", Direction.class),
                    entry.has("on") ? topic(entry) : Optional.empty(), word(entry, "phase", Phase.class),
                    Optional.ofNullable(entry.path("rule").textValue()), text(entry, "because")));
        }
        return List.copyOf(differences);
    }

    private Optional<Note.Trouble> trouble(JsonNode entry) {
        keys(entry, TROUBLE_KEYS, "shows-as");
        return topic(entry).map(on -> new Note.Trouble(on, word(entry, "phase", Phase.class),
                word(entry, "speed", CornerSpeed.class), word(entry, "where", Axle.class)));
    }

    private void keys(JsonNode entry, List<String> known, String where) {
        entry.fieldNames().forEachRemaining(key -> {
            if (!known.contains(key)) {
                problem(key, "unknown key \"" + key + "\" in " + where, Nearest.to(key, known));
            }
        });
    }

    private Optional<Word> topic(JsonNode entry) {
        String on = entry.path("on").asText();
        Optional<Word> topic = Word.find(Symptom.class, on).map(Word.class::cast)
                .or(() -> Word.find(Quality.class, on).map(Word.class::cast));
        if (topic.isEmpty()) {
            Collection<String> known = new TreeSet<>(Word.ids(Symptom.class));
            known.addAll(Word.ids(Quality.class));
            problem(on, "an effect is on a symptom or a quality, and \"" + on + "\" is neither",
                    Nearest.to(on, known));
        }
        return topic;
    }

    private Optional<Effect> effect(JsonNode entry) {
        int before = problems.size();
        keys(entry, EFFECT_KEYS, "an effect");
        String on = entry.path("on").asText();
        Optional<Word> topic = topic(entry);
        JsonNode effect = entry.path("effect");
        if (!effect.isInt() || effect.asInt() < -3 || effect.asInt() > 3) {
            problem(on, "an effect is a whole number from -3 to +3, not " + effect, Optional.empty());
        }
        Map<Matter, List<String>> when = new EnumMap<>(Matter.class);
        when.putAll(when(entry).words());
        word(entry, "drive", Drive.class).ifPresent(drive -> when.put(Matter.DRIVE, List.of(drive.id())));
        word(entry, "surface", Surface.class).ifPresent(surface -> when.put(Matter.SURFACE, List.of(surface.id())));
        Effect read = new Effect(topic.orElse(Symptom.UNDERSTEER), word(entry, "phase", Phase.class),
                word(entry, "speed", CornerSpeed.class), word(entry, "where", Axle.class), new When(when),
                effect.asInt());
        return problems.size() == before ? Optional.of(read) : Optional.empty();
    }

    /** What {@code when} names; always, if there is none. */
    private When when(JsonNode node) {
        JsonNode when = node.path("when");
        if (when.isMissingNode()) {
            return When.ALWAYS;
        }
        Map<Matter, List<String>> words = new EnumMap<>(Matter.class);
        if (!when.isObject() || when.isEmpty()) {
            problem("when", "when names what has to be so, as in {drive: rear, phase: exit}", Optional.empty());
            return When.ALWAYS;
        }
        when.fields().forEachRemaining(entry -> {
            Optional<Matter> matter = Word.find(Matter.class, entry.getKey());
            if (matter.isEmpty()) {
                problem(entry.getKey(), "unknown key \"" + entry.getKey() + "\" in when",
                        Nearest.to(entry.getKey(), Word.ids(Matter.class)));
            } else {
                words.put(matter.get(), words(matter.get(), entry.getValue()));
            }
        });
        return new When(words);
    }

    /** One word, or a list of which any will do. */
    private List<String> words(Matter matter, JsonNode node) {
        List<String> said = new ArrayList<>();
        if (node.isArray()) {
            node.forEach(word -> said.add(word.asText()));
        } else {
            said.add(node.isBoolean() ? (node.booleanValue() ? Matter.YES : Matter.NO) : node.asText());
        }
        List<String> known = matter.words();
        for (String word : said) {
            if (!known.isEmpty() && !known.contains(word)) {
                problem(word, "\"" + word + "\" is no " + matter.id(), Nearest.to(word, known));
            }
        }
        return List.copyOf(said);
    }

    private <W extends Enum<W> & Word> Optional<W> word(JsonNode entry, String key, Class<W> type) {
        if (!entry.has(key)) {
            return Optional.empty();
        }
        String said = entry.get(key).asText();
        Optional<W> word = Word.find(type, said);
        if (word.isEmpty()) {
            problem(said, "\"" + said + "\" is no " + key, Nearest.to(said, Word.ids(type)));
        }
        return word;
    }

    private List<String> sources(JsonNode head) {
        List<String> sources = new ArrayList<>();
        head.path("sources").forEach(source -> sources.add(source.asText().strip()));
        if (sources.isEmpty() || sources.stream().anyMatch(String::isEmpty)) {
            problem("sources", "a note names a source, or says \"common practice, no source\"", Optional.empty());
        }
        return List.copyOf(sources);
    }

    private int number(JsonNode head, String key, int least, int most) {
        JsonNode node = head.path(key);
        if (!node.isInt() || node.asInt() < least || node.asInt() > most) {
            problem(key, key + " is a whole number from " + least + " to " + most, Optional.empty());
        }
        return node.asInt();
    }

    private String text(JsonNode head, String key, Direction direction) {
        return text(head.path(key).path(direction.id()), key, Optional.of(direction));
    }

    private String text(JsonNode head, String key) {
        return text(head.path(key), key, Optional.empty());
    }

    /** A text; or a list of wordings, each with the cases that it is for, and last the one for all others. */
    private String text(JsonNode node, String key, Optional<Direction> way) {
        String what = key + way.map(direction -> " for " + direction.id()).orElse("");
        String place = way.map(Direction::id).orElse(key);
        if (!node.isArray()) {
            return plainText(node, place, what);
        }
        for (int i = 0; i < node.size(); i++) {
            JsonNode wording = node.get(i);
            keys(wording, WORDING_KEYS, what);
            boolean last = i == node.size() - 1;
            if (last == wording.has("when")) {
                problem(place, last ? "the last wording of the " + what + " is for all other cases and has no when"
                        : "every wording of the " + what + " but the last says when it is shown", Optional.empty());
            }
            String text = plainText(wording.path("text"), place, "text in a wording of the " + what);
            if (last) {
                return text;
            }
            variants.add(new Variant(key, way, when(wording), text));
        }
        return plainText(MissingNode.getInstance(), place, what);
    }

    private String plainText(JsonNode node, String key, String what) {
        if (!node.isTextual() || node.asText().isBlank()) {
            problem(key, "the note has no " + what, Optional.empty());
            return "";
        }
        return node.asText().strip();
    }

    /** At the first line that has {@code word}, or at the top. */
    private void problem(String word, String message, Optional<String> suggestion) {
        for (int i = 0; i < lines.size(); i++) {
            int column = lines.get(i).indexOf(word);
            if (!word.isEmpty() && column >= 0) {
                problems.add(Problem.error(file, i + 1, column + 1, message, suggestion));
                return;
            }
        }
        problems.add(Problem.error(file, 1, 1, message, suggestion));
    }
}
