package camberwell.input;

import camberwell.car.BiasOf;
import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.car.Setting;
import camberwell.car.TyreSpec;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Aid;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.CarKind;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Quantities;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** Reads the keys of a car. */
final class CarReader {

    /** In the place of a class of car's driven wheels. */
    static final String UNKNOWN = "unknown";
    private static final String LARGER_IS = "larger-is";
    private static final double HAIR = 1e-9;
    /** A spring of 300 N/mm by the newton and a metre of height by the millimetre have fewer. */
    private static final int MOST_STEPS = 2000;

    private CarReader() {
    }

    /** The car, as far as it can be made out; empty, with the problems noted, when it lacks a name or its drive. */
    static Optional<Car> read(MappingNode map, Document in) {
        Fields fields = new Fields(map, in, "key");
        fields.require("name");
        fields.require("drive");
        Optional<String> name = fields.text("name");
        boolean generic = fields.choice("generic", List.of("true", "false")).filter("true"::equals).isPresent();
        Optional<Boolean> simulator = simulator(fields);
        Optional<CarKind> kind = fields.word("kind", CarKind.class);
        Set<Aid> aids = fields.choices("aids", Word.ids(Aid.class)).stream().map(aid -> Word.of(Aid.class, aid))
                .collect(Collectors.toSet());
        BiasOf biasOf = fields.word("brake-bias-of", BiasOf.class).orElse(BiasOf.FORCE);
        // Of a class of car nobody may know even that: the debrief saves such a case.
        boolean unknown = generic && fields.has("drive", UNKNOWN);
        Optional<Drive> drive = unknown ? Optional.empty() : fields.word("drive", Drive.class);
        Map<Adjuster, Setting> adjusters = fields.map("adjusters", "adjuster")
                .map(CarReader::adjusters).orElse(Map.of());
        Map<Axle, TyreSpec> tyres = fields.map("tyres", "axle").map(axles -> tyres(axles, in)).orElse(Map.of());
        Map<Dimension, Quantity> dimensions = fields.map("dimensions", "dimension")
                .map(CarReader::dimensions).orElse(Map.of());
        fields.done();
        return name.isEmpty() || drive.isEmpty() && !unknown ? Optional.empty()
                : Optional.of(new Car(name.get(), drive, adjusters, tyres, dimensions, generic, simulator, biasOf,
                        kind, aids));
    }

    /** Whether it is driven in a simulator, if it says so. */
    static Optional<Boolean> simulator(Fields fields) {
        return fields.choice("simulator", List.of("yes", "no", "true", "false"))
                .map(said -> said.equals("yes") || said.equals("true"));
    }

    private static Map<Adjuster, Setting> adjusters(Fields fields) {
        Map<Adjuster, Setting> adjusters = new EnumMap<>(Adjuster.class);
        for (Adjuster adjuster : Adjuster.values()) {
            Optional<Fields> said = fields.map(adjuster.id(), "key");
            Optional<Setting> setting = said.isEmpty() ? Optional.empty() : setting(adjuster, said.get());
            if (setting.isPresent()) {
                adjusters.put(adjuster, setting.get());
            }
        }
        for (Wheel wheel : Wheel.values()) {
            Adjuster both = Adjuster.camberOf(wheel.axle());
            if (adjusters.containsKey(both) && adjusters.remove(Adjuster.camberOf(wheel)) != null) {
                fields.errorAtKey(Adjuster.camberOf(wheel).id(), "\"" + both.id() + "\" sets the camber of that wheel already; "
                        + "list the axle's or the wheels', not both");
            }
        }
        fields.done();
        return adjusters;
    }

