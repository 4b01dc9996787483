package camberwell.report;

import camberwell.fact.Reading;
import camberwell.physics.TreadRead;
import camberwell.reading.Subject;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.run.Case;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;

/** The reading of a case's tyres, for people and for programs. */
public final class ReadingReport {

    /** A screen narrower than this has no room for a table. */
    private static final int TABLE = 76;
    private static final String TREAD_ROW = "%-13s%7s%7s%6s%7s%13s%14s%8s";

    private ReadingReport() {
    }

    /**
     * The tyres' figures, then what they say with how clear it is, then what contradicts itself.
     *
     * @param width of the page, in characters
     */
    public static void write(Case run, TyreReadings tyres, int width, Page page) {
        page.heading(run.title());
        page.paragraph(0, run.car().name() + Words.day(run));
        if (tyres.wheels().isEmpty()) {
            page.blank().paragraph(0, "No tyre was measured. Take inner, middle and outer of each tyre straight "
                    + "after a hard lap, then the hot pressures.");
            return;
        }
        page.paragraph(0, Words.sentence(tyres.side().text()) + ".");
        page.blank();
        if (width >= TABLE) {
            table(tyres, page);
        } else {
            tyres.wheels().values().forEach(wheel -> block(wheel, page));
        }
        means(tyres, page);
        ReadingDrawing.write(run, tyres, width, page);
        for (Axle axle : Axle.values()) {
            says(axle, tyres, page);
        }
        AdviceText.doubts(tyres.doubts(), page);
    }

    private static void table(TyreReadings tyres, Page page) {
        List<WheelFigures> tread = tyres.wheels().values().stream().filter(wheel -> wheel.tread().isPresent()).toList();
        if (!tread.isEmpty()) {
            page.verbatim(String.format(TREAD_ROW, "Tread", "inner", "middle", "outer", "mean", "inner-outer",
                    "middle-edges", "window"));
            tread.forEach(wheel -> {
                TreadRead read = wheel.tread().orElseThrow();
                page.verbatim(String.format(TREAD_ROW, wheel.wheel().id() + (wheel.loaded() ? "" : " *"),
                        whole(read.inner()), whole(read.middle()), whole(read.outer()), whole(read.mean()) + " °C",
                        kelvin(read.innerMinusOuter()), kelvin(read.middleMinusEdges()), window(wheel)));
            });
            if (tread.stream().anyMatch(wheel -> !wheel.loaded())) {
                page.verbatim("* not the loaded side");
            }
        }
        List<WheelFigures> gauge = gauged(tyres);
        if (!gauge.isEmpty()) {
            page.blank().verbatim("Pressure          cold        hot     target   off target   gas");
            gauge.forEach(wheel -> page.verbatim(String.format("%-13s%10s%11s%11s%12s%8s", wheel.wheel().id(),
                    pressure(wheel, wheel.cold()), pressure(wheel, wheel.hot()), pressure(wheel, wheel.target()),
                    off(wheel),
                    wheel.gas().map(gas -> gas.text(0)).orElse("-")).stripTrailing()));
        }
    }

    private static void block(WheelFigures wheel, Page page) {
        page.paragraph(0, wheel.wheel().id() + (wheel.loaded() ? "" : ", not the loaded side"));
        wheel.tread().ifPresent(read -> {
            page.paragraph(2, "inner " + whole(read.inner()) + ", middle " + whole(read.middle()) + ", outer "
                    + whole(read.outer()) + ", mean " + whole(read.mean()) + " °C"
                    + (wheel.offWindow().isEmpty() ? "" : wheel.offWindow().getAsDouble() == 0
                            ? ", inside the window" : ", " + window(wheel) + " off the window"));
            page.paragraph(2, "inner less outer " + kelvin(read.innerMinusOuter()) + ", middle less edges "
                    + kelvin(read.middleMinusEdges()));
        });
        if (wheel.hot().isPresent()) {
            page.paragraph(2, "cold " + pressure(wheel, wheel.cold()) + ", hot " + pressure(wheel, wheel.hot())
                    + ", target " + pressure(wheel, wheel.target()) + ", off by " + off(wheel)
                    + wheel.gas().map(gas -> ", gas " + gas.text(0)).orElse(""));
        }
    }

