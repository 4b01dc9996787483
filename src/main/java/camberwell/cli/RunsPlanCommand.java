package camberwell.cli;

import camberwell.advice.Advice;
import camberwell.history.Book;
import camberwell.history.Gain;
import camberwell.history.History;
import camberwell.history.Plan;
import camberwell.report.Page;
import camberwell.report.PlanText;
import camberwell.run.Case;
import java.io.IOException;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code camberwell runs plan}: what to drive in the next hours. */
@Command(name = "plan", addMethodSubcommands = false,
        description = {"Plans the next runs: which change first and why, how many laps, when to go back to the start, when "
            + "to stop.",
            "From the last run of the book, its advice, what came of earlier changes, and the laps at hand."},
        footer = {"", "Examples:", "  camberwell runs plan --laps 40",
            "  camberwell runs plan --laps 60 --least-gain \"0.15 s\"",
            "  camberwell runs plan --laps 24 --expected-gain \"0.2 s\""})
final class RunsPlanCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "NAME", description = "For that car.")
    private String car;

    @Option(names = "--laps", defaultValue = "50", paramLabel = "N", converter = Count.class,
            description = "Laps at hand, the laps out and in among them; 50 by default.")
    private int laps;

    @Mixin
    private LeastGainOption leastGain;

    @Option(names = "--expected-gain", paramLabel = "SECONDS",
            description = "What a change that helps brings a lap, as you expect it: \"0.2 s\". By default the mean of those "
                    + "in the book that helped. Its chance times this is held against what the laps left can show.")
    private String expectedGain;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RunsPlanCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        Optional<Double> worth = leastGain.seconds();
        Optional<Gain> expected = Optional.ofNullable(expectedGain).map(typed ->
                Gain.said(LapTime.seconds("--expected-gain", typed)));
        engine = rules.on(engine, console);
        Book runs = book.open(console, engine);
        Case last = BookOption.lastOf(runs, Optional.ofNullable(car));
        History history = History.of(runs, last.car().name());
        Advice advice = engine.advisor().advise(history.inform(last));
        int next = runs.pages().stream().mapToInt(Book.Page::number).max().orElse(0) + 1;
        Plan plan = Plan.of(advice, history, next, laps, worth, expected);
        PlanText text = new PlanText(engine.notes());
        Page page = new Page(console.width(), console.styled());
        text.write(plan, advice, page);
        Output.either(console, format, page, text.json(plan, advice));
        return ExitCode.DONE;
    }
}
