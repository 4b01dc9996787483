package camberwell.engine;

import camberwell.language.BothEnds;
import camberwell.language.Dictionary;
import camberwell.pack.Source;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;
import org.drools.compiler.kie.builder.impl.InternalKieModule;
import org.drools.drl.parser.lang.dsl.DSLTokenizedMappingFile;
import org.drools.drl.parser.lang.dsl.DefaultExpander;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieBuilder;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
import org.kie.api.builder.ReleaseId;

/**
 * Compiles rule files to Drools' executable model: Drools' own expander turns sentences into DRL, Drools' own builder
 * turns DRL into classes. One Java package a file, so that a change to one file compiles one file.
 */
final class RuleCompiler {

    /** Raised when what is compiled from the same file changes, so that old results are not taken for new ones. */
    private static final String TOOL = "camberwell-3";
    /** Of what compiles: this class and Drools. */
    static final String VERSION = TOOL + " " + KieServices.class.getPackage().getImplementationVersion();
    private static final Pattern PACKAGE = Pattern.compile("(?m)^[ \\t]*package[ \\t]+[\\w.]+[ \\t]*;?[ \\t]*$");
    private static final String IMPORTS = "import camberwell.fact.Reported; import camberwell.fact.Reading; "
            + "import camberwell.fact.Setup; import camberwell.fact.Day; import camberwell.fact.Outing; "
            + "import camberwell.fact.Finding; "
            + "import camberwell.engine.Conclude; ";

    private final Dictionary dictionary;
    private final Map<Source, String> keys = new ConcurrentHashMap<>();

    RuleCompiler(Dictionary dictionary) {
        this.dictionary = dictionary;
    }

    /** The hash of all that decides what {@code source} compiles to. */
    String key(Source source) {
        return keys.computeIfAbsent(source, it ->
                hash(VERSION, it.sentences() ? dictionary.textFor(it.text()) : "", it.text()));
    }

    private static String hash(String... parts) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            for (String part : parts) {
                digest.update(part.getBytes(StandardCharsets.UTF_8));
                digest.update((byte) 0);
            }
            return HexFormat.of().formatHex(digest.digest()).substring(0, 40);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    /** The Java package of what {@code source} compiles to. */
    String packageName(Source source) {
        return "camberwell.rulebase.r" + key(source);
    }

    /** The DRL of a file, in its own package. */
    String drl(Source source) {
        if (!source.sentences()) {
            // On one line with what follows, so that Drools counts lines as the file does.
            return "package " + packageName(source) + "; "
                    + PACKAGE.matcher(source.text()).replaceFirst("");
        }
        try {
            DSLTokenizedMappingFile mapping = new DSLTokenizedMappingFile();
            if (!mapping.parseAndLoad(new StringReader(dictionary.textFor(source.text())))) {
                throw new RuleProblemException("the dictionary cannot be read: " + mapping.getErrors());
            }
            DefaultExpander expander = new DefaultExpander();
            expander.addDSLMapping(mapping.getMapping());
            String expanded = expander.expand(BothEnds.instantiated(source.text().replace("\r\n", "\n")));
            if (expander.hasErrors()) {
                throw new RuleProblemException(source.name() + ": " + expander.getErrors().get(0).getMessage());
            }
            return "package " + packageName(source) + "; " + IMPORTS + expanded;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Compiles all of them in one go, which costs much less than one after the other. */
    List<CompiledRules> compile(List<Source> sources) {
        KieServices services = KieServices.get();
        ReleaseId release = services.newReleaseId("camberwell", "rulebase", Long.toHexString(System.nanoTime()));
        KieFileSystem files = services.newKieFileSystem();
        files.generateAndWritePomXML(release);
        for (Source source : sources) {
            files.write("src/main/resources/" + packageName(source).replace('.', '/') + "/rules.drl", drl(source));
        }
        KieBuilder builder = services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        List<Message> errors = builder.getResults().getMessages(Message.Level.ERROR);
        if (!errors.isEmpty()) {
            throw new RuleProblemException(firstLine(errors.get(0), sources));
        }
        InternalKieModule module = (InternalKieModule) builder.getKieModule();
        List<CompiledRules> compiled = new ArrayList<>();
        for (Source source : sources) {
            compiled.add(classesOf(source, module));
        }
        services.getRepository().removeKieModule(release);
        return compiled;
    }

    private CompiledRules classesOf(Source source, InternalKieModule module) {
        String folder = packageName(source).replace('.', '/') + "/";
        Map<String, byte[]> classes = new TreeMap<>();
        String model = null;
        for (String name : module.getFileNames()) {
            if (name.startsWith(folder) && name.endsWith(".class")) {
                String className = name.substring(0, name.length() - ".class".length()).replace('/', '.');
                classes.put(className, module.getBytes(name));
                if (className.substring(folder.length()).matches("Rules[0-9A-F]{32}")) {
                    model = className;
                }
            }
        }
        if (model == null) {
            throw new RuleProblemException(source.name() + ": Drools compiled no model from it");
        }
        return new CompiledRules(key(source), model, new LinkedHashMap<>(classes));
    }

    private static String firstLine(Message message, List<Source> sources) {
        String names = String.join(", ", sources.stream().map(Source::name).toList());
        return names + ": Drools says: " + message.getText().lines().findFirst().orElse("no more");
    }
}
