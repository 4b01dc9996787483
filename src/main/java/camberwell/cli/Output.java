package camberwell.cli;

import camberwell.advice.Worked;
import camberwell.report.Page;
import camberwell.report.WorkedReport;
import camberwell.yaml.YamlText;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;

/** Writes what a command found, in the format that was asked for. */
final class Output {

    private static final JsonFactory JSON = new JsonFactory();

    private Output() {
    }

    interface Writing {
        void to(JsonGenerator json) throws IOException;
    }

    /** What {@code writing} writes: as indented JSON, on one line for {@code jsonl}, or as YAML. */
    static void json(Console console, Format format, Writing writing) throws IOException {
        console.out().println(text(format, writing));
    }

    /** The same as a text, without the end of its last line. */
    static String text(Format format, Writing writing) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = format == Format.YAML ? YamlText.document(text) : JSON.createGenerator(text)) {
            if (format == Format.JSON) {
                json.setPrettyPrinter(new DefaultPrettyPrinter());
            }
            writing.to(json);
        }
        return text.toString().stripTrailing();
    }

    /** A tree whose maps are objects and whose lists are arrays. */
    static void tree(Console console, Format format, Object tree) throws IOException {
        json(console, format, json -> new ObjectMapper().writeValue(json, tree));
    }

    /** What is text on {@code page}, or else {@code tree}. */
    static void either(Console console, Format format, Page page, Object tree) throws IOException {
        if (format == Format.TEXT) {
            console.out().print(page);
        } else {
            tree(console, format, tree);
        }
    }

    /** Figures, each with its computation. */
    static void figures(Console console, Format format, List<Worked> figures) throws IOException {
        if (format == Format.TEXT) {
            Page page = new Page(console.width(), console.styled());
            WorkedReport.write(figures, page);
            console.out().print(page);
            return;
        }
        json(console, format, json -> {
            json.writeStartObject();
            WorkedReport.write(figures, json);
            json.writeEndObject();
        });
    }
}
