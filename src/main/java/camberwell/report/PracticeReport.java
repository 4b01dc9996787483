package camberwell.report;

import camberwell.car.Car;
import camberwell.model.CarModel;
import camberwell.practice.Fault;
import camberwell.practice.Session;
import camberwell.practice.Session.Step;
import camberwell.practice.TestDriver;
import camberwell.practice.Told;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;

/** A practice on a faulty car, as it goes on and at its end. */
public final class PracticeReport {

    private final Car car;
    private final Fault fault;
    private final long seed;
    private final Session yours;
    private final Session advised;

    /**
     * @param car the car as it should be
     * @param fault what was hidden in it
     * @param seed that drew it
     * @param yours the treatment by the person who practises
     * @param advised the treatment by the advice
     */
    public PracticeReport(Car car, Fault fault, long seed, Session yours, Session advised) {
        this.car = car;
        this.fault = fault;
        this.seed = seed;
        this.yours = yours;
        this.advised = advised;
    }

    /** The treatment by the advice. */
    public Session advised() {
        return advised;
    }

    /** What the car does at first, and what can be moved on it. */
    public void begin(Page page) {
        page.heading(car.name() + ", " + car.driven() + ", seed " + seed);
        page.paragraph(0, "Something on it does not stand where it should. The driver says:");
        complaints(page);
        page.paragraph(0, "Where it stands now:");
        yours.car().adjusters().forEach((adjuster, setting) -> {
            if (CarModel.representsInMotion(adjuster)) {
                page.point(0, adjuster.id() + " " + setting.now() + ", from " + setting.min() + " to "
                        + setting.max());
            }
        });
    }

    /** What came of the last change. */
    public void step(Page page) {
        Step last = yours.steps().get(yours.steps().size() - 1);
        page.blank();
        page.paragraph(0, Words.sentence(Words.change(last.change())) + ", " + last.from() + " -> " + last.to() + ": "
                + came(last) + ". The driver says:");
        complaints(page);
    }

    private void complaints(Page page) {
        List<Report> told = Told.of(yours.felt());
        if (told.isEmpty()) {
            page.point(0, "nothing to complain of");
        }
        told.forEach(report -> page.point(0, report.text()));
        page.blank();
    }

    private String came(Step step) {
        double part = step.gain() / yours.first();
        return part > Session.NOTHING ? "better" : part < -Session.NOTHING ? "worse" : "no effect";
    }

    /** What was wrong, and how both fared. */
    public void end(Page page) {
        page.heading(yours.cured() ? "Cured" : "Not cured");
        fault.set().forEach((adjuster, to) -> page.paragraph(0, "Wrong was: " + wrong(adjuster, to)));
        page.paragraph(0, "You: " + outcome(yours));
        page.paragraph(0, "The advice: " + outcome(advised));
        advised.steps().forEach(step -> page.point(0, step.change().id() + ", " + step.from() + " -> " + step.to()
                + with(step) + ": " + came(step)));
    }

    private static String with(Step step) {
        StringBuilder text = new StringBuilder();
        step.beside().forEach((adjuster, to) -> text.append(", with ").append(adjuster.id()).append(" to ").append(to));
        return text.toString();
    }

    private String wrong(Adjuster adjuster, Quantity to) {
        return adjuster.id() + " at " + to + " instead of " + car.setting(adjuster).orElseThrow().now();
    }

    private static String outcome(Session session) {
        return (session.cured() ? "cured" : "not cured") + " with " + session.steps().size()
                + (session.steps().size() == 1 ? " change, " : " changes, ") + String.format(Locale.ROOT,
                "%.0f %% of the complaints left", 100 * session.burden() / session.first());
    }

    /** Writes it all as one object. */
    public void write(JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("car", car.name());
        json.writeNumberField("seed", seed);
        json.writeObjectFieldStart("wrong");
        for (var wrong : fault.set().entrySet()) {
            json.writeStringField(wrong.getKey().id(), wrong.getValue().toString());
        }
        json.writeEndObject();
        session(json, "yours", yours);
        session(json, "advice", advised);
        json.writeEndObject();
    }

    private void session(JsonGenerator json, String key, Session session) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeBooleanField("cured", session.cured());
        PredictionJson.number(json, "complaints-left-percent", 100 * session.burden() / session.first(), 1);
        json.writeArrayFieldStart("changes");
        for (Step step : session.steps()) {
            json.writeStartObject();
            json.writeArrayFieldStart("told");
            for (Report report : step.told()) {
                json.writeString(report.text());
            }
            json.writeEndArray();
            json.writeStringField("change", step.change().id());
            json.writeStringField("from", step.from().toString());
            json.writeStringField("to", step.to().toString());
            for (var with : step.beside().entrySet()) {
                json.writeStringField("with-" + with.getKey().id(), with.getValue().toString());
            }
            json.writeStringField("outcome", came(step));
            PredictionJson.number(json, "complaints-before", TestDriver.burden(step.before()), 2);
            PredictionJson.number(json, "complaints-after", TestDriver.burden(step.after()), 2);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }
}
