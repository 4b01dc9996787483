package camberwell.channel;

import camberwell.problem.Problem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/** A log on one clock: for each channel one sample at each step, not a number where there is none. */
public final class Log {

    private final String name;
    private final int headingLine;
    private final double rate;
    private final int size;
    private final int[] runs;
    private final long rows;
    private final double rowRate;
    private final Map<Channel, Binding> bindings;
    private final Map<Channel, float[]> samples;
    private final Map<Channel, float[]> rates;
    private final List<String> cleaning;
    private final List<String> doubts = new ArrayList<>();
    private final Set<String> unused = new LinkedHashSet<>();

    Log(String name, int headingLine, double rate, int size, int[] runs, long rows, double rowRate,
            Map<Channel, Binding> bindings,
            Map<Channel, float[]> samples, Map<Channel, float[]> rates, List<String> cleaning) {
        this.name = name;
        this.headingLine = headingLine;
        this.rate = rate;
        this.size = size;
        this.runs = runs;
        this.rows = rows;
        this.rowRate = rowRate;
        this.bindings = new TreeMap<>(bindings);
        this.samples = new TreeMap<>(samples);
        this.rates = new TreeMap<>(rates);
        this.cleaning = new ArrayList<>(cleaning);
    }

    /** The file it came from. */
    public String name() {
        return name;
    }

    /** What is wrong with it as a whole, at the line of its headings. */
    public Problem problem(String message) {
        return Problem.error(name, headingLine, 1, message);
    }

    /** The line that its headings stand in, counted from 1. */
    int headingLine() {
        return headingLine;
    }

    /** Samples a second, Hz. */
    public double rate() {
        return rate;
    }

    /** Samples a channel. */
    public int size() {
        return size;
    }

    /** Where each run begins; the first at 0. */
    public int[] runs() {
        return runs.clone();
    }

    /** Rows of the file. */
    public long rows() {
        return rows;
    }

    /** Rows a second, Hz. */
    public double rowRate() {
        return rowRate;
    }

    /** Whether there is such a channel. */
    public boolean has(Kind kind) {
        return samples.containsKey(Channel.of(kind));
    }

    /** Whether there is such a channel. */
    public boolean has(Channel channel) {
        return samples.containsKey(channel);
    }

    /** The samples of a channel in SI units; shared, not a copy, and {@link #size()} of it count. */
    public float[] samples(Channel channel) {
        return samples.get(channel);
    }

    /** The samples of a channel that is there once. */
    public float[] samples(Kind kind) {
        return samples.get(Channel.of(kind));
    }

    /** The greatest rate of a damper or a ride height at each step, m/s. */
    public float[] rates(Channel channel) {
        return rates.get(channel);
    }

    /** The columns that channels were read from. */
    public Map<Channel, Binding> bindings() {
        return Collections.unmodifiableMap(bindings);
    }

    /** What was done to the log before it was read. */
    public List<String> cleaning() {
        return Collections.unmodifiableList(cleaning);
    }

    /** What is doubtful about it. */
    public List<String> doubts() {
        return Collections.unmodifiableList(doubts);
    }

    /** The columns that nothing is read from, each as it is told: in quotation marks, with what it could have been. */
    public List<String> unused() {
        return List.copyOf(unused);
    }

    void unused(String column) {
        unused.add(column);
    }

    void clean(String what) {
        cleaning.add(what);
    }

    /** Notes a doubt about it. */
    public void doubt(String what) {
        doubts.add(what);
    }

    void put(Channel channel, float[] values) {
        samples.put(channel, values);
    }

    Optional<Binding> binding(Kind kind) {
        return Optional.ofNullable(bindings.get(Channel.of(kind)));
    }

    void bind(Binding binding) {
        bindings.put(binding.channel(), binding);
    }

    /** Takes a channel out. */
    public void drop(Channel channel) {
        samples.remove(channel);
        bindings.remove(channel);
    }

    /** Multiplies a channel in place. */
    void scale(Channel channel, double factor) {
        float[] values = samples.get(channel);
        for (int i = 0; i < size; i++) {
            values[i] *= (float) factor;
        }
        float[] rate = rates.get(channel);
        for (int i = 0; rate != null && i < size; i++) {
            rate[i] *= (float) factor;
        }
    }

    /** Multiplies the steering, which the ratio shows to be in another unit than it was taken for. */
    public void rescaleSteering(double factor) {
        Channel steering = Channel.of(Kind.STEERING);
        scale(steering, factor);
        decided(steering, LoggedUnit.RADIAN, 1);
        clean("the steering is read in rad: as degrees it would turn the car " + Math.round(factor) + " times too much");
    }

    /** Notes the unit of a channel that is there once, where it is there, and brings it into SI. */
    void settle(Kind kind, LoggedUnit unit) {
        settle(Channel.of(kind), unit);
    }

    /** Notes the unit of a channel where it is there and brings it into SI. */
    void settle(Channel channel, LoggedUnit unit) {
        if (!has(channel)) {
            return;
        }
        Binding binding = bindings.get(channel);
        if (binding.unit().isEmpty()) {
            clean("the " + channel.spoken() + " is read " + (unit.symbol().isEmpty() ? "as it is, from 0 to 1"
                    : "in " + unit.symbol()) + ": it states no unit, and that fits the other channels");
        }
        float[] values = samples.get(channel);
        if (unit.offset() != 0) {
            for (int i = 0; i < size; i++) {
                values[i] += (float) unit.offset();
            }
        }
        scale(channel, unit.factor() * binding.sign());
        decided(channel, unit, 1);
    }

    /** What only two in a hundred samples of a channel exceed, in size and as it was read; 0 where it is not there. */
    double largest(Kind kind) {
        return has(kind) ? largest(Channel.of(kind)) : 0;
    }

    /** What only two in a hundred samples of a channel exceed, in size and as it was read. */
    double largest(Channel channel) {
        float[] values = samples.get(channel);
        int step = Math.max(1, size / 20_000);
        double[] some = new double[size / step];
        int count = 0;
        for (int i = 0; i < some.length; i++) {
            double value = Math.abs(values[i * step]);
            if (!Double.isNaN(value)) {
                some[count++] = value;
            }
        }
        Arrays.sort(some, 0, count);
        return count == 0 ? 0 : some[(int) (count * 0.98)];
    }

    /** Notes which unit a channel turned out to be in. */
    void decided(Channel channel, LoggedUnit unit, int sign) {
        Binding was = bindings.get(channel);
        bindings.put(channel, new Binding(channel, was.heading(), was.index(), Optional.of(unit), sign * was.sign(),
                was.guessed()));
    }
}
