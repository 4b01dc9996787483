package camberwell.observe;

import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * What slid in a run of the transient model, off the slip angles of its tyres, which no log has. A slide counts as there
 * from two degrees beyond the tyres' own line in the median lap, 0.4 s or more from the next phase, and may be told from 0.7
 * degrees on within as much; what is between the two is neither demanded nor forbidden.
 */
final class TransientTruth {

    private static final double THERE = 2.0;
    private static final double MAY_BE = 0.7;
    private static final int WINDOW = 10;
    private static final int SLOPE = 5;
    private static final int BLUR = 40;
    private static final int CATCH = 100;
    /** Share of its most that the curvature of a clothoid has where a phase ends. */
    private static final double SAME = 0.9;
    private static final double SLOW_BELOW = 81;
    private static final double FAST_ABOVE = 137;
    private static final double OPEN = 0.05;

    final Set<KnownRun.Truth> there = new HashSet<>();
    final Set<KnownRun.Truth> mayBe = new HashSet<>();

    private final TransientRun run;
    private final double[] beyond;

    TransientTruth(TransientRun run) {
        this.run = run;
        this.beyond = beyond();
        Map<Integer, List<int[]>> corners = corners();
        corners.forEach((bend, laps) -> corner(laps, run.bends.get(bend)));
    }

    /**
     * Degrees of understeer angle beyond the car's own line, over a fifth of a second. The line has what a log's has, for a
     * differential that locks takes steering with the curvature: curvature, lateral acceleration, change of the yaw rate.
     */
    private double[] beyond() {
        int size = run.samples.size();
        double strongest = run.samples.stream().mapToDouble(it -> Math.abs(it.ay)).max().orElseThrow();
        List<double[]> rows = new ArrayList<>();
        List<Double> angles = new ArrayList<>();
        for (int i = SLOPE; i < size - SLOPE; i += 3) {
            double lateral = Math.abs(run.samples.get(i).ay);
            if (lateral > 0.1 * strongest && lateral < 0.6 * strongest) {
                rows.add(asked(i));
                angles.add(run.understeer.get(i));
            }
        }
        OLSMultipleLinearRegression line = new OLSMultipleLinearRegression();
        line.setNoIntercept(true);
        line.newSampleData(angles.stream().mapToDouble(it -> it).toArray(), rows.toArray(new double[0][]));
        double[] fitted = line.estimateRegressionParameters();
        double[] sum = new double[size + 1];
        for (int i = 0; i < size; i++) {
            double own = 0;
            if (Math.abs(run.samples.get(i).ay) > 0.1 * strongest && i >= SLOPE && i < size - SLOPE) {
                double[] asked = asked(i);
                own = run.understeer.get(i) - fitted[0] * asked[0] - fitted[1] * asked[1] - fitted[2] * asked[2];
            }
            sum[i + 1] = sum[i] + Math.toDegrees(own);
        }
        double[] smooth = new double[size];
        for (int i = 0; i < size; i++) {
            int from = Math.max(0, i - WINDOW);
            int to = Math.min(size, i + WINDOW);
            smooth[i] = (sum[to] - sum[from]) / (to - from);
        }
        return smooth;
    }

    private double[] asked(int i) {
        MadeRun.Sample sample = run.samples.get(i);
        double side = Math.signum(sample.ay);
        double change = (run.samples.get(i + SLOPE).r - run.samples.get(i - SLOPE).r) / (2 * SLOPE * MadeRun.DT);
        return new double[] {side * sample.r / sample.v, Math.abs(sample.ay), side * change};
    }

    /** First and last sample of each corner of each lap. */
    private Map<Integer, List<int[]>> corners() {
        Map<Integer, List<int[]>> corners = new TreeMap<>();
        double from = 0;
        for (int bend = 0; bend < run.bends.size(); bend++) {
            TransientRun.Bend shape = run.bends.get(bend);
            double start = from + shape.before();
            double end = start + 2 * shape.ease() + shape.arc();
            int first = -1;
            for (int i = 1; i < run.samples.size(); i++) {
                double at = run.samples.get(i).lapDistance;
                double before = run.samples.get(i - 1).lapDistance;
                first = before < start && at >= start ? i : first;
                if (first > 0 && before < end && at >= end) {
                    corners.computeIfAbsent(bend, fresh -> new ArrayList<>()).add(new int[] {first, i});
                    first = -1;
                }
            }
            from = end;
        }
        return corners;
    }

