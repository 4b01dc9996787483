package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.knowledge.Note;
import camberwell.vocabulary.Change;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * What the advice comes to.
 *
 * @param ranking the changes, best first
 * @param shares each change's share of the sum of all scores; the whole of it for no change where there is none
 * @param driving the note for the driver that comes before every change, if one does
 * @param cautions the notes of the cautions that this very case calls for
 * @param settled whether one of them halts everything and nothing that could be asked changes that
 */
public record Outcome(List<Change> ranking, Map<Optional<Change>, Double> shares, Optional<String> driving,
        Set<String> cautions, boolean settled) {

    /** Of what was not tried. */
    static final Outcome NONE = new Outcome(List.of(), Map.of(), Optional.empty(), Set.of(), false);

    /** What is told first: what to try in the driving, or else what to change; and the cautions that go with it. */
    public record First(Optional<String> driving, Optional<Change> change, Set<String> cautions) {
    }


    static Outcome of(Advice advice) {
        Map<Optional<Change>, Double> shares = new LinkedHashMap<>();
        double total = advice.changes().stream().mapToDouble(change -> change.score().total()).sum();
        advice.changes().forEach(change -> shares.put(Optional.of(change.change()), change.score().total() / total));
        if (shares.isEmpty()) {
            shares.put(Optional.empty(), 1.0);
        }
        return new Outcome(advice.changes().stream().map(RankedChange::change).toList(), shares,
                advice.drivingFirst() ? Optional.of(advice.driving().get(0).note().name()) : Optional.empty(),
                advice.cautions().stream().map(Note::name).collect(Collectors.toCollection(TreeSet::new)),
                advice.halt().filter(Note::asksNoMore).isPresent());
    }

    /** What is told first. */
    public First told() {
        return new First(driving, driving.isPresent() ? Optional.empty() : first(), cautions);
    }

    /** The change that is advised first, if one is. */
    public Optional<Change> first() {
        return ranking.stream().findFirst();
    }
}
