package camberwell.yaml;

import camberwell.problem.Text;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Range;
import camberwell.units.Unit;
import camberwell.vocabulary.Nearest;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;

/** Reads quantities, and says what is wrong with those that will not do. */
public final class Quantities {

    private static final Pattern NUMBER = Pattern.compile("([-+\u2212]?[0-9]*\\.?[0-9]+)\\s*(\\S+)");

    private Quantities() {
    }

    /** The quantity that a node holds; empty, with the problem noted, when it does not hold such a one. */
    public static Optional<Quantity> read(Measure measure, Node node, Document in) {
        String noun = measure.noun();
        if (!(node instanceof ScalarNode scalar)) {
            in.error(node, "should be " + noun + ", not " + Document.kind(node));
            return Optional.empty();
        }
        String text = scalar.getValue().trim();
        Optional<Quantity> parsed = Quantity.parse(text);
        if (parsed.isEmpty()) {
            noQuantity(text, measure, node, in);
            return Optional.empty();
        }
        Quantity quantity = parsed.get();
        Optional<Range> range = measure.range(quantity.unit());
        if (range.isEmpty()) {
            in.error(node, quantity.unit() == Unit.POSITION ? noun + " needs a unit: " + accepted(measure)
                    : Text.quoted(text) + " will not do: " + noun + " is written " + how(measure));
        } else if (!range.get().holds(quantity)) {
            in.error(node, Text.quoted(text) + " is out of range: " + noun + " lies between " + range.get());
        } else {
            return parsed;
        }
        return Optional.empty();
    }

    private static void noQuantity(String text, Measure measure, Node node, Document in) {
        String noun = measure.noun();
        if (text.matches("[-+\u2212]?[0-9]*,[0-9]+(\\s*[^\\s,]*)?")) {
            in.error(node, Text.quoted(text) + " has a decimal comma", Optional.of(text.replace(',', '.')));
            return;
        }
        Matcher number = NUMBER.matcher(text);
        if (!number.matches()) {
            in.error(node, Text.quoted(text) + " is no number: " + noun + " is written " + how(measure));
            return;
        }
        String unit = number.group(2);
        Optional<String> meant = Nearest.to(unit, allSymbols(measure));
        in.error(node, meant.isPresent() ? "there is no unit " + Text.quoted(unit)
                : Text.quoted(text) + " will not do: " + noun + " is written " + how(measure),
                meant.map(symbol -> number.group(1) + " " + symbol));
    }

    private static List<String> allSymbols(Measure measure) {
        return measure.units().stream().flatMap(unit -> unit.symbols().stream())
                .filter(symbol -> !symbol.isEmpty()).toList();
    }

    private static String accepted(Measure measure) {
        return Text.oneOf(measure.units().stream().map(Unit::symbol)
                .filter(symbol -> !symbol.isEmpty()).toList());
    }

    private static String how(Measure measure) {
        boolean bare = measure.range(Unit.POSITION).isPresent();
        String units = accepted(measure);
        return units.isEmpty() ? "as a bare number" : "in " + units + (bare ? ", or as a bare number" : "");
    }
}
