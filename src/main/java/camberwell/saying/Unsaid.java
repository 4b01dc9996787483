package camberwell.saying;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.List;
import java.util.Optional;

/** What goes without saying of a complaint. */
final class Unsaid {

    private Unsaid() {
    }

    /** The one phase in which that symptom can be; empty where it can be in several. */
    static Optional<Phase> only(Symptom symptom) {
        List<Phase> phases = Word.all(Phase.class).stream().filter(phase -> symptom.senseless(phase).isEmpty()).toList();
        return phases.size() == 1 ? Optional.of(phases.get(0)) : Optional.empty();
    }

    /** Whether a word is a phase that goes without saying: the only one that there is, or that a wheel locks on the brakes. */
    static boolean phase(Symptom symptom, Word word) {
        return word == Phase.BRAKING && (symptom == Symptom.FRONT_LOCKING || symptom == Symptom.REAR_LOCKING)
                || only(symptom).filter(it -> it == word).isPresent();
    }
}