    private static String whole(double number) {
        return new Quantity(number, Unit.POSITION).text(0);
    }

    /** Inside its window, or by how much it is below or above. */
    private static String window(WheelFigures wheel) {
        return wheel.offWindow().isEmpty() ? "-" : wheel.offWindow().getAsDouble() == 0 ? "inside"
                : kelvin(wheel.offWindow().getAsDouble());
    }

    private static String kelvin(double difference) {
        double rounded = Math.rint(difference);
        return (rounded > 0 ? "+" : "") + new Quantity(rounded, Unit.POSITION).text(0) + " K";
    }

    private static List<WheelFigures> gauged(TyreReadings tyres) {
        return tyres.wheels().values().stream().filter(wheel -> wheel.hot().isPresent()).toList();
    }

    /** In the unit in which the tyre's hot pressure was read. */
    private static String pressure(WheelFigures wheel, Optional<Quantity> pressure) {
        Unit unit = wheel.hot().orElseThrow().unit();
        return pressure.map(read -> read.to(unit).text(decimals(unit))).orElse("-");
    }

    private static int decimals(Unit unit) {
        return unit == Unit.BAR ? 2 : 1;
    }

    private static String off(WheelFigures wheel) {
        return wheel.overTargetBar().map(bar -> {
            Unit unit = wheel.hot().orElseThrow().unit();
            double off = bar * 1e5 / unit.differenceToSi(1);
            String text = new Quantity(off, unit).text(decimals(unit));
            return off > 0 && !text.startsWith("0.00 ") ? "+" + text : text;
        }).orElse("-");
    }

    private static void means(TyreReadings tyres, Page page) {
        StringBuilder means = new StringBuilder();
        mean(means, "front", tyres, wheel -> wheel.wheel().axle() == Axle.FRONT);
        mean(means, "rear", tyres, wheel -> wheel.wheel().axle() == Axle.REAR);
        if (axlesRead(tyres, true).equals(axlesRead(tyres, false))) {
            mean(means, "left", tyres, wheel -> wheel.wheel().left());
            mean(means, "right", tyres, wheel -> !wheel.wheel().left());
        }
        if (!means.isEmpty()) {
            page.blank().paragraph(0, "Mean of the tread: " + means);
        }
    }

    /** The axles of which a tyre on one side was read: sides are compared by the tyres of the same axles. */
    private static Set<Axle> axlesRead(TyreReadings tyres, boolean left) {
        return tyres.wheels().values().stream().filter(wheel -> wheel.wheel().left() == left && wheel.tread().isPresent())
                .map(wheel -> wheel.wheel().axle()).collect(Collectors.toSet());
    }

    private static void mean(StringBuilder means, String name, TyreReadings tyres, Predicate<WheelFigures> which) {
        OptionalDouble mean = meanOf(tyres, which);
        if (mean.isPresent()) {
            means.append(means.isEmpty() ? "" : ", ").append(name)
                    .append(Figures.fill(" %.0f °C", mean.getAsDouble()));
        }
    }

    private static OptionalDouble meanOf(TyreReadings tyres, Predicate<WheelFigures> which) {
        return tyres.wheels().values().stream().filter(which).flatMap(wheel -> wheel.tread().stream())
                .mapToDouble(TreadRead::mean).average();
    }

    private static void says(Axle axle, TyreReadings tyres, Page page) {
        if (tyres.readings().stream().noneMatch(reading -> reading.place().axle() == axle)) {
            return;
        }
        page.heading("What the " + axle.id() + " tyres say");
        for (Subject subject : Subject.values()) {
            List<Reading> readings = tyres.about(axle, subject);
            Set<String> said = new HashSet<>();
            for (Reading reading : readings) {
                if (!said.add(reading.statement())) {
                    continue;
                }
                page.point(0, Words.sentence(subject.id()) + ": " + reading.statement() + ". "
                        + Words.sentence(clearness(reading.certainty())) + ", " + Words.two(reading.certainty())
                        + (readings.size() > 1 && reading == readings.get(0) ? ": this decides" : ""));
            }
        }
    }