    private static Optional<Setting> setting(Adjuster adjuster, Fields fields) {
        for (String key : List.of("now", "min", "max", "step")) {
            fields.require(key);
        }
        boolean clicks = !adjuster.adjustment().countedEitherWay() && fields.has(LARGER_IS)
                && fields.bare("now");
        Measure measure = clicks ? adjuster.clicks() : adjuster.measure();
        Optional<Quantity> now = fields.quantity("now", measure);
        Optional<Quantity> min = like(now, "min", measure, fields);
        Optional<Quantity> max = like(now, "max", measure, fields);
        Optional<Quantity> step = like(now, "step", measure.anyValue("a step of " + adjuster.spoken()), fields);
        boolean largerIsSofter = now.isPresent() && ramp(adjuster, now.get()) ? largerLocksLess(fields)
                : largerLessens(adjuster, clicks, fields);
        fields.done();
        if (step.isPresent() && step.get().value() <= 0) {
            fields.error("step", "a step should be more than zero");
            return Optional.empty();
        }
        if (now.isEmpty() || min.isEmpty() || max.isEmpty() || step.isEmpty()) {
            return Optional.empty();
        }
        if (min.get().value() > max.get().value()) {
            fields.error("min", "min " + min.get() + " is above max " + max.get());
            return Optional.empty();
        }
        Setting setting = new Setting(now.get(), min.get(), max.get(), step.get(), largerIsSofter);
        if (!within(setting, now.get())) {
            fields.error("now", "now " + now.get() + " is not between min " + min.get() + " and max " + max.get());
            return Optional.empty();
        }
        return countable(setting, fields) ? Optional.of(setting) : Optional.empty();
    }

    /** Whether the steps between the ends are as many as somebody may count; a slip of the unit makes millions, or none. */
    private static boolean countable(Setting setting, Fields fields) {
        double travel = setting.max().value() - setting.min().value();
        double step = setting.step().value();
        if (travel > 0 && step > travel + HAIR) {
            fields.error("step", "a step of " + setting.step() + " is more than the whole way from " + setting.min() + " to "
                    + setting.max());
            return false;
        }
        if (travel / step > MOST_STEPS) {
            fields.error("step", "so small a step makes more than " + MOST_STEPS + " of them from "
                    + setting.min() + " to " + setting.max() + "; is its unit right?");
            return false;
        }
        return true;
    }

    /** Whether a setting lies in the adjuster's range; the unit must be of the same dimension. */
    static boolean within(Setting setting, Quantity quantity) {
        double value = quantity.in(setting.now().unit());
        return value >= setting.min().value() - HAIR && value <= setting.max().value() + HAIR;
    }

    private static Optional<Quantity> like(Optional<Quantity> now, String key, Measure measure, Fields fields) {
        Optional<Quantity> quantity = fields.quantity(key, measure);
        if (now.isEmpty() || quantity.isEmpty()) {
            return Optional.empty();
        }
        if (now.get().unit().dimension() != quantity.get().unit().dimension()) {
            fields.error(key, "\"" + key + "\" should be in the unit of \"now\", which is " + now.get());
            return Optional.empty();
        }
        return Optional.of(quantity.get().to(now.get().unit()));
    }

    /** Whether a differential's setting is the angle of its ramps, of which the smaller one locks more. */
    private static boolean ramp(Adjuster adjuster, Quantity now) {
        return now.unit() == Unit.DEGREE && adjuster.directions().contains(Direction.MORE)
                && adjuster.adjustment().countedEitherWay() && adjuster.id().startsWith("differential");
    }

    private static boolean largerLocksLess(Fields fields) {
        if (fields.node(LARGER_IS).isPresent() && !fields.has(LARGER_IS, Direction.LESS.id())) {
            fields.errorAtKey(LARGER_IS, "the larger angle of a ramp always locks less; leave \"larger-is\" out");
        }
        return true;
    }

