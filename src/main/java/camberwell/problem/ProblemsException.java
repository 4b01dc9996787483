package camberwell.problem;

import java.util.List;
import java.util.stream.Collectors;

/** What was put in cannot be used, with everything that is wrong with it. */
public final class ProblemsException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    /** @param problems at least one; warnings may be among them */
    public ProblemsException(List<Problem> problems) {
        super(problems.stream().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = List.copyOf(problems);
    }

    /** An input with one problem. */
    public ProblemsException(Problem problem) {
        this(List.of(problem));
    }

    /** Everything that is wrong, file by file from top to bottom. */
    public List<Problem> problems() {
        return problems;
    }
}
