package camberwell.input;

import camberwell.run.Measured;
import camberwell.yaml.Fields;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads of a report that it was measured, and how. */
final class MeasuredReader {

    private MeasuredReader() {
    }

    /** Empty where nothing says that it was measured. */
    static Optional<Measured> read(Fields fields) {
        Optional<String> how = fields.text("measured");
        Optional<Double> certainty = fields.number("certainty", 0, 1);
        Optional<Double> driver = fields.number("driver-share", 0, 1);
        List<Measured.Place> places = new ArrayList<>();
        fields.maps("evidence", "key").forEach(place -> places(place).ifPresent(places::add));
        if (how.isEmpty() && certainty.isEmpty() && places.isEmpty()) {
            return Optional.empty();
        }
        if (certainty.isEmpty() && !fields.has("certainty")) {
            fields.errorAtKey(how.isPresent() ? "measured" : "evidence",
                    "a report that was measured needs its \"certainty\", from 0 to 1");
        }
        return certainty.isEmpty() ? Optional.empty() : Optional.of(new Measured(certainty.get(), driver.orElse(0.0),
                how.orElse("measured"), places));
    }

    private static Optional<Measured.Place> places(Fields fields) {
        Optional<Double> corner = fields.number("corner", 0, 1000);
        Optional<Double> lap = fields.number("lap", -1, 100_000);
        Optional<Double> figure = fields.number("figure", -1e9, 1e9);
        Optional<Double> reference = fields.number("reference", -1e9, 1e9);
        fields.require("figure");
        Optional<String> unit = fields.text("unit");
        fields.done();
        return figure.isEmpty() ? Optional.empty() : Optional.of(new Measured.Place(whole(corner), whole(lap),
                figure.get(), reference.orElse(0.0), unit.orElse("")));
    }

    private static OptionalInt whole(Optional<Double> number) {
        return number.isPresent() ? OptionalInt.of((int) Math.round(number.get())) : OptionalInt.empty();
    }
}
