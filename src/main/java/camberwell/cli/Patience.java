package camberwell.cli;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.Optional;

/** Ends a talk that nobody sits at: an input without an end, of which nothing is understood, would go on for ever. */
final class Patience {

    /** More than anybody tries in a row. */
    static final int MOST = 50;

    private final boolean watched;
    private int inVain;

    Patience(Console console) {
        watched = console.interactive();
    }

    /**
     * Takes note of an answer.
     *
     * @param something whether anything came of it
     * @throws ProblemsException if nothing came of so many in a row, unless a person sits there
     */
    void took(boolean something) {
        inVain = something ? 0 : inVain + 1;
        if (!watched && inVain == MOST) {
            throw new ProblemsException(Problem.of("-", "nothing came of " + MOST + " answers in a row", Optional.empty()));
        }
    }
}
