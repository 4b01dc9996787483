package camberwell.input;

import camberwell.car.Car;
import camberwell.problem.Siblings;
import camberwell.problem.Text;
import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.run.Talked;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.saying.Heard;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Wheel;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * The reading of one case file.
 *
 * @param in the file
 * @param folder that its paths start from
 * @param substitutions values to read instead of those that stand there
 * @param cars that were read without a word against them
 * @param ear what understands a driver's own words; none if null, and then nobody asks what is not asked for either
 * @param questions the follow-up questions that are asked, each with its answers
 * @param bounds where it reads; anywhere if empty
 */
record OneCase(Document in, Path folder, List<Substitution> substitutions, Problems problems, Map<Path, Car> cars,
        Function<String, Heard> ear, Map<String, Set<String>> questions, List<Path> bounds) {

    /** More than anybody looks back on; each is a file to be read. */
    private static final int MOST_EARLIER = 100;

    /**
     * The case; empty, with the problems noted, when it has no car.
     *
     * @param withEarlier whether its earlier runs are read; those of an earlier run are not
     */
    Optional<Case> read(boolean withEarlier) {
        boolean carInside = entry(in.root(), "car") instanceof MappingNode;
        for (Substitution substitution : substitutions) {
            if (carInside || !substitution.inCar()) {
                substitution.apply(in.root(), in);
            }
        }
        Fields fields = new Fields(in.root(), in, "key");
        fields.require("car");
        Optional<String> title = fields.text("title");
        Optional<Node> carNode = fields.node("car");
        Optional<String> carFile = carNode.isEmpty() || carNode.get() instanceof MappingNode ? Optional.empty()
                : path(carNode.get(), "car");
        Optional<Car> car = carNode.isPresent() && carNode.get() instanceof MappingNode map ? CarReader.read(map, in)
                : carFile.isPresent() ? carOf(Path.of(carFile.get())) : Optional.empty();
        Conditions conditions = fields.map("conditions", "key").map(ConditionsReader::read)
                .orElse(Conditions.UNKNOWN);
        Map<Adjuster, Quantity> setup = fields.map("setup", "adjuster").map(it -> SetupReader.read(it, car))
                .orElse(Map.of());
        Map<Wheel, TyreReading> tyres = fields.map("tyres", "wheel").map(TyresReader::read).orElse(Map.of());
        List<Report> reports = Report.once(reports(fields.list("reports")));
        List<Node> earlierNodes = fields.list("earlier-runs");
        List<Case> earlier = withEarlier ? earlierRuns(earlierNodes, car) : List.of();
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
        Background background = BackgroundReader.read(fields, ear == null ? Optional.empty() : Optional.of(questions));
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
        for (NodeTuple entry : map.getValue()) {
            if (entry.getKeyNode() instanceof ScalarNode name && name.getValue().equals(key)) {
                return entry.getValueNode();
            }
        }
        return null;
    }

    private String titleFromName() {
        return in.name().equals("-") ? "Untitled run"
                : Path.of(in.name()).getFileName().toString().replaceFirst("\\.ya?ml$", "");
    }

    private Optional<Car> carOf(Path file) {
        boolean asWritten = substitutions.stream().noneMatch(Substitution::inCar);
        if (asWritten && cars.containsKey(file)) {
            return Optional.of(cars.get(file));
        }
        int before = problems.count();
        Optional<Document> document = Document.load(file, problems);
        if (document.isEmpty()) {
            return Optional.empty();
        }
        for (Substitution substitution : substitutions) {
            if (substitution.inCar()) {
                substitution.fromCar().apply(document.get().root(), document.get());
            }
        }
        Optional<Car> car = CarReader.read(document.get().root(), document.get());
        if (asWritten && car.isPresent() && problems.count() == before) {
            cars.put(file, car.get());
        }
        return car;
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

    private List<Report> reports(List<Node> nodes) {
        List<Report> reports = new ArrayList<>();
        for (Node node : nodes) {
            Fields.map(node, "a report", in, "key").flatMap(ReportReader::read).ifPresent(reports::add);
        }
        return reports;
    }

    private List<Case> earlierRuns(List<Node> nodes, Optional<Car> car) {
        if (nodes.size() > MOST_EARLIER) {
            in.error(nodes.get(MOST_EARLIER), "at most " + MOST_EARLIER + " earlier runs are read, and these are " + nodes.size()
                    + "; leave the oldest out");
            return List.of();
        }
        Map<String, Case> earlier = new LinkedHashMap<>();
        for (Node node : nodes) {
            earlierRun(node, car).filter(run -> earlier.putIfAbsent(run.source(), run) != null).ifPresent(again ->
                    in.error(node, "this run stands here a second time; leave it out"));
        }
        return List.copyOf(earlier.values());
    }

    private Optional<Case> earlierRun(Node node, Optional<Car> car) {
        Optional<Case> earlier = path(node, "earlier run").map(Path::of)
                .flatMap(path -> Document.load(path, problems)
                        .flatMap(it -> new OneCase(it, CaseReader.folderOf(path), List.of(), problems, cars, ear,
                                questions, bounds).read(false)));
        if (earlier.isPresent() && car.isPresent() && !earlier.get().car().name().equals(car.get().name())) {
            in.error(node, "this is a run of the " + earlier.get().car().name() + ", not of the "
                    + car.get().name());
            return Optional.empty();
        }
        return earlier;
    }
}
