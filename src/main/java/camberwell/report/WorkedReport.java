package camberwell.report;

import camberwell.advice.Worked;
import camberwell.vocabulary.Wheel;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;

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

    /** The figures of a case, tyre by tyre. */
    public static void write(String title, Map<Wheel, List<Worked>> tyres, Page page) {
        page.heading(title);
        tyres.forEach((wheel, figures) -> {
            page.heading(wheel.id());
            write(figures, page);
        });
    }

    /** The figures of a case as an object: its title, and under each tyre its figures. */
    public static void write(String title, Map<Wheel, List<Worked>> tyres, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("case", title);
        json.writeObjectFieldStart("tyres");
        for (Map.Entry<Wheel, List<Worked>> tyre : tyres.entrySet()) {
            json.writeObjectFieldStart(tyre.getKey().id());
            write(tyre.getValue(), json);
            json.writeEndObject();
        }
        json.writeEndObject();
        json.writeEndObject();
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
