package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.List;

/**
 * The corners of a circuit: where the curvature of the path, taken at each place as the median of all laps, asks for
 * lateral acceleration.
 *
 * @param length of the median lap, m
 * @param corners in the order they come
 * @param asked lateral acceleration that the path asks for at each step of the grid, m/s²
 */
record CornerMap(double length, List<Corner> corners, double[] asked) {

    /** A stretch of one bend. */
    record Bend(int from, int to, int sign) {
    }

    /** Laps that the medians are taken of: more add nothing. */
    private static final int ENOUGH = 41;

    static CornerMap of(Trace trace, List<Lap> laps, Limits limits) {
        List<Lap> counting = laps.stream().filter(Lap::counts).toList();
        int stride = Math.max(1, counting.size() / ENOUGH);
        double length = Robust.median(counting.stream().map(Lap::metres).toList());
        double grid = limits.of("corners.grid");
        int points = (int) (length / grid);
        List<double[]> curvatures = new ArrayList<>();
        List<double[]> speeds = new ArrayList<>();
        for (int i = 0; i < counting.size(); i += stride) {
            LapWay way = LapWay.of(trace, counting.get(i), length);
            curvatures.add(way.onGrid(grid, points, trace::curvature));
            speeds.add(way.onGrid(grid, points, trace::speed));
        }
        double[] curvature = smooth(medians(curvatures, points));
        double[] speed = medians(speeds, points);
        double[] asked = new double[points];
        for (int i = 0; i < points; i++) {
            asked[i] = curvature[i] * speed[i] * speed[i];
        }
        List<Corner> corners = new ArrayList<>();
        for (Bend bend : bends(asked, limits.of("corners.turn-on"), limits.of("corners.turn-off"))) {
            corner(bend, curvature, speed, grid, corners, limits);
        }
        return new CornerMap(length, List.copyOf(corners), asked);
    }

    private static double[] medians(List<double[]> laps, int points) {
        double[] medians = new double[points];
        double[] values = new double[laps.size()];
        for (int i = 0; i < points; i++) {
            for (int k = 0; k < values.length; k++) {
                values[k] = laps.get(k)[i];
            }
            medians[i] = Robust.median(values);
        }
        return medians;
    }

    /** Means over ten metres: a bump is no corner. */
    private static double[] smooth(double[] values) {
        int n = values.length;
        double[] smooth = new double[n];
        for (int i = 0; i < n; i++) {
            double sum = 0;
            int count = 0;
            for (int k = Math.max(0, i - 2); k <= Math.min(n - 1, i + 2); k++) {
                if (!Double.isNaN(values[k])) {
                    sum += values[k];
                    count++;
                }
            }
            smooth[i] = count == 0 ? 0 : sum / count;
        }
        return smooth;
    }

    /** Stretches of one sign, with one limit for their beginning and a lower one for their end on either side. */
    static List<Bend> bends(double[] asked, double on, double off) {
        List<Bend> bends = new ArrayList<>();
        int from = -1;
        for (int i = 0; i <= asked.length; i++) {
            int sign = from < 0 ? 0 : (int) Math.signum(asked[from]);
            if (from >= 0 && (i == asked.length || asked[i] * sign < off)) {
                bends.add(new Bend(from, i - 1, sign));
                from = -1;
            }
            if (i < asked.length && from < 0 && Math.abs(asked[i]) >= on) {
                from = i;
                int was = bends.isEmpty() ? -1 : bends.get(bends.size() - 1).to;
                // It began where the lower limit was passed.
                while (from - 1 > was && asked[from - 1] * asked[i] > 0 && Math.abs(asked[from - 1]) >= off) {
                    from--;
                }
            }
        }
        return bends;
    }

    private static void corner(Bend bend, double[] curvature, double[] speed, double grid, List<Corner> corners,
            Limits limits) {
        double heading = 0;
        double most = 0;
        double slowest = Double.MAX_VALUE;
        for (int i = bend.from; i <= bend.to; i++) {
            heading += Math.abs(curvature[i]) * grid;
            most = Math.max(most, Math.abs(curvature[i]));
            slowest = Math.min(slowest, speed[i]);
        }
        if (Math.toDegrees(heading) < limits.of("corners.least-heading")) {
            return;
        }
        int apexFrom = bend.from;
        while (Math.abs(curvature[apexFrom]) < limits.of("phases.apex") * most) {
            apexFrom++;
        }
        int apexTo = bend.to;
        while (Math.abs(curvature[apexTo]) < limits.of("phases.apex") * most) {
            apexTo--;
        }
        Turn turn = bend.sign > 0 ? Turn.LEFT : Turn.RIGHT;
        boolean linked = false;
        if (!corners.isEmpty()) {
            Corner before = corners.get(corners.size() - 1);
            double between = bend.from * grid - before.to();
            linked = before.turn() != turn && between / Math.max(5, speed[bend.from]) < limits.of("corners.linked");
        }
        double slow = limits.of("corners.slow-below") / 3.6;
        double fast = limits.of("corners.fast-above") / 3.6;
        double open = limits.of("corners.speed-open");
        CornerSpeed called = slowest < slow ? CornerSpeed.SLOW : slowest < fast ? CornerSpeed.MEDIUM : CornerSpeed.FAST;
        boolean firm = Math.abs(slowest / slow - 1) > open && Math.abs(slowest / fast - 1) > open;
        corners.add(new Corner(corners.size() + 1, bend.from * grid, apexFrom * grid, apexTo * grid, bend.to * grid, turn,
                slowest, called, firm, linked));
    }

    /** Where on the median lap a lap is, corner by corner. */
    LapWay way(Trace trace, Lap lap, Limits limits) {
        return LapWay.of(trace, lap, length).aligned(trace, asked, limits.of("corners.grid"), corners);
    }

    /** The corner at a place of the median lap; none between corners. */
    int at(double metres) {
        for (int i = 0; i < corners.size(); i++) {
            if (metres >= corners.get(i).from() && metres <= corners.get(i).to()) {
                return i;
            }
        }
        return -1;
    }

    /** The next corner from a place of the median lap on; none where there are none at all. */
    int next(double metres) {
        for (int i = 0; i < corners.size(); i++) {
            if (metres <= corners.get(i).to()) {
                return i;
            }
        }
        return corners.isEmpty() ? -1 : 0;
    }
}
