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
import java.util.List;
import java.util.Optional;

/**
 * One complaint as it was said.
 *
 * @param words what narrows it, at most one of each kind
 * @param notIn where or when it is expressly not
 */
public record Told(Symptom symptom, List<Word> words, List<Word> notIn) {

    /** Copies the lists. */
    public Told {
        words = List.copyOf(words);
        notIn = List.copyOf(notIn);
    }

    /** A complaint of which nothing more was said. */
    public static Told of(Symptom symptom) {
        return new Told(symptom, List.of(), List.of());
    }

    /** What was said of that kind. */
    public <W extends Word> Optional<W> word(Class<W> kind) {
        return words.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    /** Whether {@code other} is the same complaint, told with more. */
    boolean within(Told other) {
        return this != other && symptom == other.symptom && other.words.size() > words.size()
                && other.words.containsAll(words);
    }

    /** In words, with nothing that was not said: {@code slight understeer at entry in slow corners}. */
    public String text() {
        StringBuilder text = new StringBuilder();
        word(Severity.class).ifPresent(severity -> text.append(severity.id()).append(' '));
        text.append(symptom.spoken());
        word(Place.class).ifPresent(place -> text.append(" at the ").append(place.id()));
        word(Phase.class).ifPresent(phase -> text.append(' ').append(phase.at()));
        word(CornerSpeed.class).ifPresent(speed -> text.append(" in ").append(speed.id()).append(" corners"));
        word(CornerKind.class).ifPresent(kind -> text.append(" at a ").append(kind.id()));
        word(Turn.class).ifPresent(turn -> text.append(symptom == Symptom.PULLING && turn != Turn.BOTH ? " to the " + turn.id()
                : turn == Turn.BOTH ? " in turns both ways"
                : " in " + turn.id() + " turns"));
        word(Occurrence.class).ifPresent(often -> text.append(", ").append(often == Occurrence.ONCE ? "once"
                : "on " + often.spoken()));
        word(Since.class).ifPresent(since -> text.append(", ").append(text(since)));
        for (Word not : notIn) {
            text.append(", not ").append(not instanceof Phase phase ? phase.at()
                    : not instanceof Since since ? text(since)
                    : not instanceof Turn ? "in " + not.id() + " turns"
                    : not instanceof CornerSpeed ? "in " + not.id() + " corners"
                    : not instanceof CornerKind ? "at a " + not.id() : not.spoken());
        }
        return text.toString();
    }

    /** When it was, in words: {@code late in the run}. */
    public static String text(Since since) {
        return switch (since) {
            case FIRST_LAPS -> "in the first laps";
            case WHOLE_RUN -> "the whole run";
            case LATE_RUN -> "late in the run";
        };
    }
}
