package camberwell.saying;

import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
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

    /** What happens on the brakes where those are named at all. */
    private static final Set<Symptom> ON_THE_BRAKES = Set.of(Symptom.FRONT_LOCKING, Symptom.REAR_LOCKING, Symptom.PULLING);

    /** A clause of no more words is one of a list: "after five laps hot rears, no drive, a loose tail". */
    private static final int LISTED = 3;

    private final Sayings sayings;
    private final Account account = new Account();

    private final Lead lead = new Lead();
    private final Placing placing = new Placing(account, lead);
    private Meaning.Thing lastThing;
    private boolean spoiled;
    private boolean unclearBefore;
    private boolean othersBefore;

    private Hearing(Sayings sayings) {
        this.sayings = sayings;
    }

    /** What is understood of what was said. */
    static Heard of(Sayings sayings, String said) {
        Hearing hearing = new Hearing(sayings);
        for (List<Token> sentence : sayings.sentences(said)) {
            int before = hearing.account.weight();
            hearing.sentence(sentence);
            if (hearing.account.weight() == before) {
                // Nothing is swallowed, not even what has not one word that is strange.
                hearing.account.notUnderstood.add(Placing.typed(sentence, 0, sentence.size()));
            }
        }
        return hearing.account.heard(said);
    }

    private void sentence(List<Token> whole) {
        List<Token> tokens = Question.told(whole);
        if (tokens.isEmpty()) {
            account.notUnderstood.add(Placing.typed(whole, 0, whole.size()));
            return;
        }
        account.troubled |= Trouble.isIn(tokens);
        placing.sentenceStart = account.told.size();
        lead.clear();
        spoiled = false;
        unclearBefore = false;
        othersBefore = false;
        placing.lastDenied = List.of();
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
        account.loose.addAll(lead.unused());
    }

    private void clause(Clause said, List<Token> tokens, boolean more, boolean next) {
        Clause clause = said.has(Meaning.Sign.OTHERS) && AFTER.contains(tokens.get(said.from()).stem())
                ? said.afterOthers() : said;
        if (clause.from() > said.from()) {
            account.notUnderstood.add(Placing.typed(tokens, said.from(), clause.from()));
        }
        boolean likened = account.told.size() > placing.sentenceStart && clause.join() == Meaning.Sign.PLAIN
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
            account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
            return;
        }
        Reading reading = Reading.of(sayings, clause, tokens, new Doer.Before(lastThing, lead.phase(), lastPhase(clause),
                account.told.size() > placing.sentenceStart ? Optional.of(placing.last().told().symptom()) : Optional.empty()));
        if (reading.weak() || reading.better() || reading.breaksOff()) {
            account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
        } else {
            name(reading, clause, tokens);
        }
        if (reading.better() || reading.heads().isEmpty() && reading.breaksOff()) {
            lastThing = reading.thing() == null ? lastThing : reading.thing();
            return;
        }
        unclearBefore = !reading.unclear().isEmpty() && reading.heads().isEmpty();
        if (clause.join() == Meaning.Sign.EXCEPT && reading.heads().isEmpty()
                && (reading.fine() || account.fine && reading.words().isEmpty() && reading.thing() == null)) {
            // "Everything but the rear is fine": what it is there nobody said.
            account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
            return;
        }
        account.surfaces.addAll(reading.surfaces());
        account.details += account.fine && reading.fine() ? 1 : 0;
        account.fine |= reading.fine();
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
            placing.lastDenied = reading.deniedOf();
        }
        if (consequence(reading, clause)) {
            account.details++;
        } else if (!reading.heads().isEmpty()) {
            tell(reading, clause, tokens);
        } else if (reading.over() && account.told.size() > placing.sentenceStart) {
            // "There was some push, but I dialled it out": it is over.
            withdraw();
        } else if (clause.join() == Meaning.Sign.EXCEPT && !reading.words().isEmpty()) {
            if (account.fine && more && account.told.size() == placing.sentenceStart) {
                // "Planted, except under braking, where the tail wags": that is where it is.
                lead.add(reading.words());
                return;
            }
            if (account.told.size() == placing.sentenceStart && !placing.lastDenied.isEmpty()) {
                // "No oversteer unless I lift": there it is.
                placing.deniedBefore(reading.words(), clause, tokens);
                return;
            }
            if (account.told.isEmpty()) {
                account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
            }
            placing.exclude(reading.words(), true);
        } else if (reading.fine() && reading.until()) {
            // "Fine until lap ten": from there on it is not.
            if (more) {
                lead.until(reading.words());
            } else {
                account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
            }
        } else if (reading.fine() || reading.denied()) {
            List<Word> where = new ArrayList<>(reading.words());
            where.removeIf(word -> word instanceof Severity || word instanceof Occurrence);
            placing.exclude(where, clause.join() != Meaning.Sign.PLAIN || account.told.size() > placing.sentenceStart);
        } else if (reading.sudden() && account.told.size() > placing.sentenceStart) {
            account.details++;
            account.told.subList(placing.lastHead, account.told.size()).replaceAll(Telling::sudden);
        } else if (more && account.told.size() == placing.sentenceStart || !reading.aboutSomethingElse()) {
            placing.detail(reading, clause, tokens, more, next);
        } else if (reading.unclear().isEmpty() && reading.unknown().isEmpty()) {
            account.notUnderstood.add(Placing.typed(tokens, clause.from(), clause.to()));
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
        return account.told.size() > placing.sentenceStart
                && (clause.join() == Meaning.Sign.AND || clause.join() == Meaning.Sign.THEN)
                && !reading.heads().isEmpty() && reading.onlyTheDriver()
                && reading.heads().stream().allMatch(head -> head.phases().isEmpty() && head.words().isEmpty());
    }

    private void withdraw() {
        while (account.told.size() > placing.sentenceStart) {
            account.notUnderstood.add("before: " + account.told.remove(account.told.size() - 1).told().text());
        }
        placing.lastHead = account.told.size();
    }

    private void name(Reading reading, Clause clause, List<Token> tokens) {
        reading.unclear().forEach(atom -> {
            List<Symptom> mayBe = sayings.mayBe(atom.doings());
            account.unclear.add(new Heard.Unclear(reading.heads().isEmpty() ? Placing.typed(tokens, clause.from(), clause.to())
                    : Placing.typed(tokens, atom.from(), atom.to()), mayBe.size() > 4 ? List.of()
                            : mayBe.stream().map(symptom -> mayBe.size() == 1 ? narrowed(symptom, reading) : Told.of(symptom))
                            .toList()));
        });
        if (reading.unclear().isEmpty() || !reading.heads().isEmpty()) {
            int from = -1;
            int to = -1;
            for (Atom atom : reading.unknown()) {
                if (from >= 0 && atom.from() != to) {
                    account.notUnderstood.add(Placing.typed(tokens, from, to));
                    from = -1;
                }
                from = from < 0 ? atom.from() : from;
                to = atom.to();
            }
            if (from >= 0) {
                account.notUnderstood.add(Placing.typed(tokens, from, to));
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

    /** The phase of the complaint before, where this clause goes on about the same thing. */
    private Optional<Phase> lastPhase(Clause clause) {
        return account.told.size() > placing.sentenceStart && clause.join() != Meaning.Sign.BUT
                ? placing.last().told().word(Phase.class) : Optional.empty();
    }

    private void tell(Reading reading, Clause clause, List<Token> tokens) {
        placing.lastHead = account.told.size();
        boolean listed = clause.join() == Meaning.Sign.PLAIN && clause.to() - clause.from() <= LISTED;
        lead.before(clause, listed);
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
                Placing.in(telling, clause, tokens);
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
                    lead.narrow(copy);
                    account.told.add(copy);
                }
            }
        }
        lead.told(reading.before());
    }

    /** The phases that were said before the complaint. */
    private List<Telling> led(List<Telling> tellings) {
        List<Phase> meant = Phases.meant(lead.phases(), ON_THE_BRAKES.contains(tellings.get(0).told().symptom()));
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
}
