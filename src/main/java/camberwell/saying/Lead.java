package camberwell.saying;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What was said in a sentence before the complaint that it belongs to: where, when, and where not. */
final class Lead {

    private final List<Word> words = new ArrayList<>();
    private final List<Word> not = new ArrayList<>();
    private boolean act;
    private boolean ofTheCar;
    /** Whether it says from when on: "fine until I open the throttle, and then". */
    private boolean after;
    private boolean used;

    /** Begins another sentence. */
    void clear() {
        words.clear();
        not.clear();
        used = false;
        ofTheCar = false;
        after = false;
    }

    /** What no complaint was told of. */
    List<Word> unused() {
        return used ? List.of() : List.copyOf(words);
    }

    /** The last phase of it. */
    Optional<Phase> phase() {
        return phases().stream().reduce((one, other) -> other);
    }

    List<Phase> phases() {
        return words.stream().filter(Phase.class::isInstance).map(Phase.class::cast).toList();
    }

    /** Adds where it is. */
    void add(List<Word> more) {
        words.addAll(more);
        used = false;
    }

    /** Adds from when on it is. */
    void until(List<Word> more) {
        more.forEach(word -> words.add(word == Phase.MID_CORNER ? Phase.EXIT : word));
        used = false;
        after = true;
    }

    /** Adds what a clause says; of several things that the driver does in a row the last one counts. */
    void add(List<Word> more, Reading reading) {
        if (reading.act() || act) {
            words.removeIf(word -> word instanceof Phase && more.stream().anyMatch(Phase.class::isInstance));
        }
        words.addAll(more);
        act = reading.act();
        ofTheCar = reading.ofTheCar();
        used = false;
    }

    /** Adds where it is not. */
    void not(List<Word> more) {
        not.addAll(more);
    }

    /**
     * Leaves out what a clause that tells a complaint is not meant by.
     *
     * @param listed whether it is one of a list
     */
    void before(Clause clause, boolean listed) {
        if (clause.join() == Meaning.Sign.THEN && !after || clause.join() == Meaning.Sign.BUT && ofTheCar) {
            // "She turns in, but then she does not hold the line": that is later.
            words.removeIf(Phase.class::isInstance);
        }
        if (used && clause.join() != Meaning.Sign.AND && !listed) {
            words.removeIf(Since.class::isInstance);
        }
    }

    /** Says of a complaint all of it but the phase. */
    void narrow(Telling telling) {
        words.stream().filter(word -> !(word instanceof Phase)).forEach(telling::add);
        not.forEach(telling::not);
    }

    /** What stands before the first complaint is said of those that follow as well. */
    void told(List<Word> before) {
        used = true;
        words.removeIf(Severity.class::isInstance);
        if (before.stream().anyMatch(Phase.class::isInstance)) {
            words.removeIf(Phase.class::isInstance);
        }
        before.stream().filter(word -> !(word instanceof Severity)).forEach(words::add);
    }
}
