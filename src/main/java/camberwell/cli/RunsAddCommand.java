package camberwell.cli;

import camberwell.history.Book;
import camberwell.history.Changes;
import camberwell.history.History;
import camberwell.history.Judgement;
import camberwell.history.NextRun;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.HeardText;
import camberwell.report.Page;
import camberwell.report.RunsJson;
import camberwell.report.RunsText;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Lap;
import camberwell.run.Made;
import camberwell.run.Report;
import camberwell.saying.Heard;
import camberwell.vocabulary.Outcome;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code camberwell runs add}: a run into the book. */
@Command(name = "add", addMethodSubcommands = false,
        description = {"Enters a run into the book, under the next number.",
            "Without a case it carries on from the last run: the same car, day and settings; say what is new."},
        footer = {"", "Examples:",
            "  camberwell runs add friday.yaml --driver Ada --track Home",
            "  camberwell runs add --changed \"rear-toe toe-in 2\" \\",
            "      --laps \"out 92.41 92.39 95.87 traffic 92.30\" \\",
            "      --complaint \"understeer entry slow slight\"",
            "  camberwell runs add --say \"still pushes a bit on the way in\""})
final class RunsAddCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Parameters(paramLabel = "CASE", arity = "0..1", description = "A case file, or - for standard input.")
    private String name;

    @Mixin
    private BookOption book;

    @Option(names = "--car", paramLabel = "CAR",
            description = "The car's file, or the name of a car that has runs in the book.")
    private String car;

    @Option(names = "--laps", paramLabel = "LAPS", description = {"Lap times in the order they were driven: 92.41 or "
            + "1:32.41, each with what made it no ordinary lap: out, in, pit, flag, traffic, mistake, cut."})
    private List<String> laps = List.of();

    @Option(names = "--changed", paramLabel = "CHANGE",
            description = "What was changed since the last run: \"rear-toe toe-in 2\", with the steps; 1 if left out.")
    private List<String> changed = List.of();

    @Option(names = "--set", paramLabel = "ADJUSTER=SETTING",
            description = "Where an adjuster stands now: \"rear-toe=0.25 deg\".")
    private List<String> settings = List.of();

    @Option(names = "--complaint", paramLabel = "WORDS",
            description = "What the car did: \"understeer entry slow strong some-laps\". Can be given again.")
    private List<String> complaints = List.of();

    @Option(names = "--say", paramLabel = "TEXT",
            description = "The same in the driver's own words: \"still pushes a bit on the way in\".")
    private String say;

    @Option(names = "--verdict", paramLabel = "OUTCOME", converter = TypedWord.OfOutcome.class,
            description = "The driver's own: better, same, worse or unclear, against the run before.")
    private Outcome verdict;

    @Mixin
    private RunSheetOptions sheet;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT", description = Format.WRITTEN)
    private Format format;

    RunsAddCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public RulesOption rules() {
        return rules;
    }

    @Override
    public Integer call() throws IOException {
        engine = rules.on(engine, console);
        // Their words for complaints may be said, and stand in the book.
        engine.packs();
        Optional<Case> given = name == null ? Optional.empty() : Optional.of(readCase());
        // Everything that can be wrong is found out before a book is begun.
        List<Report> felt = complaints.stream().map(text -> ComplaintWords.parse("--complaint", text)).toList();
        List<Lap> driven = laps();
        sheet.check();
        Optional<Path> carFile = Optional.ofNullable(car).map(console::path).filter(Files::isRegularFile);
        Optional<Case> fromCar = given.isPresent() ? Optional.empty() : carFile.map(RunsAddCommand::untold);
        Book runs = book.begin(console);
        Optional<String> wanted = given.or(() -> fromCar).map(run -> run.car().name())
                .or(() -> Optional.ofNullable(car));
        Optional<Case> before = BookOption.last(runs, wanted);
        Case base = given.or(() -> fromCar.filter(run -> before.isEmpty()))
                .or(() -> before.map(run -> carriedOn(run, carFile))).orElseThrow(() -> new ProblemsException(Problem.of(
                        "runs add", car == null ? "the book has no run to carry on from; give a case, or the car with "
                        + "--car FILE" : "the book has no run of a car called \"" + car + "\", and there is no such file",
                        Optional.empty())));
        Case run = SettingWords.apply(base, changed, settings);
        run = run.withSetup(Changes.setup(run.car()));
        if (!felt.isEmpty()) {
            List<Report> all = new ArrayList<>(run.reports());
            all.addAll(felt);
            run = run.withReports(Report.once(all));
        }
        boolean fine = false;
        if (say != null) {
            Heard heard = heard();
            fine = heard.fine() && run.reports().isEmpty();
            run = run.withHeard(heard);
        }
        Case said = run;
        // The book is read without the phrases, and by others: what was understood stands in it for good.
        run = run.writtenOut();
        List<Made> made = before.isPresent() && before.get().car().name().equals(run.car().name())
                ? Changes.between(before.get().car(), run.car()) : List.of();
        Driven old = run.driven();
        run = run.withDriven(new Driven(sheet.on(old.sheet()), made, driven.isEmpty() ? old.laps() : driven,
                Optional.ofNullable(verdict).or(old::verdict),
                fine && !made.isEmpty() && verdict == null ? Judgement.nothingWrong(made, before.orElseThrow()) : old.judged()));
        Book.Page page = runs.add(run);
        tell(runs, page, said);
        return ExitCode.DONE;
    }

    private Heard heard() {
        Heard heard = engine.listener().hear(say);
        if (heard.told().isEmpty() && !heard.fine()) {
            throw new ProblemsException(Problem.of("--say", "not understood: \"" + say.strip()
                    + "\"; say it in other words, or give --complaint", Optional.empty()));
        }
        return heard;
    }

    private Case readCase() {
        CaseFile file = CaseInput.read(engine.cases(), console, name);
        file.warnings().stream().filter(warning -> !warning.message().startsWith("neither"))
                .forEach(warning -> console.err().println(console.shown(warning.text())));
        return name.equals("-") ? file.run() : file.run().withSource(console.path(name).toString());
    }

    private static Case untold(Path file) {
        return new Case("", file.toString(), new CaseReader().readCar(file), Conditions.UNKNOWN, Map.of(), List.of(),
                List.of(), Optional.of(file.toString()), Map.of());
    }

    private static Case carriedOn(Case run, Optional<Path> carFile) {
        Case carried = NextRun.carriedOn(run);
        return carFile.isEmpty() ? carried : carried.ofCar(new CaseReader().readCar(carFile.get()), carFile.map(Path::toString));
    }

    private List<Lap> laps() {
        List<Lap> all = new ArrayList<>();
        for (String text : laps) {
            LapWords.parse("--laps", text).forEach(all::add);
        }
        return all;
    }

    private void tell(Book runs, Book.Page page, Case said) throws IOException {
        Case run = runs.read(page);
        Optional<Judgement> judgement = History.of(runs, run.car().name()).judgement(page.number(), Optional.empty());
        String file = console.shown(page.file().toString());
        if (format != Format.TEXT) {
            Output.tree(console, format, RunsJson.run(run, judgement, file));
            return;
        }
        Page screen = new Page(console.width(), console.styled());
        screen.paragraph(0, "Entered as run " + page.number() + ": " + file);
        HeardText.write(said, screen);
        new RunsText(screen).brief(run, judgement);
        console.out().print(screen);
    }
}
