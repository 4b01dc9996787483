package camberwell.explain;

import camberwell.advice.RankedChange;
import camberwell.advice.Withheld;
import camberwell.fact.Premise;
import camberwell.knowledge.Note;
import camberwell.vocabulary.Change;
import java.util.List;
import java.util.Optional;

/**
 * How a change was arrived at.
 *
 * @param typed what it rests on in the end, each once
 * @param findings what follows from that, each after those that it rests on
 * @param sum the rules that propose or oppose the change
 * @param ranked its place in the advice, if it has one
 * @param withheld why it is not advised, if it is proposed and held back
 * @param note the adjuster's knowledge note
 */
public record How(Change change, List<Premise> typed, List<Derived> findings, Sum sum, Optional<RankedChange> ranked,
        Optional<Withheld> withheld, Note note) {

    /** Copies the lists. */
    public How {
        typed = List.copyOf(typed);
        findings = List.copyOf(findings);
    }
}
