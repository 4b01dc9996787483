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
            "earlier", "bump", "kerb", "crest", "dip", "jump", "hump", "corner", "turn", "straight", "stop", "deeper", "wider",
                    "higher", "lower");
    private static final Set<String> BETWEEN = Set.of("more", "of", "less", "too", "the", "extra", "on", "steer", "initial");

    /** After "a lot of", these are what was told. */
    private static final Set<String> ITSELF = Set.of("it", "that", "this");

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
        if (headFollows(atoms, i)) {
            return false;
        }
        String stem = tokens.get(degree.from()).stem();
        String last = tokens.get(degree.to() - 1).stem();
        int to = degree.to();
        int of = last.equals("of") ? to - 1 : to < tokens.size() && tokens.get(to).stem().equals("of") ? to : -1;
        boolean amount = of >= 0 && !(of + 1 < tokens.size() && ITSELF.contains(tokens.get(of + 1).stem()))
                || stem.equals("little") && degree.words() == 1 && next != null && next.from() == to;
        boolean forAWhile = degree.from() > 0 && tokens.get(degree.from() - 1).stem().equals("for")
                || degree.from() > 1 && tokens.get(degree.from() - 2).stem().equals("for");
        if (amount || forAWhile) {
            // "A lot of noise", "little balls", "for a bit": how much there is of that, or how long.
            return true;
        }
        boolean onlyThere = stem.equals("worst") || stem.equals("bad") && degree.from() > 0
                && tokens.get(degree.from() - 1).stem().equals("only");
        return onlyThere || next != null && next.from() == degree.to() && next.meanings().isEmpty() || given(tokens, degree.to())
                || i > 0 && atoms.get(i - 1).to() == degree.from() && done(atoms.get(i - 1), stem);
    }

    /** Whether a complaint is next, with no more than where or when it is before it: "a bit of entry oversteer". */
    private static boolean headFollows(List<Atom> atoms, int i) {
        int next = i + 1;
        while (next < atoms.size() && !atoms.get(next).head() && !is(atoms.get(next))
                && atoms.get(next).as(Meaning.Circumstance.class).isPresent()) {
            next++;
        }
        return next < atoms.size() && atoms.get(next).head()
                && (next == i + 1 || atoms.get(next).as(Meaning.Complaint.class).isPresent());
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
