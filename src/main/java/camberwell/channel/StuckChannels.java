package camberwell.channel;

import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * Channels that stand still, or are noise, while others that must move with them move: a sensor or its wire has died there, and
 * what it went on writing is no measurement. Left blank, it costs the laps that it was not measured in; left as it is, a dead yaw
 * rate would be understeer, and a dead wheel a locked one.
 */
final class StuckChannels {

    private static final List<Kind> TREADS = List.of(Kind.TREAD, Kind.TREAD_INNER, Kind.TREAD_MIDDLE, Kind.TREAD_OUTER);
    /** What has to move with what, the surest witness first; of the wheels, each goes by the speed and by the other wheels. */
    private static final Map<Kind, List<Kind>> MOVES_WITH = movesWith();
    /** Beyond this share of its samples, a channel that is stuck is none at all. */
    private static final double ALL = 0.9;

    private final Log log;
    private final int least;
    private final int leastOfTread;
    private final int margin;
    private final double still;
    private final double moved;
    private final NoisyChannels noise;
    private final Map<Channel, List<int[]>> stretches = new TreeMap<>();
    private final Set<Channel> noisy = new TreeSet<>();
    private final Map<Channel, Channel> witnesses = new TreeMap<>();

    private StuckChannels(Log log, Limits limits) {
        this.log = log;
        this.least = (int) Math.round(limits.of("stuck.least") * log.rate());
        this.leastOfTread = (int) Math.round(limits.of("stuck.tread") * log.rate());
        this.margin = (int) Math.round(limits.of("stuck.margin") * log.rate());
        this.still = limits.of("stuck.still");
        this.moved = limits.of("stuck.moved");
        this.noise = new NoisyChannels(log, limits);
    }

    /** Blanks them in place, and notes a doubt for each. */
    static void blank(Log log, Limits limits) {
        new StuckChannels(log, limits).blank();
    }

    private static Map<Kind, List<Kind>> movesWith() {
        Map<Kind, List<Kind>> moves = new LinkedHashMap<>();
        moves.put(Kind.YAW_RATE, List.of(Kind.LATERAL_ACCELERATION, Kind.STEERING));
        moves.put(Kind.LATERAL_ACCELERATION, List.of(Kind.YAW_RATE, Kind.STEERING));
        moves.put(Kind.STEERING, List.of(Kind.YAW_RATE, Kind.LATERAL_ACCELERATION));
        moves.put(Kind.SPEED, List.of(Kind.WHEEL_SPEED, Kind.LONGITUDINAL_ACCELERATION));
        moves.put(Kind.WHEEL_SPEED, List.of(Kind.SPEED, Kind.WHEEL_SPEED));
        moves.put(Kind.DAMPER, List.of(Kind.DAMPER, Kind.LATERAL_ACCELERATION));
        TREADS.forEach(tread -> moves.put(tread, TREADS));
        return moves;
    }

    private void blank() {
        List<Channel> channels = log.bindings().keySet().stream().filter(it -> MOVES_WITH.containsKey(it.kind())).toList();
        // All are looked at before any is blanked: one that is stuck is no witness, and a blank is none either.
        channels.forEach(this::find);
        log.bindings().keySet().stream().filter(it -> NoisyChannels.knows(it.kind()) && !stretches.containsKey(it))
                .forEach(this::findNoise);
        stretches.forEach(this::leaveOut);
    }

    private void findNoise(Channel channel) {
        List<NoisyChannels.Stretch> found = noise.of(channel);
        if (!found.isEmpty()) {
            noisy.add(channel);
            witnesses.put(channel, found.get(0).witness());
            stretches.put(channel, found.stream().map(it -> new int[] {it.from(), it.to()}).toList());
        }
    }

    private void find(Channel channel) {
        float[] values = log.samples(channel);
        double tolerance = still * span(channel);
        List<int[]> found = new ArrayList<>();
        int from = 0;
        while (from < log.size()) {
            float low = values[from];
            float high = values[from];
            int to = from + 1;
            while (to < log.size() && Math.max(high, values[to]) - Math.min(low, values[to]) <= tolerance) {
                low = Math.min(low, values[to]);
                high = Math.max(high, values[to]);
                to++;
            }
            if (to - from >= (TREADS.contains(channel.kind()) ? leastOfTread : least)) {
                Optional<Channel> witness = witness(channel, from, to);
                if (witness.isPresent()) {
                    found.add(new int[] {from, to});
                    witnesses.put(channel, witness.get());
                }
            }
            from = to;
        }
        if (!found.isEmpty()) {
            stretches.put(channel, found);
        }
    }

