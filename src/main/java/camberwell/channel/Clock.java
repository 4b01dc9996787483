package camberwell.channel;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * Brings rows that come when they come onto a clock of even steps. Rows out of order are sorted, equal times dropped,
 * single spikes taken out; between rows the values are interpolated, over gaps they are not. What is smoothed is low-passed
 * without a shift of phase. Works block by block: nothing of a block stays but what the {@link Store} keeps.
 */
final class Clock {

    /** Every so many samples of the clock one is kept; after the low-pass nothing is lost by it. */
    static final int KEPT_EVERY = 2;
    private static final int BLOCK = 4096;
    /** Rows from which on the usual step of a channel is known. */
    private static final int LEARNING = 20;
    /** What a channel steps, as a rule, is learned without the largest steps: so many, or so great a part of all. */
    private static final int LEFT_OUT = 4;
    private static final double PART_LEFT_OUT = 0.02;
    /** Samples at the end of a block that the filter may still change: after two seconds it has forgotten. */
    private static final int AHEAD = 200;

    private final double clockRate;
    private final double newRun;
    private final double pause;
    private final double seldom;
    private final double spike;
    private final Binding[] slots;
    private final Kind.Treatment[] treatments;
    private final Store store;
    private final double gap;
    private final ZeroPhase filter;
    private final double[] times = new double[BLOCK];
    private final double[][] rows;
    private final double[] most;
    private final double[] usualStep;
    private final int[] learned;
    private final double[] usualSpan;
    private final double[][] grid;
    private final double[] sample;
    private final double[] origin = {Double.NaN, Double.NaN, Double.NaN, Double.NaN};
    private int count;
    private int cleaned;
    private int gridCount;
    private int gridFrom;
    private long gridNext;
    private long kept;
    private double start = Double.NaN;
    private long dropped;
    private long disordered;
    private long spikes;
    private long gaps;
    private long resets;

    /** @param period of the rows, s */
    Clock(Binding[] slots, Store store, double period, Limits limits) {
        this.clockRate = limits.of("clock.rate");
        this.newRun = limits.of("clock.new-run");
        this.pause = limits.of("clock.pause");
        this.seldom = limits.of("clock.seldom");
        this.spike = limits.of("clock.spike");
        this.slots = slots;
        this.treatments = Arrays.stream(slots).map(slot -> slot.channel().kind().treatment())
                .toArray(Kind.Treatment[]::new);
        this.most = Arrays.stream(slots).mapToDouble(slot -> slot.channel().kind().most()).toArray();
        this.store = store;
        this.gap = Math.max(limits.of("clock.gap"), 2.5 * period);
        this.filter = new ZeroPhase(clockRate, Math.min(limits.of("clock.cut-off"), 1 / period / 4));
        this.rows = new double[slots.length][BLOCK];
        this.usualStep = new double[slots.length];
        this.learned = new int[slots.length];
        this.usualSpan = new double[slots.length];
        Arrays.fill(usualSpan, period);
        this.grid = new double[slots.length][BLOCK];
        this.sample = new double[store(slots)];
        store.beginRun();
    }

    /** Columns of the store: one for each slot, and for each that travels one more for its greatest rate. */
    static int store(Binding[] slots) {
        return slots.length + (int) Arrays.stream(slots)
                .filter(slot -> slot.channel().kind().treatment() == Kind.Treatment.TRAVEL).count();
    }

    /** Which columns of the store keep the largest of several samples. */
    static boolean[] extremes(Binding[] slots) {
        boolean[] extreme = new boolean[store(slots)];
        for (int i = 0; i < extreme.length; i++) {
            extreme[i] = i >= slots.length || slots[i].channel().kind().treatment() == Kind.Treatment.PEAK;
        }
        return extreme;
    }

    /** Takes a row; false when the store is full. */
    boolean row(double time, double[] values, int offset) {
        if (Double.isNaN(time)) {
            dropped++;
            return !store.full();
        }
        if (count > 0 && time < times[count - 1] - newRun) {
            resets++;
            newRun();
        } else if (count > 0 && time > times[count - 1] + pause) {
            newRun();
        }
        if (Double.isNaN(start)) {
            start = time;
        }
        int at = count;
        while (at > cleaned && times[at - 1] > time) {
            at--;
        }
        if (at > 0 && time - times[at - 1] < 1e-9 || at < count && at == cleaned && cleaned > 0) {
            dropped++;
            return !store.full();
        }
        if (at < count) {
            disordered++;
            System.arraycopy(times, at, times, at + 1, count - at);
            for (double[] row : rows) {
                System.arraycopy(row, at, row, at + 1, count - at);
            }
        }
        times[at] = time;
        for (int i = 0; i < slots.length; i++) {
            double value = sensible(i, values[offset + i]);
            rows[i][at] = treatments[i] == Kind.Treatment.POSITION ? local(i, value) : value;
        }
        count++;
        if (count == BLOCK) {
            block(false);
        }
        return !store.full();
    }