    /** The signs of angles, pressures and heights are fixed; clicks and positions are counted either way. */
    private static boolean largerLessens(Adjuster adjuster, boolean clicks, Fields fields) {
        List<Direction> directions = adjuster.directions();
        if (clicks || adjuster.adjustment().countedEitherWay()) {
            return fields.choice(LARGER_IS, directions.stream().map(Direction::id).toList())
                    .filter(directions.get(0)::is).isPresent();
        }
        if (fields.node(LARGER_IS).isPresent()) {
            fields.errorAtKey(LARGER_IS, "the larger number of the " + adjuster.spoken() + " is always "
                    + directions.get(1).spoken() + "; leave \"larger-is\" out, unless it is counted in clicks");
        }
        return false;
    }

    private static Map<Axle, TyreSpec> tyres(Fields axles, Document in) {
        Map<Axle, TyreSpec> tyres = new EnumMap<>(Axle.class);
        for (Axle axle : Axle.values()) {
            Optional<Fields> fields = axles.map(axle.id(), "key");
            if (fields.isPresent()) {
                tyres.put(axle, tyre(fields.get(), in));
            }
        }
        axles.done();
        return tyres;
    }

    private static TyreSpec tyre(Fields fields, Document in) {
        Optional<Node> ends = fields.node("window");
        List<Quantity> window = ends.isEmpty() ? List.of() : window(ends.get(), in);
        TyreSpec spec = new TyreSpec(window.isEmpty() ? Optional.empty() : Optional.of(window.get(0)),
                window.isEmpty() ? Optional.empty() : Optional.of(window.get(1)),
                fields.quantity("hot-target", Measure.PRESSURE), fields.quantity("left-hot-target", Measure.PRESSURE),
                fields.quantity("right-hot-target", Measure.PRESSURE), fields.quantity("cold-minimum", Measure.PRESSURE),
                fields.quantity("rim", Measure.RIM), fields.quantity("diameter", Measure.DIAMETER),
                fields.quantity("camber-per-kelvin", Measure.CAMBER_PER_KELVIN));
        aboveMinimum("hot-target", spec.hotTarget(), spec, fields);
        aboveMinimum("left-hot-target", spec.leftTarget(), spec, fields);
        aboveMinimum("right-hot-target", spec.rightTarget(), spec, fields);
        if (spec.rim().isPresent() && spec.diameter().isPresent() && spec.rim().get().compareTo(spec.diameter().get()) >= 0) {
            fields.error("rim", "a rim of " + spec.rim().get() + " does not go into a tyre of " + spec.diameter().get());
        }
        fields.done();
        return spec;
    }

    private static void aboveMinimum(String key, Optional<Quantity> target, TyreSpec spec, Fields fields) {
        if (target.isPresent() && spec.coldMinimum().isPresent() && target.get().compareTo(spec.coldMinimum().get()) < 0) {
            fields.error(key, "the hot target of " + target.get() + " is below the cold minimum of " + spec.coldMinimum().get());
        }
    }

    private static List<Quantity> window(Node node, Document in) {
        if (!(node instanceof SequenceNode list) || list.getValue().size() != 2) {
            in.error(node, "the window should be two temperatures, like [80 °C, 95 °C], not "
                    + (node instanceof SequenceNode list
                            ? list.getValue().size() + "; decimals are written with a point" : Document.kind(node)));
            return List.of();
        }
        List<Quantity> ends = new ArrayList<>();
        for (Node end : list.getValue()) {
            Quantities.read(Measure.TREAD, end, in).ifPresent(ends::add);
        }
        if (ends.size() == 2 && ends.get(0).compareTo(ends.get(1)) >= 0) {
            in.error(node, "the window should begin with its lower end");
        }
        return ends.size() == 2 ? ends : List.of();
    }

    private static Map<Dimension, Quantity> dimensions(Fields fields) {
        Map<Dimension, Quantity> dimensions = new EnumMap<>(Dimension.class);
        for (Dimension dimension : Dimension.values()) {
            Optional<Quantity> said = fields.quantity(dimension.id(), dimension.measure());
            if (said.isPresent()) {
                dimensions.put(dimension, said.get());
            }
        }
        fields.done();
        return dimensions;
    }
}
