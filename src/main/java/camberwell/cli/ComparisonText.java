package camberwell.cli;

import camberwell.advice.AdviceComparison;
import camberwell.advice.RankedChange;
import camberwell.knowledge.Notes;
import camberwell.report.Page;
import camberwell.report.Words;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** Writes what other rules do to the advice on a case. */
final class ComparisonText {

    private ComparisonText() {
    }

    static void write(AdviceComparison comparison, Notes notes, Page page) {
        if (comparison.same()) {
            page.paragraph(2, "no difference");
        }
        for (AdviceComparison.ChangeDifference difference : comparison.changes()) {
            page.point(2, Words.sentence(Words.change(difference.change())) + " " + says(difference));
        }
        comparison.driving().forEach(note -> page.point(2, "For the driver: \"" + notes.get(note.note()).title() + "\" "
                + (note.appeared() ? "appeared" : "vanished")));
        comparison.cautions().forEach(note -> page.point(2, "Caution: \"" + notes.get(note.note()).title() + "\" "
                + (note.appeared() ? "appeared" : "vanished")));
        comparison.texts().forEach(text -> page.point(2, text.of() + ", " + text.part() + ": is now \"" + text.after()
                + "\", was \"" + text.before() + "\""));
    }

    private static String says(AdviceComparison.ChangeDifference difference) {
        Optional<RankedChange> before = difference.before();
        Optional<RankedChange> after = difference.after();
        if (before.isEmpty()) {
            return "appeared: now number " + after.orElseThrow().rank() + ", " + Words.size(after.get());
        }
        if (after.isEmpty()) {
            return "vanished: was number " + before.get().rank()
                    + difference.withheld().map(reason -> "; now held back: " + reason).orElse("");
        }
        String moved = before.get().rank() == after.get().rank() ? ""
                : "moved from number " + before.get().rank() + " to " + after.get().rank();
        String sized = before.get().size().goesAsFarAs(after.get().size()) ? ""
                : "is now " + Words.size(after.get()) + ", was " + Words.size(before.get());
        return moved + (moved.isEmpty() || sized.isEmpty() ? "" : "; ") + sized;
    }

    static void write(AdviceComparison comparison, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("changes");
        for (AdviceComparison.ChangeDifference difference : comparison.changes()) {
            json.writeStartObject();
            json.writeStringField("adjuster", difference.change().adjuster().id());
            json.writeStringField("direction", difference.change().direction().id());
            side(json, "before", difference.before());
            side(json, "after", difference.after());
            if (difference.withheld().isPresent()) {
                json.writeStringField("withheld", difference.withheld().get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        notes(json, "driving", comparison.driving());
        notes(json, "cautions", comparison.cautions());
        json.writeArrayFieldStart("texts");
        for (AdviceComparison.TextDifference text : comparison.texts()) {
            json.writeStartObject();
            json.writeStringField("of", text.of());
            json.writeStringField("part", text.part());
            json.writeStringField("before", text.before());
            json.writeStringField("after", text.after());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void side(JsonGenerator json, String name, Optional<RankedChange> side) throws IOException {
        if (side.isPresent()) {
            json.writeObjectFieldStart(name);
            json.writeNumberField("rank", side.get().rank());
            json.writeStringField("size", Words.size(side.get()));
            json.writeEndObject();
        }
    }

    private static void notes(JsonGenerator json, String name, List<AdviceComparison.NoteDifference> notes)
            throws IOException {
        json.writeArrayFieldStart(name);
        for (AdviceComparison.NoteDifference note : notes) {
            json.writeStartObject();
            json.writeStringField("note", note.note());
            json.writeStringField("difference", note.appeared() ? "appeared" : "vanished");
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
