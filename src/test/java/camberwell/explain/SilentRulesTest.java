package camberwell.explain;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.engine.Conclusions;
import camberwell.fact.Conclusion;
import camberwell.language.RuleText;
import camberwell.language.Trial;
import java.util.Collection;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Why-not asks the facts itself; it is worth nothing unless it agrees with Drools on what fires and what does not. */
class SilentRulesTest {

    @Test
    @DisplayName("A rule's sentences all hold exactly when Drools fires it, in every demo case and every drawn one")
    void agreesWithDrools() {
        assertAll(Stream.concat(DemoCases.reasoned(), DemoCases.drawn()).map(reasoning -> () ->
                assertEquals(fired(reasoning.conclusions()), holding(reasoning), reasoning.run().title())));
    }

    @Test
    @DisplayName("The drawn cases fire a good part of the rules for changes, so the comparison is no empty one")
    void manyRulesFire() {
        Set<String> fired = new TreeSet<>();
        DemoCases.drawn().forEach(reasoning -> fired.addAll(fired(reasoning.conclusions())));
        assertTrue(fired.size() > DemoCases.RULES.rules().size() / 4,
                fired.size() + " of " + DemoCases.RULES.rules().size());
    }

    private static Set<String> holding(Reasoning reasoning) {
        Set<String> holding = new TreeSet<>();
        for (RuleText rule : DemoCases.RULES.rules().values()) {
            if (rule.conditions().stream().allMatch(one -> Trial.of(one, reasoning.premises()).holds())) {
                holding.add(rule.name());
            }
        }
        return holding;
    }

    private static Set<String> fired(Conclusions conclusions) {
        Set<String> fired = new TreeSet<>();
        Stream.<Collection<? extends Conclusion>>of(conclusions.proposals(), conclusions.withholdings(),
                conclusions.driving(), conclusions.cautions(), conclusions.preferences()).flatMap(Collection::stream).map(Conclusion::rule)
                .forEach(fired::add);
        conclusions.findings().forEach(finding -> finding.evidence().forEach(said -> fired.add(said.rule())));
        return fired;
    }
}
