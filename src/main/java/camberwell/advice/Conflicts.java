package camberwell.advice;

import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.List;

/**
 * Complaints that ask for opposite things: a change helps one and harms the other. Only what a driver feels of the balance can
 * conflict; what a tyre shows is a cost.
 */
final class Conflicts {

    private Conflicts() {
    }

    /**
     * The conflicts between the complaints of one case.
     *
     * @param complaints all of them
     * @param candidates every change that was scored
     * @param advised those that are advised, best first
     */
    static List<Conflict> among(List<Complaint> complaints, List<RankedChange> candidates, List<RankedChange> advised) {
        List<Conflict> conflicts = new ArrayList<>();
        List<Complaint> felt = complaints.stream()
                .filter(complaint -> complaint.reported() && complaint.where().isEmpty()).toList();
        for (int i = 0; i < felt.size(); i++) {
            for (int j = i + 1; j < felt.size(); j++) {
                Complaint one = felt.get(i);
                Complaint other = felt.get(j);
                List<Change> trading = candidates.stream().filter(candidate -> trades(candidate, one, other))
                        .map(RankedChange::change).toList();
                if (trading.size() > 1 || advised.stream().map(RankedChange::change).anyMatch(trading::contains)) {
                    boolean both = !advised.isEmpty() && advised.get(0).helps(one) && advised.get(0).helps(other);
                    conflicts.add(new Conflict(one.text() + " and " + other.text() + (both
                            ? " agree on some changes and pull apart on others; what helps both comes first"
                            : " ask for opposite changes; what acts on one of them alone comes first"), trading));
                }
            }
        }
        return conflicts;
    }

    private static boolean trades(RankedChange candidate, Complaint one, Complaint other) {
        return candidate.helps(one) && costs(candidate, other) || candidate.helps(other) && costs(candidate, one);
    }

    private static boolean costs(RankedChange candidate, Complaint complaint) {
        return candidate.score().costs().stream().anyMatch(cost -> cost.on().equals(complaint.text()));
    }
}
