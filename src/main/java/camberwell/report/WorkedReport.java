package camberwell.report;

import camberwell.advice.Worked;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;

/** Worked figures, for people and for programs: each with the line that computed it. */
public final class WorkedReport {

    private WorkedReport() {
    }

    /** One figure a point, its computation below it. */
    public static void write(List<Worked> figures, Page page) {
        for (Worked figure : figures) {
            page.paragraph(0, figure.name() + ": " + figure.text());
            page.paragraph(4, figure.computation());
        }
    }

    /** The figures as fields of the object that is open: value, unit and computation under each figure's id. */
    public static void write(List<Worked> figures, JsonGenerator json) throws IOException {
        for (Worked figure : figures) {
            json.writeObjectFieldStart(figure.id());
            Json.number(json, "value", figure.value());
            json.writeStringField("unit", figure.unit());
            json.writeStringField("computation", figure.computation());
            json.writeEndObject();
        }
    }
}
