package camberwell.input;

import camberwell.run.TyreReading;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.vocabulary.Wheel;
import camberwell.yaml.Fields;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/** Reads {@code tyres} of a case. */
final class TyresReader {

    private TyresReader() {
    }

    /** What was read of each tyre. */
    static Map<Wheel, TyreReading> read(Fields wheels) {
        Map<Wheel, TyreReading> tyres = new EnumMap<>(Wheel.class);
        for (Wheel wheel : Wheel.values()) {
            Optional<Fields> fields = wheels.map(wheel.id(), "key");
            if (fields.isPresent()) {
                tyres.put(wheel, tyre(fields.get()));
            }
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
}
