package camberwell.saying;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;

/** Puts what a clause says of where, when and how bad to the complaint that it is of: the last one told, or what follows. */
final class Placing {

    private final Account account;
    private final Lead lead;
    /** Where the told complaints of this sentence begin. */
    int sentenceStart;
    /** Where those of the last clause with a complaint begin. */
    int lastHead;
    /** What was denied last in this sentence. */
    List<Meaning.Complaint> lastDenied = List.of();

    Placing(Account account, Lead lead) {
        this.account = account;
        this.lead = lead;
    }

    /** The complaint that was told last. */
    Telling last() {
        return account.told.get(account.told.size() - 1);
    }

    /** Notes the clause that tells it. */
    static void in(Telling telling, Clause clause, List<Token> tokens) {
        telling.in(clause, typed(tokens, clause.from(), clause.to()),
                tokens.subList(clause.from(), clause.to()).stream().anyMatch(token -> token.stem().equals("#")));
    }

    /** Notes where it is not, of what was told before and of what may follow. */
    void exclude(List<Word> words, boolean before) {
        if (before && !account.told.isEmpty()) {
            account.details++;
            for (Telling telling : account.told.subList(Math.min(lastHead, account.told.size()), account.told.size())) {
                words.forEach(telling::not);
            }
        }
        lead.not(words);
    }

    /** A clause that only says where, when, how bad or how often. */
    void detail(Reading reading, Clause clause, List<Token> tokens, boolean more, boolean next) {
        List<Word> words = new ArrayList<>(reading.words());
        boolean here = account.told.size() > sentenceStart;
        if (!here && lastDenied.isEmpty() || reading.driven()) {
            // "Bad at first", "I could really push": how bad is said of what was told, not of what may follow.
            clause.atoms().stream().filter(atom -> Degrees.is(atom) && !reading.driven())
                    .forEach(atom -> account.notUnderstood.add(typed(tokens, atom.from(), atom.to())));
            words.removeIf(Severity.class::isInstance);
        }
        if (!reading.notIn().isEmpty()) {
            exclude(reading.notIn(), true);
            if (account.told.isEmpty() && !more) {
                account.notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
        }
        if (words.isEmpty()) {
            if (reading.thing() != null && here) {
                placed(reading.thing(), clause, tokens);
            } else if (reading.thing() != null && !more) {
                // "The rear is fine, it is the front": what it does nobody said.
                account.notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            }
            return;
        }
        if (!here && !lastDenied.isEmpty() && reading.thing() != null) {
            // "Never the fronts, always the rears": it is the other end that does it.
            lastHead = account.told.size();
            Symptom other = otherEnd(lastDenied.get(0).symptom(), reading.thing());
            if (other == null) {
                account.notUnderstood.add(typed(tokens, clause.from(), clause.to()));
            } else {
                Telling telling = new Telling(other);
                words.forEach(telling::put);
                in(telling, clause, tokens);
                account.told.add(telling);
            }
            return;
        }
        if (!here && !more && !lastDenied.isEmpty() && words.stream().anyMatch(word -> !(word instanceof CornerSpeed))) {
            // "No understeer on entry, but on exit": there it is.
            deniedBefore(words, clause, tokens);
            return;
        }
        boolean conflict = here && words.stream().anyMatch(last()::knows);
        if (account.told.isEmpty() || !here && more || here && next && (conflict || reading.act())) {
            lead.add(words, reading);
            return;
        }
        account.details++;
        int from = Math.min(lastHead, account.told.size() - 1);
        List<Telling> last = new ArrayList<>(account.told.subList(from, account.told.size()));
        boolean again = conflict && words.stream().anyMatch(word -> known(last, word)
                && (word instanceof Phase || word instanceof CornerSpeed) && last.stream().noneMatch(it -> it.says(word)));
        if (again) {
            List<Phase> phases = Phases.meant(words.stream().filter(Phase.class::isInstance).map(Phase.class::cast).toList());
            Telling once = last().copy();
            words.stream().filter(word -> !(word instanceof Phase)).forEach(once::put);
            if (phases.isEmpty()) {
                account.told.add(once);
            }
            for (Phase phase : phases) {
                Telling copy = once.copy();
                copy.put(phase);
                account.told.add(copy);
            }
            return;
        }
        for (Word word : words) {
            if (word instanceof Turn && known(last, word) && last.stream().noneMatch(it -> it.says(word))) {
                last.forEach(it -> it.put(Turn.BOTH));
            } else if (word instanceof Occurrence || word instanceof Since) {
                List<Telling> all = account.told.subList(here ? sentenceStart : lastHead, account.told.size());
                (clause.join() == Meaning.Sign.PLAIN ? all : last).forEach(it -> it.add(word));
            } else {
                last.forEach(it -> it.add(word));
            }
        }
    }

    /** Tells what was denied before, now that it is said where it is. */
    void deniedBefore(List<Word> words, Clause clause, List<Token> tokens) {
        lastHead = account.told.size();
        for (Meaning.Complaint complaint : lastDenied) {
            Telling telling = new Telling(complaint.symptom());
            words.forEach(telling::put);
            in(telling, clause, tokens);
            account.told.add(telling);
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
        for (Telling telling : account.told.subList(Math.min(lastHead, account.told.size() - 1), account.told.size())) {
            if (telling.at(thing)) {
                account.details++;
            } else {
                account.notUnderstood.add(typed(tokens, clause.from(), clause.to()));
                return;
            }
        }
    }

    private static boolean known(List<Telling> tellings, Word word) {
        return tellings.stream().anyMatch(it -> it.knows(word));
    }

    /** Some of the words, as they were typed. */
    static String typed(List<Token> tokens, int from, int to) {
        return Tokens.typed(tokens.subList(from, to));
    }
}
