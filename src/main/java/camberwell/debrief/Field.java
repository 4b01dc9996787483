package camberwell.debrief;

import camberwell.vocabulary.CornerKind;
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
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** What can be asked about. Of two questions that tell the same, the one that stands first here is asked. */
public enum Field implements Word {
    /** The kind of car, where no car is known. */
    CAR("car", null),
    /** Which wheels are driven, where nobody knows the kind of car. */
    DRIVE("drive", null),
    /** What the car was doing: one or more symptoms. */
    DOING("doing", Symptom.class),
    PHASE("phase", Phase.class),
    SPEED("speed", CornerSpeed.class),
    WHERE("where", Place.class),
    SINCE("since", Since.class),
    SEVERITY("severity", Severity.class),
    OCCURRENCE("occurrence", Occurrence.class),
    TURN("turn", Turn.class),
    /** What a rule pack wants to know. */
    OWN("own", null),
    /** Whether it was a simulator. */
    SIMULATOR("simulator", null),
    /** Tread temperatures and pressures, which a coach takes in one walk round the car. */
    TYRES("tyres", null),
    /** How the tread looks, where nobody measured it. */
    LOOK("look", null),
    SURFACE("surface", Surface.class),
    /** Temperature of the track. */
    TRACK("track", null),
    /** The way that most turns of the circuit go. */
    CIRCUIT("circuit", Turn.class),
    /** Whether there was anything else, and whether what nobody said is as it is taken. */
    ELSE("else", null),
    /** Which of two things that do not go together is right. */
    DOUBT("doubt", null),
    /** What was changed since the run before. */
    CHANGED("changed", null),
    /** What became of a complaint of the run before. */
    CAME("came", Came.class),
    /** No question: a complaint that was told otherwise afterwards. */
    CORRECTED("corrected", null),
    /** No question: what was said besides what was asked. */
    BESIDES("besides", null),
    /** No question: marks what was carried on from the run before, and is not yet asked about. */
    CARRIED("carried", null),
    /** No question: the kind of corner, which a driver may name. */
    CORNER("corner", CornerKind.class);

    /** What is taken in one line at the end, unless it was said, rather than asked one by one. */
    static final Set<Field> TAKEN = Collections.unmodifiableSet(
            new LinkedHashSet<>(List.of(SURFACE, SEVERITY, OCCURRENCE, SINCE, TURN)));

    private final String id;
    private final Class<? extends Word> type;

    Field(String id, Class<? extends Word> type) {
        this.id = id;
        this.type = type;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether it is asked about each complaint rather than once. */
    public boolean ofComplaint() {
        return ordinal() >= PHASE.ordinal() && ordinal() <= TURN.ordinal();
    }

    /** Whether somebody is asked about it, and does not tell it unasked. */
    boolean isAsked() {
        return this != CORRECTED && this != BESIDES && this != CARRIED && this != CORNER;
    }

    /** Whether it is about one complaint, be it asked or told. */
    boolean aboutComplaint() {
        return ofComplaint() || this == DOUBT || this == CAME || this == CORRECTED;
    }

    /** Whether several words may be said at once. */
    public boolean several() {
        return this == DOING || this == PHASE || this == SPEED || this == WHERE;
    }

    /** What may be told in the same breath, since a driver does: the corner with the phase, how often with how bad. */
    public List<Field> alongside() {
        return switch (this) {
            case DOING -> List.of(PHASE, SPEED, SEVERITY);
            case PHASE -> List.of(SPEED);
            case SEVERITY -> List.of(OCCURRENCE);
            default -> List.of();
        };
    }

    /** The field of a complaint, or of the whole case, that a word answers when it is said of this field. */
    public Field of(Word word) {
        return words().contains(word) ? this : alongside().stream().filter(field -> field.words().contains(word))
                .findFirst().orElseThrow(() -> new IllegalArgumentException(word.id() + " is no answer to " + id));
    }

    /** The field that a word is of, whatever was asked. */
    static Field telling(Word word) {
        for (Field field : values()) {
            if (field.type != null && field.type.isInstance(word)) {
                return field;
            }
        }
        throw new IllegalArgumentException(word.id() + " answers nothing");
    }

    /** Every word that may be said; none where the answer is a number, a car or a sentence. */
    public List<Word> words() {
        return type == null ? List.of() : List.copyOf(Word.all(type));
    }
}
