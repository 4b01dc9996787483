package camberwell.engine;

import camberwell.fact.Premise;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Needs;
import camberwell.language.RuleText;
import camberwell.pack.RuleFolder;
import camberwell.pack.RulePack;
import camberwell.pack.RuleSet;
import camberwell.pack.Source;
import camberwell.problem.ProblemsException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBase;
import org.kie.api.runtime.KieSessionConfiguration;
import org.kie.internal.conf.ShareBetaNodesOption;
import org.kie.internal.runtime.conf.ForceEagerActivationOption;

/** The rules that advice rests on, ready to fire. Safe for use by several threads. */
public final class RuleBase {

    /** So many cases are put before the rules that concern them; for more, all rules are worth their while. */
    private static final int FEW = 2;

    private final Dictionary dictionary;
    private final List<Source> sources;
    /** By file, what its rules need; the rules themselves are read when somebody asks for them. */
    private final Map<String, List<Needs>> needs;
    /** Why each rule was written, by its name; made when first asked for. */
    private volatile Map<String, String> reasons;
    private final Supplier<RuleSet> reader;
    private final ModelLoader loader;
    private final Set<String> unspoken;
    private final boolean raw;
    private RuleSet set;
    private final AtomicInteger few = new AtomicInteger();
    /**
     * For a working memory that facts are withdrawn from: evaluated lazily, Drools 10.2 now and then leaves a conclusion
     * standing when the last fact that its rule rested on goes.
     */
    private KieSessionConfiguration eager;
    private volatile KieBase all;

    private RuleBase(Dictionary dictionary, List<Source> sources, Map<String, List<Needs>> needs,
            Supplier<RuleSet> reader, boolean raw, ModelLoader loader) {
        this.dictionary = dictionary;
        this.sources = sources;
        this.needs = needs;
        this.reader = reader;
        this.raw = raw;
        this.loader = loader;
        unspoken = sources.stream().filter(source -> source.name().equals(RuleFolder.COMBINE))
                .map(loader::packageOf).collect(Collectors.toUnmodifiableSet());
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
        return open(home, () -> names, cache, List.of());
    }

    /**
     * Opens the built-in rules and those of {@code packs}.
     *
     * @param names the names of the knowledge notes, those of the packs among them; asked for when rules have to be read
     * @throws ProblemsException if a rule file has a problem; then nothing was compiled
     */
    public static RuleBase open(Path home, Supplier<Names> names, Path cache, List<RulePack> packs)
            throws IOException {
        if (packs.isEmpty()) {
            RuleFolder folder = RuleFolder.builtIn(home);
            ModelLoader loader = new ModelLoader(folder.dictionary(), new RuleCache(cache));
            List<Source> sources = folder.sources();
            Optional<Map<String, List<Needs>>> needs = loader.needs(sources);
            if (needs.isPresent()) {
                return new RuleBase(folder.dictionary(), sources, needs.get(), () -> read(home, names.get()), false,
                        loader);
            }
        }
        RuleSet set = RuleSet.read(home, names.get(), packs);
        if (!set.problems().isEmpty()) {
            throw new ProblemsException(set.problems());
        }
        return open(set, new ModelLoader(set.dictionary(), new RuleCache(cache)));
    }

