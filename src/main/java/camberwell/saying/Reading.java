package camberwell.saying;

import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** The reading of one clause by itself: what is not said in it, but before it, is given. */
final class Reading {

    /** What makes a complaint go away, said before it. */
    private static final Set<String> CURES = Set.of("cur", "cure", "fix", "sort", "dial", "tune", "resolv", "eliminat", "solv");
    private static final Set<String> PRAISE = Set.of("strong", "mega", "mighty", "epic", "unreal", "wicked", "insan");
    private static final Set<String> WISHES = Set.of("want", "need", "wish", "give", "hope", "prefer");
    private static final Set<String> COMPARING = Set.of("more", "less", "as", "so");

    private final Wording said;
    private final Doer doer;
    private final Narrowing narrowing;
    private final List<Token> tokens;
    private final List<Atom> atoms;
    private final int from;
    private final Set<Atom> negated;
    private final List<Narrowing.Head> heads = new ArrayList<>();
    private final List<Word> words = new ArrayList<>();
    private final List<Word> notIn = new ArrayList<>();
    private final List<Word> before = new ArrayList<>();
    private final List<Surface> surfaces = new ArrayList<>();
    private final List<Atom> unclear = new ArrayList<>();
    private final List<Atom> unknown = new ArrayList<>();
    private Meaning.Thing thing;
    private boolean fine;
    private boolean better;
    private boolean denied;
    private boolean weak;
    private final List<Meaning.Complaint> deniedOf = new ArrayList<>();

    private Reading(Wording said, Doer.Before before) {
        this.said = said;
        this.doer = new Doer(said, before);
        this.narrowing = new Narrowing(said, doer);
        this.tokens = said.tokens;
        this.atoms = said.atoms;
        this.from = said.from;
        this.negated = said.negated;
    }

    static Reading of(Sayings sayings, Clause clause, List<Token> tokens, Doer.Before before) {
        Reading reading = new Reading(new Wording(sayings, clause, tokens), before);
        reading.read();
        return reading;
    }

    List<Narrowing.Head> heads() {
        return heads;
    }

    /** Everything that narrows, where the clause has no complaint. */
    List<Word> words() {
        return words;
    }

    List<Word> notIn() {
        return notIn;
    }

    /** What narrows and stands before the first complaint. */
    List<Word> before() {
        return before;
    }

    List<Surface> surfaces() {
        return surfaces;
    }

    List<Atom> unclear() {
        return unclear;
    }

    List<Atom> unknown() {
        return unknown;
    }

    /** The end of the car that it is about; null for none. */
    Meaning.Thing thing() {
        return thing;
    }

    /** The steering, the tyres, an edge of the tread or the like, that it is about; null for none. */
    Meaning.Thing part() {
        return atoms.stream().filter(atom -> !negated.contains(atom)).flatMap(atom -> atom.as(Meaning.Thing.class).stream())
                .filter(it -> Doer.PARTS.contains(it.name()) || it.name().equals("tyres")).findFirst().orElse(null);
    }

    boolean fine() {
        return fine;
    }

    /** Whether it says only that something is not as bad as it was. */
    boolean better() {
        return heads.isEmpty() && (better || said.says(Meaning.Sign.BETTER));
    }

    /** Whether it says of a complaint that there is none. */
    boolean denied() {
        return denied;
    }

    /** The complaints that it says there are not. */
    List<Meaning.Complaint> deniedOf() {
        return deniedOf;
    }

    /** Whether it tells what the driver does. */
    boolean act() {
        return narrowing.act();
    }

    /**
     * Whether something is said here that is not understood, so that where and when it is belong to that and to nothing
     * else: "then on power I get a wobbulation", "the back goes on power".
     */
    boolean aboutSomethingElse() {
        if (!heads.isEmpty() || fine || denied) {
            return false;
        }
        boolean driver = said.names("driver");
        return !unclear.isEmpty() || !unknown.isEmpty() && (driver || thing != null || said.names("car"))
                || thing != null && narrowing.act() && !driver;
    }

    /** Whether nothing but the driver does anything here. */
    boolean onlyTheDriver() {
        return said.names("driver") && atoms.stream().noneMatch(atom -> atom.as(Meaning.Thing.class)
                .filter(it -> !it.name().equals("driver")).isPresent());
    }

    /** Whether somebody does something that is no complaint. */
    boolean driven() {
        return heads.isEmpty() && said.names("driver");
    }

    /** Whether it tells what the car does where a driver might: "she turns in". */
    boolean ofTheCar() {
        return atoms.stream().anyMatch(Atom::acts) && !said.names("driver") && (thing != null || said.names("car"));
    }

