package camberwell.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.statistics.StintFit.Trend;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import org.hipparchus.stat.descriptive.rank.Median;
import org.hipparchus.stat.inference.BinomialTest;
import org.hipparchus.stat.inference.AlternativeHypothesis;
import org.hipparchus.stat.inference.TTest;
import org.hipparchus.stat.regression.OLSMultipleLinearRegression;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked figures by SciPy 1.17.1, with the call named beside each, and by Hipparchus' own statistics. */
@Label("What lap times can tell")
class LapStatisticsTest {

    private static final double[] A = {92.52, 92.51, 92.38, 92.32, 92.20, 92.37, 92.26, 92.23};
    private static final double[] B = {92.35, 92.45, 92.39, 92.27, 92.20, 92.18, 92.10, 92.12};

    private static Stint stint(int first, double... seconds) {
        return new Stint(IntStream.range(first, first + seconds.length).asDoubleStream().toArray(), seconds);
    }

    @Test
    @DisplayName("the median slope shows the slow laps of a falling stint, which the plain rule misses")
    void slowLaps() {
        double[] seconds = {92.41, 92.39, 92.30, 95.87, 92.35, 92.21, 92.28, 92.60, 92.14, 92.20, 92.05};
        double[] lap = IntStream.rangeClosed(2, 12).asDoubleStream().toArray();
        assertEquals(92.30, Robust.median(seconds), 1e-12);
        assertEquals(0.10, Robust.medianDeviation(seconds), 1e-9);
        assertEquals(24.08, Robust.scores(seconds, 0)[3], 5e-3);
        assertEquals(2.024, Robust.scores(seconds, 0)[7], 5e-4);
        double slope = Robust.slope(lap, seconds); // scipy.stats.theilslopes
        assertEquals(-0.03125, slope, 1e-9);
        double[] level = IntStream.range(0, lap.length).mapToDouble(i -> seconds[i] - slope * lap[i]).toArray();
        assertEquals(43.444, Robust.scores(level, 0)[3], 5e-3);
        assertEquals(4.875, Robust.scores(level, 0)[7], 5e-3);
    }

    @Test
    @DisplayName("Welch's test and interval")
    void welch() {
        Difference difference = Difference.welch(A, B); // scipy.stats.ttest_ind(equal_var=False)
        assertEquals(1.46238, -difference.estimate() / difference.standardError(), 5e-6);
        assertEquals(13.93697, difference.degreesOfFreedom(), 5e-6);
        assertEquals(0.16582, difference.pValue(), 5e-6);
        assertEquals(-0.22514, difference.interval(0.95).low(), 5e-6);
        assertEquals(0.04264, difference.interval(0.95).high(), 5e-6);
        assertEquals(Verdict.CANNOT_TELL, Verdict.of(difference, 0.05));
        assertEquals(new TTest().tTest(A, B), difference.pValue(), 1e-12);
    }

    @Test
    @DisplayName("Welch's test of two samples of other sizes, as R 1.8.1 has it")
    void welchOfUnequalSamples() {
        // The observations of Hipparchus' TTestTest, checked there with R 1.8.1, t.test.
        double[] a = {7, -4, 18, 17, -3, -5, 1, 10, 11, -2};
        double[] b = {-1, 12, -1, -3, 3, -5, 5, 2, -11, -1, -3};
        Difference difference = Difference.welch(a, b);
        assertEquals(1.60371728768, -difference.estimate() / difference.standardError(), 1e-10);
        assertEquals(0.128839369622, difference.pValue(), 1e-10);
        assertEquals(15.5905129687, difference.degreesOfFreedom(), 1e-9);
        assertEquals(-12.25749349, difference.interval(0.95).low(), 1e-8);
        assertEquals(1.71203895, difference.interval(0.95).high(), 1e-8);
    }

    @Test
    @DisplayName("with the trend of both stints taken out, the same laps tell that B is faster, perhaps by little")
    void trend() {
        StintFit fit = StintFit.of(List.of(stint(2, A), stint(2, B)), Trend.COMMON);
        Difference difference = fit.contrast(-1, 1);
        assertEquals(-0.0445833, fit.slope(0).estimate(), 5e-8);
        assertEquals(-0.09125, difference.estimate(), 1e-9);
        assertEquals(0.0313396, difference.standardError(), 5e-8);
        assertEquals(-0.15896, difference.interval(0.95).low(), 5e-6);
        assertEquals(-0.02354, difference.interval(0.95).high(), 5e-6);
        assertEquals(0.01213, difference.pValue(), 5e-6);
        assertEquals(0.99393, difference.chanceLess(), 5e-6);
        assertEquals(Verdict.PERHAPS_FASTER, Verdict.of(difference, 0.05));
    }

