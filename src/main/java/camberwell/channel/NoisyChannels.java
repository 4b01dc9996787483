package camberwell.channel;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Where a channel is noise: it goes to and fro faster than any car or driver could, of which the low-pass leaves a few swings a
 * second, while one that it has to move with goes its slow way and has nothing in common with it. White noise of which the part
 * up to f is left crosses its middle 2 f / sqrt(3) times a second (S. O. Rice, Mathematical Analysis of Random Noise, Bell System
 * Technical Journal, 1944).
 */
final class NoisyChannels {

    /** What each has to move with, the surest witness first. */
    private static final Map<Kind, List<Kind>> MOVES_WITH = new EnumMap<>(Map.of(
            Kind.YAW_RATE, List.of(Kind.LATERAL_ACCELERATION, Kind.STEERING),
            Kind.LATERAL_ACCELERATION, List.of(Kind.YAW_RATE, Kind.STEERING),
            Kind.STEERING, List.of(Kind.YAW_RATE, Kind.LATERAL_ACCELERATION),
            Kind.SPEED, List.of(Kind.WHEEL_SPEED, Kind.LATERAL_ACCELERATION, Kind.YAW_RATE, Kind.LONGITUDINAL_ACCELERATION),
            Kind.WHEEL_SPEED, List.of(Kind.SPEED, Kind.WHEEL_SPEED),
            Kind.LONGITUDINAL_ACCELERATION, List.of(Kind.SPEED),
            Kind.THROTTLE, List.of(Kind.SPEED), Kind.BRAKE, List.of(Kind.SPEED)));

    static {
        MOVES_WITH.put(Kind.DAMPER, List.of(Kind.LATERAL_ACCELERATION, Kind.SPEED));
        for (Kind tread : List.of(Kind.TREAD, Kind.TREAD_INNER, Kind.TREAD_MIDDLE, Kind.TREAD_OUTER)) {
            MOVES_WITH.put(tread, List.of(Kind.LATERAL_ACCELERATION, Kind.SPEED));
        }
    }

    /** What goes fast enough by itself to have to go far as well, to be noise. */
    private static final Set<Kind> QUICK = EnumSet.of(Kind.THROTTLE, Kind.BRAKE, Kind.DAMPER, Kind.TREAD, Kind.TREAD_INNER,
            Kind.TREAD_MIDDLE, Kind.TREAD_OUTER);
    /** Share of its way that it then has to go to and fro. */
    private static final double FAR = 0.5;

    private final Log log;
    private final int window;
    private final double crossings;
    private final double travel;
    private final double calm;
    private final double moved;
    private final double alike;

    NoisyChannels(Log log, Limits limits) {
        this.log = log;
        this.window = (int) Math.round(limits.of("noise.window") * log.rate());
        this.crossings = limits.of("noise.crossings") * limits.of("noise.window");
        this.travel = limits.of("noise.travel") * limits.of("noise.window");
        this.calm = limits.of("noise.calm") * limits.of("noise.window");
        this.moved = limits.of("noise.moved");
        this.alike = limits.of("noise.alike");
    }

    /** Whether a channel of that kind is looked at. */
    static boolean knows(Kind kind) {
        return MOVES_WITH.containsKey(kind);
    }

    /**
     * A stretch of noise.
     *
     * @param from its first sample
     * @param to the sample after its last
     * @param witness what moves there as it should
     */
    record Stretch(int from, int to, Channel witness) {
    }

    /** The stretches in which a channel is noise: windows that go to and fro, in one of which at least something moves. */
    List<Stretch> of(Channel channel) {
        float[] values = log.samples(channel);
        // A foot beside a pedal is noise as well, and no more than a tremble.
        double least = QUICK.contains(channel.kind()) ? FAR * range(values, 0, log.size()) : 0;
        double often = channel.kind() == Kind.DAMPER ? travel : crossings;
        List<Stretch> found = new ArrayList<>();
        int step = Math.max(1, window / 4);
        int from = -1;
        int to = 0;
        Optional<Channel> witness = Optional.empty();
        int last = log.size() - window;
        for (int next = 0; next < last + step && last >= 0; next += step) {
            int at = Math.min(next, last);
            if (crossings(values, at) < often || range(values, at, at + window) < least) {
                continue;
            }
            if (from >= 0 && at > to + window) {
                keep(from, to, witness, found);
                from = -1;
            }
            if (from < 0) {
                from = at;
                witness = Optional.empty();
            }
            to = at + window;
            witness = witness.or(() -> witness(channel, values, at));
        }
        keep(from, to, witness, found);
        return found;
    }

    private static void keep(int from, int to, Optional<Channel> witness, List<Stretch> found) {
        if (from >= 0) {
            witness.ifPresent(it -> found.add(new Stretch(from, to, it)));
        }
    }

    private Optional<Channel> witness(Channel channel, float[] values, int at) {
        Stream<Channel> all = MOVES_WITH.get(channel.kind()).stream().flatMap(kind -> log.bindings().keySet().stream()
                .filter(it -> it.kind() == kind && !it.equals(channel)));
        return all.filter(it -> {
            float[] other = log.samples(it);
            return range(other, at, at + window) > moved * range(other, 0, log.size()) && crossings(other, at) <= calm
                    && Math.abs(correlation(values, other, at)) < alike;
        }).findFirst();
    }

    /** How often a channel goes through the middle between its lowest and its highest; 0 where some of it is not measured. */
    private int crossings(float[] values, int at) {
        float low = Float.MAX_VALUE;
        float high = -Float.MAX_VALUE;
        for (int i = at; i < at + window; i++) {
            if (Float.isNaN(values[i])) {
                return 0;
            }
            low = Math.min(low, values[i]);
            high = Math.max(high, values[i]);
        }
        float middle = (low + high) / 2;
        int count = 0;
        for (int i = at + 1; i < at + window; i++) {
            count += values[i] > middle != values[i - 1] > middle ? 1 : 0;
        }
        return count;
    }

    /** From the lowest to the highest that was measured there; 0 where nothing was. */
    static double range(float[] values, int from, int to) {
        double low = Double.MAX_VALUE;
        double high = -Double.MAX_VALUE;
        for (int i = from; i < to; i++) {
            if (!Float.isNaN(values[i])) {
                low = Math.min(low, values[i]);
                high = Math.max(high, values[i]);
            }
        }
        return Math.max(0, high - low);
    }

    private double correlation(float[] one, float[] other, int at) {
        double x = 0;
        double y = 0;
        double xx = 0;
        double xy = 0;
        double yy = 0;
        for (int i = at; i < at + window; i++) {
            x += one[i];
            y += other[i];
            xx += (double) one[i] * one[i];
            xy += (double) one[i] * other[i];
            yy += (double) other[i] * other[i];
        }
        double spread = (xx - x * x / window) * (yy - y * y / window);
        return spread > 0 ? (xy - x * y / window) / Math.sqrt(spread) : 1;
    }
}
