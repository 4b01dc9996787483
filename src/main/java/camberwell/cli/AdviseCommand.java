package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.advice.Advisor;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.report.AdviceJson;
import camberwell.report.AdviceText;
import camberwell.report.Page;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell advise}: a case goes in, ranked changes come out. */
@Command(name = "advise", mixinStandardHelpOptions = true,
        description = "Reads cases and names the changes to make, best first.",
        footer = {"", "Examples:",
            "  camberwell advise demo-cases/pushes-in-snaps-out.yaml",
            "  camberwell advise --top 1 --score monday.yaml tuesday.yaml",
            "  camberwell advise --rules my-rules my-case.yaml",
            "  camberwell advise --format json - < case.yaml"})
final class AdviseCommand implements Callable<Integer> {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "CASE", arity = "1..*", description = "A case file, or - for standard input.")
    private List<String> cases;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = "text, json (one object, or an array for several cases) or jsonl (one line a case).")
    private Format format;

    @Option(names = "--top", defaultValue = "5", paramLabel = "N", description = "How many changes to show; 5 by default.")
    private int top;

    @Option(names = "--score", description = "Show every term of each change's score.")
    private boolean score;

    @Mixin
    private RulesOption rules;

    AdviseCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        CaseReader reader = new CaseReader();
        List<CaseFile> files = cases.stream().map(name -> read(reader, name)).toList();
        files.forEach(file -> file.warnings().forEach(warning -> console.err().println(warning.text())));
        Engine engine = rules.on(this.engine, console);
        Advisor advisor = engine.advisor();
        if (format == Format.TEXT) {
            for (CaseFile file : files) {
                Page page = new Page(console.width(), console.styled());
                new AdviceText(engine.notes(), top, score).write(advisor.advise(file.run()), page);
                console.out().print(page);
                console.out().println();
            }
            return ExitCode.DONE;
        }
        AdviceJson writer = new AdviceJson(engine.notes(), top);
        try (JsonGenerator json = new JsonFactory().createGenerator(console.out())) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            if (format == Format.JSON) {
                json.setPrettyPrinter(new DefaultPrettyPrinter());
            }
            boolean array = format == Format.JSON && files.size() > 1;
            if (array) {
                json.writeStartArray();
            }
            for (CaseFile file : files) {
                Advice advice = advisor.advise(file.run());
                writer.write(advice, json);
                if (format == Format.JSONL) {
                    json.writeRaw('\n');
                }
            }
            if (array) {
                json.writeEndArray();
            }
        }
        console.out().println();
        return ExitCode.DONE;
    }

    private CaseFile read(CaseReader reader, String name) {
        return name.equals("-") ? reader.read("-", console.in(), console.directory())
                : reader.read(console.path(name));
    }
}
