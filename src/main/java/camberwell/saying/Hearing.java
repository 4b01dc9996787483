package camberwell.saying;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * The understanding of one saying, clause by clause. A clause with a complaint tells it; one that only says where or when
 * belongs to the complaint before it, or to the one that follows; one that says that all is well says where the
 * complaint is not. Nothing is guessed: what has no reading is named.
 */
final class Hearing {

    /** What a set-up part may stand after, and something else follow: "since we softened the front bar it pushes". */
    private static final Set<String> AFTER = Set.of("after", "since", "with", "once", "without", "now", "becaus");

    /** "It feels like oversteer, but it is actually understeer." */
    private static final Set<String> REALLY = Set.of("actually", "fact", "reality", "truth");

    private static final Set<String> TROUBLES = Set.of("problem", "issue", "trouble", "complaint", "gripe", "wrong");
    private static final Set<String> DENYING = Set.of("no", "not", "nothing", "without", "never", "zero", "hardly", "any", "sin",
            "senza",
            "pas", "kein");
    /** How many words before a problem may deny it. */
    private static final int DENIED = 5;

    /** What happens on the brakes where those are named at all. */
    private static final Set<Symptom> ON_THE_BRAKES = Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING, Symptom.PULLING);

    /** A clause of no more words is one of a list: "after five laps hot rears, no drive, a loose tail". */
    private static final int LISTED = 3;

    private final Sayings sayings;
    private final List<Telling> told = new ArrayList<>();
    private final Set<Surface> surfaces = new LinkedHashSet<>();
    private final List<Heard.Unclear> unclear = new ArrayList<>();
    private final List<String> notUnderstood = new ArrayList<>();
    private final List<Word> loose = new ArrayList<>();
    private boolean fine;
    private boolean troubled;
    private int details;

    /** Where the told complaints of this sentence begin. */
    private int sentenceStart;
    /** Where those of the last clause with a complaint begin. */
    private int lastHead;
    /** What was said before the complaint that it belongs to. */
    private final List<Word> lead = new ArrayList<>();
    private boolean leadIsAct;
    private boolean leadOfCar;
    /** Whether it says from when on: "fine until I open the throttle, and then". */
    private boolean leadAfter;
    private boolean leadUsed;
    private final List<Word> leadNot = new ArrayList<>();
    private Meaning.Thing lastThing;
    private boolean spoiled;
    private boolean unclearBefore;
    private boolean othersBefore;
    private List<Meaning.Complaint> lastDenied = List.of();

    private Hearing(Sayings sayings) {
        this.sayings = sayings;
    }

    /** What is understood of what was said. */
    static Heard of(Sayings sayings, String said) {
        Hearing hearing = new Hearing(sayings);
        for (List<Token> sentence : sayings.sentences(said)) {
            int before = hearing.weight();
            hearing.sentence(sentence);
            if (hearing.weight() == before) {
                // Nothing is swallowed, not even what has not one word that is strange.
                hearing.notUnderstood.add(typed(sentence, 0, sentence.size()));
            }
        }
        return hearing.heard(said);
    }

    /** How much there is to tell so far. */
    private int weight() {
        return told.size() + surfaces.size() + unclear.size() + notUnderstood.size() + loose.size() + details + (fine ? 1 : 0);
    }

    private Heard heard(String said) {
        told.forEach(telling -> telling.senseless().ifPresent(notUnderstood::add));
        told.removeIf(Telling::withdrawn);
        atOdds();
        List<Told> all = told.stream().filter(telling -> telling.doubted().isEmpty()).map(Telling::told).distinct().toList();
        doubts(all);
        // What is told twice, the second time with more, is one complaint.
        List<Told> complaints = all.stream().filter(one -> all.stream().noneMatch(other -> one.within(other))).toList();
        Optional<Surface> surface = surfaces.size() == 1 ? Optional.of(surfaces.iterator().next()) : Optional.empty();
        if (surfaces.size() > 1) {
            notUnderstood.add(String.join(" and ", surfaces.stream().map(Surface::id).toList()));
        }
        if (fine && troubled && complaints.isEmpty() && unclear.isEmpty() && notUnderstood.isEmpty()) {
            // "The brakes are fine, I have a problem with what comes after": what that is nobody can make out.
            notUnderstood.add(said.strip());
        }
        boolean allFine = fine && complaints.isEmpty() && unclear.isEmpty() && notUnderstood.isEmpty() && loose.isEmpty();
        return new Heard(said, complaints, surface, allFine, loose, unclear, notUnderstood);
    }

    /** Names what is to be asked about, unless it was told for sure as well. */
    private void doubts(List<Told> sure) {
        told.stream().map(Telling::doubted).filter(words -> !words.isEmpty()).distinct().forEach(words -> {
            List<Told> mayBe = told.stream().filter(telling -> telling.doubted().equals(words)).map(Telling::told).distinct()
                    .filter(one -> sure.stream().noneMatch(it -> it.equals(one) || one.within(it))).toList();
            if (!mayBe.isEmpty()) {
                unclear.add(new Heard.Unclear(words, mayBe));
            }
        });
    }

    /**
     * Doubts that it pushes and is loose at the same place and time, told in two clauses: of "in practice it was loose, in the
     * race it was tight" a coach asks which it is now.
     */
    private void atOdds() {
        for (Telling one : told) {
            for (Telling other : told) {
                if (one.atOddsWith(other)) {
                    boolean first = told.indexOf(one) < told.indexOf(other);
                    one.doubt(first ? one.typed() + ", " + other.typed() : other.typed() + ", " + one.typed());
                    other.doubt(one.doubted());
                }
            }
        }
    }

    private void sentence(List<Token> whole) {
        List<Token> tokens = Question.told(whole);
        if (tokens.isEmpty()) {
            notUnderstood.add(typed(whole, 0, whole.size()));
            return;
        }
        troubled |= trouble(tokens);
        sentenceStart = told.size();
        lead.clear();
        leadNot.clear();
        leadUsed = false;
        leadOfCar = false;
        leadAfter = false;
        spoiled = false;
        unclearBefore = false;
        othersBefore = false;
        lastDenied = List.of();
        List<Clause> clauses = Clause.of(sayings, tokens);
        for (int i = 0; i < clauses.size(); i++) {
            boolean more = false;
            for (Clause later : clauses.subList(i + 1, clauses.size())) {
                more |= later.hasHead();
            }
            boolean next = i + 1 < clauses.size() && clauses.get(i + 1).hasHead()
                    && clauses.get(i + 1).join() == Meaning.Sign.PLAIN;
            clause(clauses.get(i), tokens, more, next);
        }
        if (!leadUsed) {
            loose.addAll(lead);
        }
    }

    /** Whether a problem is named that is not denied. */
    private static boolean trouble(List<Token> tokens) {
        for (int at = 0; at < tokens.size(); at++) {
            if (TROUBLES.contains(tokens.get(at).stem())
                    && tokens.subList(Math.max(0, at - DENIED), at).stream().noneMatch(token -> DENYING.contains(token.stem()))) {
                return true;
            }
        }
        return false;
    }

    private void clause(Clause said, List<Token> tokens, boolean more, boolean next) {
        Clause clause = said.has(Meaning.Sign.OTHERS) && AFTER.contains(tokens.get(said.from()).stem())
                ? said.afterOthers() : said;
        if (clause.from() > said.from()) {
            notUnderstood.add(typed(tokens, said.from(), clause.from()));
        }
        boolean likened = told.size() > sentenceStart && clause.join() == Meaning.Sign.PLAIN
                && tokens.get(clause.from()).stem().equals("like");
        boolean carried = likened || spoiled && clause.join() != Meaning.Sign.BUT && !clause.has(Meaning.Sign.NOW)
                && clause.atoms().stream().noneMatch(atom -> atom.as(Meaning.Thing.class).isPresent());
        // "I locked up and went straight on": what is not clear carries over to what came of it.
        carried |= unclearBefore && clause.join() == Meaning.Sign.AND && !clause.atoms().isEmpty()
                && clause.atoms().stream().noneMatch(atom -> ofTheCar(atom, tokens));
        // "A car ahead dropped oil and I went straight off": neither is what the car does by itself.
        carried |= othersBefore && clause.join() == Meaning.Sign.AND && !clause.has(Meaning.Sign.NOW)
                && clause.atoms().stream().noneMatch(atom -> ofTheCar(atom, tokens));
        unclearBefore = false;
        othersBefore = clause.has(Meaning.Sign.OTHERS) || othersBefore && carried;
        spoiled = clause.unreal() || clause.has(Meaning.Sign.OTHERS) || carried;
        if (spoiled) {
            notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            return;
        }
        Reading reading = Reading.of(sayings, clause, tokens, new Doer.Before(lastThing, leadPhase(), lastPhase(clause),
                told.size() > sentenceStart ? Optional.of(told.get(told.size() - 1).told().symptom()) : Optional.empty()));
        if (reading.weak() || reading.better() || reading.breaksOff()) {
            notUnderstood.add(typed(tokens, clause.from(), clause.to()));
        } else {
            name(reading, clause, tokens);
        }
        if (reading.better() || reading.heads().isEmpty() && reading.breaksOff()) {
            lastThing = reading.thing() == null ? lastThing : reading.thing();
            return;
        }
        unclearBefore = !reading.unclear().isEmpty() && reading.heads().isEmpty();
        if (clause.join() == Meaning.Sign.EXCEPT && reading.heads().isEmpty()
                && (reading.fine() || fine && reading.words().isEmpty() && reading.thing() == null)) {
            // "Everything but the rear is fine": what it is there nobody said.
            notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            return;
        }
        surfaces.addAll(reading.surfaces());
        details += fine && reading.fine() ? 1 : 0;
        fine |= reading.fine();
        boolean became = clause.from() > 2 && clause.join() == Meaning.Sign.THEN
                && tokens.get(clause.from() - 2).stem().equals("into") && tokens.get(clause.from() - 3).stem().equals("turn");
        boolean instead = became || clause.join() == Meaning.Sign.BUT && tokens.subList(clause.from(), clause.to()).stream()
                .anyMatch(token -> REALLY.contains(token.stem()));
        if (became && !reading.unclear().isEmpty() || (clause.has(Meaning.Sign.NOW) || instead) && !reading.heads().isEmpty()
                && clause.join() != Meaning.Sign.AND) {
            // "It was tight, now it is loose": what was before is over.
            withdraw();
        }
        if (!reading.deniedOf().isEmpty()) {
            lastDenied = reading.deniedOf();
        }
        if (consequence(reading, clause)) {
            details++;
        } else if (!reading.heads().isEmpty()) {
            tell(reading, clause, tokens);
        } else if (reading.over() && told.size() > sentenceStart) {
            // "There was some push, but I dialled it out": it is over.
            withdraw();
        } else if (clause.join() == Meaning.Sign.EXCEPT && !reading.words().isEmpty()) {
            if (fine && more && told.size() == sentenceStart) {
                // "Planted, except under braking, where the tail wags": that is where it is.
                lead.addAll(reading.words());
                leadUsed = false;
                return;
            }
            if (told.size() == sentenceStart && !lastDenied.isEmpty()) {
                // "No oversteer unless I lift": there it is.
                deniedBefore(reading.words(), clause, tokens);
                return;
            }
            if (told.isEmpty()) {
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
            exclude(reading.words(), true);
        } else if (reading.fine() && reading.until()) {
            // "Fine until lap ten": from there on it is not.
            if (more) {
                reading.words().forEach(word -> lead.add(word == Phase.MID_CORNER ? Phase.EXIT : word));
                leadUsed = false;
                leadAfter = true;
            } else {
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
        } else if (reading.fine() || reading.denied()) {
            List<Word> where = new ArrayList<>(reading.words());
            where.removeIf(word -> word instanceof Severity || word instanceof Occurrence);
            exclude(where, clause.join() != Meaning.Sign.PLAIN || told.size() > sentenceStart);
        } else if (reading.sudden() && told.size() > sentenceStart) {
            details++;
            told.subList(lastHead, told.size()).replaceAll(Telling::sudden);
        } else if (more && told.size() == sentenceStart || !reading.aboutSomethingElse()) {
            detail(reading, clause, tokens, more, next);
        } else if (reading.unclear().isEmpty() && reading.unknown().isEmpty()) {
            notUnderstood.add(typed(tokens, clause.from(), clause.to()));
        }
        if (reading.thing() != null) {
            lastThing = reading.thing();
        } else if (reading.part() != null) {
            lastThing = reading.part();
        }
    }

    /** Whether it names the car or a part of it, or says a complaint whole; "it" may be anything. */
    private static boolean ofTheCar(Atom atom, List<Token> tokens) {
        return atom.as(Meaning.Complaint.class).isPresent() || atom.as(Meaning.Thing.class)
                .filter(thing -> !thing.name().equals("driver") && !tokens.get(atom.from()).stem().equals("it")).isPresent();
    }

    /** "The front locks and we miss the apex": what came of it for the driver is no second complaint. */
    private boolean consequence(Reading reading, Clause clause) {
        return told.size() > sentenceStart && (clause.join() == Meaning.Sign.AND || clause.join() == Meaning.Sign.THEN)
                && !reading.heads().isEmpty() && reading.onlyTheDriver()
                && reading.heads().stream().allMatch(head -> head.phases().isEmpty() && head.words().isEmpty());
    }

    private void withdraw() {
        while (told.size() > sentenceStart) {
            notUnderstood.add("before: " + told.remove(told.size() - 1).told().text());
        }
        lastHead = told.size();
    }

    private void name(Reading reading, Clause clause, List<Token> tokens) {
        reading.unclear().forEach(atom -> {
            List<Symptom> mayBe = sayings.mayBe(atom.doings());
            unclear.add(new Heard.Unclear(reading.heads().isEmpty() ? typed(tokens, clause.from(), clause.to())
                    : typed(tokens, atom.from(), atom.to()), mayBe.size() > 4 ? List.of()
                            : mayBe.stream().map(symptom -> mayBe.size() == 1 ? narrowed(symptom, reading) : Told.of(symptom))
                            .toList()));
        });
        if (reading.unclear().isEmpty() || !reading.heads().isEmpty()) {
            int from = -1;
            int to = -1;
            for (Atom atom : reading.unknown()) {
                if (from >= 0 && atom.from() != to) {
                    notUnderstood.add(typed(tokens, from, to));
                    from = -1;
                }
                from = from < 0 ? atom.from() : from;
                to = atom.to();
            }
            if (from >= 0) {
                notUnderstood.add(typed(tokens, from, to));
            }
        }
    }

    /** The one complaint that it may be, with where and when it was said to be. */
    private static Told narrowed(Symptom symptom, Reading reading) {
        Telling telling = new Telling(symptom);
        reading.words().forEach(telling::add);
        telling.senseless();
        return telling.told();
    }

    private Optional<Phase> leadPhase() {
        return lead.stream().filter(Phase.class::isInstance).map(Phase.class::cast).reduce((one, other) -> other);
    }

    /** The phase of the complaint before, where this clause goes on about the same thing. */
    private Optional<Phase> lastPhase(Clause clause) {
        return told.size() > sentenceStart && clause.join() != Meaning.Sign.BUT
                ? told.get(told.size() - 1).told().word(Phase.class) : Optional.empty();
    }

    private void tell(Reading reading, Clause clause, List<Token> tokens) {
        lastHead = told.size();
        if (clause.join() == Meaning.Sign.THEN && !leadAfter || clause.join() == Meaning.Sign.BUT && leadOfCar) {
            // "She turns in, but then she does not hold the line": that is later.
            lead.removeIf(Phase.class::isInstance);
        }
        boolean listed = clause.join() == Meaning.Sign.PLAIN && clause.to() - clause.from() <= LISTED;
        if (leadUsed && clause.join() != Meaning.Sign.AND && !listed) {
            lead.removeIf(Since.class::isInstance);
        }
        for (Narrowing.Head head : reading.heads()) {
            List<Phase> phases = head.phases();
            for (Meaning.Complaint complaint : head.complaints()) {
                Telling telling = new Telling(complaint.symptom());
                head.words().forEach(telling::put);
                complaint.words().forEach(word -> {
                    if (!(word instanceof Phase) || phases.isEmpty() || phases.equals(List.of(Phase.BRAKING))
                            || word == Phase.KERBS) {
                        telling.put(word);
                    }
                });
                head.notIn().forEach(telling::not);
                in(telling, clause, tokens);
                if (Thin.is(head, reading, clause, tokens)) {
                    telling.doubt(telling.typed());
                }
                List<Telling> copies = new ArrayList<>();
                for (Phase phase : phases) {
                    Telling copy = telling.copy();
                    copy.add(phase);
                    copies.add(copy);
                }
                if (copies.isEmpty()) {
                    copies.add(telling);
                }
                if (head.phases().isEmpty()) {
                    copies = led(copies);
                }
                for (Telling copy : copies) {
                    lead.stream().filter(word -> !(word instanceof Phase)).forEach(copy::add);
                    leadNot.forEach(copy::not);
                    told.add(copy);
                }
            }
        }
        leadUsed = true;
        lead.removeIf(Severity.class::isInstance);
        if (reading.before().stream().anyMatch(Phase.class::isInstance)) {
            lead.removeIf(Phase.class::isInstance);
        }
        // What stands before the first complaint is said of those that follow as well.
        reading.before().stream().filter(word -> !(word instanceof Severity)).forEach(lead::add);
    }

    private static void in(Telling telling, Clause clause, List<Token> tokens) {
        telling.in(clause, typed(tokens, clause.from(), clause.to()),
                tokens.subList(clause.from(), clause.to()).stream().anyMatch(token -> token.stem().equals("#")));
    }

    /** The phases that were said before the complaint. */
    private List<Telling> led(List<Telling> tellings) {
        List<Phase> phases = lead.stream().filter(Phase.class::isInstance).map(Phase.class::cast).toList();
        List<Phase> meant = Phases.meant(phases, ON_THE_BRAKES.contains(tellings.get(0).told().symptom()));
        if (meant.isEmpty()) {
            return tellings;
        }
        List<Telling> led = new ArrayList<>();
        for (Telling telling : tellings) {
            for (Phase phase : meant) {
                Telling copy = telling.copy();
                copy.add(phase);
                led.add(copy);
            }
        }
        return led;
    }

    private void exclude(List<Word> words, boolean before) {
        if (before && !told.isEmpty()) {
            details++;
            for (Telling telling : told.subList(Math.min(lastHead, told.size()), told.size())) {
                words.forEach(telling::not);
            }
        }
        leadNot.addAll(words);
    }

    /** A clause that only says where, when, how bad or how often. */
    private void detail(Reading reading, Clause clause, List<Token> tokens, boolean more, boolean next) {
        List<Word> words = new ArrayList<>(reading.words());
        boolean here = told.size() > sentenceStart;
        if (!here && lastDenied.isEmpty() || reading.driven()) {
            // "Bad at first", "I could really push": how bad is said of what was told, not of what may follow.
            clause.atoms().stream().filter(atom -> Degrees.is(atom) && !reading.driven())
                    .forEach(atom -> notUnderstood.add(typed(tokens, atom.from(), atom.to())));
            words.removeIf(Severity.class::isInstance);
        }
        if (!reading.notIn().isEmpty()) {
            exclude(reading.notIn(), true);
            if (told.isEmpty() && !more) {
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
        }
        if (words.isEmpty()) {
            if (reading.thing() != null && here) {
                placed(reading.thing(), clause, tokens);
            } else if (reading.thing() != null && !more) {
                // "The rear is fine, it is the front": what it does nobody said.
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
            return;
        }
        if (!here && !lastDenied.isEmpty() && reading.thing() != null) {
            // "Never the fronts, always the rears": it is the other end that does it.
            lastHead = told.size();
            Symptom other = otherEnd(lastDenied.get(0).symptom(), reading.thing());
            if (other == null) {
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            } else {
                Telling telling = new Telling(other);
                words.forEach(telling::put);
                in(telling, clause, tokens);
                told.add(telling);
            }
            return;
        }
        if (!here && !more && !lastDenied.isEmpty() && words.stream().anyMatch(word -> !(word instanceof CornerSpeed))) {
            // "No understeer on entry, but on exit": there it is.
            deniedBefore(words, clause, tokens);
            return;
        }
        boolean conflict = here && words.stream().anyMatch(told.get(told.size() - 1)::knows);
        if (told.isEmpty() || !here && more || here && next && (conflict || reading.act())) {
            if (reading.act() || leadIsAct) {
                lead.removeIf(word -> word instanceof Phase && words.stream().anyMatch(Phase.class::isInstance));
            }
            lead.addAll(words);
            leadIsAct = reading.act();
            leadOfCar = reading.ofTheCar();
            leadUsed = false;
            return;
        }
        details++;
        List<Telling> last = new ArrayList<>(told.subList(Math.min(lastHead, told.size() - 1), told.size()));
        boolean again = conflict && words.stream().anyMatch(word -> known(last, word)
                && (word instanceof Phase || word instanceof CornerSpeed) && last.stream().noneMatch(it -> it.says(word)));
        if (again) {
            List<Phase> phases = Phases.meant(words.stream().filter(Phase.class::isInstance).map(Phase.class::cast).toList());
            Telling once = told.get(told.size() - 1).copy();
            words.stream().filter(word -> !(word instanceof Phase)).forEach(once::put);
            if (phases.isEmpty()) {
                told.add(once);
            }
            for (Phase phase : phases) {
                Telling copy = once.copy();
                copy.put(phase);
                told.add(copy);
            }
            return;
        }
        for (Word word : words) {
            if (word instanceof Turn && known(last, word) && last.stream().noneMatch(it -> it.says(word))) {
                last.forEach(it -> it.put(Turn.BOTH));
            } else if (word instanceof Occurrence || word instanceof Since) {
                List<Telling> all = told.subList(here ? sentenceStart : lastHead, told.size());
                (clause.join() == Meaning.Sign.PLAIN ? all : last).forEach(it -> it.add(word));
            } else {
                last.forEach(it -> it.add(word));
            }
        }
    }

    /** Tells what was denied before, now that it is said where it is. */
    private void deniedBefore(List<Word> words, Clause clause, List<Token> tokens) {
        lastHead = told.size();
        for (Meaning.Complaint complaint : lastDenied) {
            Telling telling = new Telling(complaint.symptom());
            words.forEach(telling::put);
            in(telling, clause, tokens);
            told.add(telling);
        }
    }

    /** What a thing at one end of the car does where a complaint about the other end is denied; null where nobody can say. */
    private static Symptom otherEnd(Symptom denied, Meaning.Thing thing) {
        boolean rear = thing.place().startsWith("rear");
        return denied == Symptom.FRONT_LOCKING && rear ? Symptom.REAR_LOCKING
                : denied == Symptom.REAR_LOCKING && !rear ? Symptom.FRONT_LOCKING
                : denied == Symptom.UNDERSTEER && rear ? Symptom.OVERSTEER
                : denied == Symptom.OVERSTEER && !rear ? Symptom.UNDERSTEER : null;
    }

    /** "Graining, mostly the front left": where the complaint before it is. */
    private void placed(Meaning.Thing thing, Clause clause, List<Token> tokens) {
        for (Telling telling : told.subList(Math.min(lastHead, told.size() - 1), told.size())) {
            if (telling.at(thing)) {
                details++;
            } else {
                notUnderstood.add(typed(tokens, clause.from(), clause.to()));
                return;
            }
        }
    }

    private static boolean known(List<Telling> tellings, Word word) {
        return tellings.stream().anyMatch(it -> it.knows(word));
    }

    private static String typed(List<Token> tokens, int from, int to) {
        return Tokens.typed(tokens.subList(from, to));
    }
}
