package camberwell.rules;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.drools.model.Model;

/** Brings rule files to executable models: from camberwell's own jar, from the cache, or by compiling them. */
class ModelLoader {

    private final RuleCompiler compiler;
    private final RuleCache cache;
    private final BuiltInRules builtIn = new BuiltInRules();

    ModelLoader(Dictionary dictionary, RuleCache cache) {
        this.compiler = new RuleCompiler(dictionary);
        this.cache = cache;
    }

    /** One model a file, in the files' order. */
    List<Model> load(List<RuleCompiler.Source> sources) {
        Map<String, Model> models = new HashMap<>();
        List<RuleCompiler.Source> missing = new ArrayList<>();
        for (RuleCompiler.Source source : sources) {
            String key = compiler.key(source);
            Optional<String> ours = builtIn.model(key);
            if (ours.isPresent()) {
                models.put(key, instantiate(ours.get(), ModelLoader.class.getClassLoader()));
                continue;
            }
            Optional<CompiledRules> kept = cache.find(key);
            if (kept.isPresent()) {
                models.put(key, define(kept.get()));
            } else {
                missing.add(source);
            }
        }
        if (!missing.isEmpty()) {
            for (CompiledRules compiled : compiler.compile(missing)) {
                cache.keep(compiled);
                models.put(compiled.key(), define(compiled));
            }
        }
        return sources.stream().map(source -> models.get(compiler.key(source))).toList();
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

    /** Classes that exist as bytes only. */
    private static final class ByteClassLoader extends ClassLoader {

        private final Map<String, byte[]> classes;

        ByteClassLoader(Map<String, byte[]> classes) {
            super(ModelLoader.class.getClassLoader());
            this.classes = classes;
        }

        @Override
        protected Class<?> findClass(String name) throws ClassNotFoundException {
            byte[] bytes = classes.get(name);
            if (bytes == null) {
                throw new ClassNotFoundException(name);
            }
            return defineClass(name, bytes, 0, bytes.length);
        }
    }
}
