package camberwell.benchmark;

import camberwell.advice.Facts;
import camberwell.advice.Weights;
import camberwell.fact.Finding;
import camberwell.input.CaseReader;
import camberwell.reading.TyreReader;
import camberwell.run.Case;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.ReleaseId;
import org.kie.api.runtime.KieSession;

/**
 * The same rules on the same case in the way that Drools' own documentation shows: KieServices, KieFileSystem, a build
 * and a session at every start. Prints how many facts the rules concluded.
 */
public final class OrdinaryWay {

    private OrdinaryWay() {
    }

    /** Home folder and case file. */
    public static void main(String[] arguments) throws IOException {
        Path home = Path.of(arguments[0]);
        Case run = new CaseReader().read(Path.of(arguments[1])).run();
        KieServices services = KieServices.get();
        KieFileSystem files = services.newKieFileSystem();
        ReleaseId release = services.newReleaseId("camberwell", "ordinary", "1");
        files.generateAndWritePomXML(release);
        Path rules = home.resolve("rules");
        files.write("src/main/resources/camberwell/dictionary.dsl", Files.readString(rules.resolve("dictionary.dsl")));
        files.write("src/main/resources/camberwell/combine.drl", Files.readString(rules.resolve("combine.drl")));
        try (Stream<Path> all = Files.walk(rules)) {
            for (Path file : all.filter(path -> path.toString().endsWith(".dslr")).sorted().toList()) {
                files.write("src/main/resources/camberwell/" + file.getFileName(), """
                        package camberwell.ordinary;
                        expander dictionary.dsl
                        import camberwell.fact.*;
                        import camberwell.engine.Conclude;
                        """ + Files.readString(file));
            }
        }
        services.newKieBuilder(files).buildAll(ExecutableModelProject.class);
        KieSession session = services.newKieContainer(release).getKieBase().newKieSession();
        Weights weights = Weights.read(rules.resolve("weights.yaml"));
        Facts.of(run, TyreReader.read(run), weights).forEach(session::insert);
        session.fireAllRules();
        System.out.println(session.getObjects(fact -> fact instanceof Finding).size() + " findings");
        session.dispose();
    }
}