    private void corner(List<int[]> laps, TransientRun.Bend bend) {
        Map<Phase, List<double[]>> found = new EnumMap<>(Phase.class);
        double slowest = Double.POSITIVE_INFINITY;
        for (int[] lap : laps) {
            Phase[] phases = phases(lap, bend);
            slowest = Math.min(slowest, slowest(lap));
            for (Phase phase : List.of(Phase.ENTRY, Phase.MID_CORNER, Phase.EXIT)) {
                found.computeIfAbsent(phase, fresh -> new ArrayList<>()).add(extremes(lap, phases, phase));
            }
        }
        for (Map.Entry<Phase, List<double[]>> entry : found.entrySet()) {
            mark(Symptom.UNDERSTEER, entry.getKey(), slowest * 3.6, entry.getValue(), 0);
            mark(Symptom.OVERSTEER, entry.getKey(), slowest * 3.6, entry.getValue(), 2);
        }
    }

    private double slowest(int[] lap) {
        double slowest = Double.POSITIVE_INFINITY;
        for (int i = lap[0]; i < lap[1]; i++) {
            slowest = Math.min(slowest, run.samples.get(i).v);
        }
        return slowest;
    }

    /** By the course, whose curvature is known: a car that turns in too far has none of its own that would tell. */
    private Phase[] phases(int[] lap, TransientRun.Bend bend) {
        double start = run.samples.get(lap[0]).lapDistance;
        double most = bend.ease() * SAME;
        double length = 2 * bend.ease() + bend.arc();
        Phase[] phases = new Phase[lap[1] - lap[0]];
        for (int i = lap[0]; i < lap[1]; i++) {
            double in = run.samples.get(i).lapDistance - start;
            phases[i - lap[0]] = in < most ? Phase.ENTRY
                    : in > length - most || onPower(i) ? Phase.EXIT : Phase.MID_CORNER;
        }
        return phases;
    }

    /** A throttle that gains speed; one that holds it in the turn is no exit. */
    private boolean onPower(int i) {
        double gain = (run.samples.get(Math.min(run.samples.size() - 1, i + SLOPE)).v
                - run.samples.get(Math.max(0, i - SLOPE)).v) / (2 * SLOPE * MadeRun.DT);
        return run.samples.get(i).throttle >= 0.2 && gain > 0.3;
    }

    /** Most of either end in the phase, and within a moment of it: front, front about, rear, rear about. */
    private double[] extremes(int[] lap, Phase[] phases, Phase phase) {
        double[] most = new double[4];
        int caught = Integer.MIN_VALUE / 2;
        for (int i = lap[0]; i < lap[1]; i++) {
            caught = beyond[i] < -1 ? i : caught;
            boolean here = phases[i - lap[0]] == phase;
            boolean near = here;
            boolean alone = here;
            for (int k = Math.max(lap[0], i - BLUR); k < Math.min(lap[1], i + BLUR); k += 5) {
                near |= phases[k - lap[0]] == phase;
                alone &= phases[k - lap[0]] == phase;
            }
            if (near) {
                most[1] = Math.max(most[1], beyond[i]);
                most[3] = Math.max(most[3], -beyond[i]);
            }
            if (alone) {
                most[0] = Math.max(most[0], i - caught < CATCH ? 0 : beyond[i]);
                most[2] = Math.max(most[2], -beyond[i]);
            }
        }
        return most;
    }

    private void mark(Symptom symptom, Phase phase, double slowest, List<double[]> laps, int at) {
        double median = Robust.median(laps.stream().map(it -> it[at]).toList());
        double about = laps.stream().mapToDouble(it -> it[at + 1]).max().orElse(0);
        List<CornerSpeed> speeds = new ArrayList<>();
        for (CornerSpeed speed : CornerSpeed.values()) {
            boolean slow = slowest < SLOW_BELOW * (1 + OPEN);
            boolean fast = slowest > FAST_ABOVE * (1 - OPEN);
            boolean medium = slowest > SLOW_BELOW * (1 - OPEN) && slowest < FAST_ABOVE * (1 + OPEN);
            if (speed == CornerSpeed.SLOW ? slow : speed == CornerSpeed.FAST ? fast : medium) {
                speeds.add(speed);
            }
        }
        if (median >= THERE && speeds.size() == 1) {
            there.add(new KnownRun.Truth(symptom, phase, Optional.of(speeds.get(0))));
        }
        if (about >= MAY_BE) {
            speeds.forEach(speed -> mayBe.add(new KnownRun.Truth(symptom, phase, Optional.of(speed))));
            mayBe.add(new KnownRun.Truth(symptom, phase, Optional.empty()));
        }
    }
}
