package camberwell.classifier;

import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;

/**
 * Tells how likely each of its labels is of a text, as {@link Classifier} does, but by way of a hidden layer: what the features
 * bring together is squeezed into a few figures first, so that words that are met in like company count alike. Safe for use by
 * several threads.
 */
public final class Network {

    private final String[] labels;
    /** How many of the labels, the first ones, share one probability. */
    private final int shared;
    private final int[] features;
    /** Of each feature in turn, what it brings to each figure of the hidden layer, in parts of the unit. */
    private final byte[] brought;
    private final float unit;
    private final float[] offsets;
    /** Of each hidden figure in turn, its weight for each label, and last an offset for each. */
    private final float[] weights;

    Network(String[] labels, int shared, int[] features, byte[] brought, float unit, float[] offsets, float[] weights) {
        this.labels = labels;
        this.shared = shared;
        this.features = features;
        this.brought = brought;
        this.unit = unit;
        this.offsets = offsets;
        this.weights = weights;
    }

    /** The labels, in the order of {@link #probabilities}. */
    public List<String> labels() {
        return List.of(labels);
    }

    /** How likely each label is, 0 to 1, of these features; those it has never met count for nothing, and each counts once. */
    public double[] probabilities(int[] of) {
        int hidden = offsets.length;
        int[] sums = new int[hidden];
        int known = 0;
        for (int feature : Arrays.stream(of).distinct().toArray()) {
            int at = Arrays.binarySearch(features, feature);
            if (at >= 0) {
                known++;
                for (int i = 0; i < hidden; i++) {
                    sums[i] += brought[at * hidden + i];
                }
            }
        }
        float[] layer = new float[hidden];
        double scale = unit * Classifier.scale(known);
        for (int i = 0; i < hidden; i++) {
            layer[i] = (float) StrictMath.tanh(sums[i] * scale + offsets[i]);
        }
        float[] outcome = sums(weights, layer, labels.length);
        double[] likely = new double[labels.length];
        for (int label = 0; label < likely.length; label++) {
            likely[label] = outcome[label];
        }
        probable(likely, shared);
        return likely;
    }

    /** What the weights make of the hidden layer, for each label. */
    static float[] sums(float[] weights, float[] layer, int labels) {
        float[] sums = Arrays.copyOfRange(weights, layer.length * labels, (layer.length + 1) * labels);
        for (int i = 0; i < layer.length; i++) {
            if (layer[i] != 0) {
                add(layer[i], weights, i * labels, sums);
            }
        }
        return sums;
    }

    private static void add(float times, float[] from, int at, float[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += times * from[at + i];
        }
    }

    /** Makes probabilities of sums, of which the first ones share one. */
    static void probable(double[] sums, int shared) {
        double[] together = Arrays.copyOf(sums, shared);
        double[] apart = Arrays.copyOfRange(sums, shared, sums.length);
        Classifier.probable(together, true);
        Classifier.probable(apart, false);
        System.arraycopy(together, 0, sums, 0, shared);
        System.arraycopy(apart, 0, sums, shared, apart.length);
    }

    /** Writes it down. */
    public void write(DataOutputStream out) throws IOException {
        out.writeShort(labels.length);
        for (String label : labels) {
            out.writeUTF(label);
        }
        out.writeShort(shared);
        out.writeShort(offsets.length);
        out.writeFloat(unit);
        out.writeInt(features.length);
        for (int feature : features) {
            out.writeInt(feature);
        }
        out.write(brought);
        for (float offset : offsets) {
            out.writeFloat(offset);
        }
        for (float weight : weights) {
            out.writeFloat(weight);
        }
    }

    /**
     * Reads what {@link #write} wrote, and no more.
     *
     * @throws java.nio.BufferUnderflowException if it is cut off
     */
    public static Network read(ByteBuffer in) {
        String[] labels = new String[in.getShort()];
        for (int i = 0; i < labels.length; i++) {
            labels[i] = Classifier.text(in);
        }
        int shared = in.getShort();
        int hidden = in.getShort();
        float unit = in.getFloat();
        int[] features = new int[in.getInt()];
        in.asIntBuffer().get(features);
        in.position(in.position() + Integer.BYTES * features.length);
        byte[] brought = new byte[features.length * hidden];
        in.get(brought);
        return new Network(labels, shared, features, brought, unit, floats(in, hidden), floats(in, labels.length * (hidden + 1)));
    }

    private static float[] floats(ByteBuffer in, int count) {
        float[] floats = new float[count];
        in.asFloatBuffer().get(floats);
        in.position(in.position() + Float.BYTES * count);
        return floats;
    }
}
