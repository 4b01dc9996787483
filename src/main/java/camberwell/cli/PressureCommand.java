package camberwell.cli;

import camberwell.advice.PressureQuestion;
import camberwell.advice.PressureQuestion.Answer;
import camberwell.advice.Worked;
import camberwell.input.CaseFile;
import camberwell.input.CaseReader;
import camberwell.physics.GasLaw;
import camberwell.report.Page;
import camberwell.report.WorkedReport;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Wheel;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code camberwell pressure}: what the gas law makes of cold and hot pressures. */
@Command(name = "pressure", addMethodSubcommands = false, sortOptions = false,
        description = {"Computes tyre pressures by the gas law, at constant volume and on absolute pressures.", "",
            "Give what you know; all that follows from it is printed, with the line that computed it: the growth, the "
                + "gas temperature that it implies, the cold setting for the hot target, what to let out of the hot "
                + "tyre now, and the setting for another day. Pressures are gauge pressures, written with their unit: "
                + "1.90bar, 190kPa, 27.5psi. Temperatures are 18C or 64F.", ""},
        footer = {"", "Examples:",
            "  camberwell pressure --cold 1.70bar --hot 2.05bar --target 1.90bar",
            "  camberwell pressure --cold 26psi --hot 33psi --target 31psi --set-at 64F",
            "  camberwell pressure --target 1.90bar --gas 75C --set-at 18C",
            "  camberwell pressure --cold 1.70bar --hot 2.05bar --target 1.90bar \\",
            "      --set-at 18C --air 18C --track 27C --next-air 9C --next-track 11C",
            "  camberwell pressure demo-cases/pushes-in-snaps-out.yaml --next-air 9C"},
        exitCodeList = {"0:done", "1:a setting was refused because it is below the minimum",
            "2:the input or the command line is wrong"})
final class PressureCommand implements Callable<Integer> {

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Parameters(paramLabel = "CASE", arity = "0..1",
            description = "A case file, or - for standard input: every tyre of it. What is given beside it wins.")
    private Optional<String> file;

    @Option(names = "--cold", paramLabel = "PRESSURE", converter = Amount.Pressure.class,
            description = "Pressure set cold before the run.")
    private Optional<Quantity> cold;

    @Option(names = "--hot", paramLabel = "PRESSURE", converter = Amount.Pressure.class,
            description = "Pressure read hot straight after the run.")
    private Optional<Quantity> hot;

    @Option(names = "--target", paramLabel = "PRESSURE", converter = Amount.Pressure.class,
            description = "Pressure to run at when hot.")
    private Optional<Quantity> target;

    @Option(names = "--minimum", paramLabel = "PRESSURE", converter = Amount.Pressure.class,
            description = "Least cold pressure of the tyre's maker or the series. It wins over the target.")
    private Optional<Quantity> minimum;

    @Option(names = "--set-at", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Temperature of the tyre when the cold pressure was set; mostly the air's.")
    private Optional<Quantity> setAt;

    @Option(names = "--gas", paramLabel = "TEMPERATURE", converter = Amount.GasTemperature.class,
            description = "Temperature of the gas in the hot tyre, where no hot pressure tells it.")
    private Optional<Quantity> gas;

    @Option(names = "--air", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Air temperature of the run.")
    private Optional<Quantity> air;

    @Option(names = "--track", paramLabel = "TEMPERATURE", converter = Amount.Temperature.class,
            description = "Track temperature of the run.")
    private Optional<Quantity> track;

    @Mixin
    private NextDayOptions next;

    @ArgGroup
    private AmbientOption ambient;

    @Option(names = "--step", paramLabel = "PRESSURE", converter = Amount.PressureStep.class,
            description = "Smallest change that is set, and the unit of the answer: 0.01bar, 1kPa or 0.1psi if not "
                + "given.")
    private Optional<Quantity> step;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    PressureCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        try {
            return file.isPresent() ? ofCase(file.get()) : ofOne();
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage());
        }
    }

    /** What no tyre does is told before anything is computed from it. */
    private void check() {
        if (cold.isEmpty() || hot.isEmpty()) {
            return;
        }
        double from = cold.get().si() + GasLaw.STANDARD_ATMOSPHERE;
        double to = hot.get().si() + GasLaw.STANDARD_ATMOSPHERE;
        if (to < from) {
            console.err().println("--hot " + hot.get() + ": warning: it is below --cold " + cold.get()
                    + ", and a tyre gains pressure as it warms; are the two swapped, or does it leak?");
        }
        if (to > 2 * from) {
            throw new ParameterException(spec.commandLine(), "--hot " + hot.get() + " with --cold " + cold.get()
                    + ": the gas would have to be twice as hot, in kelvin; read both again");
        }
    }

    private int ofOne() throws IOException {
        check();
        Answer answer = new PressureQuestion(cold, hot, target, setAt, gas, air, track, next.day(),
                ambient == null ? GasLaw.STANDARD_ATMOSPHERE : ambient.pascal(), minimum, step()).answer();
        if (answer.figures().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "nothing follows from that: give --cold, --hot and "
                    + "--target, or --target, --gas and --set-at, or --cold, --gas and --set-at");
        }
        Output.figures(console, format, answer.figures());
        return answer.belowMinimum() ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }

    private int ofCase(String name) throws IOException {
        CaseReader reader = new CaseReader();
        CaseFile read = CaseInput.read(reader, console, name);
        read.warnings().forEach(warning -> console.err().println(warning.text()));
        Map<Wheel, Answer> answers = new LinkedHashMap<>();
        for (Wheel wheel : Wheel.values()) {
            Answer answer = of(read.run(), wheel).answer();
            if (answer.figures().stream().map(Worked::id).anyMatch(id -> id.equals("cold-setting"))) {
                answers.put(wheel, answer);
            }
        }
        if (answers.isEmpty()) {
            throw new ParameterException(spec.commandLine(), name + " does not give what a cold setting follows "
                    + "from: a cold and a hot pressure of a tyre, and the hot target in the car's file or with "
                    + "--target");
        }
        Map<Wheel, List<Worked>> figures = new LinkedHashMap<>();
        answers.forEach((wheel, answer) -> figures.put(wheel, answer.figures()));
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            WorkedReport.write(read.run().title(), figures, page);
            console.out().print(page);
        } else {
            Output.json(console, format, json -> WorkedReport.write(read.run().title(), figures, json));
        }
        return answers.values().stream().anyMatch(Answer::belowMinimum) ? ExitCode.FOUND_WRONG : ExitCode.DONE;
    }

    private PressureQuestion of(Case run, Wheel wheel) {
        PressureQuestion own = PressureQuestion.of(run, wheel, step(), next.day());
        return new PressureQuestion(cold.or(own::cold), hot.or(own::hot), target.or(own::target), setAt.or(own::setAt),
                gas, air.or(own::air), track.or(own::track), next.day(), ambient == null ? own.ambient() : ambient.pascal(),
                minimum.or(own::minimum), step.orElse(own.step()));
    }

    private Quantity step() {
        return step.orElseGet(() -> switch (Stream.of(target, hot, cold).flatMap(Optional::stream).findFirst()
                .map(Quantity::unit).orElse(Unit.BAR)) {
            case PSI -> new Quantity(0.1, Unit.PSI);
            case KILOPASCAL -> new Quantity(1, Unit.KILOPASCAL);
            default -> new Quantity(0.01, Unit.BAR);
        });
    }
}
