package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.pack.RulePack;
import camberwell.report.Page;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules try}: what a rule folder does on a case. */
@Command(name = "try", addMethodSubcommands = false,
        description = "Shows which rules fire on a case, and the advice with and without a rule folder.",
        footer = {"", "Example:",
            "  camberwell rules try my-rules --case demo-cases/pushes-in-snaps-out.yaml"},
        exitCodeList = {"0:done", "1:a case of a folder's own cannot be read, and is left out",
            "2:the input or the command line is wrong; a case that cannot be read is left out"})
final class RulesTryCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "DIR", description = "The rule folder or .zip file.")
    private String folder;

    @Option(names = "--case", paramLabel = "CASE",
            description = "A case file; can be given again. Without it, the cases of the folder's own demo-cases.")
    private List<String> cases = new ArrayList<>();

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RulesTryCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        RulesOption.Named named = rules.on(engine, console, List.of(folder));
        RuleTrial trial = new RuleTrial(named.packs(), named.base());
        PackCases found = new PackCases(console, trial.cases(), engine.home().folder().resolve(RulePack.CASES));
        List<CaseFile> files = (cases.isEmpty() ? found.of(named.packs().get(0), console.path(folder))
                : found.files(cases.stream().map(console::path).toList())).read();
        if (files.isEmpty() && !found.broken()) {
            console.err().println("Name a case with --case: " + folder + " has none of its own in "
                    + RulePack.CASES + ".");
            return ExitCode.WRONG_INPUT;
        }
        List<RuleTrial.Tried> tried = trial.of(files);
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            tried.forEach(one -> trial.write(one, page));
            trial.never(tried, page);
            console.out().print(page);
            return found.code();
        }
        Output.json(console, format, json -> {
            json.writeStartArray();
            for (RuleTrial.Tried one : tried) {
                trial.write(one, json);
            }
            json.writeEndArray();
        });
        return found.code();
    }
}
