package camberwell.saying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A stretch of a sentence between two joins.
 *
 * @param join what joins it to the clause before; {@code PLAIN} for a comma and for the first of a sentence
 * @param from its first token
 * @param to the token after its last
 * @param atoms what means something, and each word that is not known, as an atom that means nothing
 */
record Clause(Meaning.Sign join, int from, int to, List<Atom> atoms) {

    private static final List<Meaning.Sign> JOINS =
            List.of(Meaning.Sign.EXCEPT, Meaning.Sign.BUT, Meaning.Sign.THEN, Meaning.Sign.OR, Meaning.Sign.AND);

    private static final Set<String> RESULTS = Set.of("i", "my", "you", "we", "that");

    /** The clauses of a sentence; those that mean nothing are left out. */
    static List<Clause> of(Sayings sayings, List<Token> sentence) {
        List<Clause> clauses = new ArrayList<>();
        List<Atom> atoms = new ArrayList<>();
        Meaning.Sign join = Meaning.Sign.PLAIN;
        int from = 0;
        for (Atom atom : whole(sayings, sentence)) {
            Optional<Meaning.Sign> joins = JOINS.stream().filter(atom::is).findFirst();
            boolean comma = sentence.get(atom.from()).comma();
            if (!comma && joins.isEmpty()) {
                if (!atoms.isEmpty() && resultOf(sentence, atom.from())) {
                    // "It slams down so hard my helmet hits the bar": what comes of it is another statement.
                    clauses.add(new Clause(join, from, atom.from(), List.copyOf(atoms)));
                    atoms.clear();
                    join = Meaning.Sign.PLAIN;
                    from = atom.from();
                }
                if (fineThere(atoms) && (atom.head() || atom.as(Meaning.Circumstance.class).isPresent())) {
                    // "Entry fine mid push": a coach leaves the comma out.
                    clauses.add(new Clause(join, from, atom.from(), List.copyOf(atoms)));
                    atoms.clear();
                    join = Meaning.Sign.BUT;
                    from = atom.from();
                }
                atoms.add(atom);
                continue;
            }
            if (!atoms.isEmpty()) {
                clauses.add(new Clause(join, from, atom.from(), List.copyOf(atoms)));
                atoms.clear();
                join = Meaning.Sign.PLAIN;
            }
            // Of ", but then" what is said first but the comma counts.
            join = join == Meaning.Sign.PLAIN ? joins.orElse(join) : join;
            from = atom.to();
        }
        if (!atoms.isEmpty()) {
            clauses.add(new Clause(join, from, sentence.size(), List.copyOf(atoms)));
        }
        return clauses;
    }

    /** Whether what begins there comes of something that is so and so: "so hard my helmet", "so bad that I". */
    private static boolean resultOf(List<Token> sentence, int at) {
        return at > 1 && RESULTS.contains(sentence.get(at).stem()) && sentence.get(at - 2).typed().equalsIgnoreCase("so")
                && !sentence.get(at - 1).comma();
    }

    /** Whether all that is said so far is that all is well somewhere: "entry fine". */
    private static boolean fineThere(List<Atom> atoms) {
        return atoms.size() == 2 && atoms.get(0).as(Meaning.Circumstance.class).isPresent() && !atoms.get(0).head()
                && atoms.get(1).meanings().equals(List.of(Meaning.Sign.FINE));
    }

    /** The phrases, and between them an atom without a meaning for each comma and each word that is not known. */
    private static List<Atom> whole(Sayings sayings, List<Token> sentence) {
        List<Atom> whole = new ArrayList<>();
        int at = 0;
        for (Atom atom : Cover.of(sayings, sentence)) {
            rest(sayings, sentence, at, atom.from(), whole);
            whole.add(atom);
            at = atom.to();
        }
        rest(sayings, sentence, at, sentence.size(), whole);
        return whole;
    }

    private static void rest(Sayings sayings, List<Token> sentence, int from, int to, List<Atom> into) {
        for (int at = from; at < to; at++) {
            if (!sayings.skipped(sentence.get(at).stem())) {
                into.add(new Atom(at, at + 1, 1, List.of(), List.of()));
            }
        }
    }

    /** What follows the last mention of somebody or something else, where a thing is named there; or else all of it. */
    Clause afterOthers() {
        for (int i = atoms.size() - 1; i >= 0; i--) {
            if (atoms.get(i).is(Meaning.Sign.OTHERS)) {
                List<Atom> rest = atoms.subList(i + 1, atoms.size());
                return rest.isEmpty() || rest.stream().noneMatch(atom -> atom.as(Meaning.Thing.class).isPresent()) ? this
                        : new Clause(join, rest.get(0).from(), to, List.copyOf(rest));
            }
        }
        return this;
    }

    /** Whether a complaint may begin in it. */
    boolean hasHead() {
        return atoms.stream().anyMatch(Atom::head);
    }

    boolean has(Meaning.Sign sign) {
        return atoms.stream().anyMatch(atom -> atom.is(sign));
    }

    /** Whether it tells what is not; what something is only compared with may be past: "less stable than it was last week". */
    boolean unreal() {
        for (Atom atom : atoms) {
            if (atom.is(Meaning.Sign.THAN)) {
                return false;
            }
            if (atom.is(Meaning.Sign.UNREAL)) {
                return true;
            }
        }
        return false;
    }
}
