package camberwell.language;

import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * The names of the knowledge notes, which close the lists that the dictionary leaves open.
 *
 * @param adjustments names of notes on adjusters
 * @param findings names of notes on readings and causes
 * @param driving names of driving notes
 * @param cautions names of notes on cautions
 * @param questions the questions of packs, each with its answers
 */
public record Names(Set<String> adjustments, Set<String> findings, Set<String> driving, Set<String> cautions,
        Map<String, Set<String>> questions) {

    /** Without questions. */
    public Names(Set<String> adjustments, Set<String> findings, Set<String> driving, Set<String> cautions) {
        this(adjustments, findings, driving, cautions, Map.of());
    }

    /** The same with questions. */
    public Names with(Map<String, Set<String>> asked) {
        return new Names(adjustments, findings, driving, cautions, asked);
    }

    /** The names that may fill a gap of that name; empty when it is not a name of a note. */
    public Set<String> forGap(String gap) {
        return switch (gap) {
            case "finding" -> findings;
            case "driving" -> driving;
            case "caution" -> cautions;
            default -> Set.of();
        };
    }

    /** Whether there is a note of that name, of any kind. */
    public boolean hasNote(String name) {
        return adjustments.contains(name) || findings.contains(name) || driving.contains(name)
                || cautions.contains(name);
    }

    /** Every name, of any kind. */
    public Set<String> all() {
        Set<String> all = new TreeSet<>(adjustments);
        all.addAll(findings);
        all.addAll(driving);
        all.addAll(cautions);
        return all;
    }
}
