package camberwell.channel;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

/** Several logs as one: stints of a session, or a run that was written in pieces. */
public final class Logs {

    private Logs() {
    }

    /**
     * One after the other, each a run of its own, at the rate of the slowest.
     *
     * @param logs with units and signs settled; at least one
     */
    public static Log joined(List<Log> logs) {
        if (logs.size() == 1) {
            return logs.get(0);
        }
        double rate = logs.stream().mapToDouble(Log::rate).min().orElseThrow();
        Map<Channel, Binding> bindings = new TreeMap<>();
        TreeSet<Channel> rated = new TreeSet<>();
        for (Log log : logs) {
            log.bindings().forEach(bindings::putIfAbsent);
            log.bindings().keySet().stream().filter(channel -> log.rates(channel) != null).forEach(rated::add);
        }
        int size = 0;
        List<Integer> runs = new ArrayList<>();
        for (Log log : logs) {
            int every = (int) Math.round(log.rate() / rate);
            for (int run : log.runs()) {
                runs.add(size + run / every);
            }
            size += log.size() / every + 1;
        }
        Map<Channel, float[]> samples = new TreeMap<>();
        Map<Channel, float[]> rates = new TreeMap<>();
        for (Channel channel : bindings.keySet().stream().filter(it -> it.kind() != Kind.TIME).toList()) {
            samples.put(channel, strung(logs, rate, size, log -> log.samples(channel)));
        }
        for (Channel channel : rated) {
            rates.put(channel, strung(logs, rate, size, log -> log.rates(channel)));
        }
        List<String> cleaning = new ArrayList<>();
        long rows = 0;
        for (Log log : logs) {
            log.cleaning().stream().map(it -> log.name() + ": " + it).forEach(cleaning::add);
            rows += log.rows();
        }
        Log joined = new Log(logs.get(0).name() + " and " + (logs.size() - 1) + " more", logs.get(0).headingLine(), rate,
                size,
                runs.stream().mapToInt(Integer::intValue).toArray(), rows, logs.get(0).rowRate(), bindings, samples, rates,
                cleaning);
        logs.stream().flatMap(log -> log.doubts().stream()).distinct().forEach(joined::doubt);
        logs.stream().flatMap(log -> log.unused().stream()).forEach(joined::unused);
        return joined;
    }

    private interface Column {
        float[] of(Log log);
    }

    private static float[] strung(List<Log> logs, double rate, int size, Column column) {
        float[] all = new float[size];
        Arrays.fill(all, Float.NaN);
        int at = 0;
        for (Log log : logs) {
            int every = (int) Math.round(log.rate() / rate);
            float[] values = column.of(log);
            for (int i = 0; values != null && i < log.size() / every; i++) {
                all[at + i] = values[i * every];
            }
            at += log.size() / every + 1;
        }
        return all;
    }
}
