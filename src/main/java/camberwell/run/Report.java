package camberwell.run;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import java.util.Optional;

/** One complaint of the driver or the coach. What nobody said stays open. */
public record Report(Symptom symptom, Optional<Place> where, Optional<Phase> phase, Optional<CornerSpeed> speed,
        Severity severity, Occurrence occurrence, Optional<Since> since, Optional<Turn> turn) {

    /** A complaint with nothing said beyond the symptom: clear, and on every lap. */
    public static Report of(Symptom symptom) {
        return new Report(symptom, Optional.empty(), Optional.empty(), Optional.empty(), Severity.CLEAR,
                Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
    }

    /** In words, as far as things were said: {@code clear understeer at entry in slow corners, every lap}. */
    public String text() {
        StringBuilder text = new StringBuilder(severity.id()).append(' ')
                .append(complaint(symptom, where, phase, speed));
        turn.ifPresent(side -> text.append(side == Turn.BOTH ? " in turns both ways"
                : " in " + side.id() + " turns only"));
        text.append(switch (occurrence) {
            case EVERY_LAP -> ", every lap";
            case SOME_LAPS -> ", some laps";
            case ONCE -> ", once";
        });
        since.ifPresent(part -> text.append(switch (part) {
            case FIRST_LAPS -> ", in the first laps";
            case WHOLE_RUN -> ", the whole run";
            case LATE_RUN -> ", late in the run";
        }));
        return text.toString();
    }

    /** A complaint without how bad and how often it is: {@code understeer at entry in slow corners}. */
    static StringBuilder complaint(Symptom symptom, Optional<Place> where, Optional<Phase> phase,
            Optional<CornerSpeed> speed) {
        StringBuilder text = new StringBuilder(symptom.spoken());
        where.ifPresent(place -> text.append(" at the ").append(place.tyres()));
        phase.ifPresent(when -> text.append(' ').append(when.at()));
        speed.ifPresent(corner -> text.append(" in ").append(corner.id()).append(" corners"));
        return text;
    }
}