    /** A channel that moves there and must not do so alone. */
    private Optional<Channel> witness(Channel channel, int from, int to) {
        for (Kind kind : MOVES_WITH.get(channel.kind())) {
            Optional<Channel> moves = log.bindings().keySet().stream().filter(it -> it.kind() == kind && !it.equals(channel))
                    .filter(it -> NoisyChannels.range(log.samples(it), from, to) > moved * span(it) && span(it) > 0).findFirst();
            if (moves.isPresent()) {
                return moves;
            }
        }
        return Optional.empty();
    }

    /** From what one in a hundred samples are below to what one in a hundred are above. */
    private double span(Channel channel) {
        float[] values = log.samples(channel);
        int step = Math.max(1, log.size() / 20_000);
        double[] some = new double[log.size() / step];
        int count = 0;
        for (int i = 0; i < some.length; i++) {
            if (!Float.isNaN(values[i * step])) {
                some[count++] = values[i * step];
            }
        }
        Arrays.sort(some, 0, count);
        return count == 0 ? 0 : some[(int) (count * 0.99)] - some[(int) (count * 0.01)];
    }

    private void leaveOut(Channel channel, List<int[]> found) {
        float[] values = log.samples(channel);
        int measured = 0;
        for (int i = 0; i < log.size(); i++) {
            measured += Float.isNaN(values[i]) ? 0 : 1;
        }
        int dead = found.stream().mapToInt(it -> it[1] - it[0]).sum();
        boolean noise = noisy.contains(channel);
        String what = "the " + channel.spoken() + (noise ? " is nothing but noise " : " stands still ");
        String why = ", while the " + witnesses.get(channel).spoken() + " moves";
        if (dead > ALL * measured) {
            String all = what + "all along" + why;
            if (needed(channel)) {
                throw new camberwell.problem.ProblemsException(log.problem(all + "; is \""
                        + log.bindings().get(channel).heading() + "\" the right column? Name another in a file for --channels, "
                        + "or write \"" + channel.id() + ": none\" there"));
            }
            log.doubt(all + ": it is left out");
            log.drop(channel);
            return;
        }
        List<String> places = new ArrayList<>();
        for (int[] stretch : found) {
            places.add((noise ? "" : "at " + Figures.fixed(values[(stretch[0] + stretch[1]) / 2], 1) + " ") + when(stretch));
        }
        List<String> some = places.subList(0, Math.min(3, places.size()));
        log.doubt(what + String.join(", ", some) + (some.size() < places.size() ? " and in " + (places.size() - some.size())
                + " places more" : "") + why + ": it is left out there");
        for (int[] stretch : found) {
            // The low-pass has mixed what was measured last with what was not.
            int from = Math.max(0, stretch[0] - margin);
            Arrays.fill(values, from, Math.min(log.size(), stretch[1] + margin), Float.NaN);
        }
    }

    /** Whether nothing can be read without it. */
    private boolean needed(Channel channel) {
        Kind kind = channel.kind();
        return kind == Kind.SPEED || kind == Kind.LATERAL_ACCELERATION && !log.has(Kind.YAW_RATE)
                || kind == Kind.YAW_RATE && !log.has(Kind.LATERAL_ACCELERATION);
    }

    private String when(int[] stretch) {
        String seconds = "from " + Figures.fixed(stretch[0] / log.rate(), 0) + " s to "
                + (stretch[1] >= log.size() - 1 ? "the end" : Figures.fixed(stretch[1] / log.rate(), 0) + " s");
        if (!log.has(Kind.LAP)) {
            return seconds;
        }
        float[] lap = log.samples(Kind.LAP);
        // A straight before it may stand still in the same place.
        float first = lap[Math.min(stretch[0] + margin, stretch[1] - 1)];
        float last = lap[stretch[1] - 1];
        return Float.isNaN(first + last) ? seconds : seconds + (first == last ? ", in lap " + Math.round(first)
                : ", in laps " + Math.round(first) + " to " + Math.round(last));
    }
}