    /** The value of a cell; none where no sensor of a car reads so much in any unit. */
    private double sensible(int slot, double value) {
        if (Math.abs(value) > most[slot]) {
            spikes++;
            return Double.NaN;
        }
        return value;
    }

    /** Ends the run; the next row begins another. */
    void newRun() {
        end();
        store.beginRun();
        kept = 0;
    }

    /** Ends the log. */
    void end() {
        if (count > 0) {
            block(true);
        }
        emit(true);
        count = 0;
        cleaned = 0;
        gridNext = 0;
        start = Double.NaN;
    }

    private void block(boolean last) {
        int until = count;
        // The rows of the last second may still be filled in, sorted or found to be spikes.
        while (!last && until > 1 && times[until - 1] > times[count - 1] - newRun) {
            until--;
        }
        if (until < 2 && !last) {
            until = count / 2;
        }
        for (int i = 0; i < slots.length; i++) {
            despike(i);
            fill(i, until);
        }
        resample(until, last);
        int keep = Math.max(0, until - 1);
        for (double[] row : rows) {
            System.arraycopy(row, keep, row, 0, count - keep);
        }
        System.arraycopy(times, keep, times, 0, count - keep);
        count -= keep;
        cleaned = until - keep;
    }

    /** A position as metres from where the log begins, on the sphere of the mean radius (6371 km). */
    private double local(int slot, double value) {
        int axis = slots[slot].channel().kind().ordinal() - Kind.LATITUDE.ordinal();
        boolean globe = axis < 2;
        // A receiver without a fix writes nought.
        double read = globe && value == 0 ? Double.NaN : value;
        if (Double.isNaN(origin[axis])) {
            origin[axis] = read;
        }
        if (!globe) {
            return read - origin[axis];
        }
        double inRadians = slots[slot].unit().map(LoggedUnit::factor).orElse(Math.PI / 180);
        double parallel = axis == 0 || Double.isNaN(origin[0]) ? 1 : Math.cos(origin[0] * inRadians);
        return (read - origin[axis]) * inRadians * 6_371_000 * parallel;
    }

    /** A single value that leaps away and straight back is none. */
    private void despike(int slot) {
        if (slots[slot].channel().kind().treatment() != Kind.Treatment.SMOOTH) {
            return;
        }
        double[] row = rows[slot];
        if (learned[slot] == 0) {
            learn(slot);
        }
        double usual = usualStep[slot];
        for (int i = Math.max(1, cleaned); i + 1 < count; i++) {
            double up = row[i] - row[i - 1];
            double down = row[i] - row[i + 1];
            double across = Math.abs(row[i + 1] - row[i - 1]);
            double least = Math.min(Math.abs(up), Math.abs(down));
            if (learned[slot] >= LEARNING && up * down > 0 && least > spike * usual && least > 3 * across) {
                row[i] = Double.NaN;
                spikes++;
            } else if (!Double.isNaN(up)) {
                usual += (Math.abs(up) - usual) / Math.min(100, ++learned[slot]);
            }
        }
        usualStep[slot] = usual;
    }

    /** The usual step of the first block; a leap among its rows must not hide the next one. */
    private void learn(int slot) {
        double[] row = rows[slot];
        double[] steps = IntStream.range(1, count).mapToDouble(i -> Math.abs(row[i] - row[i - 1]))
                .filter(step -> !Double.isNaN(step)).sorted().toArray();
        int known = steps.length - Math.max(LEFT_OUT, (int) (steps.length * PART_LEFT_OUT));
        if (known > 0) {
            usualStep[slot] = Arrays.stream(steps, 0, known).average().orElse(0);
            learned[slot] = known;
        }
    }

