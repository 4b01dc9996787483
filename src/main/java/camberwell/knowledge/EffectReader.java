package camberwell.knowledge;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Quality;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import camberwell.yaml.Fields;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads what a note says of the effects of a change, and when something holds. */
final class EffectReader {

    private static final String MIRRORED = "mirrored";
    private static final String MIRRORED_EXCEPT = "mirrored-except";
    private static final int STRONGEST = 3;

    private EffectReader() {
    }

    /** The effects of each direction; one of the two may be the other mirrored. */
    static Map<Direction, List<Effect>> effects(Fields fields, List<Direction> directions) {
        Map<Direction, List<Effect>> effects = new EnumMap<>(Direction.class);
        Map<Direction, List<Effect>> excepted = new EnumMap<>(Direction.class);
        for (Direction direction : directions) {
            String key = direction.id();
            fields.require(key);
            if (fields.holdsMap(key)) {
                fields.map(key, "key").ifPresent(back -> {
                    back.require(MIRRORED_EXCEPT);
                    excepted.put(direction, listed(back, MIRRORED_EXCEPT));
                    back.done();
                });
            } else if (fields.holdsList(key)) {
                effects.put(direction, listed(fields, key));
            } else if (fields.has(key, MIRRORED)) {
                excepted.put(direction, List.of());
            } else if (fields.has(key)) {
                fields.error(key, "the effects of " + key + " are a list, or \"" + MIRRORED + "\", or \"" + MIRRORED_EXCEPT
                        + ": [...]\"");
            }
        }
        excepted.forEach((direction, exceptions) -> {
            if (!effects.containsKey(direction.opposite())) {
                fields.error(direction.id(), "of " + direction.id() + " and " + direction.opposite().id()
                        + " one at most is the other mirrored");
            }
            effects.put(direction, mirrored(effects.getOrDefault(direction.opposite(), List.of()), exceptions));
        });
        fields.done();
        return effects;
    }

    /** What the way back does: the opposite, save where it is said. */
    private static List<Effect> mirrored(List<Effect> there, List<Effect> excepted) {
        List<Effect> all = new ArrayList<>();
        for (Effect effect : there) {
            if (excepted.stream().noneMatch(effect::sameAs)) {
                all.add(effect.mirrored());
            }
        }
        all.addAll(excepted);
        return List.copyOf(all);
    }

    private static List<Effect> listed(Fields fields, String key) {
        List<Effect> effects = new ArrayList<>();
        List<Fields> entries = fields.maps(key, "key");
        if (entries.isEmpty() && fields.holdsList(key)) {
            fields.error(key, "no effects are given for " + key);
        }
        for (Fields entry : entries) {
            effect(entry).ifPresent(read -> {
                if (effects.stream().anyMatch(read::sameAs)) {
                    entry.error("two effects on " + read.text() + " in the same circumstances");
                }
                effects.add(read);
            });
        }
        return List.copyOf(effects);
    }

    private static Optional<Effect> effect(Fields entry) {
        Optional<Word> topic = topic(entry);
        entry.require("effect");
        Optional<Integer> effect = entry.whole("effect", -STRONGEST, STRONGEST);
        Map<Matter, List<String>> when = new EnumMap<>(Matter.class);
        when.putAll(when(entry).words());
        entry.word("drive", Drive.class).ifPresent(drive -> when.put(Matter.DRIVE, List.of(drive.id())));
        entry.word("surface", Surface.class).ifPresent(surface -> when.put(Matter.SURFACE, List.of(surface.id())));
        Optional<Phase> phase = entry.word("phase", Phase.class);
        Optional<CornerSpeed> speed = entry.word("speed", CornerSpeed.class);
        Optional<Axle> where = entry.word("where", Axle.class);
        entry.done();
        return topic.isEmpty() || effect.isEmpty() ? Optional.empty()
                : Optional.of(new Effect(topic.get(), phase, speed, where, new When(when), effect.get()));
    }

    /** What {@code on} names: a symptom or a quality. */
    static Optional<Word> topic(Fields entry) {
        entry.require("on");
        return entry.choice("on", topics()).map(EffectReader::topic);
    }

    /** What {@code on} names, one or a list of them. */
    static List<Word> anyTopics(Fields entry) {
        return entry.choices("on", topics()).stream().map(EffectReader::topic).toList();
    }

    private static List<String> topics() {
        List<String> known = new ArrayList<>(Word.ids(Symptom.class));
        known.addAll(Word.ids(Quality.class));
        return known;
    }

    private static Word topic(String id) {
        Optional<Symptom> symptom = Word.find(Symptom.class, id);
        return symptom.isPresent() ? symptom.get() : Word.of(Quality.class, id);
    }

    /** The complaint about {@code on} that an entry describes. */
    static Note.Trouble trouble(Word on, Fields entry) {
        return new Note.Trouble(on, entry.word("phase", Phase.class), entry.word("speed", CornerSpeed.class),
                entry.word("where", Axle.class));
    }

    /** What {@code when} names; always, if there is none. */
    static When when(Fields fields) {
        Map<Matter, List<String>> words = new EnumMap<>(Matter.class);
        fields.map("when", "key").ifPresent(when -> {
            if (when.empty()) {
                when.error("when names what has to be so, as in {drive: rear, phase: exit}");
            }
            for (Matter matter : Matter.values()) {
                if (when.has(matter.id())) {
                    words.put(matter, words(matter, when));
                }
            }
            when.done(Word.ids(Matter.class));
        });
        return new When(words);
    }

    /** One word, or a list of which any will do. */
    private static List<String> words(Matter matter, Fields when) {
        List<String> known = matter.words();
        if (!known.isEmpty()) {
            return List.copyOf(when.choices(matter.id(), known));
        }
        return when.holdsList(matter.id()) ? List.copyOf(when.texts(matter.id()))
                : when.text(matter.id()).map(List::of).orElse(List.of());
    }
}
