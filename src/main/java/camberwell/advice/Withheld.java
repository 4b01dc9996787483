package camberwell.advice;

import camberwell.fact.Proposal;
import camberwell.vocabulary.Change;
import java.util.List;

/**
 * A change that the rules propose and that is not advised all the same.
 *
 * @param reason for the driver
 * @param rules that withhold it, if rules do
 * @param proposals what the rules said for and against it
 */
public record Withheld(Change change, String reason, List<String> rules, List<Proposal> proposals) {
}
