package camberwell.explain;

import camberwell.fact.Certainty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What several rules say about one thing, taken together.
 *
 * @param steps strongest first
 * @param certainty of all together
 */
public record Sum(List<Step> steps, double certainty) {

    /** Two certainties that become one (EMYCIN). */
    public record Joined(double first, double second, double result) {
    }

    /** Sorts the steps, the strongest first. */
    public Sum {
        steps = steps.stream().sorted(Comparator.comparingDouble((Step step) -> -Math.abs(step.certainty()))
                .thenComparing(step -> step.rule().name())).toList();
    }

    /** How the certainties become one, two at a time; the order does not matter to the result. */
    public List<Joined> joined() {
        List<Joined> joined = new ArrayList<>();
        for (int i = 1; i < steps.size(); i++) {
            double first = joined.isEmpty() ? steps.get(0).certainty() : joined.get(joined.size() - 1).result();
            double second = steps.get(i).certainty();
            joined.add(new Joined(first, second, Certainty.combine(first, second)));
        }
        return joined;
    }
}
