package camberwell.saying;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A stretch of a sentence that means something.
 *
 * @param from the first of its tokens
 * @param to the token after its last
 * @param words how many of its tokens stand in the phrase
 * @param within what stands in the middle of it: how bad, how often
 */
record Atom(int from, int to, int words, List<Meaning> meanings, List<Atom> within) {

    /** Its meaning of that kind, if it has one. */
    <M extends Meaning> Optional<M> as(Class<M> kind) {
        return meanings.stream().filter(kind::isInstance).map(kind::cast).findFirst();
    }

    boolean is(Meaning meaning) {
        return meanings.contains(meaning);
    }

    /** Whether it may be something that the driver does. */
    boolean acts() {
        return meanings.stream().anyMatch(meaning -> meaning instanceof Meaning.Circumstance it && it.act());
    }

    /** Whether a complaint may begin with it. */
    boolean head() {
        return as(Meaning.Complaint.class).isPresent() || as(Meaning.Doing.class).isPresent();
    }

    /** Every doing that it may stand for. */
    List<Meaning.Doing> doings() {
        List<Meaning.Doing> doings = new ArrayList<>();
        for (Meaning meaning : meanings) {
            if (meaning instanceof Meaning.Doing doing) {
                doings.add(doing);
            }
        }
        return doings;
    }
}
