package camberwell.saying;

import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The words of one clause, and which of them are denied. */
final class Wording {

    private static final Set<String> REASONS = Set.of("becaus", "because", "or", "without", "else", "otherwis");

    final Sayings sayings;
    final List<Token> tokens;
    /** What means something, without what says nothing. */
    final List<Atom> atoms;
    final int from;
    final int to;
    /** What is said not to be. */
    final Set<Atom> negated = new HashSet<>();
    /** What has done its work and narrows nothing. */
    final Set<Atom> silent = new HashSet<>();

    Wording(Sayings sayings, Clause clause, List<Token> tokens) {
        this.sayings = sayings;
        this.tokens = tokens;
        this.atoms = compared(clause.atoms());
        this.from = clause.from();
        this.to = clause.to();
        negate();
        become();
    }

    /** Without what says nothing, and without what something is only compared with: "hotter than the edges, on the rears". */
    private static List<Atom> compared(List<Atom> all) {
        List<Atom> rest = new ArrayList<>();
        boolean than = false;
        for (Atom atom : all) {
            if (atom.is(Meaning.Sign.THAN)) {
                than = true;
            } else if (!atom.meanings().equals(List.of(Meaning.Sign.PLAIN))) {
                if (!than) {
                    rest.add(atom);
                }
                than = false;
            }
        }
        return List.copyOf(rest);
    }

    /** Finds what "not" is said of: the next thing of any weight, and of "not the front" also what the front does. */
    private void negate() {
        boolean not = false;
        boolean before = false;
        for (Atom atom : atoms) {
            if (atom.is(Meaning.Sign.NOT) && !atom.head() && orElse(atom)) {
                continue;
            }
            if (atom.is(Meaning.Sign.NOT) && !atom.head()) {
                // "I cannot brake without locking the fronts": they lock.
                boolean twice = before && tokens.get(atom.from()).stem().equals("without");
                if (twice) {
                    negated.clear();
                }
                not = !twice;
                before = true;
            } else if (not && !Degrees.is(atom)) {
                // Of "not call it loose" nobody knows what is denied: all of it.
                negated.add(atom);
                not = atom.as(Meaning.Thing.class).isPresent() || atom.meanings().isEmpty();
            } else if (not) {
                negated.add(atom);
            }
        }
    }

    /** "If I don't, the front slides": what is not done is not what follows. */
    private boolean orElse(Atom not) {
        int next = atoms.indexOf(not) + 1;
        boolean condition = tokens.subList(Math.max(from, not.from() - 3), not.from()).stream()
                .anyMatch(token -> token.stem().equals("if"));
        return condition && next < atoms.size() && (atoms.get(next).as(Meaning.Complaint.class).isPresent()
                || atoms.get(next).as(Meaning.Thing.class).filter(it -> !it.name().equals("driver")).isPresent());
    }

    /** "The understeer turned into oversteer": what was before is no more. */
    private void become() {
        for (int i = 1; i + 1 < atoms.size(); i++) {
            int last = atoms.get(i).to() - 1;
            if (last > 0 && tokens.get(last).stem().equals("into") && tokens.get(last - 1).stem().equals("turn")
                    && atoms.get(i - 1).head() && atoms.get(i + 1).head()) {
                negated.add(atoms.get(i - 1));
                silent.add(atoms.get(i));
            }
        }
    }

    /** Whether that thing is named. */
    boolean names(String thing) {
        return atoms.stream().anyMatch(atom -> atom.as(Meaning.Thing.class).filter(it -> it.name().equals(thing)).isPresent());
    }

    /** Whether something of the clause, that is not denied, has that sign. */
    boolean says(Meaning.Sign sign) {
        return atoms.stream().anyMatch(atom -> atom.is(sign) && !negated.contains(atom));
    }

    /** Whether it happens at once. */
    boolean suddenly() {
        return atoms.stream().anyMatch(atom -> atom.is(Meaning.Sign.SUDDENLY) && !negated.contains(atom)
                || atom.within().stream().anyMatch(it -> it.is(Meaning.Sign.SUDDENLY)));
    }

    /** The thing that is named before, if it is more than "it" or "I". */
    Optional<Meaning.Thing> subject(int i) {
        for (int j = i - 1; j >= 0; j--) {
            Optional<Meaning.Thing> named = atoms.get(j).as(Meaning.Thing.class);
            if (named.isPresent()) {
                return named.filter(it -> !it.name().equals("car") && !it.name().equals("driver"));
            }
        }
        return Optional.empty();
    }

    /** "Light" and the like say how bad it is where the complaint itself follows. */
    boolean degreeHere(int i) {
        Atom atom = atoms.get(i);
        Optional<Meaning.Circumstance> degree = atom.as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof Severity);
        return degree.isPresent() && i + 1 < atoms.size() && (atoms.get(i + 1).as(Meaning.Complaint.class).isPresent()
                || degree.get().role() == Meaning.Role.RAISES && atoms.get(i + 1).head());
    }

    /** Whether what follows is a reason. */
    boolean reasonAfter(Atom atom) {
        return tokens.subList(atom.to(), tokens.size()).stream().anyMatch(token -> REASONS.contains(token.stem()));
    }

    /** Whether the next thing that is said is a kind of corner. */
    boolean cornerFollows(int i) {
        return i + 1 < atoms.size() && atoms.get(i + 1).as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof CornerSpeed || it.words().get(0) instanceof Turn
                        || it.words().get(0) instanceof CornerKind kind && kind != CornerKind.CREST && kind != CornerKind.DIP)
                        .isPresent();
    }

    /** Every phase that is said here and not denied. */
    List<Phase> phases() {
        List<Phase> phases = new ArrayList<>();
        for (int i = 0; i < atoms.size(); i++) {
            Atom atom = atoms.get(i);
            if (atom.as(Meaning.Circumstance.class).filter(it -> it.role() == Meaning.Role.TOWARDS).isPresent()
                    && !cornerFollows(i)) {
                continue;
            }
            atom.as(Meaning.Circumstance.class).filter(it -> !negated.contains(atom) || it.act() && reasonAfter(atom)).stream()
                    .flatMap(it -> it.words().stream()).filter(Phase.class::isInstance).map(Phase.class::cast)
                    .forEach(phases::add);
        }
        return phases;
    }
}
