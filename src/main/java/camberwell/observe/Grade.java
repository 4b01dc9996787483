package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Since;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How clear, how regular and how lasting something is over the laps of a run.
 *
 * @param clearness of each lap, 0 to 1
 * @param laps the clear laps together, k
 * @param certainty that it is so at all: {@code Σm²/k · k/(k + 1)}
 * @param weight of how regular it is: linear through once in the run (0.35), half of the laps (0.7) and all (1), the weights
 *     that the ranking gives the words
 */
record Grade(double[] clearness, double laps, double certainty, double weight, Occurrence occurrence,
        Optional<Since> since) {

    private static final double ONCE = 0.35;
    private static final double SOME = 0.7;

    /**
     * Of the laps alone in which it was measured.
     *
     * @param figures one for each lap, in order
     * @param measured whether it was, for each lap; the clearness of the others is 0
     */
    static Grade of(double[] figures, boolean[] measured, double starts, double clear, Limits limits) {
        int[] laps = IntStream.range(0, figures.length).filter(lap -> measured[lap]).toArray();
        Grade grade = of(Arrays.stream(laps).mapToDouble(lap -> figures[lap]).toArray(), starts, clear, limits);
        double[] all = new double[figures.length];
        for (int i = 0; i < laps.length; i++) {
            all[laps[i]] = grade.clearness[i];
        }
        return new Grade(all, grade.laps, grade.certainty, grade.weight, grade.occurrence, grade.since);
    }

    /** @param figures one for each lap, in order; not a number where the lap shows nothing either way */
    static Grade of(double[] figures, double starts, double clear, Limits limits) {
        int n = figures.length;
        double[] m = new double[n];
        double k = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            m[i] = Limits.ramp(figures[i], starts, clear);
            k += m[i];
            squares += m[i] * m[i];
        }
        double certainty = k > 0 ? squares / k * k / (k + 1) : 0;
        Optional<Since> since = since(m, limits);
        double share = n == 0 ? 0 : k / n;
        int from = 0;
        int to = n;
        if (since.isPresent() && since.get() != Since.WHOLE_RUN) {
            from = since.get() == Since.FIRST_LAPS ? 0 : n - third(n);
            to = from + third(n);
            share = sum(m, from, to) / (to - from);
        }
        int of = to - from;
        double regularity = regularity(m, from, to);
        // Three faint laps are three and not one clear one: what counts is how many laps it is spread over.
        Occurrence occurrence = regularity >= limits.of("grades.every-lap") ? Occurrence.EVERY_LAP
                : regularity * of <= limits.of("grades.once") && n >= 4 ? Occurrence.ONCE : Occurrence.SOME_LAPS;
        return new Grade(m, k, certainty, weight(share, of), occurrence, since);
    }

    /**
     * The share of the laps that it is spread over, {@code (Σm)²/(n Σm²)}: 1 where all laps show the same, however faint, 1/n
     * where one lap has it all.
     */
    private static double regularity(double[] m, int from, int to) {
        double sum = 0;
        double squares = 0;
        for (int i = from; i < to; i++) {
            sum += m[i];
            squares += m[i] * m[i];
        }
        return squares > 0 ? sum * sum / squares / (to - from) : 0;
    }

    private static double sum(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum;
    }

    private static int third(int n) {
        return Math.max(1, (int) Math.round(n / 3.0));
    }

    private static Optional<Since> since(double[] m, Limits limits) {
        int n = m.length;
        if (n < limits.of("grades.since-laps")) {
            return Optional.empty();
        }
        int third = third(n);
        double first = sum(m, 0, third) / third;
        double last = sum(m, n - third, n) / third;
        double early = first * (1 - last);
        double late = last * (1 - first);
        double whole = Math.min(first, last);
        double most = Math.max(whole, Math.max(early, late));
        return most < limits.of("grades.since") ? Optional.empty()
                : Optional.of(most == whole ? Since.WHOLE_RUN : most == early ? Since.FIRST_LAPS : Since.LATE_RUN);
    }

    static double weight(double share, int n) {
        double once = 1.0 / n;
        if (n < 3) {
            return share;
        }
        return share <= once ? ONCE * share / once
                : share <= 0.5 ? ONCE + (SOME - ONCE) * (share - once) / (0.5 - once)
                : SOME + (1 - SOME) * (Math.min(1, share) - 0.5) / 0.5;
    }

    /** Certainty and regularity together: how far one may build on it. */
    double strength() {
        return certainty * weight;
    }
}
