package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.history.History;
import camberwell.history.Judgement;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.Page;
import camberwell.report.RunsJson;
import camberwell.report.RunsText;
import camberwell.run.Case;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Witness;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell runs judge}: what came of the changes before a run. */
@Command(name = "judge", addMethodSubcommands = false,
        description = {"Tells what came of the changes before a run, by its complaints and its laps, and what is learned.",
            "With an outcome it is entered as you say."},
        footer = {"", "Examples:", "  camberwell runs judge", "  camberwell runs judge 7 --least-gain \"0.1 s\"",
            "  camberwell runs judge 7 better --on \"understeer entry\""})
final class RunsJudgeCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private final Engine engine;

    @Parameters(index = "0", arity = "0..1", paramLabel = "RUN", description = "Its number; the last one by default.",
            converter = Count.OfRun.class)
    private Integer number;

    @Parameters(index = "1", arity = "0..1", paramLabel = "OUTCOME", converter = TypedWord.OfOutcome.class,
            description = "better, same, worse or unclear.")
    private Outcome outcome;

    @Option(names = "--on", paramLabel = "WORDS", description = "The complaint that the outcome is about.")
    private String on;

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "NAME", description = "The last run of that car.")
    private String car;

    @Mixin
    private LeastGainOption leastGain;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    RunsJudgeCommand(Console console, Engine engine) {
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
        // Their words for complaints may be said, and stand in the book.
        rules.on(engine, console).packs();
        Optional<Report> about = Optional.ofNullable(on).map(text -> ComplaintWords.parse("--on", text));
        if (about.isPresent() && outcome == null) {
            throw new ProblemsException(Problem.of("--on", "say the outcome too: better, same, worse or unclear",
                    Optional.empty()));
        }
        Book runs = book.open(console);
        Case run = number != null ? runs.read(runs.page(number))
                : BookOption.lastOf(runs, Optional.ofNullable(car));
        int judged = run.driven().sheet().number().orElseThrow();
        History history = History.upTo(runs, run);
        if (outcome != null) {
            runs.replace(runs.page(judged), entered(run, history.before(judged), about));
            history = History.upTo(runs, run);
        }
        Judgement judgement = history.judgement(judged, worth).orElseThrow(() -> new ProblemsException(Problem.of(
                runs.folder().toString(), "run " + judged + " is the first of the " + run.car().name()
                + ", so there is nothing to judge it against", Optional.empty())));
        Page screen = new Page(console.width(), console.styled());
        new RunsText(screen).judged(judgement);
        Output.either(console, format, screen, RunsJson.judgement(judgement));
        return ExitCode.DONE;
    }

    private Case entered(Case run, Optional<Case> before, Optional<Report> about) {
        List<Made> changes = before.map(it -> Changes.between(it.car(), run.car())).orElse(List.of());
        if (changes.isEmpty()) {
            throw new ProblemsException(Problem.of("runs judge", "nothing was changed before run "
                    + run.driven().sheet().number().orElse(0), Optional.empty()));
        }
        Tried.On complaint = about.map(it -> new Tried.On(Optional.of(it.symptom()), it.where(), it.phase(),
                it.speed())).orElse(Tried.On.ALL);
        List<Tried> all = new ArrayList<>(run.driven().judged().stream()
                .filter(it -> !it.on().equals(complaint) && !complaint.equals(Tried.On.ALL)).toList());
        Tried.Trial trial = new Tried.Trial(Optional.empty(), Optional.empty(), Optional.empty(), 1,
                Optional.of(Witness.DRIVER), Optional.empty(), false);
        changes.forEach(made -> all.add(new Tried(made.change(), made.moved(), outcome, complaint, trial)));
        return run.withDriven(run.driven().withJudged(all));
    }
}