    @Property(tries = 100)
    @Label("stints of any length: the same coefficients and errors as Hipparchus' regression")
    void asRegression(@ForAll long seed) {
        Random random = new Random(seed);
        double[][] stints = {laps(3 + random.nextInt(10), i -> 90 - 0.03 * i + 0.2 * random.nextGaussian()),
            laps(3 + random.nextInt(10), i -> 90.1 - 0.03 * i + 0.2 * random.nextGaussian())};
        StintFit fit = StintFit.of(List.of(stint(1, stints[0]), stint(1, stints[1])), Trend.COMMON);
        int rows = stints[0].length + stints[1].length;
        double[] y = new double[rows];
        double[][] x = new double[rows][];
        for (int i = 0; i < rows; i++) {
            boolean second = i >= stints[0].length;
            int lap = second ? i - stints[0].length : i;
            y[i] = stints[second ? 1 : 0][lap];
            x[i] = new double[] {lap + 1, second ? 1 : 0};
        }
        OLSMultipleLinearRegression reference = new OLSMultipleLinearRegression();
        reference.newSampleData(y, x);
        assertEquals(reference.estimateRegressionParameters()[1], fit.slope(0).estimate(), 1e-9);
        assertEquals(reference.estimateRegressionParameters()[2], fit.contrast(-1, 1).estimate(), 1e-9);
        assertEquals(reference.estimateRegressionParametersStandardErrors()[2], fit.contrast(-1, 1).standardError(),
                1e-9);
        assertEquals(reference.estimateRegressionStandardError(), fit.scatter(), 1e-9);
        assertEquals(new Median().evaluate(y), Robust.median(y), 1e-12);
    }

    @ParameterizedTest(name = "{0} s: {1} and {2} laps")
    @CsvSource({"0.5, 64, 86", "0.75, 29, 39", "1, 17, 23", "1.5, 9, 11", "2, 6, 7", "3, 4, 4"})
    @DisplayName("laps for each stint, as the noncentral t distribution has them (scipy.stats.nct)")
    void howManyLaps(double difference, int power80, int power90) {
        assertEquals(power80, SampleSize.laps(difference, 0.8));
        assertEquals(power90, SampleSize.laps(difference, 0.9));
    }

    @ParameterizedTest(name = "{0} laps: {1} s")
    @CsvSource({"3, 3.07", "4, 2.38", "5, 2.02", "6, 1.80", "8, 1.51", "10, 1.33", "15, 1.06", "20, 0.91"})
    @DisplayName("what a number of laps shows, within 2 % of the exact figure (scipy.stats.nct)")
    void whatLapsShow(int laps, double seen) {
        assertEquals(seen, SampleSize.seen(laps, 0.8), 0.02 * seen);
    }

    @Test
    @DisplayName("a drifting track: A-B charges the drift to the change, A-B-A does not")
    void drift() {
        for (double effect : new double[] {-0.10, 0}) {
            double[] a = laps(6, i -> 90 - 0.02 * i);
            double[] b = laps(6, i -> 90 - 0.02 * (i + 6) + effect);
            double[] again = laps(6, i -> 90 - 0.02 * (i + 12));
            StintFit two = StintFit.of(List.of(stint(1, a), stint(1, b)), Trend.COMMON);
            assertEquals(effect - 0.12, two.contrast(-1, 1).estimate(), 1e-9);
            StintFit three = StintFit.of(List.of(stint(1, a), stint(1, b), stint(1, again)), Trend.COMMON);
            assertEquals(effect, three.alternating().estimate(), 1e-9);
        }
    }

    @Test
    @DisplayName("a drift that bends stays, less of it the shorter the stints are")
    void curvedDrift() {
        IntToDoubleFunction bent = lap -> 90 + 0.001 * (lap + 1) * (lap + 1);
        assertEquals(-0.036, alternating(3, 6, bent), 1e-9);
        assertEquals(-0.016, alternating(5, 4, bent), 1e-9);
    }

    private static double alternating(int stints, int laps, IntToDoubleFunction time) {
        return StintFit.of(IntStream.range(0, stints).mapToObj(s -> stint(1, laps(laps, i ->
                time.applyAsDouble(s * laps + i)))).toList(), Trend.NONE).alternating().estimate();
    }

