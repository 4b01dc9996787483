package camberwell.engine;

import camberwell.files.Mark;
import camberwell.language.Dictionary;
import camberwell.language.Names;
import camberwell.language.Needs;
import camberwell.pack.RuleFolder;
import camberwell.pack.RuleSet;
import camberwell.pack.Source;
import camberwell.problem.ProblemsException;
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
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.drools.model.Rule;

/** The rule files that were compiled when camberwell was built, and travel in its jar. */
public final class BuiltInRules {

    private static final String INDEX = "camberwell/rulebase/index";
    private static final String END = "\n.\n";

    /** The index as text, and where in it each file's lines start: most starts need few of them. */
    private final String index;
    private final Map<String, Integer> starts = new HashMap<>();
    private final byte[] version = RuleCompiler.VERSION.getBytes(StandardCharsets.UTF_8);
    private final byte[] dictionary;

    /**
     * One compiled file.
     *
     * @param model the class that makes all of its rules
     * @param makers by rule name, the static method that makes that rule alone: {@code class#method}
     * @param needs what each of its rules cannot fire without; empty for a file that is not written in sentences
     */
    record Compiled(String model, Map<String, String> makers, List<Needs> needs) {
    }

    /** Reads the index; empty when this camberwell was not packaged. */
    BuiltInRules(Dictionary dictionary) {
        this.dictionary = dictionary.text().getBytes(StandardCharsets.UTF_8);
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

    /** By what a file is known again: its length, and the mark of all that decides what it compiles to. */
    private String mark(Source source) {
        byte[] text = source.text().getBytes(StandardCharsets.UTF_8);
        Mark mark = new Mark().add(version);
        if (source.sentences()) {
            mark.add(dictionary);
        }
        return mark.add(text).text() + "-" + text.length;
    }

    /** What {@code source} was compiled to. */
    Optional<Compiled> find(Source source) {
        Integer start = starts.get(mark(source));
        if (start == null) {
            return Optional.empty();
        }
        String[] lines = index.substring(start, index.indexOf(END, start)).split("\n");
        Map<String, String> makers = new HashMap<>();
        List<Needs> needs = new ArrayList<>();
        for (int i = 1; i < lines.length; i++) {
            String[] parts = lines[i].split("\t", -1);
            makers.put(parts[1], parts[0]);
            if (parts.length == 6) {
                needs.add(new Needs(parts[1], parts[5], list(parts[2]), list(parts[3]), list(parts[4])));
            }
        }
        return Optional.of(new Compiled(lines[0].substring(lines[0].indexOf('\t') + 1), makers, needs));
    }

    private static List<String> list(String joined) {
        return joined.isEmpty() ? List.of() : List.of(joined.split(";"));
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

    private static String entry(String mark, String model, Map<String, String> makers, Map<String, Needs> needs) {
        StringBuilder entry = new StringBuilder(mark).append('\t').append(model).append('\n');
        makers.forEach((rule, maker) -> {
            entry.append(maker).append('\t').append(rule);
            if (needs.containsKey(rule)) {
                entry.append('\t').append(String.join(";", needs.get(rule).needed())).append('\t')
                        .append(String.join(";", needs.get(rule).asked())).append('\t')
                        .append(String.join(";", needs.get(rule).found())).append('\t')
                        .append(needs.get(rule).because());
            }
            entry.append('\n');
        });
        return entry.append(END.substring(1)).toString();
    }

    /** The names of the notes, as their files say: what a note says is not asked here. */
    private static Names names(Path home) throws IOException {
        Set<String> all = new TreeSet<>();
        try (Stream<Path> notes = Files.walk(home.resolve("knowledge-notes"))) {
            notes.map(note -> note.getFileName().toString()).filter(name -> name.endsWith(".md"))
                    .forEach(name -> all.add(name.substring(0, name.length() - ".md".length())));
        }
        return new Names(all, all, all, all);
    }

    /**
     * Compiles the rules below the home folder given first into the classes folder given second; run by the build.
     * Does nothing when nothing changed.
     */
    public static void main(String[] arguments) throws IOException, ReflectiveOperationException {
        Path home = Path.of(arguments[0]);
        Path classes = Path.of(arguments[1]);
        RuleFolder folder = RuleFolder.builtIn(home);
        Map<String, Needs> needs = new HashMap<>();
        if (!folder.dictionary().problems().isEmpty()) {
            throw new IllegalArgumentException("rules/dictionary.dsl: "
                    + String.join("\n", folder.dictionary().problems()));
        }
        RuleSet set = RuleSet.read(home, names(home), List.of());
        if (!set.problems().isEmpty()) {
            throw new ProblemsException(set.problems());
        }
        set.rules().values().forEach(rule -> needs.put(rule.name(), Needs.of(rule)));
        RuleCompiler compiler = new RuleCompiler(folder.dictionary());
        List<Source> sources = folder.sources();
        StringBuilder index = new StringBuilder();
        List<Source> changed = new ArrayList<>();
        BuiltInRules before = new BuiltInRules(folder.dictionary());
        for (Source source : sources) {
            Optional<Compiled> known = before.find(source);
            if (known.isPresent()) {
                index.append(entry(before.mark(source), known.get().model(), new TreeMap<>(known.get().makers()),
                        needs));
            } else {
                changed.add(source);
            }
        }
        if (!changed.isEmpty()) {
            List<CompiledRules> all = compiler.compile(changed);
            for (int i = 0; i < changed.size(); i++) {
                CompiledRules compiled = all.get(i);
                for (Map.Entry<String, byte[]> entry : compiled.classes().entrySet()) {
                    Path file = classes.resolve(entry.getKey().replace('.', '/') + ".class");
                    Files.createDirectories(file.getParent());
                    Files.write(file, entry.getValue());
                }
                index.append(entry(before.mark(changed.get(i)), compiled.modelClass(),
                        makers(compiled.modelClass(), new ByteClassLoader(compiled.classes())), needs));
            }
        }
        Path file = classes.resolve(INDEX);
        Files.createDirectories(file.getParent());
        Files.writeString(file, index.toString());
    }
}
