package camberwell.saying;

import java.util.List;
import java.util.Map;

/** What several say, as one: geometric means, to the last bit the same on every machine. */
final class Pool {

    private static final double LEAST = 1e-12;

    private Pool() {
    }

    /** The geometric mean of what they say of a label. */
    static double together(List<Map<String, Double>> members, String label) {
        double product = 1;
        for (Map<String, Double> member : members) {
            product *= Math.max(LEAST, member.getOrDefault(label, 0.0));
        }
        return root(product, members.size());
    }

    /** The geometric mean of the odds that they give a label, as a probability. */
    static double ofOdds(List<Map<String, Double>> members, String label) {
        double holds = 1;
        double not = 1;
        for (Map<String, Double> member : members) {
            double likely = member.getOrDefault(label, 0.0);
            holds *= Math.max(LEAST, likely);
            not *= Math.max(LEAST, 1 - likely);
        }
        return share(root(holds, members.size()), root(not, members.size()));
    }

    /** The geometric mean of two odds, as a probability. */
    static double ofOdds(double one, double other) {
        return share(Math.sqrt(one * other), Math.sqrt((1 - one) * (1 - other)));
    }

    private static double root(double of, int count) {
        return count == 1 ? of : count == 2 ? Math.sqrt(of) : StrictMath.pow(of, 1.0 / count);
    }

    private static double share(double holds, double not) {
        return holds + not == 0 ? 0 : holds / (holds + not);
    }
}
