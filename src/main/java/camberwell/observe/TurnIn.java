package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How the car answers to the steering as it turns in: how long after it the yaw rate comes, and how much of it. What is
 * ordinary no log tells by itself, since sensors lag too; so it is held against the other laps, or against an earlier run of
 * the same car, circuit and logger.
 */
final class TurnIn {

    /** Places of an earlier run's corner that are the same corner, m apart: judgement, no source. */
    private static final double SAME_PLACE = 40;

    private final MappedRun run;
    private final Limits limits;
    private final float[] beyond;
    private final double starts;

    /**
     * @param beyond understeer angle beyond the line at each sample, degrees
     * @param starts that angle from which an axle slides
     */
    TurnIn(MappedRun run, float[] beyond, double starts) {
        this.run = run;
        this.limits = run.limits();
        this.beyond = beyond;
        this.starts = starts;
    }

    /**
     * The answer of one corner in one lap.
     *
     * @param lag s by which the yaw rate follows the steering
     * @param gain yaw rate over the one that the steering asks for by the car's own line
     */
    record Answer(double lag, double gain) {
    }

    /** What a corner's answers are as a rule, and how far they lie apart. */
    private record Usual(Answer answer, double lagScatter, double gainScatter) {
    }

    /** What is measured for an answer that comes late, or that is more than was asked for. */
    Measure measure(Symptom symptom, Optional<MappedRun> earlier) {
        boolean slow = symptom == Symptom.SLOW_TURN_IN;
        String than = earlier.map(it -> "in " + it.trace().log().name()).orElse("in the other laps");
        return new Measure(symptom, Optional.empty(), limits.of(slow ? "answer.later-starts" : "answer.more-starts"),
                limits.of(slow ? "answer.later-clear" : "answer.more-clear"), slow ? "ms" : "%",
                slow ? "yaw rate that follows the steering later than " + than
                        : "yaw rate that the same steering gives beyond that " + than, 0);
    }

    /** Sightings of either. */
    List<Sighting> of(Symptom symptom, Optional<MappedRun> earlier) {
        boolean slow = symptom == Symptom.SLOW_TURN_IN;
        List<Sighting> seen = new ArrayList<>();
        ReferenceLine line = earlier.flatMap(MappedRun::line).orElseGet(() -> run.line().orElseThrow());
        for (Corner corner : run.map().corners()) {
            List<Answer> own = answers(run, corner, line);
            Optional<Usual> usual = usual(corner, own, earlier, line);
            for (int lap = 0; lap < own.size() && usual.isPresent(); lap++) {
                double later = 1000 * beyond(own.get(lap).lag - usual.get().answer.lag, usual.get().lagScatter);
                double more = 100 * beyond(own.get(lap).gain / usual.get().answer.gain - 1, usual.get().gainScatter);
                // A car that answers with more than was asked for is not slow, however the two are brought to match.
                double figure = !slow ? more : more > limits.of("answer.more-starts") ? Math.min(0, later) : later;
                if (!Double.isNaN(figure)) {
                    seen.add(new Sighting(lap, corner.number() - 1, Phase.ENTRY, figure, begins(run, lap, corner)));
                }
            }
        }
        return seen;
    }

    /** What is left of a difference when as much as the laps differ by anyway is taken off. */
    private double beyond(double difference, double scatter) {
        return Math.signum(difference) * Math.max(0, Math.abs(difference) - limits.of("answer.scatter") * scatter);
    }

    /** The same corner of an earlier run: at the same place, turning the same way. */
    static Optional<Corner> same(Corner corner, MappedRun earlier) {
        return earlier.map().corners().stream().filter(it -> it.turn() == corner.turn()
                && Math.abs(it.from() - corner.from()) < SAME_PLACE).findFirst();
    }

