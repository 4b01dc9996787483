package camberwell.advice;

import camberwell.vocabulary.Change;
import java.util.List;

/**
 * Complaints that ask for opposite things.
 *
 * @param statement for the driver
 * @param changes that would help one at the other's cost
 */
public record Conflict(String statement, List<Change> changes) {
}
