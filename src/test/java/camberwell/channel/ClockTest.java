package camberwell.channel;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("One clock for all channels")
class ClockTest {

    private final Limits limits = limits();

    static Limits limits() {
        return Limits.read(Path.of("rules", "observation.yaml"));
    }

    private static Binding slot(Kind kind, int index) {
        return new Binding(Channel.of(kind), kind.id(), index, Optional.empty(), 1, true);
    }

    private Store run(double period, double[] times, Kind kind, double... values) {
        Binding[] slots = {slot(kind, 0)};
        Store store = new Store(1, new boolean[1], 50, Store.MOST);
        Clock clock = new Clock(slots, store, period, limits);
        for (int i = 0; i < times.length; i++) {
            clock.row(times[i], values, i);
        }
        clock.end();
        return store;
    }

    @Test
    @DisplayName("a distance that begins anew between two rows goes on through the line")
    void distanceOverTheLine() {
        // Computed beforehand: the lap is 4000 m long, the car goes at 40 m/s, and plain interpolation would give 444.6 m.
        double[] t = {0, .011, .019, .032, .041, .049, .310, .320};
        Store store = run(0.01, t, Kind.DISTANCE, 3998.60, 3999.04, 3999.36, 3999.88, .24, .56, 11.0, 11.4);

        assertEquals(3999.4, store.column(0)[1], 1e-3);
        assertEquals(0.2, store.column(0)[2], 1e-2);
        for (int i = 3; i <= 15; i++) {
            assertTrue(Float.isNaN(store.column(0)[i]), "the gap from 0.05 s to 0.30 s stays empty at " + i * 20 + " ms");
        }
        assertEquals(11.4, store.column(0)[16], 1e-3);
    }

    @Test
    @DisplayName("rows out of order are sorted, equal times dropped, and a jump back begins a new run")
    void disorder() {
        double[] t = {10, 10.01, 10.03, 10.02, 10.03, 10.04, 3.0, 3.01, 3.02};
        Binding[] slots = {slot(Kind.THROTTLE, 0)};
        Store store = new Store(1, new boolean[1], 50, Store.MOST);
        Clock clock = new Clock(slots, store, 0.01, limits);
        double[] values = {0, 1, 3, 2, 9, 4, 7, 8, 9};
        for (int i = 0; i < t.length; i++) {
            clock.row(t[i], values, i);
        }
        clock.end();

        assertEquals(1, clock.disordered());
        assertEquals(1, clock.dropped());
        assertEquals(1, clock.resets());
        assertEquals(2, store.runs().length);
        assertEquals(2, store.column(0)[1], 1e-6);
        assertEquals(4, store.column(0)[2], 1e-6);
        assertEquals(7, store.column(0)[store.runs()[1]], 1e-6);
    }

    @Test
    @DisplayName("a value that leaps away and straight back is taken out, a step is not")
    void spikes() {
        int n = 1000;
        double[] t = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = i * 0.01;
            v[i] = i < 700 ? Math.sin(i * 0.02) : Math.sin(i * 0.02) + 3;
        }
        v[500] = 40;
        Binding[] slots = {slot(Kind.YAW_RATE, 0)};
        Store store = new Store(1, new boolean[1], 50, Store.MOST);
        Clock clock = new Clock(slots, store, 0.01, limits);
        for (int i = 0; i < n; i++) {
            clock.row(t[i], v, i);
        }
        clock.end();

        assertEquals(1, clock.spikes());
        assertEquals(Math.sin(10), store.column(0)[250], 0.02);
        assertEquals(Math.sin(18) + 3, store.column(0)[450], 0.02);
    }

    @Test
    @DisplayName("a channel that is logged at every tenth row is filled in between")
    void seldomLogged() {
        int n = 600;
        double[] t = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            t[i] = i * 0.01;
            v[i] = i % 10 == 0 ? i * 0.1 : Double.NaN;
        }
        Store store = run(0.01, t, Kind.SPEED, v);

        assertEquals(20.4, store.column(0)[102], 0.05);
    }

    @Test
    @DisplayName("a store that is full halves its rate and keeps the whole run")
    void halving() {
        Store store = new Store(1, new boolean[1], 50, 8192);
        store.beginRun();
        for (int i = 0; i < 30_000; i++) {
            assertTrue(store.add(new double[] {i}), "12.5 Hz are still enough");
        }

        assertEquals(12.5, store.rate());
        assertEquals(30_000 / 4, store.size(), 2);
        for (int i = 0; i < store.size(); i++) {
            assertEquals(4.0 * i, store.column(0)[i], 3.01);
        }
    }
}
