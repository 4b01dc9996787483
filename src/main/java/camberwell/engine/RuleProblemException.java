package camberwell.engine;

/** The rule set did something that no rule set may: it fired without end, or a compiled rule could not be loaded. */
public class RuleProblemException extends RuntimeException {

    private static final long serialVersionUID = 1;

    /** @param message for the person who wrote the rules */
    public RuleProblemException(String message) {
        super(message);
    }

    /** @param message for the person who wrote the rules */
    public RuleProblemException(String message, Throwable cause) {
        super(message, cause);
    }
}
