package camberwell.cli;

import camberwell.advice.Worked;
import camberwell.report.Page;
import camberwell.report.WorkedReport;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.util.List;

/** Writes what a command found, in the format that was asked for. */
final class Output {

    private Output() {
    }

    interface Writing {
        void to(JsonGenerator json) throws IOException;
    }

    /** JSON that {@code writing} writes: indented, or on one line for {@code jsonl}. */
    static void json(Console console, Format format, Writing writing) throws IOException {
        try (JsonGenerator json = new JsonFactory().createGenerator(console.out())) {
            json.disable(JsonGenerator.Feature.AUTO_CLOSE_TARGET);
            if (format == Format.JSON) {
                json.setPrettyPrinter(new DefaultPrettyPrinter());
            }
            writing.to(json);
        }
        console.out().println();
    }

    /** JSON of a tree whose maps are objects and whose lists are arrays. */
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
