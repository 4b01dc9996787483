package camberwell.input;

import camberwell.problem.Problem;
import camberwell.run.Case;
import java.util.List;

/**
 * A case as it was read.
 *
 * @param run the case
 * @param warnings what was odd about the file, and how it was read all the same
 */
public record CaseFile(Case run, List<Problem> warnings) {

    /** Copies the list. */
    public CaseFile {
        warnings = List.copyOf(warnings);
    }
}
