package camberwell.knowledge;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Group;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Standing;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;

/** What a {@code when} of a note may ask about, by its key there. */
public enum Matter implements Word {
    /** Which wheels are driven. */
    DRIVE("drive"),
    SURFACE("surface"),
    /** Whether the car is one of a simulator: yes or no. */
    SIMULATOR("simulator"),
    /** The way that most turns of the circuit go. */
    CIRCUIT("circuit"),
    /** How the note's own adjuster stands now. */
    SETTING("setting"),
    /** What the rules found to be likely, by the names of their notes. */
    FINDING("finding"),
    /** What the rules did not find. */
    NO_FINDING("no-finding"),
    /** Cautions that are not shown, by the names of their notes: a habit that one of them forbids is not advised beside it. */
    NO_CAUTION("no-caution"),
    /** What is advised to be changed: groups of adjusters, or {@code any}. */
    CHANGING("changing"),
    /** The symptom of the complaint in hand; this and what follows are met by one complaint together. */
    REPORTED("reported"),
    PHASE("phase"),
    SPEED("speed"),
    WHERE("where"),
    SEVERITY("severity"),
    OCCURRENCE("occurrence"),
    SINCE("since"),
    TURN("turn");

    /** Changing anything at all. */
    public static final String ANY = "any";
    public static final String YES = "yes";
    public static final String NO = "no";

    private final String id;

    Matter(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }

    /** Whether it is about a complaint. */
    public boolean ofComplaint() {
        return ordinal() >= REPORTED.ordinal();
    }

    /** The words that may be said of it; none where they are names of notes. */
    public List<String> words() {
        return switch (this) {
            case DRIVE -> Word.ids(Drive.class);
            case SURFACE -> Word.ids(Surface.class);
            case SIMULATOR -> List.of(YES, NO);
            case CIRCUIT, TURN -> Word.ids(Turn.class);
            case SETTING -> Word.ids(Standing.class);
            case FINDING, NO_FINDING, NO_CAUTION -> List.of();
            case CHANGING -> {
                List<String> words = new ArrayList<>(Word.ids(Group.class));
                words.add(ANY);
                yield words;
            }
            case REPORTED -> Word.ids(Symptom.class);
            case PHASE -> Word.ids(Phase.class);
            case SPEED -> Word.ids(CornerSpeed.class);
            case WHERE -> Word.ids(Place.class);
            case SEVERITY -> Word.ids(Severity.class);
            case OCCURRENCE -> Word.ids(Occurrence.class);
            case SINCE -> Word.ids(Since.class);
        };
    }
}
