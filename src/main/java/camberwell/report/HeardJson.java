package camberwell.report;

import camberwell.saying.Heard;
import camberwell.saying.Told;
import camberwell.vocabulary.CornerKind;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Turn;
import camberwell.vocabulary.Word;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** What was understood of a driver's own words, as JSON: only what was said has a key. */
public final class HeardJson {

    private HeardJson() {
    }

    /** Writes the fields {@code heard}, {@code not-understood} and, where there is such, {@code surface} and {@code not-sure}. */
    public static void write(Heard heard, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("heard");
        for (Told told : heard.told()) {
            json.writeStartObject();
            json.writeStringField("symptom", told.symptom().id());
            word(json, "phase", told.word(Phase.class));
            word(json, "speed", told.word(CornerSpeed.class));
            word(json, "corner", told.word(CornerKind.class));
            word(json, "severity", told.word(Severity.class));
            word(json, "occurrence", told.word(Occurrence.class));
            word(json, "since", told.word(Since.class));
            word(json, "where", told.word(Place.class));
            word(json, "turn", told.word(Turn.class));
            if (!told.notIn().isEmpty()) {
                json.writeArrayFieldStart("not");
                for (Word word : told.notIn()) {
                    json.writeString(word.id());
                }
                json.writeEndArray();
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        word(json, "surface", heard.surface());
        json.writeArrayFieldStart("not-understood");
        for (String words : heard.refused()) {
            json.writeString(words);
        }
        json.writeEndArray();
        List<Heard.Unclear> doubtful = heard.doubtful();
        if (!doubtful.isEmpty()) {
            json.writeArrayFieldStart("not-sure");
            for (Heard.Unclear unclear : doubtful) {
                unclear(unclear, json);
            }
            json.writeEndArray();
        }
    }

    /** Writes words that are not taken without asking back, with what they may mean. */
    public static void unclear(Heard.Unclear unclear, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("words", unclear.words());
        json.writeArrayFieldStart("may-be");
        for (Told told : unclear.mayBe()) {
            json.writeString(told.text());
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void word(JsonGenerator json, String key, Optional<? extends Word> word) throws IOException {
        if (word.isPresent()) {
            json.writeStringField(key, word.get().id());
        }
    }
}
