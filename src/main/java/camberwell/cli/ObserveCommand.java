package camberwell.cli;

import camberwell.car.Car;
import camberwell.channel.ChannelMap;
import camberwell.channel.Consistency;
import camberwell.channel.Limits;
import camberwell.channel.Log;
import camberwell.channel.LogReader;
import camberwell.channel.LogSource;
import camberwell.channel.Logs;
import camberwell.input.CaseReader;
import camberwell.input.CaseWriter;
import camberwell.input.ChannelMapReader;
import camberwell.observe.Agreement;
import camberwell.observe.Observed;
import camberwell.observe.Observer;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.CornerPlot;
import camberwell.report.ObservationJson;
import camberwell.report.ObservationText;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell observe}: what the car did in a logged run. */
@Command(name = "observe", addMethodSubcommands = false,
        description = {
            "Reads logged runs and names what the car did: which axle slid, in which corner and phase, how surely.", "",
            "A log is text with a heading for each column and a row for each sample: comma-separated values, or with "
                + "semicolons or tabs, with a decimal comma, with units in the headings or below them, packed with gzip "
                + "or not. Needed are time, speed, and lateral acceleration or yaw rate; without the steering angle "
                + "nothing is said of balance. Throttle, brake, lap, distance, position, wheel speeds, damper travel, ride "
                + "heights, tread temperatures and tyre pressures are used where they are. Several logs are read as runs "
                + "of one session.",
            "", "Columns are found by their headings, and shown. Where a heading does not tell, or two could be the same "
                + "channel, a file for --channels says which it is:", "",
            "  speed: {column: v_ground, unit: km/h}",
            "  yaw-rate: {column: gyro 3, unit: deg/s, sign: -1}",
            "  steering: {column: swa, ratio: 14}",
            "  lap: none", "",
            "With -o it writes a case that advise and debrief --resume take. With --with it takes the car and the driver's "
                + "own complaints from a case, and says where log and driver agree and where they do not."},
        footer = {"", "Examples:",
            "  camberwell observe run3.csv --car my-car.yaml",
            "  camberwell observe run3.csv --car my-car.yaml -o run3.yaml",
            "  camberwell observe run3.csv.gz --car my-car.yaml --svg run3.svg",
            "  camberwell observe run3.csv --against run2.csv --car my-car.yaml",
            "  camberwell observe --format json run3.csv --with monday.yaml"})
final class ObserveCommand implements Callable<Integer>, TakesRules {

    private final Console console;
    private Engine engine;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "LOG.csv", arity = "1..*", description = "A log, or - for standard input.")
    private List<String> logs;

    @ArgGroup(exclusive = true, multiplicity = "1")
    private Source source;

    /** Where the car comes from. */
    static final class Source {
        @Option(names = "--car", paramLabel = "CAR", description = "The car's file.")
        private String car;

        @Option(names = "--with", paramLabel = "CASE",
                description = "A case of the same run: its car, its conditions and the driver's own complaints.")
        private String run;
    }

    @Option(names = "--against", paramLabel = "LOG.csv", description = "A log of an earlier run of the same car, circuit and "
            + "logger: whether the car turns in later or sharper than then, and draws to one side.")
    private String against;

    @Option(names = "--channels", paramLabel = "MAP", description = "A file that says which column is which channel.")
    private String channels;

    @Option(names = {"-o", "--output"}, paramLabel = "CASE", description = "Write a case with what was found.")
    private String output;

    @Option(names = "--svg", paramLabel = "FILE", description = "Draw the corner that shows the surest slide.")
    private String svg;

    @Option(names = "--overwrite", description = "Write over the files of -o and --svg if they are there.")
    private boolean overwrite;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    private final RulesOption rules = new RulesOption();

    ObserveCommand(Console console, Engine engine) {
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
        Optional<Case> run = Optional.ofNullable(source.run).map(it -> CaseInput.read(engine.cases(), console, it).run());
        Car car = run.map(Case::car).orElseGet(() -> new CaseReader().readCar(console.path(source.car)));
        ChannelMap map = channels == null ? ChannelMap.NONE : ChannelMapReader.read(console.path(channels));
        NewFiles.check("-o", output, overwrite, console);
        NewFiles.check("--svg", svg, overwrite, console);
        run.ifPresent(it -> {
            Spared.check("-o", output, it, console);
            Spared.check("--svg", svg, it, console);
        });
        Limits limits = engine.home().limits();
        boolean[] sidesKnown = {true};
        Log log = Logs.joined(logs.stream().map(name -> {
            Log one = read(name, map, limits);
            sidesKnown[0] &= Consistency.settle(one, map, limits);
            return one;
        }).toList());
        Optional<Log> earlier = Optional.ofNullable(against).map(name -> {
            Log one = read(name, map, limits);
            Consistency.settle(one, map, limits);
            return one;
        });
        Observed observed = Observer.observe(log, sidesKnown[0], earlier, car, map, limits);
        Case found = found(run, car, observed);
        List<Agreement> agreements = Agreement.of(found.reports(), observed.line().isPresent(),
                !observed.notJudged().contains(Observed.WHEELS));
        Page page = new Page(console.width(), console.styled());
        if (format == Format.TEXT) {
            ObservationText.write(observed, agreements, page);
        }
        files(found, observed, page);
        Output.either(console, format, page, ObservationJson.of(observed, agreements));
        return ExitCode.DONE;
    }

    private Log read(String name, ChannelMap map, Limits limits) {
        try (LogSource in = name.equals("-") ? LogSource.of("-", console.in()) : LogSource.open(name, console.path(name))) {
            return LogReader.read(in, map, limits);
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(name, e));
        }
    }

    /** The case with what was measured beside what was said. */
    private Case found(Optional<Case> run, Car car, Observed observed) {
        List<Report> reports = new ArrayList<>(run.map(Case::reports).orElse(List.of()).stream()
                .filter(report -> report.measured().isEmpty()).toList());
        reports.addAll(observed.reports());
        Case base = run.orElseGet(() -> new Case("Run logged in " + Path.of(logs.get(0)).getFileName(), "-", car,
                Conditions.UNKNOWN, Map.of(), List.of(), List.of(), Optional.of(console.path(source.car).toString()),
                Map.of()));
        return (base.tyres().isEmpty() ? base.withTyres(observed.tyres()) : base).withReports(reports);
    }

    private void files(Case found, Observed observed, Page page) {
        if (output != null) {
            new CaseWriter().write(found, console.path(output));
            page.blank().paragraph(0, "Written to " + output + ". What to change:");
            page.command("camberwell", "advise", output);
        }
        if (svg != null && observed.drawing().isPresent()) {
            NewFiles files = new NewFiles();
            files.replace(console.path(svg), new CornerPlot(observed.drawing().get()).svg()
                    .getBytes(StandardCharsets.UTF_8));
            files.write();
            page.blank().paragraph(0, "Drawn in " + svg + ": corner " + observed.drawing().get().corner() + " of lap "
                    + observed.drawing().get().lap() + ".");
        } else if (svg != null) {
            console.err().println("There is no slide to draw, so " + svg + " is not written.");
        }
    }
}
