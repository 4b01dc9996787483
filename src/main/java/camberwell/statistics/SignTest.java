package camberwell.statistics;

import java.util.Optional;
import org.hipparchus.distribution.discrete.BinomialDistribution;

/**
 * Better against worse, where the distances between grades mean nothing. Pairs that stayed the same say nothing.
 *
 * @param better pairs that got better
 * @param same pairs that stayed as they were
 * @param worse pairs that got worse
 */
public record SignTest(int better, int same, int worse) {

    /** With fewer pairs that moved, the two-sided p cannot reach 0.05. */
    public static final int FEWEST = 6;

    /** Counts grades before and after; a smaller grade is better. @throws IllegalArgumentException if they do not pair */
    public static SignTest of(int[] before, int[] after) {
        if (before.length != after.length) {
            throw new IllegalArgumentException(before.length + " grades before, " + after.length + " after");
        }
        int better = 0;
        int worse = 0;
        for (int i = 0; i < before.length; i++) {
            better += after[i] < before[i] ? 1 : 0;
            worse += after[i] > before[i] ? 1 : 0;
        }
        return new SignTest(better, before.length - better - worse, worse);
    }

    /** The two-sided p value of no effect; 1 where nothing moved. */
    public double pValue() {
        int moved = better + worse;
        return moved == 0 ? 1 : Math.min(1, 2 * new BinomialDistribution(moved, 0.5)
                .cumulativeProbability(Math.min(better, worse)));
    }

    /** The p value, where there are pairs enough for it to tell anything. */
    public Optional<Double> tellingPValue() {
        return better + worse < FEWEST ? Optional.empty() : Optional.of(pValue());
    }
}