    /** How clear a reading is, in words. */
    private static String clearness(double certainty) {
        return certainty >= 0.8 ? "clear" : certainty >= 0.5 ? "fairly clear" : certainty >= 0.2 ? "weak" : "faint";
    }

    /** The same as one object. Temperatures are in °C, differences in K, as their keys say. */
    public static void write(Case run, TyreReadings tyres, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("case", run.title());
        json.writeStringField("file", run.source());
        json.writeStringField("loaded-in-turns", tyres.side().turns().id());
        json.writeStringField("judged-on", tyres.side().text());
        json.writeArrayFieldStart("tyres");
        for (WheelFigures wheel : tyres.wheels().values()) {
            wheel(wheel, json);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("mean-tread-celsius");
        for (Axle axle : Axle.values()) {
            number(json, axle.id(), meanOf(tyres, wheel -> wheel.wheel().axle() == axle));
        }
        number(json, "left", meanOf(tyres, wheel -> wheel.wheel().left()));
        number(json, "right", meanOf(tyres, wheel -> !wheel.wheel().left()));
        json.writeEndObject();
        json.writeArrayFieldStart("readings");
        for (Axle axle : Axle.values()) {
            for (Subject subject : Subject.values()) {
                readings(tyres.about(axle, subject), subject, json);
            }
        }
        json.writeEndArray();
        strings(json, "doubts", tyres.doubts());
        json.writeEndObject();
    }

    private static void wheel(WheelFigures wheel, JsonGenerator json) throws IOException {
        json.writeStartObject();
        json.writeStringField("wheel", wheel.wheel().id());
        json.writeBooleanField("loaded", wheel.loaded());
        if (wheel.tread().isPresent()) {
            TreadRead read = wheel.tread().get();
            json.writeObjectFieldStart("tread-celsius");
            Json.number(json, "inner", read.inner());
            Json.number(json, "middle", read.middle());
            Json.number(json, "outer", read.outer());
            Json.number(json, "mean", read.mean());
            json.writeEndObject();
            json.writeObjectFieldStart("tread-kelvin");
            Json.number(json, "spread", read.spread());
            Json.number(json, "inner-less-outer", read.innerMinusOuter());
            Json.number(json, "middle-less-edges", read.middleMinusEdges());
            number(json, "outside-window", wheel.offWindow());
            json.writeEndObject();
        }
        Json.quantity(json, "cold-pressure", wheel.cold());
        Json.quantity(json, "hot-pressure", wheel.hot());
        Json.quantity(json, "hot-target", wheel.target());
        Json.quantity(json, "off-target", wheel.overTargetBar().map(bar -> new Quantity(bar, Unit.BAR)));
        Json.quantity(json, "gas-temperature", wheel.gas());
        json.writeEndObject();
    }

    private static void readings(List<Reading> readings, Subject subject, JsonGenerator json) throws IOException {
        for (Reading reading : readings) {
            json.writeStartObject();
            json.writeStringField("about", subject.id());
            json.writeStringField("place", reading.place().id());
            json.writeStringField("shows", reading.state().id());
            Json.number(json, "clearness", reading.certainty());
            json.writeBooleanField("decides", reading == readings.get(0));
            json.writeStringField("statement", reading.statement());
            json.writeEndObject();
        }
    }

    private static void number(JsonGenerator json, String key, OptionalDouble number) throws IOException {
        if (number.isPresent()) {
            Json.number(json, key, number.getAsDouble());
        } else {
            json.writeNullField(key);
        }
    }

    private static void strings(JsonGenerator json, String key, Collection<String> strings) throws IOException {
        json.writeArrayFieldStart(key);
        for (String string : strings) {
            json.writeString(string);
        }
        json.writeEndArray();
    }
}
