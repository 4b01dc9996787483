package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** A complaint while it is still being told. */
final class Telling {

    /** In the order in which they are told. */
    private static final List<Class<? extends Word>> KINDS = List.of(Place.class, Phase.class, CornerSpeed.class,
            CornerKind.class, Turn.class, Severity.class, Occurrence.class, Since.class);

    private static final Set<Symptom> OF_THE_TREAD = Set.of(Symptom.HOT_INNER_EDGE, Symptom.HOT_OUTER_EDGE, Symptom.HOT_MIDDLE,
            Symptom.COLD_MIDDLE);

    private final Symptom symptom;
    private final Map<Class<? extends Word>, Word> words = new LinkedHashMap<>();
    private final Set<Word> notIn = new LinkedHashSet<>();
    private boolean withdrawn;
    /** The words that it rests on, where they are too few to take it without asking back; empty where they are not. */
    private String doubted = "";
    private Clause clause;
    /** Its clause as it was typed. */
    private String typed = "";
    /** Whether its clause names a corner by its number. */
    private boolean numbered;

    Telling(Symptom symptom) {
        this.symptom = symptom;
    }

    /** The same complaint once more. */
    Telling copy() {
        Telling copy = new Telling(symptom);
        copy.doubted = doubted;
        copy.in(clause, typed, numbered);
        copy.words.putAll(words);
        copy.notIn.addAll(notIn);
        return copy;
    }

    /** The same complaint, if it comes without warning: what slides then snaps. */
    Telling sudden() {
        if (symptom != Symptom.OVERSTEER) {
            return this;
        }
        Telling snap = new Telling(Symptom.SNAP_OVERSTEER);
        snap.doubted = doubted;
        snap.in(clause, typed, numbered);
        snap.words.putAll(words);
        snap.notIn.addAll(notIn);
        return snap;
    }

    /** Places it at an end of the car or at a wheel; false where that does not go with it. */
    boolean at(Meaning.Thing thing) {
        Optional<Place> place = Word.find(Place.class, thing.place());
        if (place.isPresent() && symptom.ofTyre()) {
            add(place.get());
        }
        return place.isPresent() && (symptom.ofTyre() ? says(place.get())
                : symptom.axle().filter(axle -> axle == place.get().axle()).isPresent());
    }

    /** The clause that tells it. */
    void in(Clause telling, String words, boolean number) {
        clause = telling;
        typed = words;
        numbered = number;
    }

    /**
     * Whether one says that the front slides, the other that the rear does, in another clause and with no other place or time.
     */
    boolean atOddsWith(Telling other) {
        return symptom == Symptom.UNDERSTEER && (other.symptom == Symptom.OVERSTEER || other.symptom == Symptom.SNAP_OVERSTEER)
                && clause != other.clause && !apart() && !other.apart() && sameWhereAndWhen(other) && doubted.isEmpty()
                && other.doubted.isEmpty();
    }

    /** Whether it is told as one thing of several: "first push, then snap", "sometimes it pushes", "T3 push". */
    private boolean apart() {
        return clause.join() == Meaning.Sign.THEN || words.containsKey(Occurrence.class) || numbered;
    }

    private boolean sameWhereAndWhen(Telling other) {
        return Stream.of(Phase.class, CornerSpeed.class, Turn.class, Since.class)
                .allMatch(kind -> Objects.equals(words.get(kind), other.words.get(kind))) && notIn.equals(other.notIn);
    }

    /** Leaves it to be asked about, with these words. */
    void doubt(String words) {
        doubted = words;
    }

    /** Its clause as it was typed. */
    String typed() {
        return typed;
    }

    /** The words to ask about; empty where it is sure. */
    String doubted() {
        return doubted;
    }

    boolean knows(Word word) {
        return words.containsKey(kind(word));
    }

    boolean says(Word word) {
        return words.get(kind(word)) == word;
    }

    /** Adds a word; one of the same kind gives way. */
    void put(Word word) {
        words.put(kind(word), word);
    }

    /** Adds a word if none of its kind was said. */
    void add(Word word) {
        words.putIfAbsent(kind(word), word);
    }

    void not(Word word) {
        if (!knows(word)) {
            notIn.add(word);
        }
    }

    private static Class<? extends Word> kind(Word word) {
        return word.getClass();
    }

    /** The complaint; where only one word of a kind is left, that one was meant. */
    Told told() {
        onlyOneLeft(CornerSpeed.class);
        if (OF_THE_TREAD.contains(symptom) && words.get(Phase.class) == Phase.MID_CORNER) {
            // "Both edges are worn, the middle looks fresh": that is the middle of the tread.
            words.remove(Phase.class);
        }
        if (words.get(Phase.class) == Phase.STRAIGHT) {
            // Speed on a straight is no speed of a corner.
            words.remove(CornerSpeed.class);
            words.remove(CornerKind.class);
        }
        if (!words.containsKey(Turn.class) && notIn.contains(Turn.LEFT) != notIn.contains(Turn.RIGHT)) {
            put(notIn.contains(Turn.LEFT) ? Turn.RIGHT : Turn.LEFT);
        }
        if (!words.containsKey(Since.class) && notIn.contains(Since.FIRST_LAPS) != notIn.contains(Since.LATE_RUN)) {
            // What is fine early is not there the whole run either.
            put(notIn.contains(Since.FIRST_LAPS) ? Since.LATE_RUN : Since.FIRST_LAPS);
        }
        List<Word> said = new ArrayList<>();
        for (Class<? extends Word> kind : KINDS) {
            if (words.containsKey(kind)) {
                said.add(words.get(kind));
            }
        }
        return new Told(symptom, said, notIn.stream().filter(word -> !knows(word)).toList());
    }

    /** Takes a phase back in which nobody can mean it, and says so; empty where all makes sense. */
    Optional<String> senseless() {
        withdrawn = (symptom == Symptom.SLOW_TURN_IN || symptom == Symptom.NERVOUS_TURN_IN)
                && words.get(Phase.class) instanceof Phase elsewhere && symptom.senseless(elsewhere).isPresent()
                || symptom == Symptom.WHEELSPIN && words.get(Phase.class) == Phase.BRAKING;
        Optional<String> why = words.get(Phase.class) instanceof Phase phase ? symptom.senseless(phase)
                : Optional.empty();
        return why.map(it -> symptom.spoken() + " " + ((Phase) words.remove(Phase.class)).at() + ": " + it);
    }

    /** Whether nothing is left of it without its phase: what is lazy in the middle of a corner is no slow turn-in. */
    boolean withdrawn() {
        return withdrawn;
    }

    private void onlyOneLeft(Class<CornerSpeed> kind) {
        List<CornerSpeed> left = Arrays.stream(kind.getEnumConstants()).filter(word -> !notIn.contains(word)).toList();
        if (left.size() == 1) {
            add(left.get(0));
        }
    }
}
