package camberwell.cli;

import camberwell.language.Check;
import camberwell.problem.Problem;
import camberwell.report.Page;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell rules check}: everything that is wrong with rules, without firing any. */
@Command(name = "check", addMethodSubcommands = false,
        description = {"Names everything that is wrong with the rules and notes of a folder, or with the "
            + "built-in ones."},
        footer = {"", "Examples:", "  camberwell rules check my-rules", "  camberwell rules check --format json",
            "  camberwell rules check --list"},
        exitCodeList = {"0:all is well", "1:something is wrong with the rules",
            "2:there is nothing that could be read, or the command line is wrong"})
final class RulesCheckCommand implements Callable<Integer> {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "DIR", arity = "0..*",
            description = "Rule folders or .zip files, each on top of those before; none for the built-in rules.")
    private List<String> folders = new ArrayList<>();

    @Option(names = "--trust", paramLabel = "DIR", description = "Allows raw Drools in this folder; it is not checked.")
    private List<String> trusted = new ArrayList<>();

    @Option(names = "--list", description = "Lists what is looked for, by the number that a problem names.")
    private boolean list;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RulesCheckCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        if (list) {
            list();
            return ExitCode.DONE;
        }
        Checked checked = Checked.of(folders, trusted, console, engine).placed(engine.home(), console);
        if (format == Format.TEXT) {
            checked.problems().forEach(problem -> console.out().println(console.shown(problem.withExcerpt())));
            checked.warnings().forEach(warning -> console.out().println(console.shown(warning.text())));
            console.out().println(checked.summary());
        } else {
            json(checked);
        }
        return checked.problems().isEmpty() ? ExitCode.DONE : ExitCode.FOUND_WRONG;
    }

    private void list() throws IOException {
        Page page = new Page(console.width(), console.styled());
        for (Check check : Check.values()) {
            page.labelled(0, String.valueOf(check.number()), check.text());
        }
        Output.either(console, format, page, Arrays.stream(Check.values())
                .map(check -> new Listed(check.number(), check.text())).toList());
    }

    /** A check in the list of them. */
    record Listed(int check, String finds) {
    }

    private void json(Checked checked) throws IOException {
        Output.json(console, format, json -> {
            json.writeStartObject();
            json.writeNumberField("rules", checked.rules());
            json.writeNumberField("notes", checked.notes());
            json.writeArrayFieldStart("problems");
            for (Problem problem : checked.problems()) {
                write(json, problem);
            }
            json.writeEndArray();
            json.writeArrayFieldStart("warnings");
            for (Problem warning : checked.warnings()) {
                write(json, warning);
            }
            json.writeEndArray();
            json.writeEndObject();
        });
    }

    private void write(JsonGenerator json, Problem problem) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", console.shown(problem.file()));
        json.writeNumberField("line", problem.line());
        json.writeNumberField("column", problem.column());
        json.writeStringField("message", problem.message());
        if (problem.suggestion().isPresent()) {
            json.writeStringField("suggestion", problem.suggestion().get());
        }
        json.writeEndObject();
    }
}
