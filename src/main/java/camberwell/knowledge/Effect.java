package camberwell.knowledge;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What one step of a change does to one thing. What is left open holds for all.
 *
 * @param on a {@link camberwell.vocabulary.Symptom} or a {@link camberwell.vocabulary.Quality}
 * @param effect -3 … +3; positive is better for the driver, 0 takes back what a more general entry says
 */
public record Effect(Word on, Optional<Phase> phase, Optional<CornerSpeed> speed, Optional<Drive> drive,
        Optional<Surface> surface, Optional<Axle> where, int effect) {

    /** How many circumstances it is bound to: of two effects that both apply, the more particular one holds. */
    public int particularity() {
        return (int) Stream.of(phase, speed, drive, surface, where).filter(Optional::isPresent).count();
    }

    /** In words: {@code understeer at mid-corner in slow corners}. */
    public String text() {
        StringBuilder text = new StringBuilder(on.spoken());
        where.ifPresent(axle -> text.append(" at the ").append(axle.id()));
        phase.ifPresent(when -> text.append(' ').append(when.at()));
        speed.ifPresent(corner -> text.append(" in ").append(corner.id()).append(" corners"));
        return text.toString();
    }
}
