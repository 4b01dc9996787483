package camberwell.saying;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import java.util.List;
import java.util.Set;

/**
 * Of what a degree is said. "Hard on the brakes", "I lift a little", "a bit more throttle": those are of what the driver
 * does, and tell nothing of how bad a complaint is.
 */
final class Degrees {

    /** How something is done rather than how bad it is. */
    private static final Set<String> MANNERS = Set.of("hard", "harder", "heavy", "heavily", "gently", "gentle", "lightly",
            "strongly", "firmly", "proper", "properly");
    /** What a driver gives more or less of. */
    private static final Set<String> GIVEN = Set.of("throttle", "gas", "power", "brake", "brak", "lock", "speed", "fuel",
            "lap", "time", "wing", "camber", "toe", "pressure", "accelerator", "pedal", "angle", "further", "longer", "later",
            "earlier", "bump", "kerb", "crest", "dip", "jump", "hump", "corner", "turn", "straight", "stop", "deeper", "wider", "higher", "lower");
    private static final Set<String> BETWEEN = Set.of("more", "of", "less", "too", "the", "extra", "on", "steer", "initial");

    private Degrees() {
    }

    static boolean is(Atom atom) {
        return !atom.head() && atom.as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof Severity).isPresent();
    }

    /** Whether the degree at {@code i} is one of something else than a complaint. */
    static boolean ofSomethingElse(List<Atom> atoms, List<Token> tokens, int i) {
        Atom degree = atoms.get(i);
        Atom next = i + 1 < atoms.size() ? atoms.get(i + 1) : null;
        if (next != null && next.head()) {
            return false;
        }
        String stem = tokens.get(degree.from()).stem();
        boolean onlyThere = stem.equals("worst") || stem.equals("bad") && degree.from() > 0 && tokens.get(degree.from() - 1).stem().equals("only");
        return onlyThere || next != null && next.from() == degree.to() && next.meanings().isEmpty() || given(tokens, degree.to())
                || i > 0 && atoms.get(i - 1).to() == degree.from() && done(atoms.get(i - 1), stem);
    }

    private static boolean given(List<Token> tokens, int from) {
        int at = from;
        while (at < tokens.size() && BETWEEN.contains(tokens.get(at).stem())) {
            at++;
        }
        return at < tokens.size() && GIVEN.contains(tokens.get(at).stem());
    }

    /** Whether the atom is something done, of which the degree tells how. */
    private static boolean done(Atom before, String degree) {
        return before.as(Meaning.Circumstance.class).filter(it -> it.act() || MANNERS.contains(degree)
                && it.words().stream().anyMatch(Phase.class::isInstance)).isPresent();
    }
}