    private static RuleSet read(Path home, Names names) {
        try {
            return RuleSet.read(home, names, List.of());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Compiles what is no sentence among the built-in rules, where somebody has touched it since they were built.
     *
     * @return how many files that were
     * @throws RuleProblemException if Drools does not understand it
     */
    public static int compileDrools(Path home) throws IOException {
        RuleFolder folder = RuleFolder.builtIn(home);
        BuiltInRules known = new BuiltInRules(folder.dictionary());
        List<Source> touched = folder.sources().stream().filter(source -> !source.sentences() && known.find(source).isEmpty())
                .toList();
        return touched.isEmpty() ? 0 : new RuleCompiler(folder.dictionary()).compile(touched).size();
    }

    static RuleBase open(RuleSet set, ModelLoader loader) {
        Map<String, List<Needs>> needs = new HashMap<>();
        set.rules().values().forEach(rule ->
                needs.computeIfAbsent(rule.file(), file -> new ArrayList<>()).add(Needs.of(rule)));
        RuleBase base = new RuleBase(set.dictionary(), set.sources(), needs, () -> set,
                set.hasDrools(), loader);
        if (set.packSize() > 0 || set.hasDrools()) {
            // What is wrong with somebody's rules is told before anything else happens.
            base.all();
        }
        return base;
    }

    /** The rules as they were written. */
    private synchronized RuleSet set() {
        if (set == null) {
            set = reader.get();
        }
        return set;
    }

    /** Every rule. */
    private KieBase all() {
        KieBase ready = all;
        return ready != null ? ready : makeAll();
    }

    private synchronized KieBase makeAll() {
        if (all != null) {
            return all;
        }
        List<Model> models = loader.load(sources);
        List<Model> holding = new ArrayList<>();
        for (int i = 0; i < models.size(); i++) {
            Source source = sources.get(i);
            Model model = models.get(i);
            if (!source.sentences()) {
                holding.add(model);
                continue;
            }
            List<String> compiled = model.getRules().stream().map(Rule::getName).sorted().toList();
            if (!compiled.equals(set().namesIn(source))) {
                throw new RuleProblemException(source.name() + ": Drools compiled other rules than were read");
            }
            // Taking a rule out of a built base instead trips Drools 10.2 over shared nodes.
            Set<String> names = needs.getOrDefault(source.name(), List.of()).stream().map(Needs::rule)
                    .collect(Collectors.toSet());
            holding.add(names.size() == compiled.size() ? model : ModelLoader.only(names, model));
        }
        all = built(holding);
        return all;
    }

    /** The rules that could fire on {@code premises}, and no others. */
    private synchronized KieBase relevant(Collection<? extends Premise> premises) {
        Set<String> names = RelevantRules.of(needs.values().stream().flatMap(List::stream).toList(), premises);
        Map<String, Set<String>> wanted = new HashMap<>();
        needs.forEach((file, rules) -> wanted.put(file, rules.stream().map(Needs::rule).filter(names::contains)
                .collect(Collectors.toCollection(TreeSet::new))));
        List<Model> models = new ArrayList<>(
                loader.load(sources.stream().filter(source -> !source.sentences()).toList()));
        models.addAll(loader.load(sources, wanted));
        return built(models);
    }

    /** Each rule has nodes of its own: where rules that begin alike share them and go several ways, Drools 10.2 fires not all. */
    private static KieBase built(List<Model> models) {
        return KieBaseBuilder.createKieBaseFromModel(models, ShareBetaNodesOption.NO);
    }

    /** Compiles what has to be, and wakes Drools up, on a core that has nothing better to do. */
    public void rehearse() {
        loader.prepare(sources);
        try (Consultation consultation = consultation(relevant(List.of()), null)) {
            consultation.conclude();
        }
    }

    /** The sentences that rules are written in. */
    public Dictionary dictionary() {
        return dictionary;
    }

    /** Every rule by its name, in the order of the files. */
    public Map<String, RuleText> rules() {
        return set().rules();
    }

    /** Where a rule stands, as {@code file:line}; empty where no rule of that name is in use. */
    public Optional<String> place(String rule) {
        return Optional.ofNullable(rules().get(rule)).map(text -> text.file() + ":" + text.line());
    }

    /** Why the author of {@code rule} wrote it; empty for a rule in Drools' own language. */
    public Optional<String> because(String rule) {
        Map<String, String> known = reasons;
        if (known == null) {
            known = new HashMap<>();
            for (List<Needs> file : needs.values()) {
                for (Needs one : file) {
                    known.put(one.rule(), one.because());
                }
            }
            reasons = known;
        }
        return Optional.ofNullable(known.get(rule));
    }

    /** A new, empty working memory for all rules. */
    public Consultation consult() {
        return consultation(all(), eager());
    }

    /**
     * A new working memory with {@code premises} in it, to which nothing will be added. What it concludes is what
     * {@link #consult()} would; for the first cases, only the rules that could fire on them are made ready.
     */
    public Consultation consult(Collection<? extends Premise> premises) {
        boolean some = !isReady() && !raw && few.incrementAndGet() <= FEW;
        Consultation consultation = consultation(some ? relevant(premises) : all(), null);
        premises.forEach(consultation::insert);
        return consultation;
    }

    private boolean isReady() {
        return all != null;
    }

    /** @param configuration none for Drools' own */
    private Consultation consultation(KieBase base, KieSessionConfiguration configuration) {
        return new Consultation(base.newKieSession(configuration, null), unspoken);
    }

    private synchronized KieSessionConfiguration eager() {
        if (eager == null) {
            eager = RuleBaseFactory.newKnowledgeSessionConfiguration();
            eager.setOption(ForceEagerActivationOption.YES);
        }
        return eager;
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
