package camberwell.advice;

import camberwell.fact.Proposal;
import camberwell.knowledge.Note;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A change to make.
 *
 * @param rank from 1
 * @param size how far
 * @param score what it is worth, term by term
 * @param proposals what the rules said for and against it
 * @param because the reason of the rule that speaks for it most; raw Drools in a trusted folder has none
 * @param note the adjuster's knowledge note
 * @param firstBy the rules that put it before the others, whatever its score
 * @param way the note on this direction: rationale, what to watch, when to put it back
 * @param beside what is moved with it as one change, where it is not made alone
 */
public record RankedChange(int rank, Change change, Size size, Score score, List<Proposal> proposals,
        Optional<String> because, List<String> firstBy, Note note, Note.Way way,
        Optional<Beside> beside) {

    /**
     * What is moved with it, as one change.
     *
     * @param size how far
     */
    public record Beside(Change change, Size size) {
    }

    /** A change that is made alone. */
    public RankedChange(int rank, Change change, Size size, Score score, List<Proposal> proposals, Optional<String> because,
            List<String> firstBy, Note note, Note.Way way) {
        this(rank, change, size, score, proposals, because, firstBy, note, way, Optional.empty());
    }

    /** Why it is advised: the rule's own reason, or else the note's. */
    public String why() {
        return because.orElse(way.rationale());
    }

    /** Whether no rule speaks for it, and a model of the car alone does. */
    public boolean ofModelAlone() {
        List<String> speaking = rules();
        return speaking.contains(LastResort.WORD) && List.of(LastResort.WORD, Learned.RULE).containsAll(speaking);
    }

    /** Whether it relieves a complaint. */
    boolean helps(Complaint complaint) {
        return score.helped().contains(complaint);
    }

    /** What is moved with it, and where to; nothing where it is made alone. */
    public Map<Adjuster, Quantity> besideIt() {
        return beside.isEmpty() ? Map.of()
                : Map.of(beside.get().change().adjuster(), beside.get().size().to().orElseThrow());
    }

    /** The same change at another place. */
    RankedChange at(int place) {
        return new RankedChange(place, change, size, score, proposals, because, firstBy, note, way, beside);
    }

    /** The same change as far as another setting, and why. */
    RankedChange sized(Quantity to, int steps, String why) {
        return sized(size.to(to, steps, why));
    }

    /** The same change, told with another size. */
    RankedChange sized(Size other) {
        return new RankedChange(rank, change, other, score, proposals, because, firstBy, note, way, beside);
    }

    /** The same change, made as one with another. */
    RankedChange with(Beside other) {
        return new RankedChange(rank, change, size, score, proposals, because, firstBy, note, way, Optional.of(other));
    }

    /** The same change with one more line to its computation. */
    RankedChange explained(String line) {
        return sized(size.explained(line));
    }

    /** The names of the rules that speak for it, strongest first. */
    public List<String> rules() {
        return proposals.stream().filter(proposal -> proposal.certainty() > 0)
                .sorted((one, other) -> Double.compare(other.certainty(), one.certainty()))
                .map(Proposal::rule).distinct().toList();
    }
}
