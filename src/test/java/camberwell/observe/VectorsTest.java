package camberwell.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import camberwell.channel.Limits;
import camberwell.vocabulary.Since;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** Worked by hand and in Python beforehand, from the formulas that the classes name. */
@DisplayName("Worked examples of the reading of a log")
class VectorsTest {

    private final Limits limits = limits();

    static Limits limits() {
        return Limits.read(Path.of("rules", "observation.yaml"));
    }

    @Test
    @DisplayName("a line is crossed between two positions, and its time lies between theirs")
    void timingLine() {
        double part = new TimingLine(0, 0, 1, 0).crossed(-1.2, 0.5, 1.8, 0.3);

        assertEquals(100.04, 100.00 + part * 0.10, 1e-9);
        assertFalse(new TimingLine(0, 0, 1, 0).crossed(1.8, 0.5, -1.2, 0.3) >= 0, "the wrong way is no crossing");
    }

    @Test
    @DisplayName("corners begin at 3 m/s² and end below 1.5 m/s², each of one sign")
    void bends() {
        double[] asked = {.2, 1, 1.8, 2.6, 3.4, 6, 8, 8, 5, 2, 1.2, 2, 2.8, -.5, -2, -3.1, -7, -7, -2, -1.6, -1.4, .1};

        assertEquals(List.of(new CornerMap.Bend(2, 9, 1), new CornerMap.Bend(14, 19, -1)),
                CornerMap.bends(asked, 3, 1.5));
    }

    @Test
    @DisplayName("the front or the rear slides by what the steering has beyond the line")
    void beyondTheLine() {
        ReferenceLine line = new ReferenceLine(2.55, 14, Math.toRadians(1.5) / 9.80665, 0.01, 0, 0, 0, 0);

        assertEquals(1.84609, Math.toDegrees(line.beyond(Math.toRadians(100), 20, 0.5, 10, 0.2)), 5e-6);
        assertEquals(-4.77061, Math.toDegrees(line.beyond(Math.toRadians(20), 20, 0.6, 10, 0.5)), 5e-6);
        assertEquals(-5.72958, Math.toDegrees(10.0 / 20 - 0.6), 5e-6, "sideslip rate");
    }

    @Test
    @DisplayName("ratio, gradient and yaw delay come back from rows that obey the line")
    void fit() {
        double[] v = {12, 18, 25, 30, 40, 22};
        double[] r = {.3, -.25, .2, -.15, .08, .05};
        double[] ay = {3.4, -4.3, 5.2, -4.4, 3.3, 1};
        double[] dr = {.1, -.3, 0, .2, -.1, .4};
        double[] steer = {61.2194, -38.0236, 29.499, -16.0452, 12.3554, 11.9987};
        List<ReferenceLine.Row> rows = new ArrayList<>();
        for (int i = 0; i < v.length; i++) {
            rows.add(new ReferenceLine.Row(Math.toRadians(steer[i]), 2.55 * r[i] / v[i], ay[i], dr[i]));
        }
        ReferenceLine line = ReferenceLine.fit(rows, 2.55, OptionalDouble.empty(), 4.685);

        assertEquals(14.0000, line.ratio(), 5e-4);
        assertEquals(1.5000, Math.toDegrees(line.gradient()) * 9.80665, 5e-4);
        assertEquals(0.0100, line.yawDelay(), 5e-5);
        assertEquals(2.0000, Math.toDegrees(line.offset()), 5e-4);
    }

    @Test
    @DisplayName("some clear laps among eight make a certainty and a weight without a cliff")
    void grades() {
        Grade grade = Grade.of(new double[] {.9, .85, 2.55, .9, .85, 2.65, .85, .85}, 1, 3, limits);

        assertEquals(1.6, grade.laps(), 1e-9);
        assertEquals(0.49279, grade.certainty(), 5e-6);
        assertEquals(0.42, grade.weight(), 1e-9);
        double[] often = {1, 1, 1, 1, 1, 1, 1, 1};
        java.util.Arrays.fill(often, 2.8);
        Grade all = Grade.of(often, 1, 3, limits);
        assertEquals(0.79024, all.certainty(), 5e-6);
        assertEquals(0.94, all.weight(), 1e-9);
    }

    @Test
    @DisplayName("what grows towards the end is late in the run")
    void since() {
        double[] m = {.1, 0, .2, .3, .5, .7, .9, 1, .9};
        Grade grade = Grade.of(m, 0, 1, limits);

        assertEquals(Optional.of(Since.LATE_RUN), grade.since());
        assertEquals(0.84, (.9 + 1 + .9) / 3 * (1 - .1), 5e-3);
    }

    @Test
    @DisplayName("an entry eight km/h faster than the rest stands out of their scatter")
    void entrySpeed() {
        double[] rest = {94, 93.7, 94, 93.8, 94.4, 94.3};

        assertEquals(94.0, Robust.median(rest), 1e-9);
        assertEquals(0.37065, Robust.deviation(rest), 5e-6);
        assertEquals(8.35, Robust.median(102.2, 102.5) - 94.0, 1e-9);
    }

    @Test
    @DisplayName("the road goes by slower under an inner wheel, and a steered one sees it at an angle")
    void roadUnderTheWheels() {
        double steer = Math.toRadians(4);

        assertEquals(29.52178, WheelSlip.road(30, 0.6, 1.53 / 2, 1.26, steer), 5e-6);
        assertEquals(30.43754, WheelSlip.road(30, 0.6, -1.53 / 2, 1.26, steer), 5e-6);
        assertEquals(29.541, WheelSlip.road(30, 0.6, 1.53 / 2, 0, 0), 5e-6);
        assertEquals(30.459, WheelSlip.road(30, 0.6, -1.53 / 2, 0, 0), 5e-6);
    }

    /** Vector 1 of outcomes of laps: SciPy's theilslopes; laps 5 and 9 are traffic. */
    @Test
    @DisplayName("a lap in traffic is found over the trend of the stint")
    void trend() {
        double[] laps = {92.41, 92.39, 92.30, 95.87, 92.35, 92.21, 92.28, 92.60, 92.14, 92.20, 92.05};
        double[] x = {2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12};
        double[] line = Robust.line(x, laps);

        assertEquals(-0.03125, line[0], 1e-9);
    }
}
