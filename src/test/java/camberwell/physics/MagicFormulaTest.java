package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MagicFormulaTest {

    private static final Bakker1987 TYRE = Bakker1987.PUBLISHED;

    // Bakker, Nyborg, Pacejka, SAE 870421 (1987), coefficients of table 2; values computed from the coefficients.
    @ParameterizedTest
    @CsvSource({"2000, 1933.6, 708.8, -0.0010, 9.35", "4000, 3690.4, 1027.3, -0.7090, 9.35",
        "6000, 5270.4, 1076.1, -1.4170, 10.82", "8000, 6673.6, 1028.8, -2.1250, 12.78"})
    @DisplayName("1987 tyre: peak, cornering stiffness, curvature and slip at the peak")
    void factorsOf1987(double load, double peak, double stiffnessPerDegree, double curvature, double peakSlip) {
        MagicCurve curve = TYRE.at(load, 0);
        assertEquals(peak, curve.peak(), 0.06);
        assertEquals(stiffnessPerDegree, curve.stiffness() * Math.PI / 180, 0.06);
        assertEquals(curvature, curve.e(), 5e-5);
        assertEquals(peakSlip, Math.toDegrees(curve.peakSlip()), 0.006);
        assertEquals(peak, curve.force(curve.peakSlip()), 0.06);
    }

    // As above, lateral force in newtons at 1, 2, 4, 6, 8, 10 and 15 degrees.
    @ParameterizedTest
    @CsvSource({"2000, 676, 1197, 1723, 1886, 1929, 1933, 1906", "4000, 1009, 1911, 3097, 3553, 3677, 3688, 3622",
        "6000, 1072, 2110, 3833, 4794, 5166, 5265, 5207", "8000, 1030, 2061, 4011, 5465, 6253, 6576, 6647"})
    void forcesOf1987(double load, double at1, double at2, double at4, double at6, double at8, double at10,
            double at15) {
        double[] degrees = {1, 2, 4, 6, 8, 10, 15};
        double[] expected = {at1, at2, at4, at6, at8, at10, at15};
        for (int i = 0; i < degrees.length; i++) {
            assertEquals(expected[i], TYRE.lateralForce(Math.toRadians(degrees[i]), load, 0), 0.6);
        }
    }

    // The same paper's table 1, fitted load by load (from memory): a plausibility check of 1.5 %.
    @ParameterizedTest
    @CsvSource({"2000, 1936, 708.6", "4000, 3650, 1038", "6000, 5237, 1091", "8000, 6677, 1017"})
    void closeToTheFactorsFittedLoadByLoad(double load, double peak, double stiffness) {
        assertEquals(peak, TYRE.at(load, 0).peak(), 0.015 * peak);
        assertEquals(stiffness, TYRE.corneringStiffness(load) * Math.PI / 180, 0.015 * stiffness);
    }

    // Computed from the 1987 coefficients.
    @Test
    @DisplayName("load sensitivity: moving 2 kN from one tyre to the other costs grip, which is why bars work")
    void loadSensitivity() {
        assertEquals(7380.8, 2 * TYRE.at(4000, 0).peak(), 0.1);
        assertEquals(7204.0, TYRE.at(2000, 0).peak() + TYRE.at(6000, 0).peak(), 0.1);
        double four = Math.toRadians(4);
        assertEquals(6193.2, 2 * TYRE.lateralForce(four, 4000, 0), 0.6);
        assertEquals(5555.6, TYRE.lateralForce(four, 2000, 0) + TYRE.lateralForce(four, 6000, 0), 0.6);
        double six = Math.toRadians(6);
        assertEquals(7107.0, 2 * TYRE.lateralForce(six, 4000, 0), 0.6);
        assertEquals(6680.3, TYRE.lateralForce(six, 2000, 0) + TYRE.lateralForce(six, 6000, 0), 0.6);
    }

    // Computed from the 1987 coefficients at 4 kN, camber and slip that reinforce both positive; the paper's signs
    // are not certain, its magnitudes are.
    @ParameterizedTest
    @CsvSource({"0, 0, 1911, 3097, 3553", "2, 173, 2001, 3167, 3645", "5, 424, 2128, 3264, 3774",
        "-2, -173, 1675, 2886, 3394"})
    void camberOf1987(double lean, double at0, double at2, double at4, double at6) {
        double[] expected = {at0, at2, at4, at6};
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], TYRE.lateralForce(Math.toRadians(2 * i), 4000, Math.toRadians(lean)), 0.6);
        }
    }

    // Project Chrono's PAC2002 coefficients (BSD 3-clause); stiffness and friction computed from them, pure slip.
    @ParameterizedTest
    @CsvSource({
        "245, 2000, 718, 1.137", "245, 3000, 1001, 1.092", "245, 4000, 1215, 1.046", "245, 5000, 1361, 1.000",
        "245, 6000, 1450, 0.954",
        "265, 2000, 749, 1.102", "265, 3000, 1091, 1.085", "265, 4000, 1397, 1.067", "265, 5000, 1661, 1.050",
        "265, 6000, 1882, 1.032",
        "185, 2000, 552, 1.024", "185, 3000, 715, 0.977", "185, 4000, 801, 0.931", "185, 5000, 830, 0.884",
        "185, 6000, 824, 0.838"})
    void openTyreTables(int tyre, double load, double stiffness, double friction) {
        Pac2002 pac = switch (tyre) {
            case 245 -> Pac2002.ROAD_245_40R18;
            case 265 -> Pac2002.ROAD_265_70R18;
            default -> Pac2002.ROAD_185_80R14;
        };
        assertEquals(stiffness, pac.corneringStiffness(load) * Math.PI / 180, 0.6);
        assertEquals(friction, pac.peakFriction(load), 6e-4);
    }

    // Load exponents at 3 kN of the open road tyres: stiffness 0.5 to 0.9, friction -0.04 to -0.15.
    @Test
    @DisplayName("the model tyre's load sensitivity lies in the band of open tyre data")
    void plausibleLoadSensitivity() {
        Pac2002 tyre = Pac2002.normalised(3000, 1.05, 1.0, Math.toRadians(3));
        double stiffness = Math.log(tyre.corneringStiffness(3300) / tyre.corneringStiffness(2700))
                / Math.log(3300.0 / 2700.0);
        double friction = Math.log(tyre.peakFriction(3300) / tyre.peakFriction(2700)) / Math.log(3300.0 / 2700.0);
        assertTrue(stiffness > 0.5 && stiffness < 0.9, "stiffness exponent " + stiffness);
        assertTrue(friction > -0.18 && friction < -0.04, "friction exponent " + friction);
        assertEquals(1.05, tyre.peakFriction(3000), 1e-12);
    }

    @Test
    @DisplayName("the model tyre grips most at its stated camber and loses to either side")
    void optimumCamber() {
        double optimum = Math.toRadians(3);
        Pac2002 tyre = Pac2002.normalised(3000, 1.4, 1.2, optimum);
        double outer = Pac2002.OUTER * 3000;
        double best = tyre.at(outer, optimum).peak();
        assertTrue(best > tyre.at(outer, optimum - 0.005).peak());
        assertTrue(best > tyre.at(outer, optimum + 0.005).peak());
        assertTrue(best > 1.015 * tyre.at(outer, 0).peak(), "worth having");
        assertTrue(tyre.at(3000, optimum / 2).peak() > tyre.at(3000, 0).peak());
        assertTrue(tyre.at(3000, 0).peak() > tyre.at(3000, -0.03).peak());
        assertTrue(tyre.lateralForce(0.0, 3000, optimum) > 0, "a leaning wheel pushes the way it leans");
    }

    @Test
    @DisplayName("braking takes lateral grip by the friction ellipse: 60 % of one leaves 80 % of the other")
    void frictionEllipse() {
        MagicCurve curve = TYRE.at(4000, 0);
        double limit = MagicFormula.LONGITUDINAL_GRIP * curve.d();
        assertEquals(0.8, MagicFormula.ellipse(0.6 * limit, curve), 1e-12);
        assertEquals(0.8, MagicFormula.ellipse(-0.6 * limit, curve), 1e-12);
        assertEquals(0.0, MagicFormula.ellipse(1.2 * limit, curve));
        assertEquals(0.0, MagicFormula.ellipse(1.0, TYRE.at(0, 0)));
    }

    // The ratio of the 1987 paper's peaks, Fx over Fy: 2202.8/1933.6 at 2 kN, 7788.8/6673.6 at 8 kN.
    @Test
    void longitudinalGripLiesBetweenThePublishedRatios() {
        assertTrue(MagicFormula.LONGITUDINAL_GRIP > 2202.8 / 1933.6);
        assertTrue(MagicFormula.LONGITUDINAL_GRIP < 7788.8 / 6673.6);
    }

    @Property
    void leftMirrorsRight(@ForAll @DoubleRange(min = -0.3, max = 0.3) double slip,
            @ForAll @DoubleRange(min = 0, max = 9000) double load,
            @ForAll @DoubleRange(min = -0.1, max = 0.1) double lean) {
        for (MagicFormula tyre : new MagicFormula[] {TYRE, Pac2002.ROAD_245_40R18, Pac2002.ROAD_265_70R18}) {
            assertEquals(tyre.lateralForce(slip, load, lean), -tyre.lateralForce(-slip, load, -lean), 1e-8);
            MagicCurve curve = tyre.at(load, lean);
            assertTrue(curve.force(slip) <= curve.peak() + 1e-9);
        }
    }

    @Property
    void slopeIsTheDerivative(@ForAll @DoubleRange(min = -0.3, max = 0.3) double slip,
            @ForAll @DoubleRange(min = 500, max = 8000) double load) {
        MagicCurve curve = TYRE.at(load, 0.02);
        double step = 1e-6;
        double difference = (curve.force(slip + step) - curve.force(slip - step)) / (2 * step);
        assertEquals(difference, curve.slope(slip), 1e-3 * (1 + Math.abs(difference)));
    }

    @Test
    void refusesATyreWithoutAPeak() {
        assertThrows(IllegalArgumentException.class, () -> Pac2002.normalised(0, 1, 1, 0.05));
        assertThrows(IllegalArgumentException.class, () -> Pac2002.normalised(3000, Double.NaN, 1, 0.05));
        assertThrows(IllegalArgumentException.class, () -> Pac2002.normalised(3000, 1, 1, 0));
    }
}
