package camberwell.problem;

import java.util.List;
import java.util.stream.Collectors;

/** Everything that is wrong with what was put in, in one go. */
public class ProblemsException extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    /** @param problems at least one */
    public ProblemsException(List<Problem> problems) {
        super(problems.stream().sorted().map(Problem::text).collect(Collectors.joining("\n")));
        this.problems = problems.stream().sorted().toList();
    }

    /** All of them, by file and line. */
    public List<Problem> problems() {
        return problems;
    }
}
