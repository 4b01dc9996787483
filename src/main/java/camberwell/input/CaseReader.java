package camberwell.input;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.problem.Siblings;
import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.run.Talked;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Wheel;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import camberwell.problem.Text;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * Reads case and car files. Every method throws an {@link ProblemsException} with all that is wrong with the file, and
 * with the files that it points to, when it cannot be used. A car's file is read once in the life of a reader. Safe for
 * use by several threads.
 */
public final class CaseReader {

    /** Cars that were read without a word against them: many cases share a few cars. */
    private final Map<Path, Car> cars = new ConcurrentHashMap<>();

    private final Function<String, Heard> ear;
    /** Where it reads; anywhere if empty. */
    private final List<Path> bounds;

    /** One that leaves a driver's own words alone: for whoever wants the car or the tyres only. */
    public CaseReader() {
        this(null);
    }

    /** @param ear what understands a driver's own words */
    public CaseReader(Function<String, Heard> ear) {
        this(ear, List.of());
    }

    private CaseReader(Function<String, Heard> ear, List<Path> bounds) {
        this.ear = ear;
        this.bounds = List.copyOf(bounds);
    }

    /**
     * One for the cases of a stranger: it reads what lies in {@code folders}, and says of nothing else what is in it or
     * whether it is there.
     */
    public CaseReader within(List<Path> folders) {
        return new CaseReader(ear, folders);
    }

    /** Reads a case and the car that it points to. */
    public CaseFile read(Path file) {
        return read(file, List.of());
    }

    /** Reads a case with some of its values replaced; problems with those are told at their place. */
    public CaseFile read(Path file, List<Substitution> substitutions) {
        Problems problems = new Problems();
        if (!Bounds.hold(bounds, file)) {
            throw new ProblemsException(Problem.of(file.toString(), Bounds.OUTSIDE, Optional.empty()));
        }
        Optional<Document> document = Document.load(file, problems);
        return finish(document, folderOf(file), substitutions, problems);
    }

    /**
     * Reads a case from a stream, to its end.
     *
     * @param name how problems name it, {@code -} for standard input
     * @param baseDir the folder that its paths start from
     */
    public CaseFile read(String name, InputStream in, Path baseDir) {
        return read(name, in, baseDir, List.of());
    }

    /** Reads a case from a stream with some of its values replaced. */
    public CaseFile read(String name, InputStream in, Path baseDir, List<Substitution> substitutions) {
        Problems problems = new Problems();
        try {
            return finish(Document.load(name, in, problems), baseDir, substitutions, problems);
        } catch (IOException e) {
            throw new ProblemsException(Problem.unreadable(name, e));
        }
    }

    /** Reads a car's file. */
    public Car readCar(Path file) {
        Problems problems = new Problems();
        Optional<Car> car = Document.load(file, problems).flatMap(it -> CarReader.read(it.root(), it));
        problems.warningsOrFail();
        return car.orElseThrow();
    }

    /** A date as a case has it, {@code 2026-05-03} or {@code 2026-05-03T10:20}; empty when it is none. */
    public static Optional<LocalDateTime> date(String text) {
        return DrivenReader.date(text);
    }

    private CaseFile finish(Optional<Document> document, Path folder, List<Substitution> substitutions,
            Problems problems) {
        Optional<Case> run = document.flatMap(it -> new OneCase(it, folder, substitutions, problems, cars, ear, bounds)
                .read(true));
        List<Problem> warnings = problems.warningsOrFail();
        return new CaseFile(run.orElseThrow(), warnings);
    }

    private static Path folderOf(Path file) {
        return Optional.ofNullable(file.getParent()).orElse(Path.of(""));
    }

