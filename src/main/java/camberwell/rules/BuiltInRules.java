package camberwell.rules;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The rule files that were compiled when camberwell was built, and travel in its jar. */
public final class BuiltInRules {

    private static final String INDEX = "camberwell/rulebase/index";

    private final Map<String, String> models = new HashMap<>();

    /** Reads the index; empty when this camberwell was not packaged. */
    BuiltInRules() {
        try (InputStream in = BuiltInRules.class.getClassLoader().getResourceAsStream(INDEX)) {
            if (in == null) {
                return;
            }
            BufferedReader reader = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
            for (String line = reader.readLine(); line != null; line = reader.readLine()) {
                String[] words = line.split(" ");
                models.put(words[0], words[1]);
            }
        } catch (IOException e) {
            models.clear();
        }
    }

    /** The model class compiled for {@code key}. */
    Optional<String> model(String key) {
        return Optional.ofNullable(models.get(key));
    }

    /**
     * Compiles the rules below the home folder given first into the classes folder given second; run by the build.
     * Does nothing when nothing changed.
     */
    public static void main(String[] arguments) throws IOException {
        Path classes = Path.of(arguments[1]);
        RuleFolder folder = RuleFolder.builtIn(Path.of(arguments[0]));
        RuleCompiler compiler = new RuleCompiler(folder.dictionary());
        List<RuleCompiler.Source> sources = folder.sources();
        StringBuilder index = new StringBuilder();
        List<RuleCompiler.Source> changed = new ArrayList<>();
        BuiltInRules before = new BuiltInRules();
        for (RuleCompiler.Source source : sources) {
            Optional<String> model = before.model(compiler.key(source));
            if (model.isPresent()) {
                index.append(compiler.key(source)).append(' ').append(model.get()).append('\n');
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
                index.append(compiled.key()).append(' ').append(compiled.modelClass()).append('\n');
            }
        }
        Path file = classes.resolve(INDEX);
        Files.createDirectories(file.getParent());
        Files.writeString(file, index.toString());
        System.out.println(sources.size() + " rule files, " + changed.size() + " compiled");
    }
}
