package camberwell.channel;

import camberwell.problem.ProblemsException;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;

/**
 * Reads a log: rows of text on one thread, their clock and their cleaning on another. Takes the same memory for a log of
 * any length.
 */
public final class LogReader {

    private static final Batch END = new Batch(new double[0], 0, false);

    private final LogSource source;
    private final Layout layout;
    private final ChannelMap map;
    private final Limits limits;
    private final Binding[] slots;
    private final List<String> unused;
    private Clock clock;
    private Store store;
    private TimeBase time;

    private LogReader(LogSource source, ChannelMap map, Limits limits) {
        this.source = source;
        this.limits = limits;
        this.layout = LayoutReader.read(source.name(), source.head());
        this.map = map;
        Binder.Bound bound = Binder.bind(source.name(), layout, map);
        this.slots = bound.bindings().toArray(Binding[]::new);
        this.unused = bound.unused();
    }

    /**
     * Reads all of it, with units and signs as far as they are stated.
     *
     * @throws ProblemsException if it is no log, or a column that is needed cannot be told
     */
    public static Log read(LogSource source, ChannelMap map, Limits limits) {
        return new LogReader(source, map, limits).read();
    }

    private Log read() {
        RowReader rows = new RowReader(source, layout, List.of(slots));
        BlockingQueue<Batch> queue = new ArrayBlockingQueue<>(4);
        RuntimeException[] failure = new RuntimeException[1];
        Thread worker = new Thread(() -> {
            try {
                for (Batch batch = queue.take(); batch != END; batch = queue.take()) {
                    if (failure[0] == null) {
                        take(batch, failure);
                    }
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
        }, "cleans the log");
        worker.setDaemon(true);
        worker.start();
        try {
            rows.read(batch -> put(queue, batch));
        } finally {
            put(queue, END);
            join(worker);
        }
        if (failure[0] != null) {
            throw failure[0];
        }
        if (clock == null) {
            throw new ProblemsException(camberwell.problem.Problem.error(source.name(), layout.firstRow(), 1,
                    "the log has headings and no rows"));
        }
        clock.end();
        return log(rows);
    }

    private void take(Batch batch, RuntimeException[] failure) {
        try {
            if (time == null) {
                time = TimeBase.of(source.name(), layout, map, slots, batch);
                store = new Store(Clock.store(slots), Clock.extremes(slots), limits.of("clock.rate") / Clock.KEPT_EVERY,
                        Store.MOST);
                clock = new Clock(slots, store, time.period(), limits);
            }
            if (batch.anew()) {
                clock.newRun();
            }
            for (int i = 0; i < batch.rows(); i++) {
                clock.row(time.next(batch.values(), i, slots.length), batch.values(), i * slots.length);
            }
        } catch (RuntimeException e) {
            failure[0] = e;
        }
    }

    private static void put(BlockingQueue<Batch> queue, Batch batch) {
        try {
            queue.put(batch);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    private static void join(Thread worker) {
        try {
            worker.join();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Log log(RowReader rows) {
        Map<Channel, Binding> bindings = new TreeMap<>();
        Map<Channel, float[]> samples = new TreeMap<>();
        Map<Channel, float[]> rates = new TreeMap<>();
        int next = slots.length;
        for (int i = 0; i < slots.length; i++) {
            Channel channel = slots[i].channel();
            bindings.put(channel, slots[i]);
            if (channel.kind() != Kind.TIME) {
                samples.put(channel, store.column(i));
            }
            if (channel.kind().treatment() == Kind.Treatment.TRAVEL) {
                rates.put(channel, store.column(next++));
            }
        }
        Log log = new Log(source.name(), layout.headingLine(), store.rate(), store.size(), store.runs(), rows.rows(),
                1 / time.period(), bindings, samples, rates, cleaning(rows));
        unused.forEach(log::unused);
        if (store.full()) {
            log.doubt("the log is longer than " + Figures.fixed(store.size() / store.rate() / 3600, 0)
                    + " hours; what comes after is left out");
        }
        return log;
    }

    private List<String> cleaning(RowReader rows) {
        List<String> done = new ArrayList<>();
        time.told().ifPresent(done::add);
        count(done, clock.dropped(), "row without a time of its own left out", "rows without a time of their own left out");
        count(done, clock.disordered(), "row put into its place in time", "rows put into their place in time");
        count(done, clock.resets(), "jump back of the clock: a new run begins there",
                "jumps back of the clock: a new run begins at each");
        count(done, clock.gaps(), "gap left empty", "gaps left empty");
        count(done, clock.spikes(), "single value that leapt away and back taken out",
                "single values that leapt away and back taken out");
        if (rows.cutOff()) {
            done.add("the last line is cut off and left out");
        }
        return done;
    }

    private static void count(List<String> done, long count, String one, String several) {
        if (count > 0) {
            done.add(count + " " + (count == 1 ? one : several));
        }
    }
}
