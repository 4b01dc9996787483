package camberwell.cli;

/** What the process says to whoever started it. */
public final class ExitCode {

    /** Done. */
    public static final int DONE = 0;
    /** The run found something wrong: a rule check that fails, say. */
    public static final int FOUND_WRONG = 1;
    /** The input or the command line is wrong. */
    public static final int WRONG_INPUT = 2;

    private ExitCode() {
    }
}