    private Optional<Usual> usual(Corner corner, List<Answer> own, Optional<MappedRun> earlier, ReferenceLine line) {
        List<Answer> answers = own;
        if (earlier.isPresent()) {
            answers = same(corner, earlier.get()).map(it -> answers(earlier.get(), it, line)).orElse(List.of());
        }
        double[] lags = answers.stream().mapToDouble(Answer::lag).filter(it -> !Double.isNaN(it)).toArray();
        double[] gains = answers.stream().mapToDouble(Answer::gain).filter(it -> !Double.isNaN(it)).toArray();
        return lags.length < (earlier.isPresent() ? 2 : 4) ? Optional.empty()
                : Optional.of(new Usual(new Answer(Robust.median(lags), Robust.median(gains)), Robust.deviation(lags),
                        Robust.deviation(gains) / Robust.median(gains)));
    }

    private List<Answer> answers(MappedRun of, Corner corner, ReferenceLine line) {
        List<Answer> answers = new ArrayList<>();
        for (int lap = 0; lap < of.laps().size(); lap++) {
            answers.add(answer(of, lap, corner, line));
        }
        return answers;
    }

    private static int begins(MappedRun run, int lap, Corner corner) {
        double[] metres = run.phases().get(lap).way().metres();
        int i = 0;
        while (i < metres.length && metres[i] < corner.from()) {
            i++;
        }
        return run.laps().get(lap).from() + i;
    }

    /** The lag at which a multiple of the yaw rate asked for fits best to the one there is; nothing of a car that slides. */
    private Answer answer(MappedRun of, int lap, Corner corner, ReferenceLine line) {
        Answer none = new Answer(Double.NaN, Double.NaN);
        Trace trace = of.trace();
        int from = begins(of, lap, corner) - trace.samples(limits.of("answer.before"));
        int to = from;
        double[] metres = of.phases().get(lap).way().metres();
        int lapFrom = of.laps().get(lap).from();
        while (to - lapFrom < metres.length && metres[Math.max(0, to - lapFrom)] < corner.apexFrom()) {
            to++;
        }
        int longest = trace.samples(limits.of("answer.longest"));
        if (from - longest < 0 || to + longest >= trace.size() || to - from < trace.samples(limits.of("answer.least"))) {
            return none;
        }
        double most = 0;
        for (int i = from; i < to; i++) {
            most = Math.max(most, Math.abs(trace.yaw(i)));
            boolean slides = of == run && Math.abs(beyond[i]) > starts;
            if (slides || Double.isNaN(trace.yaw(i) + trace.steering(i))) {
                return none;
            }
        }
        double[] fits = new double[2 * longest + 1];
        int best = 0;
        for (int lag = -longest; lag <= longest; lag++) {
            fits[lag + longest] = fit(of, line, from, to, lag)[0];
            best = fits[lag + longest] > fits[best] ? lag + longest : best;
        }
        if (fits[best] < limits.of("answer.alike") || best == 0 || best == fits.length - 1
                || Math.toDegrees(most) < limits.of("answer.yaw")) {
            return none;
        }
        double bend = fits[best - 1] - 2 * fits[best] + fits[best + 1];
        double part = bend < 0 ? 0.5 * (fits[best - 1] - fits[best + 1]) / bend : 0;
        return new Answer((best - longest + part) / trace.rate(), fit(of, line, from, to, best - longest)[1]);
    }

    /** How alike the two are at a lag, as the square of their correlation through nought, and their ratio. */
    private static double[] fit(MappedRun of, ReferenceLine line, int from, int to, int lag) {
        double cross = 0;
        double asked = 0;
        double there = 0;
        for (int i = from; i < to; i++) {
            double want = of.asked(i - lag, line);
            double yaw = of.trace().yaw(i);
            cross += want * yaw;
            asked += want * want;
            there += yaw * yaw;
        }
        return new double[] {cross > 0 ? cross * cross / Math.max(1e-12, asked * there) : 0, cross / Math.max(1e-12, asked)};
    }
}
