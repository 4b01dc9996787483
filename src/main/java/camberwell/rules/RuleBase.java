package camberwell.rules;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionConfiguration;
import org.kie.internal.runtime.conf.ForceEagerActivationOption;

/** The rules that advice rests on, ready to fire. Safe for use by several threads. */
public final class RuleBase {

    private final Dictionary dictionary;
    private final Map<String, RuleText> rules;
    private final Set<String> findings;
    private final KieBase kieBase;

    private RuleBase(Dictionary dictionary, Map<String, RuleText> rules, KieBase kieBase) {
        this.dictionary = dictionary;
        this.rules = Collections.unmodifiableMap(rules);
        this.kieBase = kieBase;
        Set<String> concluded = new TreeSet<>();
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
        RuleFolder folder = RuleFolder.builtIn(home);
        List<Problem> problems = new ArrayList<>();
        Map<String, RuleText> rules = new LinkedHashMap<>();
        for (RuleFolder.Found file : folder.files()) {
            if (file.stage().isPresent()) {
                RuleFileReader reader =
                        new RuleFileReader(folder.dictionary(), names, file.name(), file.stage().get());
                for (RuleText rule : reader.read(file.text()).rules()) {
                    RuleText other = rules.putIfAbsent(rule.name(), rule);
                    if (other != null) {
                        problems.add(Problem.error(rule.file(), rule.line(), 1, "the rule \"" + rule.name()
                                + "\" stands already in " + other.file() + ":" + other.line()));
                    }
                }
                problems.addAll(reader.problems());
            }
        }
        if (!problems.isEmpty()) {
            throw new ProblemsException(problems);
        }
        List<Model> models = new ModelLoader(folder.dictionary(), new RuleCache(cache)).load(folder.sources());
        return new RuleBase(folder.dictionary(), rules, KieBaseBuilder.createKieBaseFromModel(models));
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
        return new Consultation(kieBase.newKieSession(eager, null), findings);
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
