package camberwell.cli;

import camberwell.advice.Advisor;
import camberwell.advice.RankedChange;
import camberwell.car.Car;
import camberwell.history.History;
import camberwell.input.CaseReader;
import camberwell.model.CarModel;
import camberwell.practice.Gauges;
import camberwell.practice.Session;
import camberwell.practice.TestDriver;
import camberwell.practice.Told;
import camberwell.report.Page;
import camberwell.report.PracticeReport;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell practise}: a car with something wrong hidden in it, driven by the model after each change. */
@Command(name = "practise", addMethodSubcommands = false,
        description = "Hides something wrong in a car, tells what it does, and drives it after each of your changes.",
        footer = {"", "Answer with adjuster, direction and steps, like \"rear-anti-roll-bar softer 1\"; q ends it. "
            + "At the end it says what was wrong, and what the advice would have done.", "", "Examples:",
            "  camberwell practise --seed 7",
            "  camberwell practise --car my-car.yaml --wrong 2",
            "  echo \"front-anti-roll-bar softer 2\" | \\",
            "      camberwell practise --seed 7 --format json"},
        exitCodeList = {"0:the car was put right, or you ended it", "1:no change is left, and the car is not put right",
            "2:the input or the command line is wrong"})
final class PractiseCommand implements Callable<Integer> {

    private static final int SEEDS = 10_000;
    private static final double WORTH = 4;
    private static final List<String> CARS = List.of("corvane-coupe", "harrow-rally-saloon", "larkspur-hatch",
            "sandling-tourer", "tessel-single-seater");

    private final Console console;
    private final Engine engine;

    @Spec
    private CommandSpec spec;

    @Option(names = "--car", paramLabel = "CAR", description = "A car's file; a demo car by default.")
    private String carFile;

    @Option(names = "--seed", paramLabel = "N", description = "The same number hides the same fault.")
    private Long seed;

    @Option(names = "--wrong", defaultValue = "1", paramLabel = "N",
            description = "How many adjusters are wrong: 1 or 2.")
    private int wrong;

    @Option(names = "--changes", defaultValue = "6", paramLabel = "N", converter = Count.class,
            description = "How many changes you have; 6 by default.")
    private int changes;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    PractiseCommand(Console console, Engine engine) {
        this.console = console;
        this.engine = engine;
    }

    @Override
    public Integer call() throws IOException {
        if (wrong < 1 || wrong > 2) {
            throw new ParameterException(spec.commandLine(), "--wrong: 1 or 2 adjusters, not " + wrong);
        }
        long drawn = seed != null ? seed : new Random().nextInt(SEEDS);
        Random luck = new Random(drawn);
        Path file = carFile != null ? console.path(carFile)
                : engine.home().folder().resolve("demo-cases/cars/" + CARS.get(luck.nextInt(CARS.size())) + ".yaml");
        Car car = new CaseReader().readCar(file);
        TestDriver driver = new TestDriver(CarModel.of(car, Surface.DRY).orElseThrow(() -> new ParameterException(
                spec.commandLine(), car.name() + ": it cannot be driven without wheelbase, mass and front-weight")));
        var fault = Session.draw(driver, wrong, WORTH, luck).orElseThrow(() -> new ParameterException(
                spec.commandLine(), car.name() + ": nothing that can be adjusted on it does enough harm for that"));
        Session yours = new Session(driver, fault);
        PracticeReport report = new PracticeReport(car, fault, drawn, yours, new Session(driver, fault));
        int code = talk(yours, report);
        advise(report.advised(), changes);
        if (format == Format.TEXT) {
            show(report::end);
        } else {
            Output.json(console, format, report::write);
        }
        return code;
    }

    /** The exit code that it ends with. */
    private int talk(Session yours, PracticeReport report) throws IOException {
        boolean text = format == Format.TEXT;
        Patience patience = new Patience(console);
        if (text) {
            show(report::begin);
        }
        try (Prompter typed = text ? Prompter.of(console, () -> Change.all().stream().map(Change::id).toList())
                : new Prompter.Piped(silent())) {
            while (!yours.cured() && yours.steps().size() < changes) {
                Optional<String> line = typed.line("Your change: ");
                if (line.isEmpty() || line.get().isBlank() || line.get().strip().equals("q")) {
                    return typed.interrupted() ? ExitCode.INTERRUPTED : ExitCode.DONE;
                }
                Optional<String> problem = change(line.get().strip(), yours);
                patience.took(problem.isEmpty());
                if (problem.isPresent()) {
                    (text ? console.out() : console.err()).println(problem.get());
                } else if (text) {
                    show(report::step);
                }
            }
        }
        return yours.cured() ? ExitCode.DONE : ExitCode.FOUND_WRONG;
    }

    /** The same console, on which no prompt shows. */
    private Console silent() {
        return new Console(new PrintStream(OutputStream.nullOutputStream()), console.err(), console.in(),
                console.directory(), console.width(), false, false);
    }

    /** Makes the change that was typed; what is wrong with it, if it cannot be made. */
    private static Optional<String> change(String typed, Session session) {
        TypedChange change;
        try {
            change = TypedChange.of(typed);
        } catch (IllegalArgumentException e) {
            return Optional.of(e.getMessage());
        }
        if (!session.can(change.change())) {
            return Optional.of("that cannot be moved further that way on this car, or the model does not know it");
        }
        session.make(change.change(), change.steps(), Told.of(session.felt()));
        return Optional.empty();
    }

    /** The advice treats the same fault, and remembers what came of its changes as it does with a book of runs. */
    private void advise(Session session, int most) throws IOException {
        Advisor advisor = engine.advisor();
        List<Case> runs = new ArrayList<>();
        while (!session.cured() && session.steps().size() < most) {
            List<Report> told = Told.of(session.felt());
            Case run = new Case("practice", "-", session.car(), Conditions.UNKNOWN,
                    Gauges.read(session.driver().good().car(), session.car()), told, List.of(), Optional.empty(), Map.of(),
                    List.of(), Driven.UNKNOWN.on(Driven.Sheet.UNKNOWN.numbered(runs.size() + 1)));
            runs.add(run);
            Optional<RankedChange> first = advisor.advise(new History(runs).inform(run)).changes().stream()
                    .filter(it -> it.size().to().isPresent() && CarModel.representsInMotion(it.change().adjuster()))
                    .findFirst();
            if (first.isEmpty()) {
                return;
            }
            session.make(first.get().change().adjuster(), first.get().size().to().orElseThrow(), first.get().besideIt(), told);
        }
    }

    private interface Writing {
        void on(Page page);
    }

    private void show(Writing writing) {
        Page page = new Page(console.width(), console.styled());
        writing.on(page);
        console.out().print(page);
        console.out().flush();
    }
}
