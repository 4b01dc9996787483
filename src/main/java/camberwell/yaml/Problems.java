package camberwell.yaml;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was found wrong so far, in one file or several. */
public final class Problems {

    /** After so many, a reader has seen enough. */
    private static final int MOST = 50;

    private final List<Problem> found = new ArrayList<>();
    private final Set<String> files = new LinkedHashSet<>();
    private int more;
    private boolean worse;

    /** Notes that a file is being read; problems are told in the order of the files. */
    public void inFile(String name) {
        files.add(name);
    }

    /** Notes a problem. */
    public void add(Problem problem) {
        worse |= !problem.warning();
        if (found.size() >= MOST) {
            more++;
            // What has to be mended is worth more room than what has not.
            if (problem.warning() || !removedWarning()) {
                return;
            }
        }
        found.add(problem);
    }

    private boolean removedWarning() {
        for (int i = found.size() - 1; i >= 0; i--) {
            if (found.get(i).warning()) {
                found.remove(i);
                return true;
            }
        }
        return false;
    }

    /** How many there are so far, warnings included. */
    public int count() {
        return found.size() + more;
    }

    /** Everything that was found, file by file from top to bottom; of very much, the first. */
    public List<Problem> all() {
        List<String> order = List.copyOf(files);
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt((Problem problem) -> order.indexOf(problem.file()))
                .thenComparingInt(Problem::line).thenComparingInt(Problem::column));
        if (more > 0) {
            sorted.add(new Problem(order.get(0), 0, 0, "and " + more + (worse ? " problems" : " warnings") + " more",
                    Optional.empty(), !worse, ""));
        }
        return sorted;
    }

    /** The warnings, when there is nothing worse. */
    public List<Problem> warningsOrFail() {
        List<Problem> all = all();
        if (worse) {
            throw new ProblemsException(all);
        }
        return all;
    }
}
