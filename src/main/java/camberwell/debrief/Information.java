package camberwell.debrief;

import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Shannon's entropy and what an answer tells about it (C. E. Shannon, "A Mathematical Theory of Communication", Bell
 * System Technical Journal 27, 1948; information gain as in J. R. Quinlan, "Induction of Decision Trees", Machine
 * Learning 1, 1986).
 */
final class Information {

    private Information() {
    }

    /** The entropy in bits of the distribution that is proportional to {@code weights}; 0 for no weight at all. */
    static double entropy(Collection<Double> weights) {
        double total = weights.stream().mapToDouble(Double::doubleValue).sum();
        double bits = 0;
        for (double weight : weights) {
            if (weight > 0) {
                bits -= weight / total * Math.log(weight / total) / Math.log(2);
            }
        }
        return bits;
    }

    /**
     * What an answer is expected to tell, in bits: the entropy of all answers' distributions mixed, less their mean
     * entropy. Never negative; 0 exactly when every answer leaves the same distribution.
     *
     * @param chances how likely each answer is, up to a factor
     * @param distributions what is the case after each answer, in that order; each sums to 1
     */
    static <T> double gain(List<Double> chances, List<Map<T, Double>> distributions) {
        double total = chances.stream().mapToDouble(Double::doubleValue).sum();
        Map<T, Double> mixed = new HashMap<>();
        double left = 0;
        for (int i = 0; i < chances.size(); i++) {
            double chance = chances.get(i) / total;
            distributions.get(i).forEach((thing, share) -> mixed.merge(thing, chance * share, Double::sum));
            left += chance * entropy(distributions.get(i).values());
        }
        return Math.max(0, entropy(mixed.values()) - left);
    }
}
