package camberwell.cli;

import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.ProblemsException;
import camberwell.reading.TyreReader;
import camberwell.report.Page;
import camberwell.report.ReadingReport;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell read}: what the tyres of a case show, without any advice. */
@Command(name = "read", addMethodSubcommands = false,
        description = {
            "Reads the tyres of cases: the figures of each tyre, then what they say and how clear it is.", "",
            "Camber is judged by the inner less the outer edge of the loaded tyres. An inner edge up to 8 K hotter is "
                + "healthy, since the straights heat it; from 18 K nobody would argue. The outer edge should not be "
                + "the hotter one at all.",
            "Pressure is judged by the hot pressure against its target, and by the middle of the tread against the "
                + "mean of its edges. Where the two contradict each other, that is said."},
        footer = {"", "Examples:",
            "  camberwell read demo-cases/pushes-in-snaps-out.yaml",
            "  camberwell read --format json - < case.yaml"})
final class ReadCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "CASE", arity = "1..*", description = "A case file, or - for standard input.")
    private List<String> cases;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.OF_CASES)
    private Format format;

    private final RulesOption rules = new RulesOption();

    ReadCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        CaseInput.once(cases);
        // The words that packs bring may stand in a case; what was said in it has nothing to do with the tyres.
        rules.on(engine, console).packs();
        CaseReader reader = new CaseReader();
        List<CaseFile> files = new ArrayList<>();
        for (String name : cases) {
            try {
                files.add(CaseInput.read(reader, console, name));
            } catch (ProblemsException e) {
                // As with advise, one bad case does not hide the others.
                e.problems().forEach(problem -> console.err().println(console.shown(problem.withExcerpt())));
            }
        }
        files.forEach(file -> file.warnings()
                .forEach(warning -> console.err().println(console.shown(warning.text()))));
        if (format == Format.TEXT) {
            for (CaseFile file : files) {
                Page page = new Page(console.width(), console.styled());
                ReadingReport.write(file.run(), TyreReader.read(file.run()), console.width(), page);
                console.out().print(page.blank());
            }
        } else if (format == Format.JSON && (cases.size() > 1 || !files.isEmpty())) {
            Output.json(console, format, json -> {
                if (cases.size() > 1) {
                    json.writeStartArray();
                }
                for (CaseFile file : files) {
                    write(file, json);
                }
                if (cases.size() > 1) {
                    json.writeEndArray();
                }
            });
        } else {
            for (CaseFile file : files) {
                Output.json(console, format, json -> write(file, json));
            }
        }
        return files.size() == cases.size() ? ExitCode.DONE : ExitCode.WRONG_INPUT;
    }

    private static void write(CaseFile file, JsonGenerator json) throws IOException {
        ReadingReport.write(file.run(), TyreReader.read(file.run()), json);
    }
}
