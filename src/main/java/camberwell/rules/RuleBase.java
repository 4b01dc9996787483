package camberwell.rules;

import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;

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
        Map<String, String> packages = new HashMap<>();
        Set<String> unspoken = new TreeSet<>();
        for (int i = 0; i < models.size(); i++) {
            RuleCompiler.Source source = set.sources().get(i);
            Model model = models.get(i);
            packages.put(source.name(), model.getPackageName());
            if (source.sentences()) {
                List<String> compiled = model.getRules().stream().map(Rule::getName).sorted().toList();
                if (!compiled.equals(set.namesIn(source))) {
                    throw new RuleProblemException(source.name() + ": Drools compiled other rules than were read");
                }
            } else if (source.name().equals(RuleFolder.COMBINE)) {
                unspoken.add(model.getPackageName());
            }
        }
        KieBase kieBase = KieBaseBuilder.createKieBaseFromModel(models);
        set.replaced().keySet().forEach(old -> kieBase.removeRule(packages.get(old.file()), old.name()));
        return new RuleBase(set, set.hasDrools() ? names.findings() : Set.of(), unspoken, kieBase);
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

    /** A new, empty working memory. */
    public Consultation consult() {
        return new Consultation(kieBase.newKieSession(), findings, unspoken);
    }

    /** The folder for compiled rules that the operating system has for such things. */
    public static Path defaultCache() {
        return RuleCache.defaultFolder(new HashMap<>(System.getenv()), System.getProperty("user.home"));
    }
}
