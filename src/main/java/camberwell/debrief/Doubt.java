package camberwell.debrief;

import camberwell.car.TyreSpec;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Two things that were told and do not go together: tyres that overheat with treads below their window, or that never warm
 * up with treads above it; or one end of the car that slid by the driver, and the other by the log. It is asked about once,
 * and what is answered counts.
 *
 * @param axle whose treads were read; empty where it is about the log
 * @param shown what the log shows; empty where it is about treads
 * @param text both, in words: {@code the front treads read 56 °C, below their window from 80 °C, and overheating was said}
 */
public record Doubt(Optional<Axle> axle, Optional<Report> shown, String text) {

    /** What is right. */
    public enum Choice {
        /** The figures; the complaint is taken back. */
        FIGURES("figures"),
        /** The complaint; the figures of that axle are taken back. */
        COMPLAINT("complaint"),
        BOTH("both");

        private final String id;

        Choice(String id) {
            this.id = id;
        }

        /** As it is typed. */
        public String id() {
            return id;
        }
    }

    /** What does not go together in that complaint of the case, if something does not. */
    static Optional<Doubt> in(Case run, Report report) {
        if (report.measured().isEmpty()) {
            for (Report other : run.reports()) {
                if (other.measured().isPresent() && other.contradicts(report)) {
                    return Optional.of(new Doubt(Optional.empty(), Optional.of(other), "the log shows " + other.text() + ", and "
                            + report.text() + " was said"));
                }
            }
        }
        if (report.symptom() != Symptom.OVERHEATING && report.symptom() != Symptom.SLOW_WARM_UP) {
            return Optional.empty();
        }
        for (Axle axle : report.where().map(Place::axle).map(List::of).orElse(List.of(Axle.values()))) {
            TyreSpec spec = run.car().tyres(axle);
            List<Double> read = treads(run, axle);
            double mean = read.stream().mapToDouble(Double::doubleValue).average().orElse(Double.NaN);
            if (report.symptom() == Symptom.OVERHEATING && spec.windowLow().filter(low -> mean < low.in(Unit.CELSIUS))
                    .isPresent()) {
                return Optional.of(treads(report, axle, mean, spec.windowLow().get().in(Unit.CELSIUS)));
            }
            if (report.symptom() == Symptom.SLOW_WARM_UP && spec.windowHigh().filter(high -> mean > high.in(Unit.CELSIUS))
                    .isPresent()) {
                return Optional.of(treads(report, axle, mean, spec.windowHigh().get().in(Unit.CELSIUS)));
            }
        }
        return Optional.empty();
    }

    private static List<Double> treads(Case run, Axle axle) {
        List<Double> read = new ArrayList<>();
        for (Map.Entry<Wheel, TyreReading> tyre : run.tyres().entrySet()) {
            if (tyre.getKey().axle() == axle) {
                List.of(tyre.getValue().inner(), tyre.getValue().middle(), tyre.getValue().outer())
                        .forEach(figure -> figure.map(it -> it.in(Unit.CELSIUS)).ifPresent(read::add));
            }
        }
        return read;
    }

    private static Doubt treads(Report report, Axle axle, double mean, double limit) {
        return new Doubt(Optional.of(axle), Optional.empty(), "the " + axle.id() + " treads read " + celsius(mean) + ", "
                + (mean < limit ? "below their window from " : "above their window up to ") + celsius(limit) + ", and "
                + report.symptom().spoken() + " was said");
    }

    private static String celsius(double value) {
        return new Quantity(value, Unit.CELSIUS).text(0);
    }
}