    /** Whether what it says holds only up to something. */
    boolean until() {
        return narrowing.until();
    }

    /** Whether it says that what was there before is over: "now it is neutral", "but I cured it". */
    boolean over() {
        return heads.isEmpty() && words.isEmpty() && notIn.isEmpty()
                && (said.says(Meaning.Sign.GONE) || fine && said.says(Meaning.Sign.NOW));
    }

    /**
     * Whether it stops before it says anything of an end of the car: "the rear is not", or only how bad it is, "rear bad".
     */
    boolean breaksOff() {
        if (!heads.isEmpty() || fine || denied || !unclear.isEmpty() || atoms.isEmpty()) {
            return false;
        }
        boolean not = atoms.get(atoms.size() - 1).is(Meaning.Sign.NOT);
        boolean onlyBad = !words.isEmpty() && words.stream().allMatch(Severity.class::isInstance);
        return thing != null && (not || onlyBad);
    }

    /** Whether it says that something happens at once. */
    boolean sudden() {
        return said.suddenly();
    }

    /** Whether it says of something that it does what nobody can make anything of. */
    boolean weak() {
        return weak && heads.isEmpty() && !fine && !denied && unclear.isEmpty();
    }

    private void read() {
        List<Integer> starts = new ArrayList<>();
        List<List<Meaning.Complaint>> meant = new ArrayList<>();
        for (int i = 0; i < atoms.size(); i++) {
            Atom atom = atoms.get(i);
            if (atom.meanings().isEmpty()) {
                unknown.add(atom);
            } else if (atom.head() && !said.degreeHere(i)) {
                head(i, starts, meant);
            } else if (atom.is(Meaning.Sign.FINE)) {
                if (comparedWith(atom)) {
                    better = true;
                } else if (negated.contains(atom) || wished(atom)) {
                    unknown.add(atom);
                } else {
                    fine = true;
                }
            }
            atom.as(Meaning.Thing.class).filter(it -> !negated.contains(atom) && !it.place().isEmpty())
                    .ifPresent(it -> thing = it);
        }
        for (int i = 0; i < starts.size(); i++) {
            int from = i == 0 ? 0 : starts.get(i);
            int to = i + 1 < starts.size() ? starts.get(i + 1) : atoms.size();
            heads.add(narrowing.narrowed(meant.get(i), from, starts.get(i), to));
        }
        List<Word> into = starts.isEmpty() ? words : before;
        for (int i = 0; i < (starts.isEmpty() ? atoms.size() : starts.get(0)); i++) {
            narrowing.collect(i, into, notIn);
        }
        for (int i = 0; i < atoms.size(); i++) {
            surface(atoms.get(i));
        }
        if (heads.isEmpty() && praised()) {
            fine = true;
            words.removeIf(Severity.class::isInstance);
        }
        if (!heads.isEmpty()) {
            fine = false;
        } else if (atoms.stream().anyMatch(atom -> atom.is(Meaning.Sign.NOT) && !atom.head())) {
            // "It is not the exit that is bad": how bad it is not.
            words.removeIf(Severity.class::isInstance);
        }
    }

    /** "More stable than it was" does not say that it is stable. */
    private boolean comparedWith(Atom fine) {
        return fine.from() > from && COMPARING.contains(tokens.get(fine.from() - 1).stem());
    }

    /** "Give me a front end that works" does not say that it does. */
    private boolean wished(Atom fine) {
        return tokens.subList(from, fine.from()).stream().anyMatch(token -> WISHES.contains(token.stem()));
    }

    /** "The brakes are mega": what would be bad of a complaint is good of a thing. */
    private boolean praised() {
        Atom last = null;
        for (Atom atom : atoms) {
            boolean when = atom.as(Meaning.Circumstance.class).filter(it -> it.words().get(0) instanceof Since).isPresent();
            last = when ? last : atom;
        }
        return last != null && atoms.size() > 1 && unclear.isEmpty() && unknown.isEmpty() && !negated.contains(last)
                && last.words() == 1
                && PRAISE.contains(tokens.get(last.from()).stem())
                && tokens.subList(from, last.from()).stream().noneMatch(token -> token.stem().equals("too"));
    }

