package camberwell.classifier;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/** Tells how likely each of its labels is of a text. Safe for use by several threads. */
public final class Classifier {

    /** Weights no larger than that, where the largest is 127, are left out: they are many and tell next to nothing. */
    private static final int SMALL = 3;

    private final String[] labels;
    private final int[] features;
    private final int[] starts;
    private final byte[] labelled;
    private final byte[] weights;
    private final float unit;
    private final boolean shared;

    private Classifier(String[] labels, int[] features, int[] starts, byte[] labelled, byte[] weights, float unit,
            boolean shared) {
        this.labels = labels;
        this.features = features;
        this.starts = starts;
        this.labelled = labelled;
        this.weights = weights;
        this.unit = unit;
        this.shared = shared;
    }

    /**
     * @param features sorted
     * @param weights of each feature in turn, a weight for each label
     */
    static Classifier of(String[] labels, int[] features, float[] weights, boolean shared) {
        float most = 0;
        for (float weight : weights) {
            most = Math.max(most, Math.abs(weight));
        }
        float unit = Math.max(most, Float.MIN_NORMAL) / Byte.MAX_VALUE;
        int[] starts = new int[features.length + 1];
        byte[] labelled = new byte[weights.length];
        byte[] kept = new byte[weights.length];
        int count = 0;
        for (int i = 0; i < features.length; i++) {
            int row = i * labels.length;
            for (int label = 0; label < labels.length; label++) {
                int weight = Math.round(weights[row + label] / unit);
                if (Math.abs(weight) > SMALL) {
                    labelled[count] = (byte) label;
                    kept[count++] = (byte) weight;
                }
            }
            starts[i + 1] = count;
        }
        return new Classifier(labels, features, starts, Arrays.copyOf(labelled, count), Arrays.copyOf(kept, count), unit, shared);
    }

    /** The labels, in the order of {@link #probabilities}. */
    public List<String> labels() {
        return List.of(labels);
    }

    /** Whether it has learned anything of that feature. */
    public boolean knows(int feature) {
        return Arrays.binarySearch(features, feature) >= 0;
    }

    /** How likely each label is, 0 to 1, of these features; those it has never met count for nothing. */
    public double[] probabilities(int[] of) {
        double[] sums = new double[labels.length];
        int known = 0;
        for (int feature : of) {
            int at = Arrays.binarySearch(features, feature);
            if (at >= 0) {
                known++;
                for (int i = starts[at]; i < starts[at + 1]; i++) {
                    sums[labelled[i]] += weights[i];
                }
            }
        }
        double scale = unit * scale(known);
        for (int label = 0; label < sums.length; label++) {
            sums[label] *= scale;
        }
        probable(sums, shared);
        return sums;
    }

    /**
     * Makes probabilities of sums: each by the logistic function, or all together as shares of their exponentials; to the last
     * bit the same on every machine, since a training takes them further.
     */
    static void probable(double[] sums, boolean shared) {
        double all = 0;
        for (int label = 0; label < sums.length; label++) {
            sums[label] = shared ? StrictMath.exp(sums[label]) : 1 / (1 + StrictMath.exp(-sums[label]));
            all += sums[label];
        }
        for (int label = 0; shared && label < sums.length; label++) {
            sums[label] /= all;
        }
    }

    /** What a sum over that many features is divided by, so that long texts are no surer than short ones. */
    static double scale(int features) {
        return 1 / Math.sqrt(Math.max(1, features));
    }

    /** Writes it down. */
    public void write(DataOutputStream out) throws IOException {
        out.writeByte(labels.length);
        for (String label : labels) {
            out.writeUTF(label);
        }
        out.writeBoolean(shared);
        out.writeFloat(unit);
        out.writeInt(features.length);
        out.writeInt(labelled.length);
        for (int feature : features) {
            out.writeInt(feature);
        }
        for (int i = 0; i < features.length; i++) {
            out.writeByte(starts[i + 1] - starts[i]);
        }
        out.write(labelled);
        out.write(weights);
    }

    /**
     * Reads what {@link #write} wrote, and no more.
     *
     * @throws java.nio.BufferUnderflowException if it is cut off
     */
    public static Classifier read(ByteBuffer in) {
        String[] labels = new String[in.get()];
        for (int i = 0; i < labels.length; i++) {
            labels[i] = text(in);
        }
        boolean shared = in.get() != 0;
        float unit = in.getFloat();
        int[] features = new int[in.getInt()];
        int count = in.getInt();
        in.asIntBuffer().get(features);
        in.position(in.position() + Integer.BYTES * features.length);
        int[] starts = new int[features.length + 1];
        for (int i = 0; i < features.length; i++) {
            starts[i + 1] = starts[i] + (in.get() & 0xff);
        }
        return new Classifier(labels, features, starts, bytes(in, count), bytes(in, count), unit, shared);
    }

    /** A text as {@link DataOutputStream#writeUTF} writes it, of letters that are the same in both. */
    static String text(ByteBuffer in) {
        return new String(bytes(in, in.getShort()), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(ByteBuffer in, int count) {
        byte[] bytes = new byte[count];
        in.get(bytes);
        return bytes;
    }
}
