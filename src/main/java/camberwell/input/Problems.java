package camberwell.input;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** What was found wrong so far, in one file or several. */
final class Problems {

    /** After so many, a reader has seen enough. */
    private static final int MOST = 50;

    private final List<Problem> found = new ArrayList<>();
    private int more;

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
        List<String> files = found.stream().map(Problem::file).distinct().toList();
        List<Problem> sorted = new ArrayList<>(found);
        sorted.sort(Comparator.comparingInt((Problem problem) -> files.indexOf(problem.file()))
                .thenComparingInt(Problem::line).thenComparingInt(Problem::column));
        if (sorted.stream().allMatch(Problem::warning) && more == 0) {
            return sorted;
        }
        if (more > 0) {
            sorted.add(Problem.of(files.get(files.size() - 1), more + " more", Optional.empty()));
        }
        throw new InputException(sorted);
    }
}
