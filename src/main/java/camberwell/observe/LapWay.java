package camberwell.observe;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/**
 * Where on the median lap the car is at each sample of a lap: the way it went by its speed, stretched to the median length.
 *
 * @param lap the lap
 * @param metres for each of its samples
 */
record LapWay(Lap lap, double[] metres) {

    /** Steps that a corner may lie off. */
    private static final int FARTHEST = 10;
    private static final double AROUND = 30;

    static LapWay of(Trace trace, Lap lap, double length) {
        double[] metres = new double[lap.to() - lap.from()];
        double way = 0;
        double last = 0;
        for (int i = 0; i < metres.length; i++) {
            metres[i] = way;
            double speed = trace.speed(lap.from() + i);
            last = Double.isNaN(speed) ? last : speed;
            way += last / trace.rate();
        }
        double stretch = way > 0 ? length / way : 1;
        for (int i = 0; i < metres.length; i++) {
            metres[i] *= stretch;
        }
        return new LapWay(lap, metres);
    }

    /**
     * The same with each corner shifted to where the median lap has it, and what lies between stretched: no two laps go the
     * same way, and their speed adds up to a little more or less.
     *
     * @param asked the lateral acceleration that the median lap's path asks for, at places of even distance
     */
    LapWay aligned(Trace trace, double[] asked, double step, List<Corner> corners) {
        double[] own = onGrid(step, asked.length, i -> trace.curvature(i) * Math.min(3600, trace.speed(i)
                * trace.speed(i)));
        double[] at = new double[corners.size()];
        double[] shift = new double[corners.size()];
        for (int c = 0; c < at.length; c++) {
            at[c] = (corners.get(c).from() + corners.get(c).to()) / 2;
            int from = Math.max(FARTHEST, (int) ((corners.get(c).from() - AROUND) / step));
            int to = Math.min(asked.length - 1 - FARTHEST, (int) ((corners.get(c).to() + AROUND) / step));
            shift[c] = step * shift(own, asked, from, to);
        }
        double[] shifted = metres.clone();
        for (int i = 0; i < shifted.length; i++) {
            shifted[i] -= between(at, shift, metres[i]);
        }
        return new LapWay(lap, shifted);
    }

    /** Steps by which the lap comes to a corner late. */
    private static int shift(double[] own, double[] asked, int from, int to) {
        int best = 0;
        double least = Double.MAX_VALUE;
        for (int shift = -FARTHEST; shift <= FARTHEST; shift++) {
            double sum = Math.abs(shift) * 1e-3 * Math.max(0, to - from);
            for (int i = from; i <= to; i++) {
                double off = own[i + shift] - asked[i];
                sum += Double.isNaN(off) ? 0 : off * off;
            }
            if (sum < least) {
                least = sum;
                best = shift;
            }
        }
        return best;
    }

    private static double between(double[] at, double[] shift, double place) {
        int next = 0;
        while (next < at.length && at[next] < place) {
            next++;
        }
        if (at.length == 0 || next == 0) {
            return at.length == 0 ? 0 : shift[0];
        }
        return next == at.length ? shift[next - 1] : shift[next - 1] + (shift[next] - shift[next - 1])
                * (place - at[next - 1]) / (at[next] - at[next - 1]);
    }

    /** A channel at places of even distance, interpolated. */
    double[] onGrid(double step, int points, IntToDoubleFunction channel) {
        double[] grid = new double[points];
        Arrays.fill(grid, Double.NaN);
        int at = 0;
        for (int i = 0; i < points; i++) {
            double place = i * step;
            while (at + 1 < metres.length && metres[at + 1] <= place) {
                at++;
            }
            if (at + 1 < metres.length) {
                double span = Math.max(1e-9, metres[at + 1] - metres[at]);
                double part = Math.min(1, (place - metres[at]) / span);
                double before = channel.applyAsDouble(lap.from() + at);
                grid[i] = before + part * (channel.applyAsDouble(lap.from() + at + 1) - before);
            }
        }
        return grid;
    }
}
