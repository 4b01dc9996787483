package camberwell.rules;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.cases.Paddock;
import camberwell.fact.Conclusion;
import camberwell.fact.Premise;
import camberwell.run.Case;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import org.kie.api.definition.KiePackage;
import org.kie.api.definition.rule.Rule;

@DisplayName("A rule that is taken out of the rule base is missed")
class DropOneRuleTest {

    private static final int SAMPLE = 12;

    @Test
    @DisplayName("a dozen rules drawn at random: without it nothing of it is left, and some case concludes otherwise")
    void dropped() throws IOException {
        RuleFolder folder = RuleFolder.builtIn(Path.of(System.getProperty("camberwell.home", "")));
        List<Model> models = new ModelLoader(folder.dictionary(), new RuleCache(RuleBase.defaultCache()))
                .load(folder.sources());
        List<String> names = new ArrayList<>(Paddock.rules().rules().keySet());
        Collections.shuffle(names, new Random(1984));
        List<String> unmissed = new ArrayList<>();
        for (String name : names.subList(0, SAMPLE)) {
            KieBase without = KieBaseBuilder.createKieBaseFromModel(models);
            remove(name, without);
            boolean missed = false;
            for (Case run : Paddock.cases().values()) {
                List<Premise> premises = Paddock.premises(run);
                Conclusions all = Paddock.conclude(premises);
                if (missed || Paddock.all(all).stream().noneMatch(it -> it.rule().equals(name))) {
                    continue;
                }
                try (Consultation consultation =
                        new Consultation(without.newKieSession(), Paddock.rules().findings())) {
                    premises.forEach(consultation::insert);
                    Conclusions rest = consultation.conclude();
                    assertFalse(Paddock.all(rest).stream().map(Conclusion::rule).anyMatch(name::equals), name);
                    missed = !rest.equals(all);
                }
            }
            if (!missed) {
                unmissed.add(name);
            }
        }
        assertEquals(List.of(), unmissed);
    }

    private static void remove(String name, KieBase base) {
        List<String> homes = new ArrayList<>();
        for (KiePackage kiePackage : base.getKiePackages()) {
            for (Rule rule : kiePackage.getRules()) {
                if (rule.getName().equals(name)) {
                    homes.add(kiePackage.getName());
                }
            }
        }
        assertTrue(homes.size() == 1, () -> name + " stands in " + homes);
        base.removeRule(homes.get(0), name);
    }
}
