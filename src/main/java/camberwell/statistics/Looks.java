package camberwell.statistics;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/** Several looks at the same runs: one false alarm at 0.05 has a chance of 0.23 in five of them. */
public final class Looks {

    private Looks() {
    }

    /** The chance of at least one false alarm in {@code looks} at {@code level}: 1 - (1 - level)^looks. */
    public static double falseAlarm(int looks, double level) {
        return 1 - Math.pow(1 - level, looks);
    }

    /** p values that may be claimed together (S. Holm, Scand. J. Statist. 6, 1979), in the order of {@code p}. */
    public static double[] holm(double... p) {
        Integer[] order = order(p);
        double[] adjusted = new double[p.length];
        double largest = 0;
        for (int i = 0; i < p.length; i++) {
            largest = Math.max(largest, Math.min(1, (p.length - i) * p[order[i]]));
            adjusted[order[i]] = largest;
        }
        return adjusted;
    }

    /**
     * p values for picking what to look at next (Y. Benjamini and Y. Hochberg, J. R. Statist. Soc. B 57, 1995), in the
     * order of {@code p}.
     */
    public static double[] falseDiscovery(double... p) {
        Integer[] order = order(p);
        double[] adjusted = new double[p.length];
        double least = 1;
        for (int i = p.length - 1; i >= 0; i--) {
            least = Math.min(least, p.length * p[order[i]] / (i + 1));
            adjusted[order[i]] = least;
        }
        return adjusted;
    }

    private static Integer[] order(double[] p) {
        Integer[] order = IntStream.range(0, p.length).boxed().toArray(Integer[]::new);
        Arrays.sort(order, Comparator.comparingDouble(i -> p[i]));
        return order;
    }
}
