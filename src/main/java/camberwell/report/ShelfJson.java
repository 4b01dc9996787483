package camberwell.report;

import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.knowledge.Term;
import camberwell.knowledge.When;
import camberwell.vocabulary.Direction;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Notes and words of the trade as they stand in JSON: maps are its objects, lists its arrays. */
public final class ShelfJson {

    private ShelfJson() {
    }

    /** The names of all notes, by kind. */
    public static Object names(Notes notes) {
        Map<String, Object> json = new LinkedHashMap<>();
        for (Note.Kind kind : Note.Kind.values()) {
            json.put(kind.folder(), notes.names(kind));
        }
        return json;
    }

    /** A note with its effects. */
    public static Object note(Note note) {
        Map<String, Object> json = new LinkedHashMap<>();
        json.put("note", note.name());
        json.put("kind", note.kind().id());
        json.put("title", note.title());
        json.put("statement", note.statement());
        json.put("plain", note.plain());
        Map<String, Object> ways = new LinkedHashMap<>();
        note.ways().forEach((direction, way) -> {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("rationale", way.rationale());
            one.put("plain", way.plain());
            one.put("effects", way.effects().stream().map(effect -> {
                Map<String, Object> on = new LinkedHashMap<>();
                on.put("on", effect.text());
                on.put("effect", effect.effect());
                if (!effect.when().always()) {
                    on.put("when", when(effect.when()));
                }
                return on;
            }).toList());
            one.put("watch-next-run", way.watch());
            one.put("put-back-if", way.putBack());
            ways.put(direction.id(), one);
        });
        json.put("directions", ways);
        note.practice().ifPresent(practice -> {
            json.put("try", practice.tryNext());
            json.put("feel", practice.feel());
            json.put("car-or-driver", practice.carOrDriver());
        });
        if (!note.variants().isEmpty()) {
            json.put("variants", note.variants().stream().map(variant -> {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("text-of", variant.key());
                one.put("direction", variant.way().map(Direction::id).orElse(null));
                one.put("when", when(variant.when()));
                one.put("text", variant.text());
                return one;
            }).toList());
        }
        json.put("contested", note.contested().orElse(null));
        json.put("prose", note.prose().strip());
        json.put("sources", note.sources());
        return json;
    }

    private static Map<String, Object> when(When when) {
        Map<String, Object> json = new LinkedHashMap<>();
        when.words().forEach((matter, words) -> json.put(matter.id(), words));
        return json;
    }

    /** Words of the trade as an array. */
    public static Object words(List<Term> terms) {
        return terms.stream().map(term -> {
            Map<String, Object> json = new LinkedHashMap<>();
            json.put("word", term.name());
            json.put("group", term.group());
            json.put("meaning", term.meaning());
            json.put("see", term.see());
            json.put("drawing", term.drawing());
            return json;
        }).toList();
    }
}
