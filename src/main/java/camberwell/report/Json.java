package camberwell.report;

import camberwell.units.Quantity;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Optional;

/** How numbers stand in JSON. */
final class Json {

    private static final int DIGITS = 6;

    private Json() {
    }

    /** A number without the dust of binary fractions: at most six digits after the point. */
    static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeFieldName(key);
        BigDecimal tidy = BigDecimal.valueOf(number).setScale(DIGITS, RoundingMode.HALF_UP).stripTrailingZeros();
        json.writeNumber(tidy.signum() == 0 ? "0" : tidy.toPlainString());
    }

    /** A quantity as an object of its value and its unit, or null. */
    static void quantity(JsonGenerator json, String key, Optional<Quantity> quantity) throws IOException {
        if (quantity.isEmpty()) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        number(json, "value", quantity.get().value());
        json.writeStringField("unit", quantity.get().unit().symbol());
        json.writeEndObject();
    }
}
