package camberwell.debrief;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.vocabulary.Change;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the advice comes to.
 *
 * @param ranking the changes, best first
 * @param shares each change's share of the sum of all scores; the whole of it for no change where there is none
 * @param driving the note for the driver that comes before every change, if one does
 */
public record Outcome(List<Change> ranking, Map<Optional<Change>, Double> shares, Optional<String> driving) {

    static Outcome of(Advice advice) {
        Map<Optional<Change>, Double> shares = new LinkedHashMap<>();
        double total = advice.changes().stream().mapToDouble(change -> change.score().total()).sum();
        advice.changes().forEach(change -> shares.put(Optional.of(change.change()), change.score().total() / total));
        if (shares.isEmpty()) {
            shares.put(Optional.empty(), 1.0);
        }
        return new Outcome(advice.changes().stream().map(RankedChange::change).toList(), shares,
                advice.drivingFirst() ? Optional.of(advice.driving().get(0).note().name()) : Optional.empty());
    }

    /** The change that is advised first, if one is. */
    public Optional<Change> first() {
        return ranking.stream().findFirst();
    }
}