    private void head(int i, List<Integer> starts, List<List<Meaning.Complaint>> meant) {
        Atom atom = atoms.get(i);
        Optional<List<Meaning.Complaint>> complaints = atom.as(Meaning.Complaint.class).map(List::of);
        if (complaints.isPresent() && i + 1 < atoms.size() && atoms.get(i + 1).is(Meaning.Sign.GONE)
                && !negated.contains(atoms.get(i + 1))) {
            negated.add(atom);
        }
        if (complaints.isPresent() && betterAfter(i)) {
            better = true;
            return;
        }
        if (goneAfter(i)) {
            negated.add(atom);
            negated.add(atoms.get(atoms.size() - 1));
        }
        if (complaints.isPresent() && i > 0 && atoms.get(i - 1).is(Meaning.Sign.GONE) && !negated.contains(atoms.get(i - 1))
                && CURES.contains(tokens.get(atoms.get(i - 1).from()).stem())) {
            // "We cured the entry push": it is no more.
            negated.add(atom);
        }
        if (complaints.isEmpty() && doer.doneToAnEnd(i)) {
            unclear.add(atom);
            return;
        }
        if (complaints.isPresent() && doer.objectIsUnknown(atom)) {
            unclear.add(atom);
            return;
        }
        if (complaints.isEmpty()) {
            complaints = doer.done(i);
            boolean praised = i + 1 < atoms.size() && atoms.get(i + 1).is(Meaning.Sign.FINE)
                    && !negated.contains(atoms.get(i + 1));
            if (praised) {
                return;
            }
        }
        if (complaints.isEmpty() && said.suddenly() && said.subject(i).isEmpty() && !negated.contains(atom)
                && said.sayings.mayBe(atom.doings()).contains(Symptom.OVERSTEER)) {
            // "It breaks away without warning": a front does not do that.
            complaints = Optional.of(List.of(new Meaning.Complaint(Symptom.SNAP_OVERSTEER, List.of())));
        }
        if (complaints.isEmpty()) {
            boolean otherwise = atom.is(Meaning.Sign.PLAIN) || atom.as(Meaning.Circumstance.class)
                    .filter(it -> !(it.words().get(0) instanceof Severity)).isPresent();
            if (atom.is(Meaning.Sign.FINE)) {
                fine = true;
            } else if (negated.contains(atom)) {
                denied = true;
            } else if (!otherwise) {
                unclear.add(atom);
            } else if (said.subject(i).isPresent()) {
                weak = true;
            }
        } else if (negated.contains(atom)) {
            denied = true;
            deniedOf.addAll(complaints.get());
        } else {
            starts.add(i);
            meant.add(complaints.get().stream().map(it -> said.suddenly() && it.symptom() == Symptom.OVERSTEER
                    ? new Meaning.Complaint(Symptom.SNAP_OVERSTEER, it.words()) : it).toList());
        }
    }

    /** "The wheelspin is better": it is not what there is to tell. */
    private boolean betterAfter(int i) {
        return i + 2 == atoms.size() && atoms.get(i + 1).is(Meaning.Sign.BETTER) && !negated.contains(atoms.get(i + 1))
                && i == atoms.stream().filter(Atom::head).map(atoms::indexOf).findFirst().orElse(-1);
    }

    /** "The locking at the rear has gone": between them stands no more than where it was. */
    private boolean goneAfter(int i) {
        Atom last = atoms.get(atoms.size() - 1);
        boolean over = !last.head() || i + 2 == atoms.size() && atoms.get(i).as(Meaning.Complaint.class).isPresent()
                || tokens.get(last.from()).typed().equalsIgnoreCase("gone");
        return i + 1 < atoms.size() && last.is(Meaning.Sign.GONE) && over && !negated.contains(last)
                && atoms.subList(i + 1, atoms.size() - 1).stream()
                .allMatch(atom -> !atom.head() && (atom.as(Meaning.Thing.class).isPresent()
                        || atom.as(Meaning.Circumstance.class).isPresent()));
    }

    private void surface(Atom atom) {
        boolean ofSomething = surfaces.isEmpty() && unknown.stream()
                .anyMatch(other -> other.from() == atom.to() && other.to() == tokens.size());
        // "The rain light is broken" says nothing of the day.
        atom.as(Meaning.Circumstance.class).filter(it -> !ofSomething && !negated.contains(atom) && !fineHere()
                && !likened(atom)).stream()
                .flatMap(it -> it.words().stream()).filter(Surface.class::isInstance).map(Surface.class::cast)
                .forEach(surfaces::add);
    }

    /** "Loose like a wet fish" says nothing of the day. */
    private boolean likened(Atom atom) {
        return tokens.subList(from, atom.from()).stream().anyMatch(token -> token.stem().equals("like"));
    }

    /** Whether all is well there: then the day is told by what follows. */
    private boolean fineHere() {
        return fine && heads.isEmpty();
    }
}
