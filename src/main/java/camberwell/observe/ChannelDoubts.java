package camberwell.observe;

import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;

/** Channels held against each other: a zero that is none, a channel that comes late, a ratio that does not fit the geometry. */
final class ChannelDoubts {

    /** So many samples of a log tell it as well as all of them. */
    private static final int MOST = 40_000;
    /** By which yaw rate and lateral acceleration follow the steering, s: common practice, no source. */
    private static final double FOLLOWS = 0.1;

    private final Trace trace;
    private final Limits limits;

    ChannelDoubts(Trace trace, Limits limits) {
        this.trace = trace;
        this.limits = limits;
    }

    /**
     * A stated ratio against that which yaw rate and speed ask for: at small slip the road wheels stand at {@code L r/v}.
     *
     * @param stated angle of the steering wheel for one of the road wheels
     * @param free the line fitted without it
     */
    Optional<String> ratio(double stated, ReferenceLine free) {
        double off = Math.max(stated / free.ratio(), free.ratio() / stated);
        if (off > 0 && off < limits.of("doubts.ratio")) {
            return Optional.empty();
        }
        return Optional.of("the steering does not go with a ratio of " + Figures.fixed(stated, 1) + ": from yaw rate, speed and "
                + "wheelbase it would be " + Figures.fixed(free.ratio(), free.ratio() < 10 ? 1 : 0) + " : 1. Either the ratio "
                + "or the unit of the steering in the file for --channels is wrong");
    }

    /** Whether a stated ratio is so far off that slip angles made with it would be made up. */
    boolean absurd(double stated, ReferenceLine free) {
        return !(Math.max(stated / free.ratio(), free.ratio() / stated) < limits.of("doubts.ratio-absurd")
                && free.ratio() > 0);
    }

    /** The zeros of steering and yaw rate. */
    List<String> zeros(Optional<ReferenceLine> line) {
        List<String> doubts = new ArrayList<>();
        line.filter(it -> Math.abs(Math.toDegrees(it.offset() / it.ratio())) > limits.of("doubts.steering-zero"))
                .ifPresent(it -> doubts.add("the steering reads " + Figures.fixed(Math.toDegrees(it.offset()), 0)
                        + " deg where the car runs straight; that is taken off"));
        if (trace.hasSideslip()) {
            int stride = Math.max(1, trace.size() / MOST);
            double[] off = new double[trace.size() / stride];
            for (int k = 0; k < off.length; k++) {
                int i = k * stride;
                off[k] = trace.speed(i) > limits.of("signs.moving") ? trace.yaw(i) - trace.side(i) / trace.speed(i)
                        : Double.NaN;
            }
            double zero = Math.toDegrees(Robust.median(off));
            if (Math.abs(zero) > limits.of("doubts.yaw-zero")) {
                doubts.add("yaw rate and lateral acceleration do not have the same zero: the yaw rate reads "
                        + Figures.fixed(Math.abs(zero), 1) + " deg/s too much to the " + (zero > 0 ? "left" : "right")
                        + ", or the lateral acceleration too little. What shows in turns of one direction alone may come "
                        + "from that");
            }
        }
        return doubts;
    }

    /**
     * One of two channels that do not come together.
     *
     * @param wrong the one that goes less with the steering, or the yaw rate where there is none
     */
    record Apart(Kind wrong, String doubt) {
    }

    /**
     * A yaw rate that does not come with the lateral acceleration: held against each other they would make a slide of every
     * turn-in. Both follow the steering within a tenth of a second or two, so that it tells which of them to leave out.
     */
    Optional<Apart> apart() {
        if (!trace.hasSideslip()) {
            return Optional.empty();
        }
        double late = late(i -> trace.yaw(i) * trace.speed(i), trace::side);
        if (Math.abs(late) < limits.of("doubts.late")) {
            return Optional.empty();
        }
        boolean yaw = !trace.hasSteering() || Math.abs(late(trace::yaw, this::steered) - FOLLOWS)
                >= Math.abs(late(i -> trace.side(i) / Math.max(1, trace.speed(i)), this::steered) - FOLLOWS);
        return Optional.of(new Apart(yaw ? Kind.YAW_RATE : Kind.LATERAL_ACCELERATION, "the yaw rate comes "
                + Figures.fixed(Math.abs(late), 2) + " s " + (late > 0 ? "later" : "sooner") + " than the lateral acceleration: "
                + "the two are not on one clock; " + (!trace.hasSteering() ? "the yaw rate is left out"
                : "by the steering it is the " + (yaw ? "yaw rate" : "lateral acceleration") + " that is wrong, and it is left "
                + "out")));
    }

    /** What yaw rate the steering asks for, but for a factor. */
    private double steered(int i) {
        return trace.steering(i) * trace.speed(i);
    }

    /**
     * Seconds by which the speed comes later than the wheels; 0 where the two come together. A channel that is late is late
     * everywhere, so that it is looked for where the wheels roll: wheels that lock slow down sooner than the car.
     *
     * @param wheels mean speed of an axle's wheels at each sample, m/s; not a number where they may slip
     */
    double lateSpeed(float[] wheels) {
        int step = trace.samples(0.1);
        double late = late(i -> trace.speed(i + step) - trace.speed(i - step), i -> wheels[i + step] - wheels[i - step]);
        return Math.abs(late) < limits.of("doubts.late") ? 0 : late;
    }

    /** Seconds by which one channel comes later than another, where they are most alike. */
    private double late(IntToDoubleFunction one, IntToDoubleFunction other) {
        int most = trace.samples(1);
        int ends = most + trace.samples(0.1);
        int stride = Math.max(1, trace.size() / MOST);
        double best = -1;
        int shift = 0;
        for (int lag = -most; lag <= most; lag++) {
            double xx = 0;
            double xy = 0;
            double yy = 0;
            for (int i = ends; i + ends < trace.size(); i += stride) {
                double x = one.applyAsDouble(i + lag);
                double y = other.applyAsDouble(i);
                if (!Double.isNaN(x * y)) {
                    xx += x * x;
                    xy += x * y;
                    yy += y * y;
                }
            }
            double alike = xx * yy > 0 ? xy / Math.sqrt(xx * yy) : -1;
            if (alike > best) {
                best = alike;
                shift = lag;
            }
        }
        return shift / trace.rate();
    }
}
