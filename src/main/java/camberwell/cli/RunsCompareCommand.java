package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.ComplaintShift;
import camberwell.history.LapComparison;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.report.RunsJson;
import camberwell.report.RunsText;
import camberwell.run.Case;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell runs compare}: what the lap times and complaints of runs tell of each other. */
@Command(name = "compare", addMethodSubcommands = false,
        description = {"Compares runs: A and B, or A, B and A again, which a drifting track does not mislead.",
            "The trend of fuel and tyre age is taken out of the laps, and slow ones are left out by a robust rule that is "
            + "shown."},
        footer = {"", "Examples:", "  camberwell runs compare 6 7 --least-gain \"0.1 s\"",
            "  camberwell runs compare 6 7 8"})
final class RunsCompareCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(paramLabel = "RUN", arity = "2..*", description = "Numbers of runs, in the order they were driven.",
            converter = Count.OfRun.class)
    private List<Integer> numbers;

    @Mixin
    private BookOption book;

    @Mixin
    private LeastGainOption leastGain;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RunsCompareCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        if (numbers.size() > 2 && numbers.size() % 2 == 0) {
            throw new ProblemsException(Problem.of("runs compare", "give two runs, or A, B and A again: an odd number",
                    Optional.empty()));
        }
        if (numbers.stream().distinct().count() < numbers.size()) {
            throw new ProblemsException(Problem.of("runs compare", "a run cannot be compared with itself",
                    Optional.empty()));
        }
        Optional<Double> worth = leastGain.seconds();
        Book runs = book.open(console, rules.on(engine, console));
        List<Case> cases = numbers.stream().map(number -> runs.read(runs.page(number))).toList();
        LapComparison laps = LapComparison.of(cases, worth);
        List<ComplaintShift> shifts = ComplaintShift.between(cases.get(0).reports(), cases.get(1).reports());
        Page screen = new Page(console.width(), console.styled());
        new RunsText(screen).compare(cases, laps, shifts);
        Output.either(console, format, screen, RunsJson.comparison(cases, laps, shifts));
        return ExitCode.DONE;
    }
}
