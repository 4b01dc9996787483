package camberwell.input;

import camberwell.car.Dimension;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/**
 * What a quantity in a file may be: its units, and the range that is plausible in each. The ranges are wide, there to
 * catch a slipped decimal point or a wrong unit: common practice, no source.
 *
 * @param noun what it is, with its article
 * @param ranges one for each dimension that it may be written in
 */
record Measure(String noun, List<Range> ranges) {

    /** From {@code least} to {@code most} in the first of {@code units}; the others are accepted as well. */
    record Range(List<Unit> units, double least, double most) {

        private boolean holds(Quantity quantity) {
            double value = quantity.in(units.get(0));
            double hair = 1e-9 * Math.max(1, Math.abs(value));
            return value >= least - hair && value <= most + hair;
        }

        private String text() {
            return new Quantity(least, units.get(0)) + " and " + new Quantity(most, units.get(0));
        }
    }

    static final Measure TREAD = in("a tread temperature", Unit.CELSIUS, -20, 200);
    static final Measure AIR = in("an air temperature", Unit.CELSIUS, -30, 60);
    static final Measure TRACK = in("a track temperature", Unit.CELSIUS, -20, 80);
    /** Tyres from blankets are "cold" at some 80 °C when their pressure is set. */
    static final Measure COLD_TYRES = in("the temperature of cold tyres", Unit.CELSIUS, -30, 120);
    static final Measure ALTITUDE =
            new Measure("an altitude", List.of(new Range(List.of(Unit.METRE), -500, 5000)));
    static final Measure PRESSURE = in("a pressure", Unit.BAR, 0.3, 6);
    static final Measure RIM = in("a rim diameter", Unit.INCH, 6, 26);
    static final Measure DIAMETER = in("a tyre diameter", Unit.MILLIMETRE, 250, 1200);
    static final Measure CAMBER_PER_KELVIN = in("camber for one kelvin", Unit.DEGREE, 0.001, 0.5);

    private static final Pattern NUMBER = Pattern.compile("([-+\u2212]?[0-9]*\\.?[0-9]+)\\s*(\\S+)");
    private static final Range POSITIONS = new Range(List.of(Unit.POSITION), -1000, 10_000);

    /** All units of the dimension of {@code unit}. */
    private static Measure in(String noun, Unit unit, double least, double most) {
        return new Measure(noun, List.of(range(least, most, unit)));
    }

    private static Range range(double least, double most, Unit unit) {
        return new Range(Stream.concat(Stream.of(unit), unit.dimension().units().stream()).distinct().toList(),
                least, most);
    }

    /** What a dimension of the car may be. */
    static Measure of(Dimension dimension) {
        return in("the " + dimension.spoken(), dimension.unit(), dimension.least(), dimension.most());
    }

    /** What a setting of an adjuster may be. */
    static Measure of(Adjuster adjuster) {
        return switch (adjuster.kind()) {
            case TOE -> new Measure("a toe setting", List.of(range(-3, 3, Unit.DEGREE),
                    new Range(List.of(Unit.MILLIMETRE), -25, 25)));
            case CAMBER -> in("a camber", Unit.DEGREE, -8, 3);
            case CASTER -> in("a caster", Unit.DEGREE, -2, 15);
            case PRESSURE -> PRESSURE;
            case STIFFNESS -> adjuster == Adjuster.FRONT_SPRINGS || adjuster == Adjuster.REAR_SPRINGS
                    ? new Measure("a spring", List.of(range(5, 600, Unit.NEWTON_PER_MILLIMETRE), POSITIONS))
                    : new Measure("a setting of the " + adjuster.spoken(), List.of(POSITIONS));
            case HEIGHT -> new Measure("a ride height",
                    List.of(new Range(List.of(Unit.MILLIMETRE, Unit.INCH), 5, 500)));
            case WING -> new Measure("a wing setting", List.of(range(-20, 60, Unit.DEGREE), POSITIONS));
            case BRAKE_BIAS -> in("a brake bias", Unit.PERCENT, 20, 90);
            case DIFFERENTIAL -> adjuster == Adjuster.DIFFERENTIAL_PRELOAD
                    ? new Measure("a preload", List.of(range(0, 1000, Unit.NEWTON_METRE), POSITIONS))
                    : new Measure("a setting of the " + adjuster.spoken(), List.of(POSITIONS));
        };
    }

    /** The same units with any value: for steps, which are differences. */
    Measure anyValue(String newNoun) {
        double all = Double.MAX_VALUE;
        return new Measure(newNoun, ranges.stream().map(range -> new Range(range.units, -all, all)).toList());
    }

    /** The quantity that a node holds; empty, with the problem noted, when it does not hold such a one. */
    Optional<Quantity> read(Node node, Document in) {
        if (!(node instanceof ScalarNode scalar)) {
            in.error(node, "should be " + noun + ", not " + Document.kind(node));
            return Optional.empty();
        }
        String text = scalar.getValue().trim();
        Optional<Quantity> parsed = Quantity.parse(text);
        if (parsed.isEmpty()) {
            noQuantity(text, node, in);
            return Optional.empty();
        }
        Quantity quantity = parsed.get();
        Optional<Range> range = ranges.stream().filter(one -> one.units.contains(quantity.unit())).findFirst();
        if (range.isEmpty()) {
            in.error(node, quantity.unit() == Unit.POSITION ? noun + " needs a unit: " + accepted()
                    : Text.quoted(text) + " will not do: " + noun + " is written " + how());
        } else if (!range.get().holds(quantity)) {
            in.error(node, Text.quoted(text) + " is out of range: " + noun + " lies between " + range.get().text());
        } else {
            return parsed;
        }
        return Optional.empty();
    }

    private void noQuantity(String text, Node node, Document in) {
        if (text.matches("[-+\u2212]?[0-9]*,[0-9]+(\\s*[^\\s,]*)?")) {
            in.error(node, Text.quoted(text) + " has a decimal comma", Optional.of(text.replace(',', '.')));
            return;
        }
        Matcher number = NUMBER.matcher(text);
        if (!number.matches()) {
            in.error(node, Text.quoted(text) + " is no number: " + noun + " is written " + how());
            return;
        }
        String unit = number.group(2);
        Optional<String> meant = Nearest.to(unit, allSymbols());
        in.error(node, meant.isPresent() ? "there is no unit " + Text.quoted(unit)
                : Text.quoted(text) + " will not do: " + noun + " is written " + how(),
                meant.map(symbol -> number.group(1) + " " + symbol));
    }

    private List<String> allSymbols() {
        return ranges.stream().flatMap(range -> range.units.stream()).flatMap(unit -> unit.symbols().stream())
                .filter(symbol -> !symbol.isEmpty()).toList();
    }

    private String accepted() {
        return Text.oneOf(ranges.stream().flatMap(range -> range.units.stream()).map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty()).toList());
    }

    private String how() {
        boolean bare = ranges.stream().anyMatch(range -> range.units.contains(Unit.POSITION));
        String units = accepted();
        return units.isEmpty() ? "as a bare number" : "in " + units + (bare ? ", or as a bare number" : "");
    }
}
