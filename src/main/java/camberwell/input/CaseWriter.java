package camberwell.input;

import camberwell.car.BiasOf;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.NodeTuple;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Writes a case so that {@link CaseReader} reads an equal one. A car that came from a file is pointed to, with the
 * case's own setup beside it; any other is written into the case.
 */
public final class CaseWriter {

    private static final Resolver RESOLVER = new Resolver();

    /**
     * Writes a case to a file, which is replaced as a whole or not at all.
     *
     * @throws ProblemsException if it cannot be written
     */
    public void write(Case run, Path file) {
        try {
            Path target = Files.exists(file) ? file.toRealPath() : file.toAbsolutePath();
            Path draft = target.resolveSibling("." + target.getFileName() + "." + ProcessHandle.current().pid());
            try {
                try (BufferedWriter out = Files.newBufferedWriter(draft, StandardOpenOption.CREATE_NEW,
                        StandardOpenOption.WRITE)) {
                    out.write(text(run, file));
                }
                move(draft, target);
            } finally {
                Files.deleteIfExists(draft);
            }
        } catch (IOException e) {
            throw new ProblemsException(Problem.of(file.toString(), "cannot be written: " + e.getMessage(),
                    Optional.empty()));
        }
    }

    private static void move(Path draft, Path target) throws IOException {
        try {
            Files.move(draft, target, StandardCopyOption.ATOMIC_MOVE);
        } catch (AtomicMoveNotSupportedException e) {
            Files.move(draft, target, StandardCopyOption.REPLACE_EXISTING);
        }
    }

    /** The text of a case that is to stand in {@code file}, which its paths start from. */
    public String text(Case run, Path file) {
        MapOf map = new MapOf(FlowStyle.BLOCK).put("title", text(run.title()));
        map.put("car", run.carFile().isPresent() ? text(relative(run.carFile().get(), file)) : car(run.car()));
        map.put("conditions", conditions(run.conditions()));
        MapOf setup = new MapOf(FlowStyle.BLOCK);
        run.setup().forEach((adjuster, quantity) -> setup.put(adjuster.id(), quantity(quantity)));
        map.put("setup", setup.node());
        MapOf tyres = new MapOf(FlowStyle.BLOCK);
        run.tyres().forEach((wheel, reading) -> tyres.putEvenEmpty(wheel.id(), reading(reading)));
        map.put("tyres", tyres.node());
        if (!run.reports().isEmpty()) {
            map.put("reports", list(run.reports().stream().map(CaseWriter::report).toList(), FlowStyle.BLOCK));
        }
        if (!run.tried().isEmpty()) {
            map.put("tried", list(run.tried().stream().map(CaseWriter::tried).toList(), FlowStyle.BLOCK));
        }
        if (!run.earlier().isEmpty()) {
            map.put("earlier-runs", list(run.earlier().stream()
                    .map(earlier -> text(relative(earlier.source(), file))).toList(), FlowStyle.BLOCK));
        }
        return serialized(map.node());
    }

    private static String serialized(Node node) {
        DumperOptions options = new DumperOptions();
        options.setWidth(120);
        options.setSplitLines(false);
        options.setIndent(2);
        StringWriter out = new StringWriter();
        new Yaml(options).serialize(node, out);
        return out.toString();
    }

    private static String relative(String path, Path file) {
        Path absolute = Path.of(path).toAbsolutePath().normalize();
        try {
            Path folder = file.toAbsolutePath().normalize().getParent();
            return folder.relativize(absolute).toString().replace('\\', '/');
        } catch (IllegalArgumentException e) {
            // On another drive: there is no way from here to there.
            return absolute.toString();
        }
    }

    private static Node car(Car car) {
        MapOf adjusters = new MapOf(FlowStyle.BLOCK);
        car.adjusters().forEach((adjuster, setting) -> adjusters.put(adjuster.id(), setting(adjuster, setting)));
        MapOf tyres = new MapOf(FlowStyle.BLOCK);
        car.tyres().forEach((axle, spec) -> tyres.putEvenEmpty(axle.id(), tyre(spec)));
        MapOf dimensions = new MapOf(FlowStyle.BLOCK);
        car.dimensions().forEach((dimension, value) -> dimensions.put(dimension.id(), quantity(value)));
        MapOf map = new MapOf(FlowStyle.BLOCK).put("name", text(car.name())).put("drive",
                text(car.drive().map(Word::id).orElse(CarReader.UNKNOWN)));
        if (car.generic()) {
            map.put("generic", plain("true"));
        }
        if (car.simulator()) {
            map.put("simulator", text("yes"));
        }
        if (car.biasOf() != BiasOf.FORCE) {
            map.put("brake-bias-of", text(car.biasOf().id()));
        }
        return map.put("adjusters", adjusters.node()).put("tyres", tyres.node())
                .put("dimensions", dimensions.node()).node();
    }