    @Test
    @DisplayName("A-B-A of 6-12-6 laps has 4/24 of a lap's variance, as A-B of 24 laps has if nothing drifts")
    void varianceOfAlternating() {
        Random random = new Random(1);
        List<Stint> stints = List.of(stint(1, laps(6, i -> random.nextGaussian())),
                stint(1, laps(12, i -> random.nextGaussian())), stint(1, laps(6, i -> random.nextGaussian())));
        StintFit fit = StintFit.of(stints, Trend.NONE);
        assertEquals(Math.sqrt(4.0 / 24) * fit.scatter(), fit.alternating().standardError(), 1e-12);
    }

    @Test
    @DisplayName("laps that follow each other count for fewer: 10 with a correlation of 0.3 are 5.4")
    void correlation() {
        assertEquals(5.4, Robust.independent(10, 0.3), 0.02);
        assertEquals(10, Robust.independent(10, -0.3));
        assertEquals(0, Robust.lagOne(new double[] {1, 2}));
        assertTrue(Robust.lagOne(new double[] {1, 1.1, 1.2, 2, 2.1, 2.2}) > 0.4);
    }

    @Test
    @DisplayName("grades before and after: only better and worse are certain")
    void signTest() {
        SignTest test = SignTest.of(new int[] {3, 2, 2, 3, 2, 1, 2, 2}, new int[] {1, 1, 2, 2, 0, 1, 3, 1});
        assertEquals(new SignTest(5, 2, 1), test);
        assertEquals(0.21875, test.pValue(), 1e-12); // scipy.stats.binomtest
        assertEquals(new BinomialTest().binomialTest(6, 1, 0.5, AlternativeHypothesis.TWO_SIDED), test.pValue(), 1e-12);
        assertEquals(0.0625, new SignTest(5, 0, 0).pValue(), 1e-12);
        assertEquals(Optional.empty(), new SignTest(5, 0, 0).tellingPValue());
        assertTrue(new SignTest(6, 0, 0).tellingPValue().orElseThrow() < 0.05);
        assertEquals(1, new SignTest(0, 4, 0).pValue());
    }

    @Test
    @DisplayName("several looks: Holm for claims, Benjamini and Hochberg for what to look at next")
    void looks() {
        double[] p = {0.300, 0.012, 0.021, 0.003, 0.040};
        assertArrayEquals(new double[] {0.300, 0.048, 0.063, 0.015, 0.080}, Looks.holm(p), 1e-12);
        // scipy.stats.false_discovery_control
        assertArrayEquals(new double[] {0.300, 0.030, 0.035, 0.015, 0.050}, Looks.falseDiscovery(p), 1e-12);
        assertEquals(0.23, Looks.falseAlarm(5, 0.05), 5e-3);
        assertEquals(0.34, Looks.falseAlarm(8, 0.05), 5e-3);
        assertEquals(0.64, Looks.falseAlarm(20, 0.05), 5e-3);
    }

    @Test
    @DisplayName("between three pressures of which the middle one was best: the vertex of the parabola")
    void bracket() {
        assertEquals(1.7625, Bracket.vertex(new double[] {1.70, 1.75, 1.80}, new double[] {92.46, 92.31, 92.36})
                .orElseThrow(), 1e-9);
        assertEquals(Optional.empty(), Bracket.vertex(new double[] {1, 2, 3}, new double[] {3, 2, 1}));
        assertEquals(Optional.empty(), Bracket.vertex(new double[] {1, 2, 3}, new double[] {1, 2, 1}));
    }

    /** Laps of three stints as the same model has them in numpy 2.4; the interval by a root finder of scipy 1.17, no formula. */
    @Test
    @DisplayName("the vertex has an interval, where the three settings differ by more than the laps can show")
    void bracketWithInterval() {
        double[] x = {1.70, 1.75, 1.80};
        double[] middle = {92.25, 92.35, 92.29, 92.17, 92.10, 92.08, 92.00, 92.02};
        double[] last = {92.41, 92.44, 92.37, 92.28, 92.30, 92.19, 92.20, 92.12};
        StintFit fit = StintFit.of(List.of(stint(2, A), stint(2, middle), stint(2, last)), Trend.COMMON);
        assertEquals(1.7546511628, Bracket.vertex(x, new double[] {fit.mean(0), fit.mean(1), fit.mean(2)}).orElseThrow(), 1e-9);
        Interval interval = Bracket.interval(x, fit::contrast, 0.95).orElseThrow();
        assertEquals(1.7503016774, interval.low(), 1e-8);
        assertEquals(1.7599292800, interval.high(), 1e-8);
        StintFit flat = StintFit.of(List.of(stint(2, A), stint(2, A), stint(2, A)), Trend.COMMON);
        assertEquals(Optional.empty(), Bracket.interval(x, flat::contrast, 0.95));
        StintFit hill = StintFit.of(List.of(stint(2, middle), stint(2, A), stint(2, middle)), Trend.COMMON);
        assertEquals(Optional.empty(), Bracket.interval(x, hill::contrast, 0.95), "the slowest of three is no best");
    }

