package camberwell.report;

import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.reading.WheelFigures;
import camberwell.run.Report;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import java.util.Comparator;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoublePredicate;

/**
 * What is said of the complaints that nothing answers, one of the tyres' heat that the pyrometer does not bear out among them.
 */
final class Unanswered {

    private Unanswered() {
    }

    /** The complaints of which nothing is known, in the order of the vocabulary, whatever order they were written down in. */
    static List<Report> in(Advice advice) {
        return advice.answers().stream().filter(Answer::nothing).map(Answer::report)
                .sorted(Comparator.comparing(Report::symptom).thenComparing(Report::text)).toList();
    }

    /** What was read instead; empty where nothing was, or where it bears the complaint out. */
    static Optional<String> of(Advice advice, Report report) {
        if (report.symptom() == Symptom.OVERHEATING) {
            return read(advice, report, off -> off <= 0).map(mean -> "the treads read " + mean
                    + " °C on average, which is not too hot for them");
        }
        if (report.symptom() == Symptom.SLOW_WARM_UP) {
            return read(advice, report, off -> off >= 0).map(mean -> "the treads read " + mean
                    + " °C on average, which is warm enough for them");
        }
        return Symptom.isBrought(report.symptom()) ? Optional.of("no rule of the pack that brings the word speaks to this")
                : Optional.empty();
    }

    private static Optional<Long> read(Advice advice, Report report, DoublePredicate fine) {
        Optional<Axle> where = report.where().map(Place::axle);
        List<WheelFigures> wheels = advice.tyres().wheels().values().stream()
                .filter(figures -> where.isEmpty() || where.get() == figures.wheel().axle()).toList();
        boolean all = !wheels.isEmpty() && wheels.stream().allMatch(figures -> figures.tread().isPresent()
                && figures.offWindow().isPresent() && fine.test(figures.offWindow().getAsDouble()));
        return all ? Optional.of(Math.round(wheels.stream().mapToDouble(figures -> figures.tread().get().mean()).average()
                .getAsDouble())) : Optional.empty();
    }

    /** What to say and to do where nothing is known yet. */
    static String more(Advice advice) {
        if (!in(advice).isEmpty() && in(advice).stream().allMatch(report -> Symptom.isBrought(report.symptom()))) {
            return "A rule is missing: the word for the complaint comes from a pack, and no rule of it speaks to this.";
        }
        return read(advice) ? "Say more of what the car does." : "Say more of what the car does, and read the tyres.";
    }

    /** What to tell of one complaint that nothing speaks for a change of: what it leaves open, or how it goes with a margin. */
    static String more(Advice advice, Report report) {
        List<String> open = new ArrayList<>();
        if (report.phase().isEmpty() && !report.symptom().ofTyre()) {
            open.add("where in the corner it comes");
        }
        if (report.speed().isEmpty() && !report.symptom().ofTyre()) {
            open.add("whether in slow or in fast corners");
        }
        if (open.isEmpty()) {
            open.add("how it is on a lap at nine tenths");
        }
        return "Tell " + String.join(", and ", open) + (read(advice) ? "." : ", and read the tyres.");
    }

    /** What to tell where complaints that leave their part of the corner open have led to no change; blank where all say it. */
    static String open(Advice advice) {
        List<Report> open = advice.run().reports().stream()
                .filter(report -> report.phase().isEmpty() && !report.symptom().ofTyre()).toList();
        return open.isEmpty() ? "" : open.size() == 1 ? " " + more(advice, open.get(0))
                : " Tell where in the corner each comes" + (read(advice) ? "." : ", and read the tyres.");
    }

    private static boolean read(Advice advice) {
        return advice.tyres().wheels().values().stream().filter(figures -> figures.tread().isPresent()).count()
                == Wheel.values().length;
    }
}
