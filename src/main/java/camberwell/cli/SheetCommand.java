package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.sheet.SheetPage;
import camberwell.vocabulary.Audience;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell sheet}: the advice on one or more cases as a page to print and take home. */
@Command(name = "sheet", mixinStandardHelpOptions = true, addMethodSubcommands = false,
        description = {"Writes the advice on cases as one HTML page, to be read in a browser and printed.",
            "The page needs nothing but itself: no network, no script. Each case fills at most two printed pages."},
        footer = {"", "Examples:",
            "  camberwell sheet demo-cases/pushes-in-snaps-out.yaml -o tonight.html",
            "  camberwell sheet monday.yaml tuesday.yaml -o week.html --for newcomer"})
final class SheetCommand implements Callable<Integer> {

    private final Console console;
    private Engine engine;

    @Parameters(paramLabel = "CASE", arity = "1..*", description = "A case file, or - for standard input.")
    private List<String> cases;

    @Option(names = {"-o", "--output"}, required = true, paramLabel = "FILE",
            description = "The page to write. A file that is there already is left alone, unless --overwrite is given.")
    private String output;

    @Option(names = "--overwrite", description = "Write over FILE if it is there.")
    private boolean overwrite;

    @Option(names = "--for", defaultValue = "club", paramLabel = "AUDIENCE", converter = TypedWord.ForWhom.class,
            description = "newcomer, club (the default) or engineer: other words and another amount, the same advice.")
    private Audience audience;

    @Mixin
    private RulesOption rules;

    SheetCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() {
        Path file = console.path(output);
        NewFiles.check("-o", output, overwrite, console);
        NewFiles page = new NewFiles();
        engine = rules.on(engine, console);
        engine.openAhead();
        CaseReader reader = new CaseReader();
        List<Advice> advices = new ArrayList<>();
        List<Problem> wrong = new ArrayList<>();
        for (String name : cases) {
            try {
                CaseFile read = CaseInput.read(reader, console, name);
                read.warnings().forEach(warning -> console.err().println(console.shown(warning.text())));
                advices.add(engine.advisor().advise(read.run()));
            } catch (ProblemsException e) {
                wrong.addAll(e.problems());
            }
        }
        if (!wrong.isEmpty()) {
            throw new ProblemsException(wrong);
        }
        byte[] html = new SheetPage(engine.notes(), engine.terms(), audience).page(advices)
                .getBytes(StandardCharsets.UTF_8);
        if (overwrite) {
            page.replace(file, html);
        } else {
            page.add(file, html);
        }
        page.write();
        console.out().println("Saved: " + output);
        return ExitCode.DONE;
    }
}
