package camberwell.cli;

import camberwell.debrief.Debrief;
import camberwell.debrief.Phrases;
import camberwell.debrief.Question;
import camberwell.debrief.Talk;
import camberwell.report.AdviceJson;
import camberwell.report.HeardJson;
import camberwell.report.Page;
import camberwell.run.Case;
import camberwell.saying.Heard;
import camberwell.vocabulary.Audience;
import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * A debrief for a program: each question, each answer and all that is said besides is an object on a line of its own, and
 * the advice is the last. Lines that are read are answers, as a person would type them.
 */
final class DebriefLines {

    private static final JsonFactory JSON = new JsonFactory();
    private static final int WIDE = 10_000;

    private final Console console;
    private final Engine engine;
    private final Debrief debrief;
    private final Audience audience;
    private final int top;
    private final Talk talk;
    private int asked;

    DebriefLines(Console console, Engine engine, Debrief debrief, Audience audience, int top) {
        this.console = console;
        this.engine = engine;
        this.debrief = debrief;
        this.audience = audience;
        this.top = top;
        this.talk = new Talk(debrief, engine::listener, engine::notes, audience, () -> new Page(WIDE, false));
    }

    /** @param keep what keeps the case after each answer */
    void talk(Consumer<Case> keep) throws IOException {
        TypedLines in = new TypedLines(console.in());
        Patience patience = new Patience(console);
        talk.ask();
        talk.take();
        while (talk.question().isPresent()) {
            question(talk.question().get());
            if (asked == 1) {
                engine.listenAhead(() -> { });
            }
            debrief.thinkAhead();
            Optional<String> typed = in.next();
            if (typed.isEmpty()) {
                break;
            }
            Case before = debrief.run();
            Talk.Next next = talk.reply(typed.get());
            answer(typed.get());
            patience.took(!debrief.run().equals(before));
            if (next == Talk.Next.ANSWERED || next == Talk.Next.ADVISE) {
                keep.accept(debrief.run());
            }
            if (next == Talk.Next.LEAVE) {
                return;
            }
            if (next == Talk.Next.ADVISE) {
                break;
            }
        }
        line(json -> {
            json.writeFieldName("advice");
            new AdviceJson(engine.notes(), top).with(engine.voices()).write(debrief.advice(), json);
        });
    }

    private void question(Question question) throws IOException {
        asked++;
        line(json -> {
            json.writeObjectFieldStart("question");
            json.writeNumberField("id", asked);
            json.writeStringField("field", question.topic().field().id());
            if (question.topic().own().isPresent()) {
                json.writeStringField("name", question.topic().name());
            }
            if (!talk.complaint().isEmpty()) {
                json.writeNumberField("complaint", question.topic().complaint() + 1);
                json.writeStringField("about", talk.complaint());
            }
            Optional<Heard.Unclear> back = talk.askedBack();
            json.writeStringField("ask", back.isPresent() ? "Did you mean " + back.get().text() + "?"
                    : Phrases.question(question.topic(), talk.complaint(), audience));
            if (back.isPresent()) {
                json.writeFieldName("not-sure");
                HeardJson.unclear(back.get(), json);
            }
            strings(json, "choices", back.isPresent() ? List.of("yes", "no") : talk.choices());
            String taken = Phrases.taken(debrief.taken(), Audience.CLUB);
            strings(json, "assumed", taken.isEmpty() ? List.of() : List.of(taken.split(", ")));
            json.writeEndObject();
        });
    }

    private void answer(String typed) throws IOException {
        String said = talk.take().strip();
        Optional<String> heard = talk.heard();
        line(json -> {
            json.writeObjectFieldStart("answer");
            json.writeNumberField("id", asked);
            json.writeStringField("typed", typed);
            if (heard.isPresent()) {
                json.writeStringField("heard", heard.get());
            } else if (!said.isEmpty()) {
                json.writeStringField("said", said);
            }
            json.writeEndObject();
        });
    }

    private static void strings(JsonGenerator json, String key, Iterable<String> strings) throws IOException {
        json.writeArrayFieldStart(key);
        for (String string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }

    private interface Writing {
        void to(JsonGenerator json) throws IOException;
    }

    private void line(Writing writing) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = JSON.createGenerator(text)) {
            json.writeStartObject();
            writing.to(json);
            json.writeEndObject();
        }
        console.out().println(text);
        console.out().flush();
    }
}
