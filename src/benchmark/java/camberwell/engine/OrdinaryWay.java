package camberwell.engine;

import camberwell.advice.Facts;
import camberwell.advice.Weights;
import camberwell.fact.Finding;
import camberwell.input.CaseReader;
import camberwell.pack.RuleFolder;
import camberwell.pack.Source;
import camberwell.reading.TyreReader;
import camberwell.run.Case;
import java.io.IOException;
import java.nio.file.Path;
import org.drools.model.codegen.ExecutableModelProject;
import org.kie.api.KieServices;
import org.kie.api.builder.KieFileSystem;
import org.kie.api.builder.Message;
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
        RuleFolder folder = RuleFolder.builtIn(home);
        RuleCompiler compiler = new RuleCompiler(folder.dictionary());
        for (Source source : folder.sources()) {
            files.write("src/main/resources/" + compiler.packageName(source).replace('.', '/') + "/rules.drl",
                    compiler.drl(source));
        }
        if (services.newKieBuilder(files).buildAll(ExecutableModelProject.class).getResults()
                .hasMessages(Message.Level.ERROR)) {
            throw new IllegalStateException("Drools does not build the rules");
        }
        // One base of all packages: what Drools takes where the project names none.
        KieSession session = services.newKieContainer(release).getKieBase().newKieSession();
        Weights weights = Weights.read(home.resolve("rules/weights.yaml"));
        Facts.of(run, TyreReader.read(run), weights).forEach(session::insert);
        session.fireAllRules();
        System.out.println(session.getObjects(fact -> fact instanceof Finding).size() + " findings");
        session.dispose();
    }
}
