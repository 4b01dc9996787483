package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.History;
import camberwell.history.Judgement;
import camberwell.report.Page;
import camberwell.report.RunsJson;
import camberwell.report.RunsText;
import camberwell.run.Case;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell runs show}: all of one run. */
@Command(name = "show", addMethodSubcommands = false,
        description = "Shows a run: its set-up, every lap and whether it counts, what came of the change before it.",
        footer = {"", "Example:", "  camberwell runs show 7"})
final class RunsShowCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "RUN", description = "Its number.", converter = Count.OfRun.class)
    private int number;

    @Mixin
    private BookOption book;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RunsShowCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Book runs = book.open(console, rules.on(engine, console));
        Book.Page page = runs.page(number);
        Case run = runs.read(page);
        Optional<Judgement> judgement = History.upTo(runs, run).judgement(number, Optional.empty());
        Page screen = new Page(console.width(), console.styled());
        new RunsText(screen).whole(run, judgement);
        Output.either(console, format, screen,
                RunsJson.run(run, judgement, console.shown(page.file().toString())));
        return ExitCode.DONE;
    }
}
