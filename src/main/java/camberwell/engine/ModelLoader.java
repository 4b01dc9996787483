package camberwell.engine;

import camberwell.language.Dictionary;
import camberwell.language.Needs;
import camberwell.pack.Source;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.drools.model.Model;
import org.drools.model.Rule;
import org.drools.model.impl.ModelImpl;

/** Brings rule files to executable models: from camberwell's own jar, from the cache, or by compiling them. */
class ModelLoader {

    private final RuleCompiler compiler;
    private final RuleCache cache;
    private final BuiltInRules builtIn;
    private final Map<Source, Optional<BuiltInRules.Compiled>> ours = new IdentityHashMap<>();
    private final Map<String, Model> ready = new HashMap<>();

    ModelLoader(Dictionary dictionary, RuleCache cache) {
        this.compiler = new RuleCompiler(dictionary);
        this.cache = cache;
        this.builtIn = new BuiltInRules(dictionary);
    }

    /** What {@code source} was compiled to when camberwell was built. */
    private synchronized Optional<BuiltInRules.Compiled> ours(Source source) {
        return ours.computeIfAbsent(source, builtIn::find);
    }

    /** The Java package that {@code source} is compiled to. */
    String packageOf(Source source) {
        return ours(source).map(it -> it.model().substring(0, it.model().lastIndexOf('.')))
                .orElseGet(() -> compiler.packageName(source));
    }

    /**
     * What the rules of each file need, by the file's name, if all of them are as they were when camberwell was built.
     */
    Optional<Map<String, List<Needs>>> needs(List<Source> sources) {
        Map<String, List<Needs>> needs = new HashMap<>();
        for (Source source : sources) {
            Optional<BuiltInRules.Compiled> found = ours(source);
            if (found.isEmpty()) {
                return Optional.empty();
            }
            needs.put(source.name(), found.get().needs());
        }
        return Optional.of(needs);
    }

    /** One model a file, in the files' order. */
    synchronized List<Model> load(List<Source> sources) {
        List<Source> missing = new ArrayList<>();
        for (Source source : sources) {
            if (ours(source).isEmpty() && !ready.containsKey(compiler.key(source))) {
                cache.find(compiler.key(source)).ifPresentOrElse(
                        kept -> ready.put(kept.key(), define(kept)), () -> missing.add(source));
            }
        }
        if (!missing.isEmpty()) {
            for (CompiledRules compiled : compiler.compile(missing)) {
                cache.keep(compiled);
                ready.put(compiled.key(), define(compiled));
            }
        }
        List<Model> models = new ArrayList<>();
        for (Source source : sources) {
            models.add(ours(source).map(it -> instantiate(it.model(), ModelLoader.class.getClassLoader()))
                    .orElseGet(() -> ready.get(compiler.key(source))));
        }
        return models;
    }

    /** Makes ready what was not compiled when camberwell was built, so that it need not be waited for later. */
    void prepare(List<Source> sources) {
        load(sources.stream().filter(source -> ours(source).isEmpty()).toList());
    }

    /**
     * Some rules of each file: of the built-in files without so much as loading the others; files with none are left out.
     *
     * @param wanted by the name of the file, the names of its rules
     */
    List<Model> load(List<Source> sources, Map<String, Set<String>> wanted) {
        List<Model> models = new ArrayList<>();
        List<Source> whole = new ArrayList<>();
        for (Source source : sources) {
            Set<String> names = wanted.getOrDefault(source.name(), Set.of());
            if (names.isEmpty()) {
                continue;
            }
            Optional<BuiltInRules.Compiled> found = ours(source);
            if (found.isPresent() && found.get().makers().keySet().containsAll(names)) {
                models.add(new ModelImpl(found.get().model()).withRules(names.stream().sorted()
                        .map(name -> make(found.get().makers().get(name))).toList()));
            } else {
                whole.add(source);
            }
        }
        List<Model> loaded = whole.isEmpty() ? List.of() : load(whole);
        for (int i = 0; i < whole.size(); i++) {
            Set<String> names = wanted.get(whole.get(i).name());
            Model some = only(names, loaded.get(i));
            if (some.getRules().size() != names.size()) {
                throw new RuleProblemException(whole.get(i).name() + ": Drools compiled other rules than were read");
            }
            models.add(some);
        }
        return models;
    }

    /** A model with those of its rules alone. */
    static Model only(Set<String> names, Model model) {
        ModelImpl some = new ModelImpl(model.getName());
        model.getTypeMetaDatas().forEach(some::addTypeMetaData);
        return some.withRules(model.getRules().stream().filter(rule -> names.contains(rule.getName())).toList());
    }

    private static Rule make(String maker) {
        int hash = maker.indexOf('#');
        try {
            return (Rule) Class.forName(maker.substring(0, hash)).getMethod(maker.substring(hash + 1)).invoke(null);
        } catch (ReflectiveOperationException | LinkageError e) {
            throw new RuleProblemException("a compiled rule cannot be loaded: " + maker, e);
        }
    }

    private static Model define(CompiledRules compiled) {
        return instantiate(compiled.modelClass(), new ByteClassLoader(compiled.classes()));
    }

    private static Model instantiate(String modelClass, ClassLoader loader) {
        try {
            return (Model) Class.forName(modelClass, true, loader).getDeclaredConstructor().newInstance();
        } catch (ReflectiveOperationException | LinkageError e) {
            throw new RuleProblemException("compiled rules cannot be loaded: " + modelClass, e);
        }
    }
}
