package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.advice.Complaint;
import camberwell.advice.Experience;
import camberwell.advice.Learned;
import camberwell.advice.Predictions;
import camberwell.advice.RankedChange;
import camberwell.advice.Score;
import camberwell.advice.Size;
import camberwell.fact.Evidence;
import camberwell.fact.Premise;
import camberwell.knowledge.Notes;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Advice as JSON: one object a case. */
public final class AdviceJson {

    private final Notes notes;
    private final int top;
    private Voices voices = Voices.NONE;

    /** @param top how many changes to write */
    public AdviceJson(Notes notes, int top) {
        this.notes = notes;
        this.top = top;
    }

    /** The same, with what the authors of rule folders say. */
    public AdviceJson with(Voices others) {
        voices = others;
        return this;
    }

    /** Writes {@code advice} as one object. */
    public void write(Advice advice, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("case", advice.run().title());
        json.writeStringField("file", advice.run().source());
        json.writeStringField("car", advice.run().car().name());
        if (advice.run().heard().isPresent()) {
            HeardJson.write(advice.run().heard().get(), json);
        }
        json.writeArrayFieldStart("findings");
        for (var finding : advice.findings()) {
            json.writeStartObject();
            json.writeStringField("id", finding.id());
            json.writeStringField("statement", notes.get(finding.id())
                    .fitting(advice.circumstances()).statement());
            number(json, "certainty", finding.certainty());
            strings(json, "rules", finding.evidence().stream().map(Evidence::rule).distinct());
            strings(json, "evidence", finding.evidence().stream().flatMap(evidence -> evidence.premises().stream())
                    .map(Premise::statement).distinct());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings(json, "doubts", advice.doubts().stream());
        json.writeArrayFieldStart("changes");
        Predictions predictions = advice.predictions();
        for (RankedChange change : advice.changes().subList(0, Math.min(top, advice.changes().size()))) {
            change(json, change, predictions, advice.experience());
        }
        json.writeEndArray();
        json.writeArrayFieldStart("withheld");
        for (var withheld : advice.withheld()) {
            json.writeStartObject();
            json.writeStringField("adjuster", withheld.change().adjuster().id());
            json.writeStringField("direction", withheld.change().direction().id());
            json.writeStringField("reason", withheld.reason());
            strings(json, "rules", withheld.rules().stream());
            pack(json, withheld.rules());
            tried(json, advice.experience().of(withheld.change()));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("conflicts");
        for (var conflict : advice.conflicts()) {
            json.writeStartObject();
            json.writeStringField("statement", conflict.statement());
            strings(json, "changes", conflict.changes().stream().map(Object::toString));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeBooleanField("driving-first", advice.drivingFirst());
        json.writeArrayFieldStart("driving");
        for (var driving : advice.driving()) {
            json.writeStartObject();
            json.writeStringField("advice", driving.note().statement());
            json.writeStringField("why", driving.note().plain());
            number(json, "certainty", driving.certainty());
            strings(json, "rules", driving.rules().stream());
            authors(json, driving.rules());
            json.writeStringField("note", driving.note().name());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (advice.halt().isPresent()) {
            json.writeStringField("halt", advice.halt().get().name());
        } else {
            json.writeNullField("halt");
        }
        json.writeArrayFieldStart("answers");
        for (Answer answer : advice.answers()) {
            json.writeStartObject();
            json.writeNumberField("report", answer.number());
            strings(json, "by", answer.by().stream());
            json.writeEndObject();
        }
        json.writeEndArray();
        strings(json, "cautions", advice.cautions().stream().map(note -> note.statement()));
        json.writeEndObject();
    }

    /** What is moved with a change, as one. */
    private static void beside(JsonGenerator json, RankedChange.Beside beside) throws IOException {
        json.writeObjectFieldStart("with");
        json.writeStringField("adjuster", beside.change().adjuster().id());
        json.writeStringField("direction", beside.change().direction().id());
        quantity(json, "from", beside.size().from().orElseThrow());
        quantity(json, "to", beside.size().to().orElseThrow());
        json.writeNumberField("steps", beside.size().steps());
        json.writeEndObject();
    }

    private void change(JsonGenerator json, RankedChange change, Predictions predictions, Experience experience)
            throws IOException {
        json.writeStartObject();
        json.writeNumberField("rank", change.rank());
        json.writeStringField("adjuster", change.change().adjuster().id());
        json.writeStringField("direction", change.change().direction().id());
        quantity(json, "from", change.size().from().orElse(null));
        quantity(json, "to", change.size().to().orElse(null));
        if (change.size().from().isPresent()) {
            json.writeStringField("unit", change.size().from().get().unit().symbol());
        } else {
            json.writeNullField("unit");
        }
        json.writeNumberField("steps", change.size().steps());
        if (!change.size().wheels().isEmpty()) {
            json.writeArrayFieldStart("wheels");
            for (Size.WheelSize wheel : change.size().wheels()) {
                json.writeStartObject();
                json.writeStringField("wheel", wheel.wheel().id());
                quantity(json, "from", wheel.from());
                quantity(json, "to", wheel.to());
                json.writeEndObject();
            }
            json.writeEndArray();
        }
        if (change.beside().isPresent()) {
            beside(json, change.beside().get());
        }
        Score score = change.score();
        number(json, "certainty", score.certainty());
        number(json, "score", score.total());
        json.writeObjectFieldStart("score-terms");
        number(json, "relief", score.relief());
        number(json, "harm-to-complaints", score.harmToComplaints());
        number(json, "harm-to-what-is-fine", score.harmToFine());
        number(json, "effort", score.effort());
        number(json, "risk", score.risk());
        json.writeEndObject();
        json.writeArrayFieldStart("helps");
        for (Score.Help help : score.helps()) {
            Complaint complaint = help.complaint();
            json.writeStartObject();
            json.writeStringField("symptom", complaint.symptom().id());
            if (complaint.phase().isPresent()) {
                json.writeStringField("phase", complaint.phase().get().id());
            } else {
                json.writeNullField("phase");
            }
            number(json, "effect", help.effect());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeArrayFieldStart("costs");
        for (Score.Cost cost : score.costs()) {
            json.writeStartObject();
            json.writeStringField("on", cost.on());
            number(json, "effect", cost.effect());
            json.writeStringField("why", cost.why());
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeStringField("because", change.why());
        json.writeStringField("rationale", change.way().rationale());
        strings(json, "rules", change.rules().stream());
        List<String> deciding = new ArrayList<>(change.rules());
        change.firstBy().stream().filter(rule -> !deciding.contains(rule)).forEach(deciding::add);
        authors(json, deciding);
        if (!change.firstBy().isEmpty()) {
            strings(json, "put-first", change.firstBy().stream());
        }
        strings(json, "evidence", change.proposals().stream().flatMap(proposal -> proposal.premises().stream())
                .map(Premise::statement).distinct().sorted());
        json.writeStringField("note", change.note().name());
        strings(json, "computation", change.size().computation().stream());
        json.writeFieldName("model");
        PredictionJson.write(predictions.of(change), json);
        json.writeStringField("watch-next-run", change.way().watch());
        json.writeStringField("put-back-if", change.way().putBack());
        tried(json, experience.of(change.change()));
        json.writeEndObject();
    }

    /** The pack of a rule that decided; of several, all. */
    private void pack(JsonGenerator json, Collection<String> rules) throws IOException {
        List<String> packs = voices.packs(rules);
        if (!packs.isEmpty()) {
            json.writeStringField("pack", String.join(", ", packs));
        }
    }

    private void authors(JsonGenerator json, Collection<String> rules) throws IOException {
        pack(json, rules);
        List<String> words = voices.of(rules);
        if (!words.isEmpty()) {
            strings(json, "authors", words.stream());
        }
    }

    private static void tried(JsonGenerator json, Optional<Learned> tried) throws IOException {
        if (tried.isEmpty()) {
            return;
        }
        Learned learned = tried.get();
        json.writeObjectFieldStart("tried");
        json.writeStringField("outcome", learned.outcome().id());
        if (!learned.of().equals(learned.change())) {
            json.writeStringField("of", learned.of().id());
        }
        if (learned.undo()) {
            json.writeBooleanField("undo", true);
        }
        json.writeNumberField("helped", learned.better());
        json.writeNumberField("judged", learned.judged());
        number(json, "certainty-before", learned.before());
        number(json, "evidence", learned.evidence());
        number(json, "certainty-after", learned.after());
        json.writeStringField("text", learned.text());
        json.writeEndObject();
    }

    private static void quantity(JsonGenerator json, String key, Quantity quantity) throws IOException {
        if (quantity == null) {
            json.writeNullField(key);
        } else {
            number(json, key, quantity.value());
        }
    }

    private static void number(JsonGenerator json, String key, double number) throws IOException {
        json.writeFieldName(key);
        json.writeNumber(new Quantity(number, Unit.POSITION).toString());
    }

    private static void strings(JsonGenerator json, String key, Stream<String> strings) throws IOException {
        json.writeArrayFieldStart(key);
        Collection<String> all = strings.toList();
        for (String string : all) {
            json.writeString(string);
        }
        json.writeEndArray();
    }
}
