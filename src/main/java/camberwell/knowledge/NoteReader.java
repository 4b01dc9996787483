package camberwell.knowledge;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Nearest;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads one note: YAML front matter between two lines of three dashes, then prose. Tells every problem of the file. */
final class NoteReader {

    private static final int LAST_ORDER = 9;

    private final String file;
    private final String name;
    private final Note.Kind kind;
    private final List<String> lines;
    private final List<Variant> variants = new ArrayList<>();

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
        Problems problems = new Problems();
        String prose = String.join("\n", lines.subList(end + 2, lines.size())).strip();
        // With the first line of dashes, so that lines are counted as in the file.
        Optional<Note> note = Document.parse(file, String.join("\n", lines.subList(0, end + 1)) + "\n", problems)
                .map(document -> note(document.fields("key"), prose));
        problems.warningsOrFail();
        return note.orElseThrow();
    }

    private Note note(Fields head, String prose) {
        boolean adjustment = kind == Note.Kind.ADJUSTMENT;
        boolean caution = kind == Note.Kind.CAUTION;
        kind(head);
        String title = required(head, "title");
        String statement = text(head, adjustment ? "summary" : "statement", Optional.empty());
        String plain = adjustment || caution && !head.has("plain") ? "" : text(head, "plain", Optional.empty());
        Map<Direction, Note.Way> ways = adjustment ? ways(head) : Map.of();
        int effort = adjustment ? number(head, "effort", 1, 6) : 1;
        int risk = adjustment ? number(head, "risk", 0, 3) : 0;
        Optional<String> model = adjustment ? Optional.of(required(head, "model"))
                .filter(it -> !it.equals("represented")) : Optional.empty();
        List<Note.Difference> differences = adjustment ? differences(head) : List.of();
        boolean found = kind == Note.Kind.READING || kind == Note.Kind.CAUSE;
        Optional<Note.Trouble> trouble = found ? head.map("shows-as", "key").flatMap(NoteReader::trouble)
                : Optional.empty();
        Optional<String> contested = adjustment || found ? head.prose("contested") : Optional.empty();
        Optional<Note.Practice> practice = kind == Note.Kind.DRIVING ? Optional.of(new Note.Practice(
                text(head, "try", Optional.empty()), text(head, "feel", Optional.empty()),
                text(head, "car-or-driver", Optional.empty()))) : Optional.empty();
        When when = caution || kind == Note.Kind.DRIVING ? EffectReader.when(head) : When.ALWAYS;
        boolean ordered = (caution || kind == Note.Kind.DRIVING) && head.has("order");
        int order = ordered ? number(head, "order", 1, LAST_ORDER) : LAST_ORDER;
        boolean halts = caution && yes(head, "halts");
        boolean asksNoMore = halts && yes(head, "asks-no-more");
        Note note = new Note(name, kind, title, statement, plain, ways, effort, risk, model, differences, trouble,
                contested, practice, when, order, halts, asksNoMore, List.copyOf(variants), sources(head), prose);
        head.done();
        return note;
    }

    private static boolean yes(Fields head, String key) {
        return head.choice(key, List.of(Matter.YES, Matter.NO)).filter(Matter.YES::equals).isPresent();
    }

    private void kind(Fields head) {
        String said = required(head, "kind");
        if (!said.isEmpty() && !kind.is(said)) {
            head.error("kind", "this note lies among the " + kind.folder() + ", so its kind is " + kind.id(),
                    Optional.of(kind.id()));
        }
    }

    private Map<Direction, Note.Way> ways(Fields head) {
        Map<Direction, Note.Way> ways = new EnumMap<>(Direction.class);
        Optional<Adjuster> adjuster = Word.find(Adjuster.class, name);
        if (adjuster.isEmpty()) {
            head.error("a note on an adjustment is named after its adjuster, and there is no adjuster \"" + name + "\""
                    + Nearest.to(name, Word.ids(Adjuster.class)).map(near -> "; the nearest is \"" + near + "\"")
                    .orElse(""));
            return ways;
        }
        List<Direction> directions = adjuster.get().directions();
        Map<Direction, List<Effect>> effects = required(head, "effects", "direction")
                .map(it -> EffectReader.effects(it, directions)).orElse(Map.of());
        Map<Direction, String> rationale = each(head, "rationale", directions);
        Map<Direction, String> plain = each(head, "plain", directions);
        Map<Direction, String> watch = each(head, "watch", directions);
        Map<Direction, String> putBack = each(head, "put-back", directions);
        for (Direction direction : directions) {
            ways.put(direction, new Note.Way(effects.getOrDefault(direction, List.of()), rationale.get(direction),
                    plain.get(direction), watch.get(direction), putBack.get(direction)));
        }
        return ways;
    }

    private Map<Direction, String> each(Fields head, String key, List<Direction> directions) {
        Map<Direction, String> texts = new EnumMap<>(Direction.class);
        required(head, key, "direction").ifPresent(fields -> {
            directions.forEach(direction -> texts.put(direction, text(fields, key, Optional.of(direction))));
            fields.done();
        });
        return texts;
    }

    private static List<Note.Difference> differences(Fields head) {
        List<Note.Difference> differences = new ArrayList<>();
        for (Fields entry : head.maps("model-differs", "key")) {
            if (!entry.has("on") && !entry.has("rule")) {
                entry.error("model-differs names what it is on, or the rule");
            }
            List<Optional<Word>> topics = entry.has("on")
                    ? EffectReader.anyTopics(entry).stream().map(Optional::of).toList() : List.of(Optional.empty());
            Optional<Direction> way = entry.word("way", Direction.class);
            Optional<Phase> phase = entry.word("phase", Phase.class);
            Optional<String> rule = entry.prose("rule");
            String because = required(entry, "because");
            topics.forEach(on -> differences.add(new Note.Difference(way, on, phase, rule, because)));
            entry.done();
        }
        return List.copyOf(differences);
    }

    private static Optional<Note.Trouble> trouble(Fields entry) {
        Optional<Note.Trouble> trouble = EffectReader.topic(entry).map(on -> EffectReader.trouble(on, entry));
        entry.done();
        return trouble;
    }

    private static List<String> sources(Fields head) {
        List<String> sources = head.texts("sources");
        if (sources.isEmpty()) {
            head.error("sources", "a note names a source, or says \"common practice, no source\"");
        }
        return List.copyOf(sources);
    }

    private static int number(Fields head, String key, int least, int most) {
        head.require(key);
        return head.whole(key, least, most).orElse(least);
    }

    private static String required(Fields fields, String key) {
        fields.require(key);
        return fields.prose(key).orElse("");
    }

    private static Optional<Fields> required(Fields fields, String key, String nounOfItsKeys) {
        fields.require(key);
        return fields.map(key, nounOfItsKeys);
    }

    /** A text; or a list of wordings, each with the cases that it is for, and last the one for all others. */
    private String text(Fields fields, String key, Optional<Direction> way) {
        String place = way.map(Direction::id).orElse(key);
        if (!fields.holdsList(place)) {
            return required(fields, place);
        }
        List<Fields> wordings = fields.maps(place, "key");
        String text = "";
        for (int i = 0; i < wordings.size(); i++) {
            Fields wording = wordings.get(i);
            boolean last = i == wordings.size() - 1;
            if (last == wording.has("when")) {
                wording.error(last ? "the last wording of the " + key + " is for all other cases and has no when"
                        : "every wording of the " + key + " but the last says when it is shown");
            }
            text = required(wording, "text");
            if (!last) {
                variants.add(new Variant(key, way, EffectReader.when(wording), text));
            }
            wording.done();
        }
        return text;
    }
}
