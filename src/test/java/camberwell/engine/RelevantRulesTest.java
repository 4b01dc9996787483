package camberwell.engine;

import camberwell.cases.Paddock;
import camberwell.fact.Premise;
import camberwell.language.Needs;
import camberwell.laws.AnyRun;
import camberwell.run.Case;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@DisplayName("The rules that could fire on a case")
class RelevantRulesTest {

    private static final int RUNS = 1000;

    @Test
    @DisplayName("conclude by themselves what all rules conclude, on every demo case")
    void same(@TempDir Path cache) throws IOException {
        List<String> differing = new ArrayList<>();
        for (Map.Entry<String, Case> entry : Paddock.cases().entrySet()) {
            List<Premise> premises = Paddock.premises(entry.getValue());
            RuleBase fresh = RuleBase.open(Path.of(System.getProperty("camberwell.home")), Paddock.names(), cache);
            try (Consultation few = fresh.consult(premises)) {
                if (!few.conclude().equals(Paddock.conclude(premises))) {
                    differing.add(entry.getKey());
                }
            }
        }
        assertEquals(List.of(), differing);
    }

    @Test
    @DisplayName("have among them every rule that fires, on any run")
    void noneMissed() {
        List<Needs> needs = Paddock.rules().rules().values().stream().map(Needs::of).toList();
        Set<String> missed = new TreeSet<>();
        Set<String> fired = new TreeSet<>();
        for (int number = 0; number < RUNS; number++) {
            List<Premise> premises = Paddock.premises(AnyRun.of(number));
            Set<String> chosen = RelevantRules.of(needs, premises);
            try (Consultation all = Paddock.rules().consult()) {
                all.listen(firing -> {
                    fired.add(firing.rule());
                    if (!chosen.contains(firing.rule())) {
                        missed.add(firing.rule());
                    }
                });
                premises.forEach(all::insert);
                all.conclude();
            }
        }
        assertEquals(Set.of(), missed);
        assertTrue(fired.size() * 2 > needs.size(), fired.size() + " rules fired on any of the runs");
    }

    @Test
    @DisplayName("are a small part of them, which is what makes a single case quick")
    void few() {
        for (Case run : Paddock.cases().values()) {
            int chosen = RelevantRules.of(Paddock.rules().rules().values().stream().map(Needs::of).toList(),
                    Paddock.premises(run)).size();
            assertTrue(chosen * 2 < Paddock.rules().rules().size(), run.title() + ": " + chosen);
        }
    }
}
