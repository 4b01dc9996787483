package camberwell.saying;

import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Who or what does it, and what complaint that makes of what is done. */
final class Doer {

    /** These say which thing is meant even where an end of the car is named with them. */
    static final Set<String> PARTS = Set.of("inner-edge", "outer-edge", "tread-middle", "steering", "turn-in",
            "floor", "splitter");
    private static final Set<String> EDGES = Set.of("inner-edge", "outer-edge", "tread-middle");
    private static final Set<String> ON = Set.of("on", "at", "along");
    static final Set<String> ARTICLES = Set.of("the", "a", "an", "my", "our", "his", "your");

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

    private final Wording said;
    private final Sayings sayings;
    private final List<Token> tokens;
    private final List<Atom> atoms;
    private final Set<Atom> negated;
    private final Meaning.Thing lastThing;
    private final Optional<Phase> leadPhase;
    private final Optional<Phase> lastPhase;
    private final Optional<Symptom> lastSymptom;

    Doer(Wording said, Before before) {
        this.said = said;
        this.sayings = said.sayings;
        this.tokens = said.tokens;
        this.atoms = said.atoms;
        this.negated = said.negated;
        this.lastThing = before.thing();
        this.leadPhase = before.leadPhase();
        this.lastPhase = before.lastPhase();
        this.lastSymptom = before.symptom();
    }

    /** What it comes to that something does this; empty where nobody can say. */
    Optional<List<Meaning.Complaint>> done(int i) {
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
        if (part == null) {
            part = edgeAfter(i).orElse(null);
        }
        Optional<Phase> phase = Phases.meant(said.phases()).stream().findFirst().or(() -> leadPhase);
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

    /** "Burnt up on the outside shoulder": the part of the tread on which it is. */
    private Optional<Meaning.Thing> edgeAfter(int i) {
        for (int j = i + 1; j < atoms.size(); j++) {
            Atom atom = atoms.get(j);
            int before = atom.from() - 1;
            while (before > 0 && ARTICLES.contains(tokens.get(before).stem())) {
                before--;
            }
            Optional<Meaning.Thing> named = atom.as(Meaning.Thing.class).filter(it -> EDGES.contains(it.name()));
            if (named.isPresent() && !negated.contains(atom) && ON.contains(tokens.get(before).stem())) {
                return named;
            }
            if (atom.head()) {
                return Optional.empty();
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
    boolean doneToAnEnd(int i) {
        Atom atom = atoms.get(i);
        return atom.to() < tokens.size() && ARTICLES.contains(tokens.get(atom.to()).stem()) && i + 2 < atoms.size()
                && atoms.get(i + 1).as(Meaning.Thing.class).filter(it -> !it.place().isEmpty()).isPresent()
                && atoms.get(i + 2).head() && !said.degreeHere(i + 2);
    }

    /** Whether it is done to, or said of, something that nobody knows: "pushing the button", "the loose gravel". */
    boolean objectIsUnknown(Atom atom) {
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
}
