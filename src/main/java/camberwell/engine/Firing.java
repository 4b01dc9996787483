package camberwell.engine;

import camberwell.fact.Premise;
import java.util.List;

/**
 * That a rule fired.
 *
 * @param rule its name
 * @param premises what it matched, in the order of its sentences
 */
public record Firing(String rule, List<Premise> premises) {
}
