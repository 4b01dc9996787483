package camberwell.saying;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Where, when, how bad and how often it is, of all that a clause says. */
final class Narrowing {

    /** Not a tyre's, but of one end of the car all the same. */
    private static final Set<Symptom> AT_AN_END = Set.of(Symptom.BOTTOMING, Symptom.KERB_INSTABILITY);
    private static final Set<Symptom> OF_ONE_WHEEL = Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING, Symptom.WHEELSPIN);
    private static final Set<Symptom> OF_BRAKES = Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING);
    private static final Set<String> TURNING = Set.of("trail", "entry", "tip", "steer", "release");
    private static final Set<String> SPEEDS = Set.of("slow", "fast", "quick");
    /** What a lone "fast" stands after where it is said of corners. */
    private static final Set<String> CORNERING = Set.of("in", "the", "on", "through", "at", "of", "for", "and", "or", "not",
            "only",
            "mostly", "mainly", "especially", "off", "into", "out", "from", "entry", "exit", "mid", "long", "medium", "all",
                    "corner", ",", "under", "both");
    private static final Map<String, Phase> ENDS = Map.of("in", Phase.ENTRY, "off", Phase.EXIT, "out", Phase.EXIT);
    /** A note of no more words is no sentence: "too free off". */
    private static final int TERSE = 3;
    /** What it does in "snaps out", whose "out" is only where. */
    private static final Meaning SNAPS = new Meaning.Doing("snaps");
    private static final Set<String> JOINS = Set.of("and", "but", "then");
    private static final Set<String> COMPARED = Set.of("hotter", "colder", "cooler", "warmer");
    private static final Set<String> LEFT = Set.of("left", "link", "gauch", "gauche", "izquierda", "sinistra");
    private static final Set<String> RIGHT = Set.of("right", "recht", "droit", "droite", "derecha", "destra");
    private static final Set<String> WAYS = Set.of("left", "right");
    private static final Set<String> WAY_TO = Set.of("to", "toward", "towards");
    private static final Set<String> UNTIL = Set.of("until", "till");

    /**
     * One complaint of the clause.
     *
     * @param said the words that it rests on
     * @param phases where it is, in the order of the words
     * @param words how else it is narrowed
     * @param notIn where it is expressly not
     */
    record Head(Atom said, List<Meaning.Complaint> complaints, List<Phase> phases, List<Word> words, List<Word> notIn) {
    }

    private final Wording said;
    private final Doer doer;
    private final List<Token> tokens;
    private final List<Atom> atoms;
    private final int from;
    private final int to;
    private final Set<Atom> negated;
    private boolean act;
    private boolean stretch;

    Narrowing(Wording said, Doer doer) {
        this.said = said;
        this.doer = doer;
        this.tokens = said.tokens;
        this.atoms = said.atoms;
        this.from = said.from;
        this.to = said.to;
        this.negated = said.negated;
    }

    /** Whether what narrows is something that the driver does. */
    boolean act() {
        return act;
    }

    /** Whether what is said holds only up to something. */
    boolean until() {
        return tokens.subList(from, to).stream().anyMatch(token -> UNTIL.contains(token.stem()));
    }

    Head narrowed(List<Meaning.Complaint> complaints, int from, int start, int to) {
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
        if (complaints.get(0).symptom() == Symptom.PULLING && narrowing.stream().noneMatch(Turn.class::isInstance)) {
            side(atoms.get(start)).ifPresent(narrowing::add);
        }
        if (phases.isEmpty() && to == atoms.size()) {
            endsWith().ifPresent(phases::add);
        }
        if (complaints.get(0).symptom() == Symptom.BOTTOMING && phases.equals(List.of(Phase.BRAKING))
                && tokens.stream().anyMatch(token -> token.stem().equals("straight"))) {
            // "The floor hits at the end of the straight": at the highest speed.
            phases = List.of(Phase.STRAIGHT);
        }
        if (OF_BRAKES.contains(complaints.get(0).symptom()) && phases.equals(List.of(Phase.ENTRY)) && into()) {
            // "Locks into the hairpin": that is where one brakes.
            phases = List.of(Phase.BRAKING);
        }
        List<Phase> sensible = phases.stream().filter(phase -> complaints.get(0).symptom().senseless(phase).isEmpty()).toList();
        if (!sensible.isEmpty()) {
            // "Wanders under full throttle on the straight": of two phases the one counts in which it can be.
            phases = sensible;
        }
        List<Phase> meant = stretch ? phases.stream().distinct().toList()
                : Phases.meant(phases, complaints.get(0).symptom() == Symptom.PULLING);
        Symptom symptom = complaints.get(0).symptom();
        boolean placed = complaints.get(0).words().stream().anyMatch(Place.class::isInstance);
        if (!placed) {
            place(from, to < atoms.size() ? subjectBefore(start, to) : to, symptom).ifPresent(narrowing::add);
        }
        return new Head(atoms.get(start), complaints, meant, narrowing, not);
    }

    /** Whether a corner is only come into, with no word of turning in. */
    private boolean into() {
        List<Token> said = tokens.subList(from, to);
        boolean turning = false;
        for (int at = 0; at < said.size(); at++) {
            boolean in = at + 1 < said.size() && said.get(at + 1).stem().equals("in");
            turning |= TURNING.contains(said.get(at).stem()) || said.get(at).stem().equals("turn") && in;
        }
        return !turning && said.stream().anyMatch(token -> token.stem().equals("into"));
    }

    /** The side to which it pulls; where the wheel is held or both are named, nobody can say. */
    private Optional<Turn> side(Atom pull) {
        Turn side = null;
        for (Token token : tokens.subList(pull.from(), pull.to())) {
            Optional<Turn> named = LEFT.contains(token.stem()) ? Optional.of(Turn.LEFT)
                    : RIGHT.contains(token.stem()) ? Optional.of(Turn.RIGHT) : Optional.empty();
            if (token.stem().equals("hold") || side != null && named.isPresent()) {
                return Optional.empty();
            }
            side = named.orElse(side);
        }
        return Optional.ofNullable(side);
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

    void collect(int i, List<Word> into, List<Word> not) {
        Atom atom = atoms.get(i);
        for (Atom inner : atom.within()) {
            inner.as(Meaning.Circumstance.class).ifPresent(it -> into.addAll(it.words()));
        }
        Optional<Meaning.Circumstance> circumstance = atom.as(Meaning.Circumstance.class)
                .filter(it -> !atom.head() || said.degreeHere(i) || doer.done(i).isEmpty()
                && atom.as(Meaning.Complaint.class).isEmpty());
        if (circumstance.isEmpty() || said.silent.contains(atom)) {
            return;
        }
        if (circumstance.get().role() == Meaning.Role.TOWARDS && !said.cornerFollows(i)) {
            return;
        }
        boolean degree = circumstance.get().role() == Meaning.Role.RAISES || Degrees.is(atom);
        if (degree && i + 1 < atoms.size() && comparative(atoms.get(i + 1))) {
            return;
        }
        if (circumstance.get().role() == Meaning.Role.RAISES
                && !(i + 1 < atoms.size() && (atoms.get(i + 1).head() || Degrees.is(atoms.get(i + 1))))) {
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
        if (wayItGoes(atom)) {
            return;
        }
        if (atom.words() == 2 && atom.to() - atom.from() == 3 && circumstance.get().words().equals(List.of(Since.FIRST_LAPS))
                && tokens.get(atom.from() + 1).stem().equals("the")) {
            // "At the first touch of the wheel" is not at first.
            return;
        }
        List<Word> narrowing = new ArrayList<>(circumstance.get().words().stream().filter(word -> !(word instanceof Surface))
                .toList());
        for (Token token : tokens.subList(atom.from(), atom.to())) {
            // "Into the hairpin" says more than that it is the entry.
            said.sayings.kind(token.stem()).filter(kind -> !narrowing.contains(kind)).ifPresent(narrowing::add);
        }
        if (narrowing.contains(Since.LATE_RUN) && atom.from() > 0 && UNTIL.contains(tokens.get(atom.from() - 1).stem())) {
            // "Pushes until the fuel burns off": late it does not.
            not.addAll(narrowing);
        } else if (!negated.contains(atom)) {
            into.addAll(narrowing);
            act |= circumstance.get().act();
            stretch |= narrowing.stream().filter(Phase.class::isInstance).count() > 1;
        } else if (!Degrees.is(atom) && atom.acts() && said.reasonAfter(atom)) {
            // "I cannot brake late because the rear is light": that is where it happens.
            into.addAll(narrowing);
        } else if (!Degrees.is(atom) && !circumstance.get().act()) {
            // "I cannot get on the power" says nothing of where the car does what.
            not.addAll(narrowing);
        }
    }

    /** "Way hotter than the outer" says by how much, not how bad. */
    private boolean comparative(Atom atom) {
        return atom.words() == 1 && COMPARED.contains(tokens.get(atom.from()).stem());
    }

    /** "It creeps out to the left": the way that it goes there is no way that a corner turns. */
    private boolean wayItGoes(Atom atom) {
        if (atom.words() != 1 || !WAYS.contains(tokens.get(atom.from()).stem())) {
            return false;
        }
        int before = atom.from() - 1;
        while (before > 0 && Doer.ARTICLES.contains(tokens.get(before).stem())) {
            before--;
        }
        return before >= 0 && WAY_TO.contains(tokens.get(before).stem());
    }

    private boolean besideUnknown(int i) {
        return i > 0 && atoms.get(i - 1).meanings().isEmpty() || i + 1 < atoms.size() && atoms.get(i + 1).meanings().isEmpty();
    }

    /** "A slow slide", "half a second quicker", "it was slow": no word of corners. */
    private boolean ofCorners(int i) {
        Atom atom = atoms.get(i);
        boolean slide = i + 1 < atoms.size() && atoms.get(i + 1).from() == atom.to() && atoms.get(i + 1).head()
                && (atom.from() == 0 || Doer.ARTICLES.contains(tokens.get(atom.from() - 1).stem()));
        boolean beside = i > 0 && atoms.get(i - 1).to() == atom.from()
                && (atoms.get(i - 1).as(Meaning.Complaint.class).isPresent()
                || atoms.get(i - 1).as(Meaning.Circumstance.class).isPresent());
        boolean idiom = atom.to() < tokens.size() && (tokens.get(atom.to()).stem().equals("in")
                || tokens.get(atom.to()).stem().equals("out"));
        return !slide && !idiom && (atom.from() == from || beside || CORNERING.contains(tokens.get(atom.from() - 1).stem()));
    }
}
