package camberwell.observe;

import camberwell.channel.Limits;
import java.util.Arrays;
import java.util.OptionalDouble;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.QRDecomposition;

/**
 * The car's own line: the steering that it takes in moderate cornering,
 * {@code δ = i (L r/v + K ay + D r') + δ0}. From it the understeer angle {@code U = δ/i - L r/v}, which is the slip angle of
 * the front axle less that of the rear one for any tyre (bicycle at small angles; T. D. Gillespie, Fundamentals of Vehicle
 * Dynamics, SAE, 1992, ch. 6), is held against what linear tyres would show. D, which is {@code (I/L)(1/Cf + 1/Cr)}, takes
 * up a channel that comes late, too.
 *
 * @param wheelbase m
 * @param ratio angle of the steering wheel for one of the road wheels
 * @param gradient K, rad per m/s²
 * @param yawDelay D, s²
 * @param offset δ0, rad at the steering wheel
 * @param scatter robust standard deviation about the line, rad at the road wheels
 * @param rows that the line was fitted to
 * @param alike correlation of turn and lateral acceleration over the rows: at 1, ratio and gradient cannot be told apart
 */
record ReferenceLine(double wheelbase, double ratio, double gradient, double yawDelay, double offset, double scatter,
        int rows, double alike) {

    private static final int ROUNDS = 40;
    private static final int MOST_ROWS = 30_000;
    private static final int FEWEST_ROWS = 60;

    /** What the line is fitted to: one row a sample. */
    record Row(double steering, double turn, double side, double yawChange) {
    }

    /**
     * Fitted by least absolute deviations, then by Tukey's bisquare: the slides that are looked for must not bend the line
     * they are looked for with.
     *
     * @param wheelbase m
     * @param ratio where it is known
     * @return no line where there are too few rows, or they do not tell
     */
    static java.util.Optional<ReferenceLine> fit(Trace trace, double wheelbase, OptionalDouble ratio, Limits limits) {
        int stride = Math.max(1, trace.samples(0.08));
        double slowest = limits.of("line.slowest");
        double[] sides = new double[trace.size() / stride];
        for (int i = 0; i < sides.length; i++) {
            int at = i * stride;
            sides[i] = trace.speed(at) > slowest ? Math.abs(trace.speed(at) * trace.yaw(at)) : Double.NaN;
        }
        double hard = Robust.percentile(sides, 0.95);
        while (sides.length / stride > MOST_ROWS) {
            stride *= 2;
        }
        double from = limits.of("line.from") * hard;
        double to = limits.of("line.to") * hard;
        int half = trace.samples(limits.of("line.steady")) / 2;
        java.util.List<Row> rows = new java.util.ArrayList<>();
        for (int at = 0; at < trace.size(); at += stride) {
            double speed = trace.speed(at);
            double asked = Math.abs(speed * trace.yaw(at));
            if (speed > slowest && asked >= from && asked <= to && turns(trace, at - half, at + half, from)) {
                Row row = new Row(trace.steering(at), wheelbase * trace.yaw(at) / speed, trace.side(at),
                        trace.yawChange(at));
                if (!Double.isNaN(row.steering + row.turn + row.side + row.yawChange)) {
                    rows.add(row);
                }
            }
        }
        if (rows.size() < FEWEST_ROWS) {
            return java.util.Optional.empty();
        }
        try {
            return java.util.Optional.of(fit(rows, wheelbase, ratio, limits.of("line.bisquare")));
        } catch (MathRuntimeException e) {
            return java.util.Optional.empty();
        }
    }

    /** Whether it turns one way on the whole: what wanders to and fro on a straight, steered against, is no cornering. */
    private static boolean turns(Trace trace, int from, int to, double least) {
        double sum = 0;
        int count = 0;
        for (int i = Math.max(0, from); i < Math.min(trace.size(), to); i++) {
            double turn = trace.speed(i) * trace.yaw(i);
            sum += Double.isNaN(turn) ? 0 : turn;
            count++;
        }
        return Math.abs(sum) >= least * count;
    }

    /** Fitted to rows as they are. */
    static ReferenceLine fit(java.util.List<Row> rows, double wheelbase, OptionalDouble ratio, double bisquare) {
        int n = rows.size();
        int known = ratio.isPresent() ? 1 : 0;
        double[][] x = new double[n][];
        double[] y = new double[n];
        for (int k = 0; k < n; k++) {
            Row row = rows.get(k);
            y[k] = row.steering - ratio.orElse(0) * row.turn;
            x[k] = known == 1 ? new double[] {row.side, row.yawChange, 1}
                    : new double[] {row.turn, row.side, row.yawChange, 1};
        }
        double[] weights = new double[n];
        Arrays.fill(weights, 1);
        double[] fitted = solve(x, y, weights);
        double[] rest = rest(x, y, fitted);
        double least = 1e-6 + 1e-4 * Robust.deviation(y);
        for (int round = 0; round < ROUNDS; round++) {
            for (int k = 0; k < n; k++) {
                weights[k] = 1 / Math.max(least, Math.abs(rest[k]));
            }
            fitted = solve(x, y, weights);
            rest = rest(x, y, fitted);
        }
        for (int round = 0; round < ROUNDS; round++) {
            double reach = bisquare * Math.max(least, Robust.PER_MAD * Robust.median(absolute(rest)));
            for (int k = 0; k < n; k++) {
                double part = rest[k] / reach;
                weights[k] = Math.abs(part) < 1 ? (1 - part * part) * (1 - part * part) : 0;
            }
            fitted = solve(x, y, weights);
            rest = rest(x, y, fitted);
        }
        double i = ratio.orElse(fitted[0]);
        return new ReferenceLine(wheelbase, i, fitted[1 - known] / i, fitted[2 - known] / i, fitted[3 - known],
                Robust.PER_MAD * Robust.median(absolute(rest)) / Math.abs(i), n, alike(rows));
    }

    private static double alike(java.util.List<Row> rows) {
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (Row row : rows) {
            xx += row.turn * row.turn;
            xy += row.turn * row.side;
            yy += row.side * row.side;
        }
        return xx * yy > 0 ? xy / Math.sqrt(xx * yy) : 1;
    }

    private static double[] absolute(double[] values) {
        return Arrays.stream(values).map(Math::abs).toArray();
    }

    private static double[] rest(double[][] x, double[] y, double[] fitted) {
        double[] rest = new double[y.length];
        for (int k = 0; k < y.length; k++) {
            double sum = y[k];
            for (int c = 0; c < fitted.length; c++) {
                sum -= fitted[c] * x[k][c];
            }
            rest[k] = sum;
        }
        return rest;
    }

    /** Weighted least squares, by the normal equations of columns scaled alike. */
    private static double[] solve(double[][] x, double[] y, double[] weights) {
        int m = x[0].length;
        double[] scale = new double[m];
        for (int k = 0; k < y.length; k++) {
            for (int c = 0; c < m; c++) {
                scale[c] += weights[k] * x[k][c] * x[k][c];
            }
        }
        for (int c = 0; c < m; c++) {
            scale[c] = scale[c] > 0 ? Math.sqrt(scale[c]) : 1;
        }
        double[][] a = new double[m][m];
        double[] b = new double[m];
        for (int k = 0; k < y.length; k++) {
            for (int c = 0; c < m; c++) {
                double weighted = weights[k] * x[k][c] / scale[c];
                b[c] += weighted * y[k];
                for (int d = c; d < m; d++) {
                    a[c][d] += weighted * x[k][d] / scale[d];
                }
            }
        }
        for (int c = 0; c < m; c++) {
            a[c][c] += 1e-12;
            for (int d = 0; d < c; d++) {
                a[c][d] = a[d][c];
            }
        }
        double[] solved = new QRDecomposition(new Array2DRowRealMatrix(a, false)).getSolver()
                .solve(new ArrayRealVector(b, false)).toArray();
        for (int c = 0; c < m; c++) {
            solved[c] /= scale[c];
        }
        return solved;
    }

    /** The understeer angle less what the line says for that turn, rad: positive where the front slides more. */
    double beyond(double steering, double speed, double yaw, double side, double yawChange) {
        double angle = (steering - offset) / ratio - wheelbase * yaw / speed;
        return Math.signum(side) * (angle - gradient * side - yawDelay * yawChange);
    }

    /** The same at a sample. */
    double beyond(Trace trace, int i) {
        return trace.speed(i) < 5 ? Double.NaN : beyond(trace.steering(i), trace.speed(i), trace.yaw(i), trace.side(i),
                trace.yawChange(i));
    }

    /** Understeer gradient in degrees per g (9.81 m/s²). */
    double gradientDegreesPerG() {
        return Math.toDegrees(gradient) * 9.81;
    }
}
