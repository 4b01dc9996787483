package camberwell.explain;

import camberwell.advice.Learned;
import camberwell.fact.Certainty;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What several rules say about one thing, taken together.
 *
 * @param steps strongest first
 * @param certainty of all together
 * @param learned what came of a change that was tried, which speaks beside the rules
 */
public record Sum(List<Step> steps, double certainty, Optional<Learned> learned) {

    /** Two certainties that become one (EMYCIN). */
    public record Joined(double first, double second, double result) {
    }

    /** Sorts the steps, the strongest first. */
    public Sum {
        steps = steps.stream().sorted(Comparator.comparingDouble((Step step) -> -Math.abs(step.certainty()))
                .thenComparing(step -> step.rule().name())).toList();
    }

    /** What rules alone say. */
    public Sum(List<Step> steps, double certainty) {
        this(steps, certainty, Optional.empty());
    }

    /** How the certainties become one, two at a time; the order does not matter to the result. */
    public List<Joined> joined() {
        List<Double> certainties = new ArrayList<>();
        steps.forEach(step -> certainties.add(step.certainty()));
        learned.filter(it -> it.evidence() != 0).ifPresent(it -> certainties.add(it.evidence()));
        List<Joined> joined = new ArrayList<>();
        for (int i = 1; i < certainties.size(); i++) {
            double first = joined.isEmpty() ? certainties.get(0) : joined.get(joined.size() - 1).result();
            double second = certainties.get(i);
            joined.add(new Joined(first, second, Certainty.combine(first, second)));
        }
        return joined;
    }
}
