package camberwell.cli;

import camberwell.audit.Audit;
import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.report.AuditReport;
import camberwell.report.Page;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** {@code camberwell rules audit}: the rule base answers to physics. */
@Command(name = "audit", addMethodSubcommands = false,
        description = "Holds what rules and knowledge notes claim against the handling model, on every reference car.",
        footer = {"", "A note explains a difference with \"model: not represented, because …\", or with an entry of "
            + "\"model-differs\" for one effect or one rule.",
            "", "Examples:", "  camberwell rules audit", "  camberwell rules audit --all",
            "  camberwell rules audit --format json"},
        exitCodeList = {"0:nothing differs without a reason", "1:something differs without a reason",
            "2:the input or the command line is wrong"})
final class RulesAuditCommand implements Callable<Integer>, TakesRules {

    /** Folders of cars, below camberwell's own. */
    private static final List<String> CARS = List.of("demo-cases/cars", "rules/reference-cars");

    private final Console console;
    private Engine engine;

    private final RulesOption rules = new RulesOption();

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    @Option(names = "--all", description = "List the claims that agree, too.")
    private boolean all;

    RulesAuditCommand(Console console, Engine engine) {
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
        List<Car> cars = cars(engine.home().folder());
        AuditReport report = new AuditReport(cars.stream().map(Car::name).toList(),
                new Audit(engine.notes(), cars).judge(engine.rules().rules().values()));
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            report.write(page, all);
            console.out().print(page);
        } else {
            Output.json(console, format, json -> {
                report.write(json);
            });
        }
        return report.foundWrong() ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }

    /** The reference cars, in the order of their files. */
    static List<Car> cars(Path home) throws IOException {
        List<Car> cars = new ArrayList<>();
        for (String folder : CARS) {
            try (Stream<Path> files = Files.list(home.resolve(folder))) {
                files.filter(file -> file.toString().endsWith(".yaml")).sorted()
                        .forEach(file -> cars.add(new CaseReader().readCar(file)));
            }
        }
        return cars;
    }
}
