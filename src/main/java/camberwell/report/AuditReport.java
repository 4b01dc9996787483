package camberwell.report;

import camberwell.audit.Judgement;
import camberwell.audit.Judgement.Verdict;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The audit of the rules against the handling model, as text and as JSON. */
public final class AuditReport {

    private final List<String> cars;
    private final List<Judgement> judgements;
    private final Map<Verdict, Long> counts = new EnumMap<>(Verdict.class);

    /**
     * @param cars the names of the reference cars
     * @param judgements every claim judged
     */
    public AuditReport(List<String> cars, List<Judgement> judgements) {
        this.cars = List.copyOf(cars);
        this.judgements = List.copyOf(judgements);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, judgements.stream().filter(judgement -> judgement.verdict() == verdict).count());
        }
    }

    /** Whether the model contradicts a claim, and nobody says why. */
    public boolean foundWrong() {
        return counts.get(Verdict.DIFFERS) > 0;
    }

    /**
     * Writes it for a person.
     *
     * @param all whether to list the claims that agree, too
     */
    public void write(Page page, boolean all) {
        page.heading(judgements.size() + " claims of notes and rules, held against the model on " + cars.size()
                + " cars");
        page.paragraph(0, String.join(", ", cars));
        page.blank();
        counts.forEach((verdict, count) -> page.point(0, count + " " + verdict.text()));
        list(page, Verdict.DIFFERS, "The model shows the opposite");
        list(page, Verdict.EXPLAINED, "The model shows the opposite, and the note says why");
        if (all) {
            list(page, Verdict.AGREES, "The model agrees");
        }
        Map<String, Integer> reasons = new LinkedHashMap<>();
        judgements.stream().filter(judgement -> judgement.verdict() == Verdict.NOT_REPRESENTED)
                .forEach(judgement -> reasons.merge(judgement.reason().orElseThrow(), 1, Integer::sum));
        page.heading("What the model cannot represent");
        reasons.forEach((reason, count) -> page.point(0, count + ": " + reason));
    }

    private void list(Page page, Verdict verdict, String heading) {
        List<Judgement> those = judgements.stream().filter(judgement -> judgement.verdict() == verdict).toList();
        if (those.isEmpty()) {
            return;
        }
        page.heading(heading);
        for (Judgement judgement : those) {
            page.point(0, Words.sentence(Words.change(judgement.change())) + ", " + judgement.claim() + " ("
                    + judgement.by() + ")");
            if (!judgement.differing().isEmpty()) {
                page.labelled(2, "Opposite", String.join(", ", judgement.differing()));
            }
            if (!judgement.agreeing().isEmpty()) {
                page.labelled(2, "Agrees", String.join(", ", judgement.agreeing()));
            }
            judgement.reason().ifPresent(reason -> page.labelled(2, "Because", reason));
        }
    }

    /** Writes it as one object. */
    public void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        strings(json, "cars", cars);
        json.writeObjectFieldStart("counts");
        for (Verdict verdict : Verdict.values()) {
            json.writeNumberField(id(verdict), counts.get(verdict));
        }
        json.writeEndObject();
        json.writeArrayFieldStart("claims");
        for (Judgement judgement : judgements) {
            json.writeStartObject();
            json.writeStringField("by", judgement.by());
            json.writeStringField("adjuster", judgement.change().adjuster().id());
            json.writeStringField("direction", judgement.change().direction().id());
            json.writeStringField("claim", judgement.claim());
            json.writeStringField("verdict", id(judgement.verdict()));
            strings(json, "agreeing", judgement.agreeing());
            strings(json, "opposite", judgement.differing());
            if (judgement.reason().isPresent()) {
                json.writeStringField("because", judgement.reason().get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static String id(Verdict verdict) {
        return switch (verdict) {
            case AGREES -> "agrees";
            case EXPLAINED -> "differs-explained";
            case DIFFERS -> "differs";
            case NOT_REPRESENTED -> "not-represented";
        };
    }

    private static void strings(JsonGenerator json, String key, List<String> strings) throws IOException {
        json.writeArrayFieldStart(key);
        for (String string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }
}
