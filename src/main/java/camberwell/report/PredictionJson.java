package camberwell.report;

import camberwell.car.Dimension;
import camberwell.advice.Predicted;
import camberwell.model.Prediction;
import camberwell.physics.AxleEnd;
import camberwell.physics.Equilibrium;
import camberwell.physics.VehicleModel;
import camberwell.physics.Wheels;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** A prediction of the handling model as JSON: units in the keys, inner and outer as in any turn. */
final class PredictionJson {

    private PredictionJson() {
    }

    /** Writes it as one object, or null where there is none. */
    static void write(Optional<Predicted> predicted, JsonGenerator json) throws IOException {
        if (predicted.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        fields(predicted.get().prediction(), json);
        json.writeObjectFieldStart("claim");
        json.writeFieldName("against");
        if (predicted.get().claimed().isPresent()) {
            json.writeString(predicted.get().claimed().get().symptom().id());
        } else {
            json.writeNull();
        }
        json.writeFieldName("agrees");
        if (predicted.get().agrees().isPresent()) {
            json.writeBoolean(predicted.get().agrees().get());
        } else {
            json.writeNull();
        }
        json.writeEndObject();
        json.writeEndObject();
    }

    /** The fields of a prediction, into an object that is open. */
    static void fields(Prediction prediction, JsonGenerator json) throws IOException {
        Equilibrium before = prediction.before().near();
        json.writeStringField("phase", Predicted.phase(prediction.phase()));
        number(json, "speed-kmh", 3.6 * before.point().speed(), 1);
        number(json, "lateral-acceleration-g", before.point().lateral() / VehicleModel.GRAVITY, 3);
        number(json, "longitudinal-acceleration-g", before.point().longitudinal() / VehicleModel.GRAVITY, 3);
        json.writeStringField("towards", switch (prediction.way()) {
            case UNDERSTEER -> "understeer";
            case OVERSTEER -> "oversteer";
            case NEITHER -> "neither";
            case UNCLEAR -> "unclear";
        });
        number(json, "limit-balance-before-percent", 100 * prediction.before().limitBalance(), 2);
        number(json, "limit-balance-after-percent", 100 * prediction.after().limitBalance(), 2);
        number(json, "understeer-gradient-before-deg-per-g", prediction.before().understeerGradient(), 3);
        number(json, "understeer-gradient-after-deg-per-g", prediction.after().understeerGradient(), 3);
        Wheels load = prediction.loadShift();
        json.writeObjectFieldStart("tyre-load-change-newton");
        number(json, "front-inner", load.frontLeft(), 0);
        number(json, "front-outer", load.frontRight(), 0);
        number(json, "rear-inner", load.rearLeft(), 0);
        number(json, "rear-outer", load.rearRight(), 0);
        json.writeEndObject();
        json.writeObjectFieldStart("scrub-power-change-watt");
        number(json, "front", prediction.scrubShift(AxleEnd.FRONT), 0);
        number(json, "rear", prediction.scrubShift(AxleEnd.REAR), 0);
        json.writeEndObject();
        number(json, "toe-drag-change-newton", prediction.toeDragShift(), 2);
        if (prediction.lent().isPresent()) {
            json.writeStringField("dimensions-in-part-of", prediction.lent().get().by());
            json.writeArrayFieldStart("dimensions-lent");
            for (Dimension dimension : prediction.lent().get().what()) {
                json.writeString(dimension.id());
            }
            json.writeEndArray();
        }
    }

    static void number(JsonGenerator json, String key, double value, int decimals) throws IOException {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).stripTrailingZeros();
        json.writeFieldName(key);
        json.writeNumber(rounded.signum() == 0 ? "0" : rounded.toPlainString());
    }
}
