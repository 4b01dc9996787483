package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.history.Book;
import camberwell.history.History;
import camberwell.history.Plan;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
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
@Command(name = "sheet", addMethodSubcommands = false,
        description = {"Writes the advice on cases as one HTML page, to be read in a browser and printed.",
            "The page needs nothing but itself: no network, no script. Each case fills at most two printed pages."},
        footer = {"", "Examples:",
            "  camberwell sheet demo-cases/pushes-in-snaps-out.yaml -o tonight.html",
            "  camberwell sheet --book runs -o today.html",
            "  camberwell sheet monday.yaml tuesday.yaml -o week.html --for newcomer"})
final class SheetCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Parameters(paramLabel = "CASE", arity = "0..*", description = "A case file, or - for standard input. Without one, the "
            + "last run of the book.")
    private List<String> cases = List.of();

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "NAME", description = "The last run of that car.")
    private String car;

    @Option(names = "--laps", defaultValue = "50", paramLabel = "N", converter = Count.class,
            description = "Laps at hand for the plan, the laps out and in among them; 50 by default.")
    private int laps;

    @Option(names = {"-o", "--output"}, required = true, paramLabel = "FILE",
            description = "The page to write. A file that is there already is left alone, unless --overwrite is given.")
    private String output;

    @Option(names = "--overwrite", description = "Write over FILE if it is there.")
    private boolean overwrite;

    @Option(names = "--for", defaultValue = "club", paramLabel = "AUDIENCE", converter = TypedWord.ForWhom.class,
            description = "newcomer, club (the default) or engineer: other words and another amount, the same advice.")
    private Audience audience;

    private final RulesOption rules = new RulesOption();

    SheetCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() {
        Path file = console.path(output);
        CaseInput.once(cases);
        NewFiles.check("-o", output, overwrite, console);
        NewFiles page = new NewFiles();
        engine = rules.on(engine, console);
        engine.openAhead();
        if (cases.isEmpty()) {
            return write(file, page, ofBook());
        }
        // Their words for complaints stand in the cases.
        CaseReader reader = engine.cases();
        List<Advice> advices = new ArrayList<>();
        List<Problem> wrong = new ArrayList<>();
        for (String name : cases) {
            try {
                CaseFile read = CaseInput.read(reader, console, name);
                Spared.check("-o", output, read.run(), console);
                read.warnings().forEach(warning -> console.err().println(console.shown(warning.text())));
                advices.add(engine.advisor().advise(book.named() ? History.knownTo(book.open(console), read.run())
                        .inform(read.run()) : read.run()));
            } catch (ProblemsException e) {
                wrong.addAll(e.problems());
            }
        }
        if (!wrong.isEmpty()) {
            throw new ProblemsException(wrong);
        }
        return write(file, page, new SheetPage(engine.notes(), engine.home().terms(), audience).with(engine.voices())
                .page(advices));
    }

    private String ofBook() {
        Book runs = book.open(console);
        Spared.check("-o", output, runs, console);
        Case last = BookOption.lastOf(runs, Optional.ofNullable(car));
        History history = History.of(runs, last.car().name());
        Advice advice = engine.advisor().advise(history.inform(last));
        int next = runs.pages().stream().mapToInt(Book.Page::number).max().orElse(0) + 1;
        return new SheetPage(engine.notes(), engine.home().terms(), audience).with(engine.voices()).page(advice, history,
                Plan.of(advice, history, next, laps, Optional.empty(), Optional.empty()));
    }

    private int write(Path file, NewFiles page, String text) {
        byte[] html = text.getBytes(StandardCharsets.UTF_8);
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
