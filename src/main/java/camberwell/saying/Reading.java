package camberwell.saying;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** The reading of one clause by itself: what is not said in it, but before it, is given. */
final class Reading {

    /** Not a tyre's, but of one end of the car all the same. */
    private static final Set<Symptom> AT_AN_END = Set.of(Symptom.BOTTOMING, Symptom.KERB_INSTABILITY);
    private static final Set<Symptom> OF_ONE_WHEEL = Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING);
    /** These say which thing is meant even where an end of the car is named with them. */
    private static final Set<String> PARTS = Set.of("inner-edge", "outer-edge", "tread-middle", "steering", "turn-in",
            "floor", "splitter");
    private static final Set<String> ARTICLES = Set.of("the", "a", "an", "my", "our", "his", "your");

    /** What makes a complaint go away, said before it. */
    private static final Set<String> CURES = Set.of("cur", "cure", "fix", "sort", "dial", "tune", "resolv", "eliminat", "solv");
    private static final Set<String> SPEEDS = Set.of("slow", "fast", "quick");
    /** What a lone "fast" stands after where it is said of corners. */
    private static final Set<String> CORNERING = Set.of("in", "the", "on", "through", "at", "of", "for", "and", "or", "not", "only",
            "mostly", "mainly", "especially", "off", "into", "out", "from", "entry", "exit", "mid", "long", "medium", "all", "corner", ",", "under", "both");
    private static final Map<String, Phase> ENDS = Map.of("in", Phase.ENTRY, "off", Phase.EXIT, "out", Phase.EXIT);
    /** A note of no more words is no sentence: "too free off". */
    private static final int TERSE = 3;
    /** What it does in "snaps out", whose "out" is only where. */
    private static final Meaning SNAPS = new Meaning.Doing("snaps");
    private static final Set<String> JOINS = Set.of("and", "but", "then");
    private static final Set<String> PRAISE = Set.of("strong", "mega", "mighty", "epic", "unreal", "wicked", "insan");
    private static final Set<String> COMPARING = Set.of("more", "less", "as", "so");
    private static final Set<String> UNTIL = Set.of("until", "till");
    private static final Set<String> REASONS = Set.of("becaus", "because", "or", "without", "else", "otherwis");

    /**
     * One complaint of the clause.
     *
     * @param phases where it is, in the order of the words
     * @param words how else it is narrowed
     * @param notIn where it is expressly not
     */
    record Head(List<Meaning.Complaint> complaints, List<Phase> phases, List<Word> words, List<Word> notIn) {
    }

    /**
     * What was said before the clause, in its sentence.
     *
     * @param thing the end of the car that it was about; null for none
     * @param leadPhase the phase that stands before the first complaint
     * @param lastPhase that of the last complaint, where this clause goes on about the same thing
     * @param symptom the last complaint
     */
    record Before(Meaning.Thing thing, Optional<Phase> leadPhase, Optional<Phase> lastPhase, Optional<Symptom> symptom) {
    }

    private final Sayings sayings;
    private final List<Token> tokens;
    private final List<Atom> atoms;
    private final int from;
    private final int to;
    private final Set<Atom> negated = new HashSet<>();
    /** What has done its work and narrows nothing. */
    private final Set<Atom> silent = new HashSet<>();
    private final Meaning.Thing lastThing;
    private final Optional<Phase> leadPhase;
    private final Optional<Phase> lastPhase;
    private final Optional<Symptom> lastSymptom;
    private final List<Head> heads = new ArrayList<>();
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
    private boolean act;
    private boolean weak;
    private boolean stretch;
    private final List<Meaning.Complaint> deniedOf = new ArrayList<>();

    private Reading(Sayings sayings, Clause clause, List<Token> tokens, Before before) {
        this.sayings = sayings;
        this.tokens = tokens;
        this.atoms = compared(clause.atoms());
        this.from = clause.from();
        this.to = clause.to();
        this.lastThing = before.thing();
        this.leadPhase = before.leadPhase();
        this.lastPhase = before.lastPhase();
        this.lastSymptom = before.symptom();
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

    static Reading of(Sayings sayings, Clause clause, List<Token> tokens, Before before) {
        Reading reading = new Reading(sayings, clause, tokens, before);
        reading.negate();
        reading.become();
        reading.read();
        return reading;
    }

    List<Head> heads() {
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

    /** The steering, an edge of the tread or the like, that it is about; null for none. */
    Meaning.Thing part() {
        return atoms.stream().filter(atom -> !negated.contains(atom)).flatMap(atom -> atom.as(Meaning.Thing.class).stream())
                .filter(it -> PARTS.contains(it.name())).findFirst().orElse(null);
    }

    boolean fine() {
        return fine;
    }

    /** Whether it says only that something is not as bad as it was. */
    boolean better() {
        return heads.isEmpty() && (better || says(Meaning.Sign.BETTER));
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
        return act;
    }

    /**
     * Whether something is said here that is not understood, so that where and when it is belong to that and to nothing
     * else: "then on power I get a wobbulation", "the back goes on power".
     */
    boolean aboutSomethingElse() {
        if (!heads.isEmpty() || fine || denied) {
            return false;
        }
        boolean driver = names("driver");
        return !unclear.isEmpty() || !unknown.isEmpty() && (driver || thing != null || names("car"))
                || thing != null && act && !driver;
    }

    /** Whether nothing but the driver does anything here. */
    boolean onlyTheDriver() {
        return names("driver") && atoms.stream().noneMatch(atom -> atom.as(Meaning.Thing.class)
                .filter(it -> !it.name().equals("driver")).isPresent());
    }

    /** Whether somebody does something that is no complaint. */
    boolean driven() {
        return heads.isEmpty() && names("driver");
    }

    /** Whether it tells what the car does where a driver might: "she turns in". */
    boolean ofTheCar() {
        boolean acts = atoms.stream().flatMap(atom -> atom.meanings().stream())
                .anyMatch(meaning -> meaning instanceof Meaning.Circumstance it && it.act());
        return acts && !names("driver") && (thing != null || names("car"));
    }

    private boolean names(String thing) {
        return atoms.stream().anyMatch(atom -> atom.as(Meaning.Thing.class).filter(it -> it.name().equals(thing)).isPresent());
    }

    /** Whether something of the clause, that is not denied, has that sign. */
    boolean says(Meaning.Sign sign) {
        return atoms.stream().anyMatch(atom -> atom.is(sign) && !negated.contains(atom));
    }

    /** Whether what it says holds only up to something. */
    boolean until() {
        return tokens.subList(from, to).stream().anyMatch(token -> UNTIL.contains(token.stem()));
    }

    /** Whether it says that what was there before is over: "now it is neutral", "but I cured it". */
    boolean over() {
        return heads.isEmpty() && words.isEmpty() && notIn.isEmpty()
                && (says(Meaning.Sign.GONE) || fine && says(Meaning.Sign.NOW));
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
        return suddenly();
    }

    /** Whether it says of something that it does what nobody can make anything of. */
    boolean weak() {
        return weak && heads.isEmpty() && !fine && !denied && unclear.isEmpty();
    }

    /** The thing that is named before, if it is more than "it" or "I". */
    private Optional<Meaning.Thing> subject(int i) {
        for (int j = i - 1; j >= 0; j--) {
            Optional<Meaning.Thing> named = atoms.get(j).as(Meaning.Thing.class);
            if (named.isPresent()) {
                return named.filter(it -> !it.name().equals("car") && !it.name().equals("driver"));
            }
        }
        return Optional.empty();
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
        boolean condition = tokens.subList(Math.max(from, not.from() - 3), not.from()).stream().anyMatch(token -> token.stem().equals("if"));
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

    private void read() {
        List<Integer> starts = new ArrayList<>();
        List<List<Meaning.Complaint>> meant = new ArrayList<>();
        for (int i = 0; i < atoms.size(); i++) {
            Atom atom = atoms.get(i);
            if (atom.meanings().isEmpty()) {
                unknown.add(atom);
            } else if (atom.head() && !degreeHere(i)) {
                head(i, starts, meant);
            } else if (atom.is(Meaning.Sign.FINE)) {
                if (compared(atom)) {
                    better = true;
                } else if (negated.contains(atom)) {
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
            heads.add(narrowed(meant.get(i), from, starts.get(i), to));
        }
        List<Word> into = starts.isEmpty() ? words : before;
        for (int i = 0; i < (starts.isEmpty() ? atoms.size() : starts.get(0)); i++) {
            collect(i, into, notIn);
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
    private boolean compared(Atom fine) {
        return fine.from() > from && COMPARING.contains(tokens.get(fine.from() - 1).stem());
    }

    /** "The brakes are mega": what would be bad of a complaint is good of a thing. */
    private boolean praised() {
        Atom last = null;
        for (Atom atom : atoms) {
            boolean when = atom.as(Meaning.Circumstance.class).filter(it -> it.words().get(0) instanceof Since).isPresent();
            last = when ? last : atom;
        }
        return last != null && atoms.size() > 1 && unclear.isEmpty() && unknown.isEmpty() && !negated.contains(last) && last.words() == 1
                && PRAISE.contains(tokens.get(last.from()).stem())
                && tokens.subList(from, last.from()).stream().noneMatch(token -> token.stem().equals("too"));
    }

    /** "Light" and the like say how bad it is where the complaint itself follows. */
    private boolean degreeHere(int i) {
        Atom atom = atoms.get(i);
        Optional<Meaning.Circumstance> degree = atom.as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof Severity);
        return degree.isPresent() && i + 1 < atoms.size() && (atoms.get(i + 1).as(Meaning.Complaint.class).isPresent()
                || degree.get().role() == Meaning.Role.RAISES && atoms.get(i + 1).head());
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
        if (complaints.isEmpty() && doneToAnEnd(i)) {
            unclear.add(atom);
            return;
        }
        if (complaints.isPresent() && objectIsUnknown(atom)) {
            unclear.add(atom);
            return;
        }
        if (complaints.isEmpty()) {
            complaints = done(i);
            boolean praised = i + 1 < atoms.size() && atoms.get(i + 1).is(Meaning.Sign.FINE)
                    && !negated.contains(atoms.get(i + 1));
            if (praised) {
                return;
            }
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
            } else if (subject(i).isPresent()) {
                weak = true;
            }
        } else if (negated.contains(atom)) {
            denied = true;
            deniedOf.addAll(complaints.get());
        } else {
            starts.add(i);
            meant.add(complaints.get().stream().map(it -> suddenly() && it.symptom() == Symptom.OVERSTEER
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
        boolean over = !last.head() || i + 2 == atoms.size() && atoms.get(i).as(Meaning.Complaint.class).isPresent() || tokens.get(last.from()).typed().equalsIgnoreCase("gone");
        return i + 1 < atoms.size() && last.is(Meaning.Sign.GONE) && over && !negated.contains(last)
                && atoms.subList(i + 1, atoms.size() - 1).stream().allMatch(atom -> !atom.head() && (atom.as(Meaning.Thing.class).isPresent()
                        || atom.as(Meaning.Circumstance.class).isPresent()));
    }

    private boolean suddenly() {
        return atoms.stream().anyMatch(atom -> atom.is(Meaning.Sign.SUDDENLY) && !negated.contains(atom)
                || atom.within().stream().anyMatch(it -> it.is(Meaning.Sign.SUDDENLY)));
    }

    /** What it comes to that something does this; empty where nobody can say. */
    private Optional<List<Meaning.Complaint>> done(int i) {
        Atom atom = atoms.get(i);
        if (objectIsUnknown(atom) || unknownFollows(atom)) {
            return Optional.empty();
        }
        Meaning.Thing subject = null;
        Meaning.Thing part = null;
        for (int j = i - 1; j >= 0; j--) {
            Atom other = atoms.get(j);
            Optional<Meaning.Thing> named = other.as(Meaning.Thing.class).filter(it -> !negated.contains(other));
            if (other.meanings().isEmpty()) {
                if (subject == null) {
                    return Optional.empty();
                }
                break;
            }
            if (other.head() && named.isEmpty() && other.as(Meaning.Circumstance.class).isEmpty()) {
                // "The rears get greasy when they slide": who does the one does the other.
                if (subject != null) {
                    break;
                }
                continue;
            }
            if (named.isPresent()) {
                subject = subject == null ? named.get() : subject;
                part = part == null && PARTS.contains(named.get().name()) ? named.get() : part;
            }
        }
        List<Phase> here = new ArrayList<>();
        collectPhases(here);
        Optional<Phase> phase = Phases.meant(here).stream().findFirst().or(() -> leadPhase);
        List<Meaning.Thing> may = new ArrayList<>();
        if (part != null) {
            may.add(part);
        }
        boolean vague = subject == null || subject.name().equals("car") || subject.name().equals("driver");
        if (vague) {
            Optional<Meaning.Thing> object = after(i);
            if (object.isPresent() && !object.get().place().isEmpty() && complaints(atom, object.get(), phase).isEmpty()) {
                // "It pushes the rear out": what is done to an end of the car is not said of the whole.
                return Optional.empty();
            }
            object.ifPresent(may::add);
        }
        if (subject != null) {
            may.add(subject);
        } else if (lastThing != null) {
            may.add(lastThing);
        }
        if (!vague) {
            after(i).ifPresent(may::add);
        }
        if (vague && (subject == null || subject.name().equals("car"))) {
            may.add(new Meaning.Thing("car", ""));
            if (lastThing != null) {
                may.add(lastThing);
            }
        }
        if (phase.isEmpty() && lastSymptom.isPresent()) {
            // "It slides at the front on entry, no bite", "scary on the brakes, the back moves around": the same once more.
            for (Meaning.Thing thing : may) {
                for (Optional<Phase> there : List.of(Optional.<Phase>empty(), lastPhase)) {
                    Optional<List<Meaning.Complaint>> again = complaints(atom, thing, there)
                            .filter(it -> it.stream().anyMatch(one -> one.symptom() == lastSymptom.get()));
                    if (again.isPresent()) {
                        return again;
                    }
                }
            }
        }
        for (Meaning.Thing thing : may) {
            Optional<Phase> there = phase.or(() -> thing == lastThing ? lastPhase : Optional.empty());
            Optional<List<Meaning.Complaint>> complaints = complaints(atom, thing, there);
            if (complaints.isPresent()) {
                return complaints;
            }
        }
        return Optional.empty();
    }

    private Optional<List<Meaning.Complaint>> complaints(Atom atom, Meaning.Thing thing, Optional<Phase> phase) {
        Optional<List<Meaning.Complaint>> complaints = sayings.complaints(atom.doings(), thing.name(), phase);
        return complaints.or(() -> Word.find(Place.class, thing.name()).map(Place::axle).map(Axle::id)
                .filter(axle -> !axle.equals(thing.name()))
                .flatMap(axle -> sayings.complaints(atom.doings(), axle, phase)));
    }

    /** The thing that is named straight after: "it slides at the rear". */
    private Optional<Meaning.Thing> after(int i) {
        for (int j = i + 1; j < atoms.size(); j++) {
            Atom atom = atoms.get(j);
            Optional<Meaning.Thing> named = atom.as(Meaning.Thing.class);
            if (named.isPresent() && !negated.contains(atom)
                    && !named.get().name().equals("car") && !named.get().name().equals("driver")) {
                return named;
            }
            if (named.isEmpty() && !Degrees.is(atom) && !atom.is(Meaning.Sign.SUDDENLY)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /** "It pushes the front tyres too hot": what is done to them is told by what follows. */
    private boolean doneToAnEnd(int i) {
        Atom atom = atoms.get(i);
        return atom.to() < tokens.size() && ARTICLES.contains(tokens.get(atom.to()).stem()) && i + 2 < atoms.size()
                && atoms.get(i + 1).as(Meaning.Thing.class).filter(it -> !it.place().isEmpty()).isPresent()
                && atoms.get(i + 2).head() && !degreeHere(i + 2);
    }

    /** Whether it is done to, or said of, something that nobody knows: "pushing the button", "the loose gravel". */
    private boolean objectIsUnknown(Atom atom) {
        boolean done = atom.to() < tokens.size() && ARTICLES.contains(tokens.get(atom.to()).stem());
        boolean of = atom.from() > 0 && ARTICLES.contains(tokens.get(atom.from() - 1).stem())
                && atom.as(Meaning.Complaint.class).isEmpty();
        return (done || of) && atoms.stream().anyMatch(other -> other.from() == atom.to() + (done ? 1 : 0)
                && other.meanings().isEmpty());
    }

    /** Whether the next word is one that nobody knows, and no adverb: "loose gravel", "the tail lights are broken". */
    private boolean unknownFollows(Atom atom) {
        return atoms.stream().anyMatch(other -> other.from() == atom.to() && other.meanings().isEmpty()
                && !tokens.get(other.from()).stem().endsWith("ly"));
    }

    private Head narrowed(List<Meaning.Complaint> complaints, int from, int start, int to) {
        List<Word> narrowing = new ArrayList<>();
        List<Word> not = new ArrayList<>();
        List<Phase> phases = new ArrayList<>();
        List<Word> all = new ArrayList<>();
        for (int i = from; i < to; i++) {
            collect(i, all, not);
        }
        for (Word word : all) {
            if (word instanceof Phase phase) {
                phases.add(phase);
            } else if (narrowing.stream().noneMatch(it -> it.getClass() == word.getClass())) {
                narrowing.add(word);
            } else if (word instanceof Turn turn && !narrowing.contains(turn)) {
                narrowing.removeIf(Turn.class::isInstance);
                narrowing.add(Turn.BOTH);
            }
        }
        if (phases.isEmpty() && to == atoms.size()) {
            endsWith().ifPresent(phases::add);
        }
        List<Phase> sensible = phases.stream().filter(phase -> complaints.get(0).symptom().senseless(phase).isEmpty()).toList();
        if (!sensible.isEmpty()) {
            // "Wanders under full throttle on the straight": of two phases the one counts in which it can be.
            phases = sensible;
        }
        List<Phase> meant = stretch ? phases.stream().distinct().toList() : Phases.meant(phases);
        Symptom symptom = complaints.get(0).symptom();
        boolean placed = complaints.get(0).words().stream().anyMatch(Place.class::isInstance);
        if (!placed) {
            place(from, to < atoms.size() ? subjectBefore(start, to) : to, symptom).ifPresent(narrowing::add);
        }
        return new Head(complaints, meant, narrowing, not);
    }

    /** Where what is said of the next complaint begins: with its subject, if it has one of its own. */
    private int subjectBefore(int start, int next) {
        for (int i = next - 1; i > start; i--) {
            if (atoms.get(i).as(Meaning.Thing.class).isPresent()) {
                return i;
            }
        }
        return next;
    }

    private Optional<Word> place(int from, int to, Symptom symptom) {
        for (int i = from; i < to; i++) {
            Atom atom = atoms.get(i);
            Optional<Word> place = atom.as(Meaning.Thing.class).filter(it -> !negated.contains(atom))
                    .flatMap(it -> Word.find(Place.class, it.place()).map(Word.class::cast));
            if (place.isPresent() && (symptom.ofTyre() || AT_AN_END.contains(symptom)
                    || OF_ONE_WHEEL.contains(symptom) && place.get().id().contains("-"))) {
                return place;
            }
        }
        return Optional.empty();
    }

    /** Whether the next thing that is said is a kind of corner. */
    private boolean cornerFollows(int i) {
        return i + 1 < atoms.size() && atoms.get(i + 1).as(Meaning.Circumstance.class)
                .filter(it -> it.words().get(0) instanceof CornerSpeed || it.words().get(0) instanceof Turn).isPresent();
    }

    /** "Pushes in, snaps out": where each is, said with one word that ends its clause. */
    private Optional<Phase> endsWith() {
        int last = atoms.size() - 1;
        if (last > 0 && atoms.get(last).to() == to && atoms.get(last).as(Meaning.Circumstance.class)
                .filter(it -> it.role() == Meaning.Role.TOWARDS).isPresent()) {
            last--;
        }
        boolean terse = tokens.size() <= TERSE;
        boolean after = last >= 0 && atoms.get(last).head()
                && (atoms.get(last).to() == to - 1 || atoms.get(last).is(SNAPS) && atoms.get(last).to() == to);
        return after && (terse || contrasted()) ? Optional.ofNullable(ENDS.get(tokens.get(to - 1).stem())) : Optional.empty();
    }

    private boolean contrasted() {
        int ends = 0;
        for (int at = 1; at < tokens.size(); at++) {
            boolean last = at + 1 == tokens.size() || tokens.get(at + 1).comma() || JOINS.contains(tokens.get(at + 1).stem());
            ends += last && ENDS.containsKey(tokens.get(at).stem()) ? 1 : 0;
        }
        return ends > 1;
    }

    private void collectPhases(List<Phase> phases) {
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
    }

    private boolean reasonAfter(Atom atom) {
        return tokens.subList(atom.to(), tokens.size()).stream().anyMatch(token -> REASONS.contains(token.stem()));
    }

    private void collect(int i, List<Word> into, List<Word> not) {
        Atom atom = atoms.get(i);
        for (Atom inner : atom.within()) {
            inner.as(Meaning.Circumstance.class).ifPresent(it -> into.addAll(it.words()));
        }
        Optional<Meaning.Circumstance> circumstance = atom.as(Meaning.Circumstance.class)
                .filter(it -> !atom.head() || degreeHere(i) || done(i).isEmpty() && atom.as(Meaning.Complaint.class).isEmpty());
        if (circumstance.isEmpty() || silent.contains(atom)) {
            return;
        }
        if (circumstance.get().role() == Meaning.Role.TOWARDS && !cornerFollows(i)) {
            return;
        }
        if (circumstance.get().role() == Meaning.Role.RAISES && !(i + 1 < atoms.size() && (atoms.get(i + 1).head() || Degrees.is(atoms.get(i + 1))))) {
            return;
        }
        if (atom.words() == 1 && SPEEDS.contains(tokens.get(atom.from()).stem()) && !ofCorners(i)) {
            return;
        }
        if (Degrees.is(atom) && Degrees.ofSomethingElse(atoms, tokens, i)) {
            // "Little balls", "I lift a little": that is how much there is of what nobody knows, or of what is done.
            return;
        }
        if (atom.words() == 1 && besideUnknown(i) && circumstance.get().words().stream().noneMatch(Phase.class::isInstance)) {
            // "Once every three", "half fast": one word beside what nobody knows may be of that.
            return;
        }
        List<Word> said = circumstance.get().words().stream().filter(word -> !(word instanceof Surface)).toList();
        if (said.contains(Since.LATE_RUN) && atom.from() > 0 && UNTIL.contains(tokens.get(atom.from() - 1).stem())) {
            // "Pushes until the fuel burns off": late it does not.
            not.addAll(said);
        } else if (!negated.contains(atom)) {
            into.addAll(said);
            act |= circumstance.get().act();
            stretch |= said.stream().filter(Phase.class::isInstance).count() > 1;
        } else if (!Degrees.is(atom) && circumstance.get().act() && reasonAfter(atom)) {
            // "I cannot brake late because the rear is light": that is where it happens.
            into.addAll(said);
        } else if (!Degrees.is(atom) && !circumstance.get().act()) {
            // "I cannot get on the power" says nothing of where the car does what.
            not.addAll(said);
        }
    }

    private boolean besideUnknown(int i) {
        return i > 0 && atoms.get(i - 1).meanings().isEmpty() || i + 1 < atoms.size() && atoms.get(i + 1).meanings().isEmpty();
    }

    /** "A slow slide", "half a second quicker", "it was slow": no word of corners. */
    private boolean ofCorners(int i) {
        Atom atom = atoms.get(i);
        boolean slide = i + 1 < atoms.size() && atoms.get(i + 1).from() == atom.to() && atoms.get(i + 1).head()
                && (atom.from() == 0 || ARTICLES.contains(tokens.get(atom.from() - 1).stem()));
        boolean beside = i > 0 && atoms.get(i - 1).to() == atom.from() && (atoms.get(i - 1).as(Meaning.Complaint.class).isPresent()
                || atoms.get(i - 1).as(Meaning.Circumstance.class).isPresent());
        boolean idiom = atom.to() < tokens.size() && (tokens.get(atom.to()).stem().equals("in") || tokens.get(atom.to()).stem().equals("out"));
        return !slide && !idiom && (atom.from() == from || beside || CORNERING.contains(tokens.get(atom.from() - 1).stem()));
    }

    private void surface(Atom atom) {
        atom.as(Meaning.Circumstance.class).filter(it -> !negated.contains(atom) && !fineHere() && !likened(atom)).stream()
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
