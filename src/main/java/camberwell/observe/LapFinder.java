package camberwell.observe;

import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.channel.Log;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Finds the laps of a log: by its lap counter, by a distance or a lap time that begins anew, by positions that come back to
 * a line, or by the run of the curvature that repeats itself. Out-laps, in-laps, laps with gaps and slow laps are left out.
 */
final class LapFinder {

    private final Trace trace;
    private final Log log;
    private final Limits limits;
    private String how = "";

    LapFinder(Trace trace, Limits limits) {
        this.trace = trace;
        this.log = trace.log();
        this.limits = limits;
    }

    /** How they were told apart, in words; after {@link #find()}. */
    String how() {
        return how;
    }

    /** Every lap, in the order they were driven. */
    List<Lap> find() {
        List<Integer> starts = byCounter();
        boolean numbered = !starts.isEmpty();
        if (starts.isEmpty()) {
            starts = byReset(Kind.DISTANCE, 100);
            how = "the distance, which begins anew";
        }
        if (starts.isEmpty()) {
            starts = byReset(Kind.LAP_TIME, 15);
            how = "the lap time, which begins anew";
        }
        if (starts.isEmpty()) {
            starts = byPosition();
            how = "positions, which come back to a line";
        }
        if (starts.isEmpty()) {
            starts = byRepetition();
            how = "the curvature, which repeats itself";
        }
        if (numbered) {
            how = "the lap counter";
        }
        if (starts.isEmpty()) {
            how = "nothing: the whole log is taken for one lap";
        }
        return judged(cut(starts, numbered));
    }

    /** Samples where the counter goes on; the lap before the first and after the last are laps too, if not whole ones. */
    private List<Integer> byCounter() {
        List<Integer> starts = new ArrayList<>();
        if (!log.has(Kind.LAP)) {
            return starts;
        }
        float[] lap = log.samples(Kind.LAP);
        float last = Float.NaN;
        for (int i = 0; i < log.size(); i++) {
            if (!Float.isNaN(lap[i])) {
                if (!Float.isNaN(last) && lap[i] != last) {
                    starts.add(i);
                }
                last = lap[i];
            }
        }
        return starts;
    }

    private List<Integer> byReset(Kind kind, double least) {
        List<Integer> starts = new ArrayList<>();
        if (!log.has(kind)) {
            return starts;
        }
        float[] values = log.samples(kind);
        float last = Float.NaN;
        for (int i = 0; i < log.size(); i++) {
            if (!Float.isNaN(values[i])) {
                if (last > least && values[i] < last * 0.3) {
                    starts.add(i);
                }
                last = values[i];
            }
        }
        return starts;
    }

    private List<Integer> byPosition() {
        boolean plane = log.has(Kind.POSITION_X) && log.has(Kind.POSITION_Y);
        boolean globe = log.has(Kind.LATITUDE) && log.has(Kind.LONGITUDE);
        if (!plane && !globe) {
            return new ArrayList<>();
        }
        float[] x = log.samples(globe ? Kind.LONGITUDE : Kind.POSITION_X);
        float[] y = log.samples(globe ? Kind.LATITUDE : Kind.POSITION_Y);
        // A line across the fastest straight: no corner is cut by it, and the car goes over it at a right angle.
        int fastest = -1;
        for (int i = log.size() / 3; i < log.size() * 2 / 3; i++) {
            if (!Double.isNaN(x[i] + y[i] + trace.speed(i))
                    && (fastest < 0 || trace.speed(i) > trace.speed(fastest))) {
                fastest = i;
            }
        }
        if (fastest < 0) {
            return new ArrayList<>();
        }
        int back = Math.max(0, fastest - trace.samples(0.5));
        return TimingLine.through(x[fastest], y[fastest], x[fastest] - x[back], y[fastest] - y[back])
                .crossings(x, y, log.size(), trace.samples(10));
    }

    /** The way after which the curvature is most like itself. */
    private List<Integer> byRepetition() {
        Repetition repetition = Repetition.of(trace);
        return repetition.starts();
    }

