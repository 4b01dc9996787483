package camberwell.advice;

import camberwell.vocabulary.Change;
import java.util.List;

/**
 * Complaints that ask for opposite things, or rules that do.
 *
 * @param statement for the driver
 * @param changes that would help one complaint at the other's cost, or that rules say the contrary of
 * @param ofRules whether it is the rules that are at odds, rather than what is complained of
 */
public record Conflict(String statement, List<Change> changes, boolean ofRules) {

    /** One between complaints. */
    public Conflict(String statement, List<Change> changes) {
        this(statement, changes, false);
    }
}
