package camberwell.classifier;

import java.util.Set;

/**
 * One thing to learn from.
 *
 * @param features as {@link Features} gives them
 * @param labels those that hold of it
 * @param open those that may hold or not; nothing is learned about them. All others do not hold.
 */
public record Example(int[] features, Set<String> labels, Set<String> open) {
}
