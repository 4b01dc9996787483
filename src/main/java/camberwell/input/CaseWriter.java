package camberwell.input;

import camberwell.car.BiasOf;
import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.files.WholeFiles;
import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import camberwell.run.Background;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Made;
import camberwell.run.Measured;
import camberwell.run.Pupil;
import camberwell.run.Report;
import camberwell.run.Stint;
import camberwell.run.Tried;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
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
            WholeFiles.write(file, text(run, file).getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new ProblemsException(Problem.unwritable(file.toString(), e));
        }
    }

    /** The text of a case that is to stand in {@code file}, which its paths start from. */
    public String text(Case run, Path file) {
        MapOf map = new MapOf(FlowStyle.BLOCK).put("title", text(run.title()));
        map.put("car", run.carFile().isPresent() ? text(relative(run.carFile().get(), file)) : car(run.car()));
        if (run.carFile().isPresent()) {
            run.car().simulated().ifPresent(simulator -> map.put("simulator", yes(simulator)));
        }
        map.put("run", sheet(run.driven().sheet()));
        background(run.background(), map);
        map.put("conditions", conditions(run.conditions()));
        MapOf setup = new MapOf(FlowStyle.BLOCK);
        run.setup().forEach((adjuster, quantity) -> setup.put(adjuster.id(), quantity(quantity)));
        map.put("setup", setup.node());
        Driven driven = run.driven();
        map.putList("changed", driven.changed(), CaseWriter::made, FlowStyle.BLOCK)
                .putList("laps", driven.laps(), lap -> plain(lap.text()), FlowStyle.FLOW);
        MapOf tyres = new MapOf(FlowStyle.BLOCK);
        run.tyres().forEach((wheel, reading) -> tyres.putEvenEmpty(wheel.id(), reading(reading)));
        map.put("tyres", tyres.node());
        run.heard().ifPresent(heard -> map.put("say", text(heard.said())));
        List<Report> heard = run.heard().stream().flatMap(it -> it.told().stream()).map(Report::of).toList();
        List<Report> reports = run.reports().stream().filter(report -> !heard.contains(report)).toList();
        map.putList("reports", reports, CaseWriter::report, FlowStyle.BLOCK).putWord("verdict", driven.verdict())
                .putList("judged", driven.judged(), CaseWriter::tried, FlowStyle.BLOCK)
                .putList("answered", run.talked().answered(), CaseWriter::text, FlowStyle.FLOW)
                .putList("tried", run.tried(), CaseWriter::tried, FlowStyle.BLOCK)
                .putList("earlier-runs", run.earlier(), earlier -> text(relative(earlier.source(), file)),
                        FlowStyle.BLOCK);
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
        car.simulated().ifPresent(simulator -> map.put("simulator", yes(simulator)));
        if (car.biasOf() != BiasOf.FORCE) {
            map.put("brake-bias-of", text(car.biasOf().id()));
        }
        return map.putWord("kind", car.kind())
                .putList("aids", car.aids().stream().sorted().toList(), aid -> text(aid.id()), FlowStyle.FLOW)
                .put("adjusters", adjusters.node()).put("tyres", tyres.node())
                .put("dimensions", dimensions.node()).node();
    }

    private static Node setting(Adjuster adjuster, Setting setting) {
        MapOf map = new MapOf(FlowStyle.FLOW).put("now", quantity(setting.now())).put("min", quantity(setting.min()))
                .put("max", quantity(setting.max())).put("step", quantity(setting.step()));
        boolean clicks = setting.now().unit() == Unit.POSITION && !adjuster.adjustment().countedEitherWay();
        if (clicks && !setting.largerIsSofter()) {
            map.put("larger-is", text(adjuster.directions().get(1).id()));
        }
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
        return map.put("hot-target", spec.hotTarget()).put("left-hot-target", spec.leftTarget())
                .put("right-hot-target", spec.rightTarget()).put("cold-minimum", spec.coldMinimum())
                .put("rim", spec.rim()).put("diameter", spec.diameter())
                .put("camber-per-kelvin", spec.camberPerKelvin()).node();
    }

    private static Node conditions(Conditions conditions) {
        MapOf map = new MapOf(FlowStyle.FLOW).putWord("surface", conditions.said())
                .put("air", conditions.air()).put("track", conditions.track())
                .put("cold-tyres", conditions.coldTyres()).put("altitude", conditions.altitude());
        return conditions.turns() == Turn.BOTH ? map.node() : map.put("turns", text(conditions.turns().id())).node();
    }

    private static Node reading(TyreReading reading) {
        return new MapOf(FlowStyle.FLOW).put("inner", reading.inner()).put("middle", reading.middle())
                .put("outer", reading.outer()).put("cold-pressure", reading.coldPressure())
                .put("hot-pressure", reading.hotPressure()).node();
    }

    /** What is read as well when nothing stands there is not put into anybody's mouth. */
    private static <W extends Word> Optional<W> unless(W taken, W word) {
        return word == taken ? Optional.empty() : Optional.of(word);
    }

    private static Node report(Report report) {
        boolean measured = report.measured().isPresent();
        MapOf map = new MapOf(measured ? FlowStyle.BLOCK : FlowStyle.FLOW).put("symptom", text(report.symptom().id()))
                .putWord("where", report.where()).putWord("phase", report.phase()).putWord("speed", report.speed())
                .putWord("severity", unless(Severity.CLEAR, report.severity()))
                .putWord("occurrence", unless(Occurrence.EVERY_LAP, report.occurrence()))
                .putWord("since", report.since()).putWord("turn", report.turn()).putWord("corner", report.corner());
        report.measured().ifPresent(how -> measured(how, map));
        return map.node();
    }

    private static void measured(Measured how, MapOf map) {
        map.put("measured", text(how.how())).put("certainty", number(how.certainty()));
        if (how.driver() > 0) {
            map.put("driver-share", number(how.driver()));
        }
        List<Node> places = new ArrayList<>();
        for (Measured.Place place : how.evidence()) {
            MapOf one = new MapOf(FlowStyle.FLOW);
            place.corner().ifPresent(corner -> one.put("corner", number(corner)));
            place.lap().ifPresent(lap -> one.put("lap", number(lap)));
            places.add(one.put("figure", number(place.figure())).put("reference", number(place.reference()))
                    .put("unit", text(place.unit())).node());
        }
        if (!places.isEmpty()) {
            map.put("evidence", list(places, FlowStyle.BLOCK));
        }
    }

    private static Node number(double number) {
        String text = BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
        return new ScalarNode(RESOLVER.resolve(NodeId.scalar, text, true), text, null, null, ScalarStyle.PLAIN);
    }

    private static Node yes(boolean so) {
        return new ScalarNode(Tag.BOOL, so ? "yes" : "no", null, null, ScalarStyle.PLAIN);
    }

    private static Node sheet(Driven.Sheet sheet) {
        MapOf map = new MapOf(FlowStyle.FLOW).putCount("number", sheet.number());
        sheet.date().ifPresent(date -> map.put("date", plain(date.toString())));
        sheet.driver().ifPresent(driver -> map.put("driver", text(driver)));
        sheet.track().ifPresent(track -> map.put("track", text(track)));
        sheet.tyreSet().ifPresent(set -> map.put("tyre-set", text(set)));
        return map.putYes("rebuilt", sheet.rebuilt()).node();
    }

    private static void background(Background background, MapOf map) {
        Stint stint = background.stint();
        map.put("stint", new MapOf(FlowStyle.FLOW).putWord("compound", stint.compound())
                .putCount("tyre-laps", stint.tyreLaps()).putCount("laps", stint.laps()).put("fuel", stint.fuel()).node());
        Pupil pupil = background.pupil();
        MapOf driver = new MapOf(FlowStyle.FLOW);
        pupil.name().ifPresent(name -> driver.put("name", text(name)));
        map.put("driver", driver.putWord("level", pupil.level())
                .putList("wants", pupil.wants(), wish -> text(wish.id()), FlowStyle.FLOW).node());
        MapOf answers = new MapOf(FlowStyle.FLOW);
        background.answers().forEach((question, answer) -> answers.put(question, text(answer)));
        map.put("answers", answers.node());
        background.comment().ifPresent(comment -> map.put("comment", text(comment)));
    }

    private static Node made(Made made) {
        return new MapOf(FlowStyle.FLOW).put("change", text(made.change().id())).putMoved(made.moved()).node();
    }

    private static Node tried(Tried tried) {
        Tried.On on = tried.on();
        Tried.Trial trial = tried.trial();
        MapOf map = new MapOf(FlowStyle.FLOW).put("change", text(tried.change().id())).putMoved(tried.moved())
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

        MapOf putMoved(Tried.Moved moved) {
            return putCount("steps", moved.steps()).put("from", moved.from()).put("to", moved.to())
                    .putYes("put-back", moved.putBack());
        }

        /** Enters a list; an empty one is left out. */
        <T> MapOf putList(String key, List<T> items, Function<T, Node> writer, FlowStyle style) {
            return items.isEmpty() ? this : put(key, list(items.stream().map(writer).toList(), style));
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
