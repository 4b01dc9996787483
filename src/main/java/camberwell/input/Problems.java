package camberwell.input;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** What was found wrong so far, in one file or several. */
final class Problems {

    /** After so many, a reader has seen enough. */
    private static final int MOST = 50;

    private final List<Problem> found = new ArrayList<>();
    private final Set<String> files = new LinkedHashSet<>();
    private int more;

    /** Notes that a file is being read; problems are told in the order of the files. */
    void inFile(String name) {
        files.add(name);
    }

    void add(Problem problem) {
        if (found.size() < MOST) {
            found.add(problem);
        } else {
            more++;
        }
    }

    int count() {
        return found.size() + more;
    }

    /** The warnings, when there is nothing worse. */
    List<Problem> warningsOrFail() {
        List<String> order = List.copyOf(files);
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt((Problem problem) -> order.indexOf(problem.file()))
                .thenComparingInt(Problem::line).thenComparingInt(Problem::column));
        if (sorted.stream().allMatch(Problem::warning) && more == 0) {
            return sorted;
        }
        if (more > 0) {
            sorted.add(Problem.of(order.get(0), "and " + more + " problems more", Optional.empty()));
        }
        throw new ProblemsException(sorted);
    }
}