    @Test
    @DisplayName("of a thousand brackets with a known vertex the interval holds it in about 95 of a hundred")
    void bracketHoldsTheTruth() {
        Random random = new Random(7);
        double[] x = {0, 1, 3};
        double truth = 1.4;
        int told = 0;
        int held = 0;
        for (int i = 0; i < 1000; i++) {
            List<Stint> stints = Arrays.stream(x).mapToObj(setting -> stint(1, laps(8, lap -> 90 - 0.02 * lap
                    + 0.3 * (setting - truth) * (setting - truth) + 0.15 * random.nextGaussian()))).toList();
            Optional<Interval> interval = Bracket.interval(x, StintFit.of(stints, Trend.COMMON)::contrast, 0.95);
            told += interval.isPresent() ? 1 : 0;
            held += interval.filter(it -> it.low() <= truth && truth <= it.high()).isPresent() ? 1 : 0;
        }
        assertTrue(told > 900, told + " told");
        assertEquals(0.95, held / (double) told, 0.02);
    }

    @Property(tries = 200)
    @Label("the order in which laps and stints are entered does not matter")
    void order(@ForAll long seed) {
        Random random = new Random(seed);
        double[] a = laps(4 + random.nextInt(6), i -> 92 + random.nextGaussian());
        double[] b = laps(4 + random.nextInt(6), i -> 92 + random.nextGaussian());
        Difference forward = StintFit.of(List.of(stint(1, a), stint(1, b)), Trend.COMMON).contrast(-1, 1);
        Difference backward = StintFit.of(List.of(reversed(stint(1, b)), reversed(stint(1, a))), Trend.COMMON)
                .contrast(1, -1);
        assertEquals(forward.estimate(), backward.estimate(), 1e-9);
        assertEquals(forward.standardError(), backward.standardError(), 1e-9);
        assertEquals(-Difference.welch(a, b).estimate(), Difference.welch(b, a).estimate(), 1e-12);
    }

    @Property(tries = 200)
    @Label("more laps of the same kind never widen the interval, and a lower level never does")
    void moreEvidence(@ForAll long seed) {
        Random random = new Random(seed);
        double[] a = laps(4 + random.nextInt(6), i -> 92 + random.nextGaussian());
        double[] b = laps(4 + random.nextInt(6), i -> 92 + random.nextGaussian());
        StintFit once = StintFit.of(List.of(stint(1, a), stint(1, b)), Trend.NONE);
        StintFit twice = StintFit.of(List.of(stint(1, doubled(a)), stint(1, doubled(b))), Trend.NONE);
        assertTrue(twice.contrast(-1, 1).interval(0.95).half() < once.contrast(-1, 1).interval(0.95).half());
        assertTrue(once.contrast(-1, 1).interval(0.9).half() < once.contrast(-1, 1).interval(0.95).half());
    }

    @Test
    @DisplayName("too few laps are no sample")
    void tooFew() {
        assertThrows(IllegalArgumentException.class, () -> StintFit.of(List.of(stint(1, 92.1), stint(1, 92.2)),
                Trend.COMMON));
        assertThrows(IllegalArgumentException.class, () -> Difference.welch(new double[] {92}, B));
        assertThrows(IllegalArgumentException.class, () -> StintFit.of(List.of(stint(1, A), stint(1, B)), Trend.NONE)
                .alternating());
    }

    private static double[] laps(int count, IntToDoubleFunction time) {
        return IntStream.range(0, count).mapToDouble(time).toArray();
    }

    private static double[] doubled(double[] numbers) {
        return IntStream.range(0, 2 * numbers.length).mapToDouble(i -> numbers[i / 2]).toArray();
    }

    private static Stint reversed(Stint stint) {
        return new Stint(reversed(stint.lap()), reversed(stint.seconds()));
    }

    private static double[] reversed(double[] numbers) {
        double[] reversed = numbers.clone();
        for (int i = 0; i < numbers.length; i++) {
            reversed[i] = numbers[numbers.length - 1 - i];
        }
        return Arrays.copyOf(reversed, reversed.length);
    }
}
