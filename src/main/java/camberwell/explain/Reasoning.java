package camberwell.explain;

import camberwell.advice.Advice;
import camberwell.engine.Conclusions;
import camberwell.fact.Day;
import camberwell.fact.Finding;
import camberwell.fact.Outing;
import camberwell.fact.Premise;
import camberwell.fact.Reading;
import camberwell.fact.Reported;
import camberwell.fact.Setup;
import camberwell.run.Case;
import camberwell.vocabulary.Wheel;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * One case from what was typed to the advice.
 *
 * @param typed the facts that the rules started from
 * @param conclusions everything that the rules concluded
 * @param advice what was advised
 */
public record Reasoning(Case run, List<Premise> typed, Conclusions conclusions, Advice advice) {

    /** Every fact that a condition may rest on. */
    List<Premise> premises() {
        return Stream.concat(typed.stream(), conclusions.findings().stream()).toList();
    }

    /** The finding of that name, likely or not, if anything speaks for or against it. */
    Optional<Finding> finding(String id) {
        return conclusions.findings().stream().filter(finding -> finding.id().equals(id)).findFirst();
    }

    /**
     * Where a fact stands in the case file, as a path that can be typed after {@code --if}; empty for a finding, which
     * nobody typed.
     */
    public Optional<String> place(Premise premise) {
        if (premise instanceof Reported reported) {
            return Optional.of("reports[" + run.reports().indexOf(reported.report()) + "]");
        }
        if (premise instanceof Reading reading) {
            return Optional.of(Arrays.stream(Wheel.values())
                    .filter(wheel -> run.tyres().containsKey(wheel) && (reading.place().is(wheel.id())
                            || reading.place().is(wheel.axle().id())))
                    .map(wheel -> "tyres." + wheel.id()).collect(Collectors.joining(", ")));
        }
        if (premise instanceof Day) {
            return Optional.of("conditions");
        }
        if (premise instanceof Outing) {
            return Optional.of("stint, driver, tried, tyres");
        }
        return premise instanceof Setup ? Optional.of("car") : Optional.empty();
    }
}