    /** Fills single cells that are empty, as far as the channel is logged more seldom than the rows come. */
    private void fill(int slot, int until) {
        double[] row = rows[slot];
        Kind kind = slots[slot].channel().kind();
        boolean holds = kind.treatment() == Kind.Treatment.HOLD || kind.compareTo(Kind.TREAD) >= 0;
        int known = -1;
        for (int i = 0; i < count; i++) {
            if (Double.isNaN(row[i])) {
                if (holds && known >= 0 && times[i] - times[known] < seldom && i >= cleaned) {
                    row[i] = row[known];
                }
                continue;
            }
            double span = known < 0 ? 0 : times[i] - times[known];
            if (!holds && known >= 0 && i - known > 1) {
                // Half of what is usual for the channel may be missing once; a channel at 10 Hz learns it in a second.
                usualSpan[slot] += span < 1 ? (span - usualSpan[slot]) * 0.2 : 0;
                if (span <= Math.max(gap, 2.5 * usualSpan[slot])) {
                    for (int k = known + 1; k < i; k++) {
                        row[k] = row[known] + (row[i] - row[known]) * (times[k] - times[known]) / span;
                    }
                }
            } else if (known >= 0) {
                usualSpan[slot] += (span - usualSpan[slot]) * 0.2;
            }
            known = i;
        }
    }

    private void resample(int until, boolean last) {
        int at = 0;
        double end = times[until - 1];
        while (start + gridNext / clockRate <= end + 1e-9) {
            double now = start + gridNext / clockRate;
            while (at + 1 < until && times[at + 1] <= now + 1e-9) {
                at++;
            }
            boolean on = Math.abs(times[at] - now) < 1e-6;
            boolean within = at + 1 < until;
            double span = within ? times[at + 1] - times[at] : 0;
            boolean empty = !on && (!within || span > gap);
            if (!on && !within && !last) {
                break;
            }
            gaps += empty && (gridCount == 0 || !Double.isNaN(grid[0][gridCount - 1])) ? 1 : 0;
            for (int i = 0; i < slots.length; i++) {
                grid[i][gridCount] = on ? rows[i][at] : empty ? Double.NaN : between(i, at, now, span);
            }
            gridCount++;
            gridNext++;
            if (gridCount == BLOCK) {
                emit(false);
            }
        }
    }

    private double between(int slot, int at, double now, double span) {
        double before = rows[slot][at];
        double after = rows[slot][at + 1];
        Kind kind = slots[slot].channel().kind();
        if (kind == Kind.DISTANCE && after < before - 1 && at > 0) {
            return overReset(slot, at, now);
        }
        return kind.treatment() == Kind.Treatment.HOLD && kind != Kind.DISTANCE ? before
                : before + (after - before) * (now - times[at]) / span;
    }

    /** Where the distance begins anew between two rows it goes on as it went, up to its end and from nought on. */
    private double overReset(int slot, int at, double now) {
        double slope = (rows[slot][at] - rows[slot][at - 1]) / (times[at] - times[at - 1]);
        double fromAfter = rows[slot][at + 1] - slope * (times[at + 1] - now);
        return fromAfter >= 0 ? fromAfter : rows[slot][at] + slope * (now - times[at]);
    }

    /** Hands the grid to the store, but for its end, which is filtered again with what follows. */
    private void emit(boolean all) {
        int until = all ? gridCount : gridCount - AHEAD;
        if (until <= gridFrom && !all) {
            return;
        }
        double[][] smooth = new double[slots.length][];
        for (int i = 0; i < slots.length; i++) {
            smooth[i] = grid[i];
            if (treatments[i] == Kind.Treatment.SMOOTH) {
                smooth[i] = Arrays.copyOf(grid[i], gridCount);
                filter.smooth(smooth[i], gridCount);
            }
        }
        for (int k = gridFrom; k < until; k++) {
            if (kept++ % KEPT_EVERY != 0) {
                continue;
            }
            int rate = slots.length;
            for (int i = 0; i < slots.length; i++) {
                sample[i] = smooth[i][k];
                if (treatments[i] == Kind.Treatment.TRAVEL) {
                    sample[rate++] = k > 0 && k + 1 < gridCount ? (grid[i][k + 1] - grid[i][k - 1]) * clockRate / 2 : 0;
                }
            }
            store.add(sample);
        }
        int keep = all ? gridCount : Math.max(0, until - AHEAD);
        for (double[] column : grid) {
            System.arraycopy(column, keep, column, 0, gridCount - keep);
        }
        gridCount -= keep;
        gridFrom = all ? 0 : until - keep;
    }

    /** Rows without a time, or with one that had been. */
    long dropped() {
        return dropped;
    }

    /** Rows that came too late. */
    long disordered() {
        return disordered;
    }

    /** Single values that were taken out. */
    long spikes() {
        return spikes;
    }

    /** Gaps that stay empty. */
    long gaps() {
        return gaps;
    }

    /** Jumps back of the clock. */
    long resets() {
        return resets;
    }
}
