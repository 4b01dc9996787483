package camberwell.explain;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.advice.Withheld;
import camberwell.fact.Finding;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Two pieces of advice side by side: as the case is, and as it would be.
 *
 * @param changes in either advice, in the order of the first, then of the second
 * @param findings likely in either case, in the same order
 */
public record Comparison(Advice before, Advice after, List<ChangeRow> changes, List<FindingRow> findings) {

    /** A change on both sides, and why it is held back where it is. */
    public record ChangeRow(Change change, Optional<RankedChange> before, Optional<RankedChange> after,
            Optional<Withheld> withheldBefore, Optional<Withheld> withheldAfter) {
    }

    /** The certainty of a finding on both sides; 0 where it is not likely. */
    public record FindingRow(String finding, double before, double after) {
    }

    /** Lays two pieces of advice side by side. */
    public static Comparison of(Advice before, Advice after) {
        Set<Change> changes = new LinkedHashSet<>();
        Set<String> findings = new LinkedHashSet<>();
        for (Advice advice : List.of(before, after)) {
            advice.changes().forEach(ranked -> changes.add(ranked.change()));
            advice.findings().forEach(finding -> findings.add(finding.id()));
        }
        for (Advice advice : List.of(before, after)) {
            advice.withheld().forEach(withheld -> changes.add(withheld.change()));
        }
        List<ChangeRow> rows = new ArrayList<>();
        for (Change change : changes) {
            rows.add(new ChangeRow(change, ranked(before, change), ranked(after, change), withheld(before, change),
                    withheld(after, change)));
        }
        return new Comparison(before, after, rows, findings.stream()
                .map(id -> new FindingRow(id, certainty(before, id), certainty(after, id))).toList());
    }

    private static Optional<RankedChange> ranked(Advice advice, Change change) {
        return advice.changes().stream().filter(ranked -> ranked.change().equals(change)).findFirst();
    }

    private static Optional<Withheld> withheld(Advice advice, Change change) {
        return advice.withheld().stream().filter(withheld -> withheld.change().equals(change)).findFirst();
    }

    private static double certainty(Advice advice, String id) {
        return advice.findings().stream().filter(finding -> finding.id().equals(id)).mapToDouble(Finding::certainty).findFirst()
                .orElse(0);
    }
}