    private List<Lap> cut(List<Integer> starts, boolean numbered) {
        List<Integer> edges = new ArrayList<>(starts);
        for (int run : log.runs()) {
            if (!edges.contains(run)) {
                edges.add(run);
            }
        }
        edges.add(log.size());
        edges.sort(null);
        List<Lap> laps = new ArrayList<>();
        for (int i = 0; i + 1 < edges.size(); i++) {
            int from = edges.get(i);
            int to = edges.get(i + 1);
            if (to - from < trace.samples(5)) {
                continue;
            }
            int number = numbered ? counted(from, to) : laps.size() + 1;
            double metres = 0;
            int gap = 0;
            int longestGap = 0;
            for (int k = from; k < to; k++) {
                double step = trace.speed(k) / trace.rate();
                metres += Double.isNaN(step) ? 0 : step;
                gap = Double.isNaN(step + trace.side(k)) ? gap + 1 : 0;
                longestGap = Math.max(longestGap, gap);
            }
            boolean begins = starts.contains(from);
            boolean ends = starts.contains(to);
            Lap lap = new Lap(number, from, to, (to - from) / trace.rate(), metres, Optional.empty());
            if (!starts.isEmpty() && !begins) {
                lap = lap.leavingOut("out-lap, or cut off at its beginning");
            } else if (!starts.isEmpty() && !ends) {
                lap = lap.leavingOut("in-lap, or cut off at its end");
            } else if (longestGap > trace.samples(1)) {
                lap = lap.leavingOut(Figures.fixed(longestGap / trace.rate(), 1) + " s of it are missing");
            }
            laps.add(lap);
        }
        return laps;
    }

    private int counted(int from, int to) {
        float[] lap = log.samples(Kind.LAP);
        for (int i = (from + to) / 2; i < to; i++) {
            if (!Float.isNaN(lap[i])) {
                return Math.round(lap[i]);
            }
        }
        return 0;
    }

    private List<Lap> judged(List<Lap> laps) {
        double usual = Robust.median(laps.stream().filter(Lap::counts).map(Lap::metres).toList());
        List<Lap> whole = new ArrayList<>();
        for (Lap lap : laps) {
            // Where the log begins or ends just at the line, the lap is whole all the same.
            if (lap.counts() || lap.leftOut().orElse("").contains("cut off") && lap.metres() > 0.995 * usual
                    && lap.metres() < 1.005 * usual && stoppedAt(lap) < 0) {
                lap = new Lap(lap.number(), lap.from(), lap.to(), lap.seconds(), lap.metres(), Optional.empty());
            }
            if (lap.counts() && lap.metres() < limits.of("laps.short") * usual) {
                lap = lap.leavingOut("shorter than the others: " + Figures.fixed(lap.metres(), 0) + " m, not "
                        + Figures.fixed(usual, 0) + " m");
            } else if (lap.counts() && lap.metres() > usual / limits.of("laps.short")) {
                lap = lap.leavingOut("longer than the others: " + Figures.fixed(lap.metres(), 0) + " m, not "
                        + Figures.fixed(usual, 0) + " m");
            } else if (lap.counts() && laps.size() > 1 && stoppedAt(lap) >= 0) {
                lap = lap.leavingOut("the car all but stood still");
            }
            whole.add(lap);
        }
        return withoutSlow(whole);
    }

    private int stoppedAt(Lap lap) {
        double slowest = limits.of("laps.stopped");
        for (int i = lap.from(); i < lap.to(); i++) {
            if (trace.speed(i) < slowest) {
                return i;
            }
        }
        return -1;
    }

    /**
     * Leaves out laps that are slower than the trend of the stint by more than scatter explains: modified z-score of
     * Iglewicz and Hoaglin over a Theil-Sen line. With fewer than four laps there is no scatter to speak of, so a share of
     * the best lap decides.
     */
    private List<Lap> withoutSlow(List<Lap> laps) {
        List<Lap> counting = laps.stream().filter(Lap::counts).toList();
        double[] x = new double[counting.size()];
        double[] y = new double[counting.size()];
        for (int i = 0; i < x.length; i++) {
            x[i] = i;
            y[i] = counting.get(i).seconds();
        }
        double[] line = x.length < 4 ? new double[] {0, best(y)} : Robust.line(x, y);
        double[] rest = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            rest[i] = y[i] - line[0] * x[i] - line[1];
        }
        double deviation = x.length < 4 ? 0 : Robust.deviation(rest);
        double share = limits.of("laps.slow-share");
        List<Lap> kept = new ArrayList<>();
        for (Lap lap : laps) {
            int at = counting.indexOf(lap);
            double slow = at < 0 ? 0 : rest[at] - (x.length < 4 ? 0 : Robust.median(rest));
            kept.add(at >= 0 && slow > limits.of("laps.slow") * deviation && slow > share * lap.seconds()
                    ? lap.leavingOut("slow: " + Figures.fixed(slow, 1) + " s over the others") : lap);
        }
        return kept;
    }

    private static double best(double[] values) {
        double best = Double.MAX_VALUE;
        for (double value : values) {
            best = Math.min(best, value);
        }
        return best;
    }
}
