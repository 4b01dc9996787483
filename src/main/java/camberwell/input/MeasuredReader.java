package camberwell.input;

import camberwell.run.Measured;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.yaml.snakeyaml.nodes.Node;

/** Reads of a report that it was measured, and how. */
final class MeasuredReader {

    private MeasuredReader() {
    }

    /** Empty where nothing says that it was measured. */
    static Optional<Measured> read(Fields fields, Document in) {
        Optional<String> how = fields.text("measured");
        OptionalDouble certainty = number(fields, "certainty", 0, 1);
        OptionalDouble driver = number(fields, "driver-share", 0, 1);
        List<Measured.Place> places = new ArrayList<>();
        for (Node node : fields.list("evidence")) {
            Fields.map(node, "evidence", in, "key").ifPresent(place -> places(place).ifPresent(places::add));
        }
        if (how.isEmpty() && certainty.isEmpty() && places.isEmpty()) {
            return Optional.empty();
        }
        if (certainty.isEmpty() && !fields.has("certainty")) {
            fields.errorAtKey(how.isPresent() ? "measured" : "evidence",
                    "a report that was measured needs its \"certainty\", from 0 to 1");
        }
        return certainty.isEmpty() ? Optional.empty() : Optional.of(new Measured(certainty.getAsDouble(), driver.orElse(0),
                how.orElse("measured"), places));
    }

    private static Optional<Measured.Place> places(Fields fields) {
        OptionalDouble corner = number(fields, "corner", 0, 1000);
        OptionalDouble lap = number(fields, "lap", -1, 100_000);
        OptionalDouble figure = number(fields, "figure", -1e9, 1e9);
        OptionalDouble reference = number(fields, "reference", -1e9, 1e9);
        fields.require("figure");
        Optional<String> unit = fields.text("unit");
        fields.done();
        return figure.isEmpty() ? Optional.empty() : Optional.of(new Measured.Place(whole(corner), whole(lap),
                figure.getAsDouble(), reference.orElse(0), unit.orElse("")));
    }

    private static OptionalInt whole(OptionalDouble number) {
        return number.isPresent() ? OptionalInt.of((int) Math.round(number.getAsDouble())) : OptionalInt.empty();
    }

    private static OptionalDouble number(Fields fields, String key, double least, double most) {
        Optional<String> text = fields.text(key);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        try {
            double value = Double.parseDouble(text.get());
            if (value >= least && value <= most) {
                return OptionalDouble.of(value);
            }
        } catch (NumberFormatException e) {
            // Told below.
        }
        fields.error(key, Text.quoted(text.get()) + " will not do: \"" + key + "\" is a number"
                + (most == 1 ? " from 0 to 1" : ""));
        return OptionalDouble.empty();
    }
}
