package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.run.Lap;
import camberwell.statistics.Difference;
import camberwell.statistics.StintFit;
import camberwell.statistics.StintFit.Trend;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Which laps count")
class CountedLapsTest {

    private static List<Lap> laps(String... texts) {
        return Stream.of(texts).map(text -> Lap.parse(text).orElseThrow()).toList();
    }

    private static List<Integer> out(CountedLaps laps) {
        return laps.laps().stream().filter(lap -> !lap.counts()).map(CountedLaps.Counted::number).toList();
    }

    @Test
    @DisplayName("slow laps are out by the trend of the rest, which a plain rule would miss late in a falling stint")
    void slow() {
        CountedLaps counted = CountedLaps.of(laps("out", "92.41", "92.39", "92.30", "95.87", "92.35", "92.21", "92.28",
                "92.60", "92.14", "92.20", "92.05"));
        assertEquals(List.of(1, 5, 9), out(counted));
        assertEquals(9, counted.count());
        assertTrue(counted.laps().get(4).why().startsWith("3.5"), counted.laps().get(4).why());
    }

    @Test
    @DisplayName("laps with a flag are out by name, quick ones stay and are named")
    void named() {
        CountedLaps counted = CountedLaps.of(laps("1:35.0 out", "92.41", "92.39 traffic", "92.38", "90.10", "92.35",
                "92.36", "93.9 in"));
        assertEquals(List.of(1, 3, 8), out(counted));
        assertEquals("traffic", counted.laps().get(2).why());
        assertTrue(counted.laps().get(4).why().contains("was a corner cut?"));
    }

    @Test
    @DisplayName("laps that are all alike, or too few for a rule, all count")
    void alike() {
        assertEquals(List.of(), out(CountedLaps.of(laps("92.40", "92.40", "92.40", "92.41", "92.39"))));
        assertEquals(List.of(), out(CountedLaps.of(laps("92.40", "99.40", "92.41"))));
        assertEquals(0, CountedLaps.of(List.of()).count());
    }

    @Test
    @DisplayName("with traffic, the interval holds the truth in 95 of 100 pairs of stints, and few good laps are dropped")
    void coverage() {
        Random random = new Random(7);
        int held = 0;
        int dropped = 0;
        int pairs = 600;
        for (int pair = 0; pair < pairs; pair++) {
            double truth = -0.225;
            CountedLaps a = CountedLaps.of(stint(random, 0));
            CountedLaps b = CountedLaps.of(stint(random, truth));
            dropped += 16 - a.count() - b.count();
            Difference difference = StintFit.of(List.of(a.stint(), b.stint()), Trend.COMMON).contrast(-1, 1);
            held += difference.interval(0.95).low() <= truth && truth <= difference.interval(0.95).high() ? 1 : 0;
        }
        assertTrue(held >= 0.92 * pairs && held <= 0.98 * pairs, held + " of " + pairs);
        assertTrue(dropped > 0.05 * 16 * pairs && dropped < 0.20 * 16 * pairs, dropped + " dropped");
    }

    /** Eight laps with a scatter of 0.15 s on a falling trend, one in ten of them in traffic. */
    private static List<Lap> stint(Random random, double effect) {
        List<Lap> laps = new ArrayList<>();
        DoubleStream.iterate(1, lap -> lap + 1).limit(8).forEach(lap -> {
            double traffic = random.nextInt(10) == 0 ? 1 + 2 * random.nextDouble() : 0;
            laps.add(Lap.parse(String.valueOf(Math.rint(1000 * (92 - 0.03 * lap + effect + traffic
                    + 0.15 * random.nextGaussian())) / 1000)).orElseThrow());
        });
        return laps;
    }
}
