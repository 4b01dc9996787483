package camberwell.channel;

import camberwell.problem.Problem;
import camberwell.problem.ProblemsException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Gives each row its time in seconds: from a clock in whatever unit, or, where there is none, from the row's number. */
final class TimeBase {

    /** Rows farther apart than this show no slide, s: judgement, no source. */
    private static final double SLOWEST = 0.26;
    /** No clock counts farther from its beginning, s: three centuries, in which a double still tells microseconds apart. */
    private static final double FARTHEST = 1e10;
    private static final List<LoggedUnit> CANDIDATES = List.of(LoggedUnit.SECOND, LoggedUnit.MILLISECOND,
            LoggedUnit.MICROSECOND, LoggedUnit.NANOSECOND, LoggedUnit.DAY, LoggedUnit.MINUTE, LoggedUnit.HOUR);

    private final int slot;
    private final double factor;
    private final double period;
    private final boolean coarse;
    private final String told;
    private double lastRead = Double.NaN;
    private double last;

    private TimeBase(int slot, double factor, double period, boolean coarse, String told) {
        this.slot = slot;
        this.factor = factor;
        this.period = period;
        this.coarse = coarse;
        this.told = told;
        this.last = -period;
    }

    /**
     * Made out from the first rows.
     *
     * @throws ProblemsException if they are too far apart, or no clock and no rate is known
     */
    static TimeBase of(String log, Layout layout, ChannelMap map, Binding[] slots, Batch first) {
        int slot = find(slots, Kind.TIME);
        if (slot < 0) {
            return counted(log, layout, map, slots, first);
        }
        double[] steps = steps(first, slots.length, slot);
        double[] forward = Arrays.stream(steps).filter(step -> step > 0).sorted().toArray();
        if (forward.length == 0) {
            throw new ProblemsException(Problem.error(log, layout.firstRow(), 1, "the time in the column \""
                    + slots[slot].heading() + "\" never goes on; name another with \"time: {column: NAME}\" in a file for "
                    + "--channels, or give \"sample-rate: 100 Hz\""));
        }
        boolean coarse = forward.length * 2 < steps.length;
        double period = coarse ? Arrays.stream(forward).sum() / steps.length : forward[forward.length / 2];
        LoggedUnit unit = slots[slot].unit().orElseGet(() -> likely(period));
        double seconds = period * unit.factor();
        if (seconds > SLOWEST) {
            LoggedUnit other = likely(period);
            throw new ProblemsException(Problem.error(log, layout.firstRow(), 1, "the rows lie "
                    + camberwell.units.Figures.fixed(seconds, 2) + " s apart; a log needs at least ten rows a second"
                    + (other != unit && period * other.factor() <= SLOWEST ? ", unless the time is in " + other.symbol()
                            + ": say so with \"time: {column: " + slots[slot].heading() + ", unit: " + other.symbol()
                            + "}\" in a file for --channels" : "; set the logger to a faster rate")));
        }
        String how = slots[slot].unit().isPresent() ? "" : "the time is read in " + unit.symbol()
                + ", since the rows then lie " + camberwell.units.Figures.fixed(seconds * 1000, 1) + " ms apart";
        return new TimeBase(slot, unit.factor(), seconds, coarse, coarse ? "the clock stands still between rows; they are "
                + "spread evenly over its steps" : how);
    }

    private static TimeBase counted(String log, Layout layout, ChannelMap map, Binding[] slots, Batch first) {
        if (map.sampleRate().isPresent() || layout.sampleRate().isPresent()) {
            double rate = map.sampleRate().orElseGet(() -> layout.sampleRate().getAsDouble());
            return new TimeBase(-1, 1, 1 / rate, false, "no clock: the rows are taken to come at "
                    + camberwell.units.Figures.fixed(rate, 0) + " Hz");
        }
        int distance = find(slots, Kind.DISTANCE);
        int speed = find(slots, Kind.SPEED);
        double metres = 0;
        double sum = 0;
        double lengths = slots[distance].unit().map(LoggedUnit::factor).orElse(1.0);
        double speeds = slots[speed].unit().map(LoggedUnit::factor).orElse(1 / 3.6);
        for (int i = 1; i < first.rows(); i++) {
            double step = first.values()[i * slots.length + distance] - first.values()[(i - 1) * slots.length + distance];
            double now = first.values()[i * slots.length + speed];
            if (step >= 0 && now > 0) {
                metres += step * lengths;
                sum += now * speeds;
            }
        }
        if (!(metres > 0 && sum > 0) || metres / sum > SLOWEST) {
            throw new ProblemsException(Problem.error(log, layout.headingLine(), 1, "no column of time, and distance and "
                    + "speed do not give one; write \"sample-rate: 100 Hz\" in a file for --channels"));
        }
        return new TimeBase(-1, 1, metres / sum, false, "no clock: from distance and speed, the rows come at "
                + camberwell.units.Figures.fixed(sum / metres, 1) + " Hz");
    }

    private static int find(Binding[] slots, Kind kind) {
        for (int i = 0; i < slots.length; i++) {
            if (slots[i].channel().kind() == kind) {
                return i;
            }
        }
        return -1;
    }

    private static double[] steps(Batch batch, int width, int slot) {
        double[] steps = new double[Math.max(0, batch.rows() - 1)];
        for (int i = 1; i < batch.rows(); i++) {
            steps[i - 1] = batch.values()[i * width + slot] - batch.values()[(i - 1) * width + slot];
        }
        return Arrays.stream(steps).filter(step -> step >= 0).toArray();
    }

    /** The unit in which rows that lie {@code period} apart come between 4 and 2000 times a second. */
    private static LoggedUnit likely(double period) {
        return CANDIDATES.stream().filter(unit -> period * unit.factor() <= SLOWEST && period * unit.factor() >= 5e-4)
                .findFirst().orElse(LoggedUnit.SECOND);
    }

    /** Seconds between rows, as a rule. */
    double period() {
        return period;
    }

    /** How it was made out, where that is worth telling; empty where it is not. */
    Optional<String> told() {
        return Optional.of(told).filter(text -> !text.isEmpty());
    }

    /** The time of the next row, s; not a number where its clock has none. */
    double next(double[] values, int row, int width) {
        if (slot < 0) {
            last += period;
            return last;
        }
        double read = values[row * width + slot] * factor;
        if (!(Math.abs(read) <= FARTHEST)) {
            return Double.NaN;
        }
        if (!coarse) {
            return read;
        }
        last = read == lastRead ? last + period : Math.max(read, last - 1);
        lastRead = read;
        return last;
    }
}