    /** The reading of one case file. */
    private record OneCase(Document in, Path folder, List<Substitution> substitutions, Problems problems,
            Map<Path, Car> cars, Function<String, Heard> ear, List<Path> bounds) {

        /**
         * The case; empty, with the problems noted, when it has no car.
         *
         * @param withEarlier whether its earlier runs are read; those of an earlier run are not
         */
        Optional<Case> read(boolean withEarlier) {
            boolean carInside = entry(in.root(), "car") instanceof MappingNode;
            substitutions.stream().filter(it -> carInside || !it.inCar()).forEach(it -> it.apply(in.root(), in));
            Fields fields = new Fields(in.root(), in, "key");
            fields.require("car");
            Optional<String> title = fields.text("title");
            Optional<Node> carNode = fields.node("car");
            Optional<String> carFile = carNode.filter(node -> !(node instanceof MappingNode))
                    .flatMap(node -> path(node, "car"));
            Optional<Car> car = carNode.flatMap(node -> car(node, carFile));
            Conditions conditions = fields.map("conditions", "key").map(OneCase::conditions)
                    .orElse(Conditions.UNKNOWN);
            Map<Adjuster, Quantity> setup = fields.map("setup", "adjuster").map(it -> setup(it, car))
                    .orElse(Map.of());
            Map<Wheel, TyreReading> tyres = fields.map("tyres", "wheel").map(OneCase::tyres).orElse(Map.of());
            List<Report> reports = reports(fields.list("reports"));
            List<Case> earlier = new ArrayList<>();
            for (Node node : fields.list("earlier-runs")) {
                if (withEarlier) {
                    earlierRun(node, car).ifPresent(earlier::add);
                }
            }
            List<String> answered = new ArrayList<>();
            for (Node node : fields.list("answered")) {
                if (node instanceof ScalarNode word) {
                    answered.add(word.getValue());
                } else {
                    in.error(node, "what was answered should be words, not " + Document.kind(node));
                }
            }
            Optional<Boolean> simulator = CarReader.simulator(fields);
            Optional<Heard> heard = heard(fields);
            if (conditions.said().isPresent() && heard.flatMap(Heard::surface).filter(it -> it != conditions.surface())
                    .isPresent()) {
                fields.error("say", "the driver speaks of a " + heard.get().surface().get().id() + " track, and the surface "
                        + "under conditions is " + conditions.surface().id());
            }
            List<Tried> tried = new ArrayList<>();
            for (Node node : fields.list("tried")) {
                Fields.map(node, "what was tried", in, "key").flatMap(it -> TriedReader.read(it, car))
                        .ifPresent(tried::add);
            }
            Driven driven = new DrivenReader(in, car).read(fields);
            Background background = BackgroundReader.read(fields);
            fields.done();
            if (withEarlier && !fields.has("tyres") && !fields.has("reports") && !fields.has("say")) {
                in.warn(in.root(), "neither tyres nor reports, so there is nothing to advise on");
            }
            Optional<Case> run = car.map(it -> new Case(title.orElseGet(this::titleFromName), in.name(), it.with(setup),
                    conditions, tyres, reports, earlier, carFile, setup, tried, driven, Talked.NOTHING, background));
            if (!answered.isEmpty()) {
                run = run.map(it -> it.withAnswered(answered));
            }
            if (simulator.isPresent()) {
                run = run.map(it -> it.withCar(it.car().withSimulator(simulator.get())));
            }
            return heard.isPresent() ? run.map(it -> it.withHeard(heard.get())) : run;
        }

        private Optional<Heard> heard(Fields fields) {
            Optional<String> said = fields.text("say");
            return ear == null ? Optional.empty() : said.map(ear);
        }

        private static Node entry(MappingNode map, String key) {
            return map.getValue().stream()
                    .filter(it -> it.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key))
                    .map(it -> it.getValueNode()).findFirst().orElse(null);
        }

        private String titleFromName() {
            return in.name().equals("-") ? "Untitled run"
                    : Path.of(in.name()).getFileName().toString().replaceFirst("\\.ya?ml$", "");
        }

        private Optional<Car> car(Node node, Optional<String> file) {
            if (node instanceof MappingNode map) {
                return CarReader.read(map, in);
            }
            return file.map(Path::of).flatMap(path -> {
                boolean asWritten = substitutions.stream().noneMatch(Substitution::inCar);
                if (asWritten && cars.containsKey(path)) {
                    return Optional.of(cars.get(path));
                }
                int before = problems.count();
                Optional<Car> car = Document.load(path, problems).flatMap(document -> {
                    substitutions.stream().filter(Substitution::inCar)
                            .forEach(it -> it.fromCar().apply(document.root(), document));
                    return CarReader.read(document.root(), document);
                });
                if (asWritten && problems.count() == before) {
                    car.ifPresent(clean -> cars.put(path, clean));
                }
                return car;
            });
        }

        /** The path of a file that this one points to, as seen from here. */
        private Optional<String> path(Node node, String what) {
            String written = node instanceof ScalarNode scalar ? scalar.getValue() : "";
            if (written.isBlank()) {
                in.error(node, "the " + what + " should be the path of a file, not " + Document.kind(node));
                return Optional.empty();
            }
            try {
                Path path = folder.resolve(written).normalize();
                if (!Bounds.hold(bounds, path)) {
                    in.error(node, Text.quoted(written) + " " + Bounds.OUTSIDE);
                    return Optional.empty();
                }
                if (Files.isDirectory(path)) {
                    in.error(node, Text.quoted(written) + " is a folder, not a file");
                    return Optional.empty();
                }
                if (Files.exists(path)) {
                    return Optional.of(path.toString());
                }
                in.error(node, "there is no file " + Text.quoted(written), Siblings.nearestFile(path)
                        .map(near -> Path.of(written).resolveSibling(Path.of(near).getFileName()).toString()));
            } catch (InvalidPathException e) {
                in.error(node, Text.quoted(written) + " cannot be the path of a file");
            }
            return Optional.empty();
        }

        /** Salted water is ice by then, °C. */
        private static final double ICE = -5;

        private static Conditions conditions(Fields fields) {
            Conditions conditions = new Conditions(fields.word("surface", Surface.class),
                    fields.quantity("air", Measure.AIR), fields.quantity("track", Measure.TRACK),
                    fields.quantity("cold-tyres", Measure.COLD_TYRES), fields.quantity("altitude", Measure.ALTITUDE),
                    fields.word("turns", Turn.class).orElse(Turn.BOTH));
            if (conditions.surface() != Surface.DRY && conditions.track().filter(it -> it.in(Unit.CELSIUS) < ICE).isPresent()) {
                fields.warn("track", "a track at " + conditions.track().get() + " that is " + conditions.surface().id()
                        + " is ice; is the sign right?");
            }
            fields.done();
            return conditions;
        }

