package camberwell.engine;

import camberwell.cases.Paddock;
import camberwell.fact.Conclusion;
import camberwell.fact.Premise;
import camberwell.pack.RuleFolder;
import camberwell.run.Case;
import java.io.IOException;
import java.lang.reflect.Proxy;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.kie.api.KieBase;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;


@DisplayName("A rule that is taken out of the rule base is missed")
class DropOneRuleTest {

    private static final int SAMPLE = 8;

    @Test
    @DisplayName("eight rules drawn at random: without it nothing of it is left, and some case concludes otherwise")
    void dropped() throws IOException {
        RuleFolder folder = RuleFolder.builtIn(Path.of(System.getProperty("camberwell.home", "")));
        List<Model> models = new ModelLoader(folder.dictionary(), new RuleCache(RuleBase.defaultCache()))
                .load(folder.sources());
        List<String> names = new ArrayList<>(Paddock.rules().rules().keySet());
        Collections.shuffle(names, new Random(1984));
        List<String> unmissed = new ArrayList<>();
        for (String name : names.subList(0, SAMPLE)) {
            KieBase without = KieBaseBuilder.createKieBaseFromModel(models.stream()
                    .map(model -> without(name, model)).toList());
            boolean missed = false;
            for (Case run : Paddock.cases().values()) {
                List<Premise> premises = Paddock.premises(run);
                Conclusions all = Paddock.conclude(premises);
                if (missed || Paddock.all(all).stream().noneMatch(it -> it.rule().equals(name))) {
                    continue;
                }
                try (Consultation consultation =
                        new Consultation(without.newKieSession(), Set.of())) {
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

    /** The same model without a rule of that name. Taking it out of a built base trips over shared segments (10.2). */
    private static Model without(String name, Model model) {
        return (Model) Proxy.newProxyInstance(Model.class.getClassLoader(), new Class<?>[] {Model.class},
                (proxy, method, arguments) -> method.getName().equals("getRules")
                        ? model.getRules().stream().filter(rule -> !rule.getName().equals(name)).toList()
                        : method.invoke(model, arguments));
    }
}
