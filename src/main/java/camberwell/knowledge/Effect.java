package camberwell.knowledge;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Word;
import java.util.Optional;

/**
 * What one step of a change does to one thing. What is left open holds for all.
 *
 * @param on a {@link camberwell.vocabulary.Symptom} or a {@link camberwell.vocabulary.Quality}
 * @param when it does so: driven wheels, surface, the present setting, what was found
 * @param effect -3 … +3; positive is better for the driver, 0 takes back what a more general entry says
 */
public record Effect(Word on, Optional<Phase> phase, Optional<CornerSpeed> speed, Optional<Axle> where, When when,
        int effect) {

    /** How many circumstances it is bound to: of two effects that both apply, the more particular one holds. */
    public int particularity() {
        return (phase.isPresent() ? 1 : 0) + (speed.isPresent() ? 1 : 0) + (where.isPresent() ? 1 : 0)
                + when.words().size();
    }

    /** Whether both speak of the same thing in the same circumstances. */
    boolean sameAs(Effect other) {
        return on == other.on && phase.equals(other.phase) && speed.equals(other.speed) && where.equals(other.where)
                && when.equals(other.when);
    }

    /** What the way back does. */
    Effect mirrored() {
        return new Effect(on, phase, speed, where, when, -effect);
    }

    /** In words: {@code understeer at mid-corner in slow corners}. */
    public String text() {
        StringBuilder text = new StringBuilder(on.spoken());
        where.ifPresent(axle -> text.append(" at the ").append(axle.id()));
        phase.ifPresent(during -> text.append(' ').append(during.at()));
        speed.ifPresent(corner -> text.append(" in ").append(corner.id()).append(" corners"));
        return text.toString();
    }
}
