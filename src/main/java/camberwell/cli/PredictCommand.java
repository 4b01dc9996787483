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
import camberwell.physics.CornerPhase;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.report.ManoeuvreReport;
import camberwell.report.Page;
import camberwell.report.PhasesReport;
import camberwell.report.PredictionReport;
import camberwell.report.Words;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** {@code camberwell predict}: what a change would do to this car, by the handling model. */
@Command(name = "predict", mixinStandardHelpOptions = true,
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

    private static final List<String> PHASES = List.of("entry", "mid-corner", "exit");
    private static final double LEAST_SPEED = Unit.KILOMETRE_PER_HOUR.toSi(15);
    private static final double MOST_SPEED = Unit.KILOMETRE_PER_HOUR.toSi(350);
    private static final double LEAST_RADIUS = 5;
    private static final double MOST_RADIUS = 2000;
    private static final int MOST_STEPS = 50;
    private static final double MEDIUM = camberwell.physics.CornerSpeed.MEDIUM.metresPerSecond();
    private static final List<Exercise> EXERCISES = List.of(Exercise.values());

    private final Console console;

    @Spec
    private CommandSpec spec;

    @Option(names = "--car", required = true, paramLabel = "CAR", description = "The car's file.")
    private String carFile;

    @Option(names = "--change", required = true, paramLabel = "CHANGE",
            description = "Adjuster, direction and how many of the car's own steps, 1 by default.")
    private String change;

    @Option(names = "--speed", paramLabel = "SPEED",
            description = "Speed in the corner with its unit; 110 km/h by default, or what the radius allows.")
    private String speed;

    @Option(names = "--radius", paramLabel = "RADIUS",
            description = "Radius of the turn with its unit. With a speed, the car is held to that very turn.")
    private String radius;

    @Option(names = "--phase", defaultValue = "mid-corner", paramLabel = "PHASE",
            description = "entry (braking), mid-corner or exit (on the power).")
    private String phase;

    @Option(names = "--surface", defaultValue = "dry", paramLabel = "SURFACE", description = "dry, damp or wet.")
    private String surface;

    @Option(names = "--format", defaultValue = "text", paramLabel = "FORMAT",
            description = Format.WRITTEN)
    private Format format;

    @Option(names = "--manoeuvre", paramLabel = "NAME",
            description = "Show one manoeuvre of the car in motion over time instead: corner, lift-off, kerb, bumps, "
                + "step-steer, braking-in-a-turn, power-off or power-on.")
    private String manoeuvre;

    @Option(names = "--svg", paramLabel = "FILE",
            description = "Write the steer characteristic, or the manoeuvre, as a drawing, too.")
    private String svg;

    @Option(names = "--overwrite", description = "Write over the file of --svg if it is there.")
    private boolean overwrite;

    PredictCommand(Console console) {
        this.console = console;
    }

    /** A change and how far it goes. */
    private record Wanted(Change change, int steps) {
    }

    @Override
    public Integer call() throws IOException {
        NewFiles.check("--svg", svg, overwrite, console);
        Wanted wanted = wanted();
        CornerPhase part = phase();
        Optional<Double> metresPerSecond = quantity("--speed", speed, Unit.KILOMETRE_PER_HOUR, LEAST_SPEED, MOST_SPEED);
        Optional<Double> metres = quantity("--radius", radius, Unit.METRE, LEAST_RADIUS, MOST_RADIUS);
        Surface on = Word.find(Surface.class, surface).orElseThrow(() -> wrong("--surface", surface,
                Word.ids(Surface.class)));
        Car car = new CaseReader().readCar(console.path(carFile));
        CarModel before = CarModel.of(car, on).orElseThrow(() -> new ParameterException(spec.commandLine(),
                car.name() + ": there is no figure without wheelbase, mass and front-weight among its dimensions, or "
                + "with dimensions that do not make a car"));
        CarModel after = changed(before, wanted);
        String title = described(car, wanted);
        if (manoeuvre != null) {
            return show(new ProvingGround(before), after, car.name() + ": " + title,
                    metresPerSecond.orElse(MEDIUM));
        }
        Optional<PredictionReport> steady = CarModel.represents(wanted.change().adjuster())
                ? Optional.of(steady(car, before, after, wanted, part, metresPerSecond, metres)) : Optional.empty();
        if (svg != null && steady.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--svg: a steady corner does not show the "
                    + wanted.change().adjuster().spoken() + "; draw a --manoeuvre");
        }
        double held = steady.map(PredictionReport::speed).orElseGet(() -> metresPerSecond.orElse(MEDIUM));
        PhasesReport phases = new PhasesReport(new ProvingGround(before), after, held);
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

    private PredictionReport steady(Car car, CarModel before, CarModel after, Wanted wanted, CornerPhase part,
            Optional<Double> metresPerSecond, Optional<Double> metres) {
        Behaviour.Question question = question(before, part, metresPerSecond, metres);
        Behaviour from = Behaviour.of(before, question).orElseThrow(() -> unsteady("the car"));
        Behaviour to = Behaviour.of(after, question).orElseThrow(() -> unsteady("the car with the change made"));
        double held = question.near().speed();
        double along = question.near().longitudinal();
        return new PredictionReport(car.name(), described(car, wanted),
                new Prediction(wanted.change().adjuster(), part, from, to, before.lentBy()),
                Characteristic.of(before, part, held, along), Characteristic.of(after, part, held, along));
    }

    private Integer show(ProvingGround track, CarModel after, String title, double held) throws IOException {
        Exercise exercise = EXERCISES.stream().filter(it -> it.id().equals(manoeuvre)).findFirst()
                .orElseThrow(() -> wrong("--manoeuvre", manoeuvre, EXERCISES.stream().map(Exercise::id).toList()));
        ManoeuvreReport report = new ManoeuvreReport(title + String.format(Locale.ROOT, ", %s at %.0f km/h",
                exercise.id(), 3.6 * held), exercise, track.drive(track.car(), exercise, held),
                track.drive(after, exercise, held), track.radius(exercise, held));
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

    private Wanted wanted() {
        String[] words = change.trim().split("\\s+");
        Adjuster adjuster = Word.find(Adjuster.class, words[0])
                .orElseThrow(() -> wrong("--change", words[0], Word.ids(Adjuster.class)));
        List<String> ways = adjuster.directions().stream().map(Word::id).toList();
        if (words.length < 2 || words.length > 3) {
            throw new ParameterException(spec.commandLine(), "--change: say adjuster, direction and steps, like \""
                    + adjuster.id() + " " + ways.get(0) + " 1\"");
        }
        Direction direction = adjuster.directions().stream().filter(way -> way.is(words[1])).findFirst()
                .orElseThrow(() -> wrong("--change", words[1], ways));
        if (words.length == 3 && !words[2].matches("[1-9][0-9]?")) {
            throw new ParameterException(spec.commandLine(), "--change: steps are a whole number from 1 to "
                    + MOST_STEPS + ", not " + words[2]);
        }
        int steps = words.length == 3 ? Integer.parseInt(words[2]) : 1;
        if (steps > MOST_STEPS) {
            throw new ParameterException(spec.commandLine(), "--change: steps are a whole number from 1 to "
                    + MOST_STEPS + ", not " + words[2]);
        }
        return new Wanted(new Change(adjuster, direction), steps);
    }

    private CornerPhase phase() {
        return switch (phase) {
            case "entry" -> CornerPhase.ENTRY;
            case "mid-corner" -> CornerPhase.MID_CORNER;
            case "exit" -> CornerPhase.EXIT;
            default -> throw wrong("--phase", phase, PHASES);
        };
    }

    private Optional<Double> quantity(String option, String written, Unit unit, double least, double most) {
        if (written == null) {
            return Optional.empty();
        }
        Quantity quantity = Quantity.parse(written).filter(it -> it.unit().dimension() == unit.dimension())
                .orElseThrow(() -> new ParameterException(spec.commandLine(), option + ": \"" + written
                        + "\" should be " + unit.dimension().named() + ", like \"" + new Quantity(80, unit) + "\""));
        if (!(quantity.si() >= least && quantity.si() <= most)) {
            throw new ParameterException(spec.commandLine(), option + ": " + quantity + " is not between "
                    + Quantity.ofSi(least, unit).text(0) + " and " + Quantity.ofSi(most, unit).text(0));
        }
        return Optional.of(quantity.si());
    }

    private CarModel changed(CarModel before, Wanted wanted) {
        Adjuster adjuster = wanted.change().adjuster();
        Car car = before.car();
        Setting setting = car.setting(adjuster).orElseThrow(() -> wrong("--change", adjuster.id(),
                car.adjusters().keySet().stream().map(Word::id).toList()));
        int left = setting.stepsLeft(wanted.change().direction());
        if (left < wanted.steps()) {
            throw new ParameterException(spec.commandLine(), "--change: " + car.name() + " has only " + left
                    + " steps left that way from " + setting.now());
        }
        return before.withInMotion(wanted.change(), wanted.steps()).orElseThrow(() -> new ParameterException(
                spec.commandLine(), "--change: the " + adjuster.spoken() + " is not in the models, or the car's file "
                        + "does not say enough of it"));
    }

    private Behaviour.Question question(CarModel car, CornerPhase part, Optional<Double> metresPerSecond,
            Optional<Double> metres) {
        if (metres.isPresent()) {
            double turned = metresPerSecond.orElseGet(() -> Behaviour.Question.speedFor(car, part, metres.get()));
            return Behaviour.Question.inTurn(car, part, turned, metres.get())
                    .orElseThrow(() -> unsteady("the car"));
        }
        double fixed = metresPerSecond.orElse(MEDIUM);
        return Behaviour.Question.about(car, part, fixed).orElseThrow(() -> unsteady("the car"));
    }

    private ParameterException unsteady(String who) {
        return new ParameterException(spec.commandLine(), who + " cannot hold that turn at that speed; try a lower "
                + "--speed or a wider --radius");
    }

    private static String described(Car car, Wanted wanted) {
        Setting setting = car.setting(wanted.change().adjuster()).orElseThrow();
        return Words.change(wanted.change()) + " from " + setting.now().text(setting.decimals()) + " to "
                + setting.moved(wanted.change().direction(), wanted.steps()).text(setting.decimals());
    }

    private ParameterException wrong(String option, String said, List<String> known) {
        return new ParameterException(spec.commandLine(), option + ": \"" + said + "\" is not known here"
                + TypedWord.hint(said, known));
    }
}
