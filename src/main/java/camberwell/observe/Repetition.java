package camberwell.observe;

import java.util.ArrayList;
import java.util.List;

/**
 * The length of a lap where nothing tells it: the way after which the curvature of the path is most like itself.
 *
 * @param starts samples at which a lap begins
 */
record Repetition(List<Integer> starts) {

    private static final double STEP = 2;
    private static final double SHORTEST = 300;
    private static final double LONGEST = 26_000;
    /** Correlation from which on it is a repetition: judgement, no source. */
    private static final double ALIKE = 0.8;

    static Repetition of(Trace trace) {
        List<Integer> sampleAt = new ArrayList<>();
        List<Double> curvature = new ArrayList<>();
        double way = 0;
        for (int i = 0; i < trace.size(); i++) {
            double speed = trace.speed(i);
            way += Double.isNaN(speed) ? 0 : speed / trace.rate();
            if (way >= sampleAt.size() * STEP) {
                sampleAt.add(i);
                double bend = trace.curvature(i) * Math.min(400, speed * speed);
                curvature.add(Double.isNaN(bend) ? 0 : bend);
            }
        }
        int n = curvature.size();
        int most = (int) Math.min(LONGEST / STEP, n / 2.0);
        int lag = lag(curvature, n, most);
        List<Integer> starts = new ArrayList<>();
        if (lag > 0) {
            int first = straightest(curvature, lag);
            // Each lap is found anew near where it should begin, lest a little error add up.
            for (int at = first; at < n; at = next(curvature, first, at + lag, n)) {
                starts.add(sampleAt.get(at));
            }
        }
        return new Repetition(starts);
    }

    private static int lag(List<Double> curvature, int n, int most) {
        double best = 0;
        int found = 0;
        for (int lag = (int) (SHORTEST / STEP); lag <= most; lag++) {
            double alike = alike(curvature, 0, lag, n - lag);
            if (alike > best + 0.03) {
                best = alike;
                found = lag;
            } else if (found > 0 && lag < found + 50 && alike > best) {
                best = alike;
                found = lag;
            }
        }
        return best >= ALIKE ? found : 0;
    }

    private static double alike(List<Double> values, int from, int lag, int length) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        int stride = Math.max(1, length / 4000);
        for (int i = from; i < from + length; i += stride) {
            double x = values.get(i);
            double y = values.get(i + lag);
            xx += x * x;
            xy += x * y;
            yy += y * y;
        }
        return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 0;
    }

    /** The middle of the longest stretch without a bend in the first lap. */
    private static int straightest(List<Double> curvature, int lag) {
        int best = 0;
        int longest = 0;
        int from = 0;
        for (int i = 0; i <= lag && i < curvature.size(); i++) {
            if (i == lag || Math.abs(curvature.get(i)) > 1) {
                if (i - from > longest) {
                    longest = i - from;
                    best = (from + i) / 2;
                }
                from = i + 1;
            }
        }
        return best;
    }

    private static int next(List<Double> curvature, int first, int guess, int n) {
        int window = 100;
        int best = guess;
        double most = -1;
        for (int shift = -20; shift <= 20; shift++) {
            int lag = guess + shift - first;
            int from = Math.max(0, first - window);
            int length = Math.min(2 * window, n - lag - from);
            if (length > window) {
                double alike = alike(curvature, from, lag, length) - Math.abs(shift) * 1e-6;
                if (alike > most) {
                    most = alike;
                    best = guess + shift;
                }
            }
        }
        return best;
    }
}
