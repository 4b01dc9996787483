package camberwell.rules;

import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionConfiguration;
import org.kie.internal.runtime.conf.ForceEagerActivationOption;

/** The rules that advice rests on, ready to fire. Safe for use by several threads. */
public final class RuleBase {

    private final Dictionary dictionary;
    private final Map<String, RuleText> rules;
    private final Set<String> findings;
    private final Set<String> unspoken;
    private final KieBase kieBase;

    private RuleBase(RuleSet set, Set<String> watched, Set<String> unspoken, KieBase kieBase) {
        this.dictionary = set.dictionary();
        this.rules = set.rules();
        this.unspoken = unspoken;
        this.kieBase = kieBase;
        Set<String> concluded = new TreeSet<>(watched);
        rules.values().forEach(rule -> rule.conclusions().forEach(line -> {
            if (line.words().containsKey("finding")) {
                concluded.add(line.word("finding"));
            }
        }));
        findings = Collections.unmodifiableSet(concluded);
    }

    /**
     * Opens the built-in rules.
     *
     * @param home camberwell's own folder, which has {@code rules}
     * @param names the names of the knowledge notes
     * @param cache where rule files that changed are kept compiled
     * @throws ProblemsException if a rule file has a problem
     */
    public static RuleBase open(Path home, Names names, Path cache) throws IOException {
        return open(home, names, cache, List.of());
    }

    /**
     * Opens the built-in rules and those of {@code packs}.
     *
     * @param names the names of the knowledge notes, those of the packs among them
     * @throws ProblemsException if a rule file has a problem; then nothing was compiled
     */
    public static RuleBase open(Path home, Names names, Path cache, List<RulePack> packs) throws IOException {
        RuleSet set = RuleSet.read(home, names, packs);
        if (!set.problems().isEmpty()) {
            throw new ProblemsException(set.problems());
        }
        return open(set, names, new ModelLoader(set.dictionary(), new RuleCache(cache)));
    }

    static RuleBase open(RuleSet set, Names names, ModelLoader loader) {
        List<Model> models = loader.load(set.sources());
        List<Model> holding = new ArrayList<>();
        Set<String> unspoken = new TreeSet<>();
        for (int i = 0; i < models.size(); i++) {
            RuleCompiler.Source source = set.sources().get(i);
            Model model = models.get(i);
            Set<String> replaced = set.replaced().keySet().stream().filter(old -> old.file().equals(source.name()))
                    .map(RuleText::name).collect(Collectors.toSet());
            holding.add(replaced.isEmpty() ? model : without(replaced, model));
            if (source.sentences()) {
                List<String> compiled = model.getRules().stream().map(Rule::getName).sorted().toList();
                if (!compiled.equals(set.namesIn(source))) {
                    throw new RuleProblemException(source.name() + ": Drools compiled other rules than were read");
                }
            } else if (source.name().equals(RuleFolder.COMBINE)) {
                unspoken.add(model.getPackageName());
            }
        }
        return new RuleBase(set, set.hasDrools() ? names.findings() : Set.of(), unspoken,
                KieBaseBuilder.createKieBaseFromModel(holding));
    }

    /** A model without some of its rules. Taking them out of a built base instead trips Drools 10.2 over shared nodes. */
    private static Model without(Set<String> names, Model model) {
        ModelImpl rest = new ModelImpl(model.getName());
        model.getTypeMetaDatas().forEach(rest::addTypeMetaData);
        return rest.withRules(model.getRules().stream().filter(rule -> !names.contains(rule.getName())).toList());
    }

    /** The sentences that rules are written in. */
    public Dictionary dictionary() {
        return dictionary;
    }

    /** Every rule by its name, in the order of the files. */
    public Map<String, RuleText> rules() {
        return rules;
    }

    /** Every finding that some rule concludes. */
    public Set<String> findings() {
        return findings;
    }

    /**
     * A new, empty working memory. Rules are evaluated eagerly in it: evaluated lazily, Drools 10.2 now and then leaves a
     * conclusion standing when the last fact that its rule rested on goes.
     */
    public Consultation consult() {
        KieSessionConfiguration eager = RuleBaseFactory.newKnowledgeSessionConfiguration();
        eager.setOption(ForceEagerActivationOption.YES);
        return new Consultation(kieBase.newKieSession(eager, null), findings, unspoken);
    }

    /** Compiles one rule file and forgets it; see the class-data archive of the build. */
    public static void rehearseCompilation(Path home) throws IOException {
        RuleFolder folder = RuleFolder.builtIn(home);
        new RuleCompiler(folder.dictionary()).compile(folder.sources().subList(1, 2));
    }

    /** The folder for compiled rules that the operating system has for such things. */
    public static Path defaultCache() {
        return RuleCache.defaultFolder(new HashMap<>(System.getenv()), System.getProperty("user.home"));
    }
}
