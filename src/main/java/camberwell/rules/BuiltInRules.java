package camberwell.rules;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.drools.model.Rule;

/** The rule files that were compiled when camberwell was built, and travel in its jar. */
public final class BuiltInRules {

    private static final String INDEX = "camberwell/rulebase/index";
    private static final String END = "\n.\n";

    /** The index as text, and where in it each file's lines start: most starts need few of them. */
    private final String index;
    private final Map<String, Integer> starts = new HashMap<>();

    /**
     * One compiled file.
     *
     * @param model the class that makes all of its rules
     * @param makers by rule name, the static method that makes that rule alone: {@code class#method}
     */
    record Compiled(String model, Map<String, String> makers) {
    }

    /** Reads the index; empty when this camberwell was not packaged. */
    BuiltInRules() {
        String text = "";
        try (InputStream in = BuiltInRules.class.getClassLoader().getResourceAsStream(INDEX)) {
            text = in == null ? "" : new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            // Without an index the rules are compiled into the cache, as any others are.
        }
        index = text;
        for (int at = 0; at < index.length(); at = Math.max(at, index.indexOf(END, at)) + END.length()) {
            starts.put(index.substring(at, index.indexOf('\t', at)), at);
        }
    }

    /** What was compiled for {@code key}. */
    Optional<Compiled> find(String key) {
        Integer start = starts.get(key);
        if (start == null) {
            return Optional.empty();
        }
        String[] lines = index.substring(start, index.indexOf(END, start)).split("\n");
        Map<String, String> makers = new HashMap<>();
        for (int i = 1; i < lines.length; i++) {
            int tab = lines[i].indexOf('\t');
            makers.put(lines[i].substring(tab + 1), lines[i].substring(0, tab));
        }
        return Optional.of(new Compiled(lines[0].substring(lines[0].indexOf('\t') + 1), makers));
    }

    /** The methods that Drools made for the rules of a model, each tried once: the names are not ours to know. */
    private static Map<String, String> makers(String model, ClassLoader loader) throws ReflectiveOperationException {
        Map<String, String> makers = new TreeMap<>();
        for (int part = 0;; part++) {
            Class<?> methods;
            try {
                methods = Class.forName(model + "RuleMethods" + part, true, loader);
            } catch (ClassNotFoundException e) {
                return makers;
            }
            for (Method method : methods.getMethods()) {
                if (Modifier.isStatic(method.getModifiers()) && method.getReturnType() == Rule.class) {
                    Rule rule = (Rule) method.invoke(null);
                    makers.put(rule.getName(), methods.getName() + "#" + method.getName());
                }
            }
        }
    }

    private static String entry(String key, Compiled file) {
        StringBuilder entry = new StringBuilder(key).append('\t').append(file.model()).append('\n');
        file.makers().forEach((rule, maker) -> entry.append(maker).append('\t').append(rule).append('\n'));
        return entry.append(END.substring(1)).toString();
    }

    /**
     * Compiles the rules below the home folder given first into the classes folder given second; run by the build.
     * Does nothing when nothing changed.
     */
    public static void main(String[] arguments) throws IOException, ReflectiveOperationException {
        Path classes = Path.of(arguments[1]);
        RuleFolder folder = RuleFolder.builtIn(Path.of(arguments[0]));
        RuleCompiler compiler = new RuleCompiler(folder.dictionary());
        List<RuleCompiler.Source> sources = folder.sources();
        StringBuilder index = new StringBuilder();
        List<RuleCompiler.Source> changed = new ArrayList<>();
        BuiltInRules before = new BuiltInRules();
        for (RuleCompiler.Source source : sources) {
            Optional<Compiled> known = before.find(compiler.key(source));
            if (known.isPresent()) {
                index.append(entry(compiler.key(source), known.get()));
            } else {
                changed.add(source);
            }
        }
        if (!changed.isEmpty()) {
            for (CompiledRules compiled : compiler.compile(changed)) {
                for (Map.Entry<String, byte[]> entry : compiled.classes().entrySet()) {
                    Path file = classes.resolve(entry.getKey().replace('.', '/') + ".class");
                    Files.createDirectories(file.getParent());
                    Files.write(file, entry.getValue());
                }
                index.append(entry(compiled.key(), new Compiled(compiled.modelClass(),
                        makers(compiled.modelClass(), new ByteClassLoader(compiled.classes())))));
            }
        }
        Path file = classes.resolve(INDEX);
        Files.createDirectories(file.getParent());
        Files.writeString(file, index.toString());
        System.out.println(sources.size() + " rule files, " + changed.size() + " compiled");
    }
}
