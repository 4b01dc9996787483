package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.Channel;
import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Since;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

/** Temperatures and pressures of the tyres, lap by lap. */
final class TyreTrace {

    private final Trace trace;
    private final List<Lap> all;
    private final Limits limits;

    /** @param all every lap, also those from which no slide is read: tyres warm on an out-lap too */
    TyreTrace(Trace trace, List<Lap> all, Limits limits) {
        this.trace = trace;
        this.all = all;
        this.limits = limits;
    }

    private static Channel of(Kind kind, Wheel wheel) {
        return Channel.of(kind, Word.of(Place.class, wheel.id()));
    }

    private double mean(Channel channel, Lap lap) {
        if (!trace.log().has(channel)) {
            return Double.NaN;
        }
        float[] values = trace.log().samples(channel);
        double sum = 0;
        int count = 0;
        for (int i = lap.from(); i < lap.to(); i++) {
            if (!Float.isNaN(values[i])) {
                sum += values[i];
                count++;
            }
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** Mean temperature of a wheel's tread in a lap, °C. */
    private double tread(Wheel wheel, Lap lap) {
        double whole = mean(of(Kind.TREAD, wheel), lap);
        double sum = 0;
        int count = 0;
        for (Kind kind : List.of(Kind.TREAD_INNER, Kind.TREAD_MIDDLE, Kind.TREAD_OUTER)) {
            double part = mean(of(kind, wheel), lap);
            sum += Double.isNaN(part) ? 0 : part;
            count += Double.isNaN(part) ? 0 : 1;
        }
        return count > 0 ? sum / count : whole;
    }

    private double tread(Axle axle, Lap lap) {
        double sum = 0;
        int count = 0;
        for (Wheel wheel : Wheel.values()) {
            double tread = wheel.axle() == axle ? tread(wheel, lap) : Double.NaN;
            sum += Double.isNaN(tread) ? 0 : tread;
            count += Double.isNaN(tread) ? 0 : 1;
        }
        return count == 0 ? Double.NaN : sum / count;
    }

    /** What a pyrometer and a gauge would have read after the run: the means of its last lap that counts. */
    Map<Wheel, TyreReading> readings() {
        Map<Wheel, TyreReading> readings = new EnumMap<>(Wheel.class);
        Optional<Lap> last = all.stream().filter(Lap::counts).reduce((one, other) -> other);
        if (last.isEmpty()) {
            return readings;
        }
        for (Wheel wheel : Wheel.values()) {
            Optional<Quantity> inner = celsius(mean(of(Kind.TREAD_INNER, wheel), last.get()));
            Optional<Quantity> middle = celsius(mean(of(Kind.TREAD_MIDDLE, wheel), last.get()));
            Optional<Quantity> outer = celsius(mean(of(Kind.TREAD_OUTER, wheel), last.get()));
            double pressure = mean(of(Kind.TYRE_PRESSURE, wheel), last.get()) / 1e5;
            Optional<Quantity> hot = pressure >= 0.3 && pressure <= 6
                    ? Optional.of(new Quantity(Math.rint(pressure * 100) / 100, Unit.BAR)) : Optional.empty();
            if (inner.isPresent() || middle.isPresent() || outer.isPresent() || hot.isPresent()) {
                readings.put(wheel, new TyreReading(inner, middle, outer, Optional.empty(), hot));
            }
        }
        return readings;
    }

    private static Optional<Quantity> celsius(double value) {
        return value >= -20 && value <= 200 ? Optional.of(new Quantity(Math.rint(value), Unit.CELSIUS)) : Optional.empty();
    }

    /** Tyres that come into their window late, or run above it. */
    List<Report> complaints(Car car) {
        List<Report> reports = new ArrayList<>();
        for (Axle axle : Axle.values()) {
            Optional<Quantity> low = car.tyres(axle).windowLow();
            Optional<Quantity> high = car.tyres(axle).windowHigh();
            List<Double> treads = new ArrayList<>();
            List<Lap> laps = new ArrayList<>();
            for (Lap lap : all) {
                double tread = tread(axle, lap);
                if (!Double.isNaN(tread) && lap.metres() > 300) {
                    treads.add(tread);
                    laps.add(lap);
                }
            }
            if (low.isPresent() && high.isPresent() && treads.size() >= limits.of("grades.fewest-laps")) {
                warmUp(axle, low.get().in(Unit.CELSIUS), treads, laps, reports);
                hot(axle, high.get().in(Unit.CELSIUS), treads, laps, reports);
            }
        }
        return reports;
    }

    private void warmUp(Axle axle, double low, List<Double> treads, List<Lap> laps, List<Report> reports) {
        int until = 0;
        while (until < treads.size() && treads.get(until) < low - 0.5) {
            until++;
        }
        boolean never = until == treads.size();
        double cold = never ? Limits.ramp(low - treads.get(until - 1), 0, limits.of("tyres.clear")) : 0;
        double late = Limits.ramp(until, limits.of("tyres.warm-laps"), limits.of("tyres.warm-laps-clear"));
        double certainty = 0.9 * Math.max(cold, late);
        if (certainty < limits.of("grades.told")) {
            return;
        }
        List<Measured.Place> places = new ArrayList<>();
        for (int i = 0; i < Math.min(until, 12); i++) {
            places.add(place(laps.get(i), treads.get(i), low));
        }
        String how = "mean tread temperature of the " + axle.id() + " tyres: " + (never ? "never in their window, "
                + Figures.fixed(treads.get(until - 1), 0) + " °C in the last lap" : "in their window from lap "
                + laps.get(until).number() + " on, after " + until + " laps") + "; the window begins at "
                + Figures.fixed(low, 0) + " °C";
        reports.add(report(Symptom.SLOW_WARM_UP, axle, never ? Since.WHOLE_RUN : Since.FIRST_LAPS,
                severity(Math.max(low - treads.get(Math.max(0, until - 1)), 0), certainty), certainty, how, places));
    }

    private void hot(Axle axle, double high, List<Double> treads, List<Lap> laps, List<Report> reports) {
        double[] over = treads.stream().mapToDouble(it -> it - high).toArray();
        Grade grade = Grade.of(over, 0, limits.of("tyres.clear"), limits);
        if (grade.certainty() < limits.of("grades.told")) {
            return;
        }
        List<Measured.Place> places = new ArrayList<>();
        double most = 0;
        for (int i = 0; i < over.length; i++) {
            if (over[i] > 0 && places.size() < 12) {
                places.add(place(laps.get(i), treads.get(i), high));
            }
            most = Math.max(most, over[i]);
        }
        String how = "mean tread temperature of the " + axle.id() + " tyres: up to " + Figures.fixed(high + most, 0)
                + " °C; the window ends at " + Figures.fixed(high, 0) + " °C";
        // How often is how many laps of it there were; heat that has come stays, so that is no measure of certainty.
        reports.add(report(Symptom.OVERHEATING, axle, grade.since().orElse(Since.WHOLE_RUN), severity(most, 1),
                grade.certainty(), how, places));
    }

    private static Severity severity(double off, double least) {
        return off < 5 && least < 0.6 ? Severity.SLIGHT : off < 15 ? Severity.CLEAR : Severity.STRONG;
    }

    private static Measured.Place place(Lap lap, double tread, double limit) {
        return new Measured.Place(OptionalInt.empty(), OptionalInt.of(lap.number()), Math.rint(tread * 10) / 10, limit, "°C");
    }

    private static Report report(Symptom symptom, Axle axle, Since since, Severity severity, double certainty, String how,
            List<Measured.Place> places) {
        return new Report(symptom, Optional.of(Word.of(Place.class, axle.id())), Optional.empty(), Optional.empty(),
                severity, Occurrence.EVERY_LAP, Optional.of(since), Optional.empty())
                .withMeasured(new Measured(Math.rint(certainty * 1000) / 1000, 0, how, places));
    }
}
