package camberwell.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The samples that are kept, on one clock. When it is full it keeps every other sample and half the rate from then on, so
 * that a log of any length takes no more room than this.
 */
final class Store {

    /** Samples a channel: seven hours at 50 Hz, 29 at the rate that is left when it was full twice. */
    static final int MOST = 5 << 18;
    /** Below this rate slides are no longer seen, Hz: judgement, no source. */
    private static final double SLOWEST = 12;

    private final float[][] columns;
    private final boolean[] extreme;
    private final List<Integer> runs = new ArrayList<>();
    private final int most;
    private double rate;
    /** How many have come in for each that is kept. */
    private int every = 1;
    private int size;
    private int skip;
    private boolean full;

    /**
     * @param extreme whether of two samples that become one the larger in size is kept
     * @param most samples a channel
     */
    Store(int columns, boolean[] extreme, double rate, int most) {
        this.columns = new float[columns][1 << 12];
        this.extreme = extreme;
        this.rate = rate;
        this.most = most;
    }

    /** Samples a second, now. */
    double rate() {
        return rate;
    }

    /** Begins a run: a sample of nothing stands between it and the one before. */
    void beginRun() {
        if (size > 0) {
            double[] nothing = new double[columns.length];
            Arrays.fill(nothing, Double.NaN);
            skip = 0;
            add(nothing);
        }
        skip = 0;
        runs.add(size);
    }

    /** Takes a sample; false when nothing more can be kept. */
    boolean add(double[] sample) {
        if (full) {
            return false;
        }
        if (skip > 0) {
            skip--;
            for (int i = 0; i < columns.length && size > 0; i++) {
                if (extreme[i] && Math.abs(sample[i]) > Math.abs(columns[i][size - 1])) {
                    columns[i][size - 1] = (float) sample[i];
                }
            }
            return true;
        }
        if (size == columns[0].length) {
            grow();
        }
        if (full) {
            return false;
        }
        for (int i = 0; i < columns.length; i++) {
            columns[i][size] = (float) sample[i];
        }
        size++;
        skip = every - 1;
        return true;
    }

    private void grow() {
        if (size < most) {
            for (int i = 0; i < columns.length; i++) {
                columns[i] = Arrays.copyOf(columns[i], Math.min(most, size * 2));
            }
        } else if (rate / 2 < SLOWEST) {
            full = true;
        } else {
            halve();
        }
    }

    private void halve() {
        for (int c = 0; c < columns.length; c++) {
            float[] column = columns[c];
            for (int i = 0; i + 1 < size; i += 2) {
                boolean second = extreme[c] && Math.abs(column[i + 1]) > Math.abs(column[i]);
                column[i / 2] = second ? column[i + 1] : column[i];
            }
        }
        size /= 2;
        runs.replaceAll(start -> start / 2);
        rate /= 2;
        every *= 2;
    }

    /** Whether the log went on after it was full. */
    boolean full() {
        return full;
    }

    int size() {
        return size;
    }

    /** Where each run begins. */
    int[] runs() {
        return runs.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The samples of one channel. */
    float[] column(int index) {
        return columns[index];
    }
}
