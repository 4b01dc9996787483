package camberwell.input;

import camberwell.run.Conditions;
import camberwell.units.Measure;
import camberwell.units.Unit;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Turn;
import camberwell.yaml.Fields;

/** Reads {@code conditions} of a case: the road, the weather and which way the corners go. */
final class ConditionsReader {

    /** Salted water is ice by then, °C. */
    private static final double ICE = -5;

    private ConditionsReader() {
    }

    /** The conditions of a run; what is odd about them is noted. */
    static Conditions read(Fields fields) {
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
}
