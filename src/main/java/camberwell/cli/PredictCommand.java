package camberwell.cli;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.input.CaseReader;
import camberwell.model.Behaviour;
import camberwell.model.CarModel;
import camberwell.model.Characteristic;
import camberwell.model.Prediction;
import camberwell.model.ProvingGround;
import camberwell.model.ProvingGround.Exercise;
import camberwell.report.ManoeuvreReport;
import camberwell.report.Page;
import camberwell.report.PhasesReport;
import camberwell.report.PredictionReport;
import camberwell.report.Words;
import camberwell.units.Figures;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell predict}: what a change would do to this car, by the handling model. */
@Command(name = "predict", addMethodSubcommands = false,
        description = "Tells what a change would do to a car, by the handling models: in a steady corner, and driven.",
        footer = {"", "The car's file must give wheelbase, mass and front weight; a class of car lends what else it "
            + "leaves out. Dampers, ride heights and pressures show in the driven car alone.", "", "Examples:",
            "  camberwell predict --car demo-cases/cars/corvane-coupe.yaml \\",
            "      --change \"front-anti-roll-bar softer 1\"",
            "  camberwell predict --car my-car.yaml --change \"rear-wing more 2\" \\",
            "      --speed \"170 km/h\" --phase exit --svg steer.svg",
            "  camberwell predict --car my-car.yaml --change \"rear-rebound softer 2\" \\",
            "      --manoeuvre power-off"})
final class PredictCommand implements Callable<Integer> {

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(names = "--car", required = true, paramLabel = "CAR", description = "The car's file.")
    private String carFile;

    @Option(names = "--change", required = true, paramLabel = "CHANGE", converter = TypedChange.Converter.class,
            description = "Adjuster, direction and how many of the car's own steps, 1 by default.")
    private TypedChange wanted;

    @Mixin
    private TurnOptions turn;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    @Option(names = "--manoeuvre", paramLabel = "NAME", converter = TurnOptions.OfExercise.class,
            description = "Show one manoeuvre of the car in motion over time instead: corner, lift-off, kerb, bumps, "
                + "step-steer, braking-in-a-turn, power-off or power-on.")
    private Exercise manoeuvre;

    @Option(names = "--svg", paramLabel = "FILE",
            description = "Write the steer characteristic, or the manoeuvre, as a drawing, too.")
    private String svg;

    @Option(names = "--overwrite", description = "Write over the file of --svg if it is there.")
    private boolean overwrite;

    PredictCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        NewFiles.check("--svg", svg, overwrite, console);
        Car car = new CaseReader().readCar(console.path(carFile));
        CarModel before = CarModel.of(car, turn.surface()).orElseThrow(() -> new ParameterException(spec.commandLine(),
                car.name() + ": there is no figure without wheelbase, mass and front-weight among its dimensions, or "
                + "with dimensions that do not make a car"));
        CarModel after = changed(before);
        String title = described(car);
        if (manoeuvre != null) {
            return show(new ProvingGround(before), after, car.name() + ": " + title);
        }
        Optional<PredictionReport> steady = CarModel.represents(wanted.change().adjuster())
                ? Optional.of(steady(before, after, title)) : Optional.empty();
        if (svg != null && steady.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--svg: a steady corner does not show the "
                    + wanted.change().adjuster().spoken() + "; draw a --manoeuvre");
        }
        double held = steady.map(PredictionReport::speed).orElseGet(turn::speed);
        PhasesReport phases = new PhasesReport(new ProvingGround(before), after, held,
                steady.map(PredictionReport::prediction));
        draw(steady.map(PredictionReport::svg).orElse(""));
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            if (steady.isPresent()) {
                steady.get().write(page, console.width());
            } else {
                page.heading(car.name() + ": " + title);
            }
            page.blank();
            phases.write(page, console.width());
            console.out().print(page);
        } else {
            Output.json(console, format, json -> {
                json.writeStartObject();
                json.writeStringField("car", car.name());
                json.writeStringField("change", title);
                if (steady.isPresent()) {
                    steady.get().fields(json);
                }
                phases.write(json);
                json.writeEndObject();
            });
        }
        return ExitCode.DONE;
    }

    private PredictionReport steady(CarModel before, CarModel after, String title) {
        Behaviour.Question question = turn.of(before).orElseThrow(() -> unsteady("the car"));
        Behaviour from = Behaviour.of(before, question).orElseThrow(() -> unsteady("the car"));
        Behaviour to = Behaviour.of(after, question).orElseThrow(() -> unsteady("the car with the change made"));
        double held = question.near().speed();
        double along = question.near().longitudinal();
        return new PredictionReport(before.car().name(), title,
                new Prediction(wanted.change().adjuster(), turn.phase(), from, to, before.lent()),
                Characteristic.of(before, turn.phase(), held, along), Characteristic.of(after, turn.phase(), held, along));
    }

    private Integer show(ProvingGround track, CarModel after, String title) throws IOException {
        double held = turn.speed();
        ManoeuvreReport report = new ManoeuvreReport(title + ", " + manoeuvre.id() + " at "
                + Figures.fixed(Unit.KILOMETRE_PER_HOUR.fromSi(held), 0) + " km/h", manoeuvre,
                track.drive(track.car(), manoeuvre, held), track.drive(after, manoeuvre, held), track.radius(manoeuvre, held));
        draw(report.svg());
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            report.write(page, console.width());
            console.out().print(page);
        } else {
            Output.json(console, format, report::write);
        }
        return ExitCode.DONE;
    }

    private void draw(String drawing) throws IOException {
        if (svg != null) {
            NewFiles file = new NewFiles();
            file.replace(console.path(svg), drawing.getBytes(StandardCharsets.UTF_8));
            file.write();
        }
    }

    private CarModel changed(CarModel before) {
        Adjuster adjuster = wanted.change().adjuster();
        Car car = before.car();
        Setting setting = car.setting(adjuster).orElseThrow(() -> new ParameterException(spec.commandLine(), "--change: the "
                + car.name() + " has no " + adjuster.id()
                + TypedWord.hint(adjuster.id(), car.adjusters().keySet().stream().map(Word::id).toList())));
        int left = setting.stepsLeft(wanted.change().direction());
        if (left < wanted.steps()) {
            throw new ParameterException(spec.commandLine(), "--change: " + car.name() + " has only " + left
                    + " steps left that way from " + setting.now());
        }
        return before.withInMotion(wanted.change(), wanted.steps()).orElseThrow(() -> new ParameterException(
                spec.commandLine(), "--change: the " + adjuster.spoken() + " is not in the models, or the car's file "
                        + "does not say enough of it"));
    }

    private ParameterException unsteady(String who) {
        return new ParameterException(spec.commandLine(), who + " cannot hold that turn at that speed; try a lower "
                + "--speed or a wider --radius");
    }

    private String described(Car car) {
        return car.setting(wanted.change().adjuster()).map(setting -> Words.change(wanted.change()) + " from "
                + setting.now().text(setting.decimals()) + " to "
                + setting.moved(wanted.change().direction(), wanted.steps()).text(setting.decimals())).orElseThrow();
    }
}