    private static Node setting(Adjuster adjuster, Setting setting) {
        MapOf map = new MapOf(FlowStyle.FLOW).put("now", quantity(setting.now())).put("min", quantity(setting.min()))
                .put("max", quantity(setting.max())).put("step", quantity(setting.step()));
        if (setting.largerIsSofter()) {
            map.put("larger-is", text(adjuster.directions().get(0).id()));
        }
        return map.node();
    }

    private static Node tyre(TyreSpec spec) {
        MapOf map = new MapOf(FlowStyle.FLOW);
        if (spec.windowLow().isPresent() && spec.windowHigh().isPresent()) {
            map.put("window", list(List.of(quantity(spec.windowLow().get()), quantity(spec.windowHigh().get())),
                    FlowStyle.FLOW));
        }
        return map.put("hot-target", spec.hotTarget()).put("cold-minimum", spec.coldMinimum())
                .put("rim", spec.rim()).put("diameter", spec.diameter())
                .put("camber-per-kelvin", spec.camberPerKelvin()).node();
    }

    private static Node conditions(Conditions conditions) {
        MapOf map = new MapOf(FlowStyle.FLOW).put("surface", text(conditions.surface().id()))
                .put("air", conditions.air()).put("track", conditions.track())
                .put("cold-tyres", conditions.coldTyres()).put("altitude", conditions.altitude());
        return conditions.turns() == Turn.BOTH ? map.node() : map.put("turns", text(conditions.turns().id())).node();
    }

    private static Node reading(TyreReading reading) {
        return new MapOf(FlowStyle.FLOW).put("inner", reading.inner()).put("middle", reading.middle())
                .put("outer", reading.outer()).put("cold-pressure", reading.coldPressure())
                .put("hot-pressure", reading.hotPressure()).node();
    }

    private static Node report(Report report) {
        return new MapOf(FlowStyle.FLOW).put("symptom", text(report.symptom().id())).putWord("where", report.where())
                .putWord("phase", report.phase()).putWord("speed", report.speed())
                .put("severity", text(report.severity().id())).put("occurrence", text(report.occurrence().id()))
                .putWord("since", report.since()).putWord("turn", report.turn()).node();
    }

    private static Node tried(Tried tried) {
        Tried.Moved moved = tried.moved();
        Tried.On on = tried.on();
        Tried.Trial trial = tried.trial();
        MapOf map = new MapOf(FlowStyle.FLOW).put("change", text(tried.change().id())).putCount("steps", moved.steps())
                .put("from", moved.from()).put("to", moved.to()).putYes("put-back", moved.putBack())
                .put("outcome", text(tried.outcome().id())).putWord("on", on.symptom()).putWord("where", on.where())
                .putWord("phase", on.phase()).putWord("speed", on.speed()).putCount("run", trial.run())
                .putCount("runs-ago", trial.runsAgo()).putCount("laps", trial.laps());
        return map.putCount("together", Optional.of(trial.together()).filter(count -> count > 1))
                .putWord("judged-by", trial.witness()).putWord("surface", trial.surface())
                .putYes("elsewhere", trial.elsewhere()).node();
    }

    private static Node text(String text) {
        return new ScalarNode(Tag.STR, text, null, null, ScalarStyle.PLAIN);
    }

    /** All digits of the number, so that the same one is read back. */
    private static Node quantity(Quantity quantity) {
        return plain((BigDecimal.valueOf(quantity.value()).stripTrailingZeros().toPlainString() + " "
                + quantity.unit().symbol()).strip());
    }

    /** Without quotes, also where YAML takes a word like {@code on} or {@code yes} for something else than text. */
    private static Node plain(String text) {
        return new ScalarNode(RESOLVER.resolve(NodeId.scalar, text, true), text, null, null, ScalarStyle.PLAIN);
    }

    private static Node list(List<Node> items, FlowStyle style) {
        return new SequenceNode(Tag.SEQ, items, style);
    }

    /** A map that is written in the order in which it is filled. */
    private record MapOf(FlowStyle style, List<NodeTuple> entries) {

        MapOf(FlowStyle style) {
            this(style, new ArrayList<>());
        }

        /** Enters a node; a map with nothing in it is left out. */
        MapOf put(String key, Node value) {
            return value instanceof MappingNode map && map.getValue().isEmpty() ? this : putEvenEmpty(key, value);
        }

        MapOf putEvenEmpty(String key, Node value) {
            entries.add(new NodeTuple(plain(key), value));
            return this;
        }

        MapOf put(String key, Optional<Quantity> value) {
            value.ifPresent(quantity -> put(key, quantity(quantity)));
            return this;
        }

        MapOf putWord(String key, Optional<? extends Word> word) {
            word.ifPresent(it -> put(key, text(it.id())));
            return this;
        }

        MapOf putCount(String key, Optional<Integer> count) {
            count.ifPresent(it -> put(key, plain(it.toString())));
            return this;
        }

        /** What is so; what is not is left out. */
        MapOf putYes(String key, boolean yes) {
            return yes ? put(key, plain("yes")) : this;
        }

        Node node() {
            return new MappingNode(Tag.MAP, entries, style);
        }
    }
}