        private static Map<Adjuster, Quantity> setup(Fields fields, Optional<Car> car) {
            Map<Adjuster, Quantity> setup = new EnumMap<>(Adjuster.class);
            for (Adjuster adjuster : Adjuster.values()) {
                fields.quantity(adjuster.id(), measure(adjuster, car))
                        .filter(quantity -> car.isEmpty() || fits(adjuster, quantity, car.get(), fields))
                        .ifPresent(quantity -> setup.put(adjuster, quantity));
            }
            fields.done();
            return setup;
        }

        private static Measure measure(Adjuster adjuster, Optional<Car> car) {
            return car.flatMap(it -> it.setting(adjuster)).filter(setting -> setting.now().unit() == Unit.POSITION)
                    .isPresent() ? adjuster.clicks() : adjuster.measure();
        }

        private static boolean fits(Adjuster adjuster, Quantity quantity, Car car, Fields fields) {
            Setting setting = car.adjusters().get(adjuster);
            if (setting == null) {
                List<String> has = car.adjusters().keySet().stream().map(Adjuster::id).toList();
                fields.errorAtKey(adjuster.id(), "the " + car.name() + " has no " + adjuster.spoken() + " to set"
                        + (has.isEmpty() ? "" : "; it has " + Text.allOf(has)));
            } else if (setting.now().unit().dimension() != quantity.unit().dimension()) {
                fields.error(adjuster.id(), "the " + car.name() + " has its " + adjuster.spoken() + " in the unit of "
                        + setting.now() + ", not of " + quantity);
            } else if (!CarReader.within(setting, quantity)) {
                fields.error(adjuster.id(), "the " + adjuster.spoken() + " of the " + car.name() + " goes from "
                        + setting.min() + " to " + setting.max() + ", so it cannot be at " + quantity);
            } else {
                return true;
            }
            return false;
        }

        private static Map<Wheel, TyreReading> tyres(Fields wheels) {
            Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
            for (Wheel wheel : Wheel.values()) {
                wheels.map(wheel.id(), "key").ifPresent(fields -> tyres.put(wheel, tyre(fields)));
            }
            wheels.done();
            return tyres;
        }

        private static TyreReading tyre(Fields fields) {
            Optional<Quantity> cold = fields.quantity("cold-pressure", Measure.PRESSURE);
            Optional<Quantity> hot = fields.quantity("hot-pressure", Measure.PRESSURE);
            if (cold.isPresent() && hot.isPresent() && cold.get().compareTo(hot.get()) > 0) {
                fields.warn("cold-pressure", "the cold pressure of " + cold.get() + " is above the hot one of "
                        + hot.get() + ", and tyres gain pressure in a run; does the tyre lose air, or are the two swapped?");
            }
            TyreReading reading = new TyreReading(fields.quantity("inner", Measure.TREAD),
                    fields.quantity("middle", Measure.TREAD), fields.quantity("outer", Measure.TREAD), cold, hot);
            fields.done();
            return reading;
        }

        private List<Report> reports(List<Node> nodes) {
            List<Report> reports = new ArrayList<>();
            for (Node node : nodes) {
                Fields.map(node, "a report", in, "key").flatMap(this::report).ifPresent(reports::add);
            }
            return reports;
        }

        private Optional<Report> report(Fields fields) {
            fields.require("symptom");
            Optional<Symptom> symptom = fields.word("symptom", Symptom.class);
            Optional<Place> where = fields.word("where", Place.class);
            Optional<Phase> phase = fields.word("phase", Phase.class);
            Optional<CornerSpeed> speed = fields.word("speed", CornerSpeed.class);
            Severity severity = fields.word("severity", Severity.class).orElse(Severity.CLEAR);
            Occurrence occurrence = fields.word("occurrence", Occurrence.class).orElse(Occurrence.EVERY_LAP);
            Optional<Since> since = fields.word("since", Since.class);
            Optional<Turn> turn = fields.word("turn", Turn.class);
            Optional<CornerKind> corner = fields.word("corner", CornerKind.class);
            Optional<Measured> measured = MeasuredReader.read(fields);
            fields.done();
            return symptom.map(it -> new Report(it, where, phase, speed, severity, occurrence, since, turn, measured,
                    corner));
        }

        private Optional<Case> earlierRun(Node node, Optional<Car> car) {
            Optional<Case> earlier = path(node, "earlier run").map(Path::of)
                    .flatMap(path -> Document.load(path, problems)
                            .flatMap(it -> new OneCase(it, folderOf(path), List.of(), problems, cars, ear,
                                    bounds).read(false)));
            if (earlier.isPresent() && car.isPresent() && !earlier.get().car().name().equals(car.get().name())) {
                in.error(node, "this is a run of the " + earlier.get().car().name() + ", not of the "
                        + car.get().name());
                return Optional.empty();
            }
            return earlier;
        }
    }
}
