package camberwell.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.advice.Advisor;
import camberwell.input.CaseReader;
import camberwell.language.RuleText;
import camberwell.upkeep.DemoCase;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

@DisplayName("The case that is made up for a rule")
class DemoCaseTest {

    @Test
    @DisplayName("fires the rule, whichever built-in rule it is")
    void firesTheRule(@TempDir Path cache) {
        Engine engine = new Engine(Bench.home(), cache);
        Advisor advisor = engine.advisor();
        List<String> silent = new ArrayList<>();
        for (RuleText rule : engine.rules().rules().values()) {
            String text = DemoCase.of(rule, engine.rules().rules().values());
            Set<String> fired = new HashSet<>();
            ByteArrayInputStream in = new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8));
            advisor.advise(new CaseReader().read("made up", in, cache).run(), firing -> fired.add(firing.rule()));
            if (!fired.contains(rule.name())) {
                silent.add(rule.name());
            }
        }
        assertEquals(List.of(), silent);
    }
}
