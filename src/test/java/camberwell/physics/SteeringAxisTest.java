package camberwell.physics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SteeringAxisTest {

    // No published table was found; computed from the constant angle between spindle and steering axis
    // (geometry of D. B. January, SAE 850219, 1985) by bisection, independently of the closed form.
    @ParameterizedTest
    @CsvSource({
        "7, 10, -2, -20, -3.7795, -3.7911", "7, 10, -2, -10, -3.0594, -3.0636", "7, 10, -2, -5, -2.5706, -2.5720",
        "7, 10, -2, 5, -1.3517, -1.3519", "7, 10, -2, 10, -0.6301, -0.6325", "7, 10, -2, 20, 1.0108, 0.9972",
        "5, 0, 0, -20, -1.7139, -1.7101", "5, 0, 0, -10, -0.8704, -0.8682", "5, 0, 0, -5, -0.4369, -0.4358",
        "5, 0, 0, 5, 0.4369, 0.4358", "5, 0, 0, 10, 0.8704, 0.8682", "5, 0, 0, 20, 1.7139, 1.7101",
        "0, 12, 0, -20, 0.7354, 0.7237", "0, 12, 0, -10, 0.1851, 0.1823", "0, 12, 0, -5, 0.0463, 0.0457",
        "0, 12, 0, 5, 0.0463, 0.0457", "0, 12, 0, 10, 0.1851, 0.1823", "0, 12, 0, 20, 0.7354, 0.7237",
        "8, 6, -3, -20, -5.3687, -5.3743", "8, 6, -3, -10, -4.2971, -4.2980", "8, 6, -3, -5, -3.6745, -3.6744",
        "8, 6, -3, 5, -2.2786, -2.2799", "8, 6, -3, 10, -1.5157, -1.5197", "8, 6, -3, 20, 0.1104, 0.0980",
        "3, 12, -0.5, -20, -0.7918, -0.8024", "3, 12, -0.5, -10, -0.8356, -0.8386",
        "3, 12, -0.5, -5, -0.7149, -0.7158", "3, 12, -0.5, 5, -0.1923, -0.1929",
        "3, 12, -0.5, 10, 0.2061, 0.2033", "3, 12, -0.5, 20, 1.2636, 1.2497"})
    @DisplayName("caster leans the outer wheel in and the inner wheel out, exactly and nearly")
    void casterTable(double caster, double kingpin, double camber, double steer, double exact, double small) {
        SteeringAxis axis = axis(caster, kingpin);
        double camberRad = Math.toRadians(camber);
        double steerRad = Math.toRadians(steer);
        assertEquals(exact, Math.toDegrees(axis.camber(camberRad, steerRad)), 1e-4);
        assertEquals(small, Math.toDegrees(axis.camberSmallAngle(camberRad, steerRad)), 1e-4);
        assertEquals(exact, small, 0.015);
    }

    // Computed as the table: -0.8356° at 10°, -0.8613° at 15°, -0.7918° at 20°.
    @Test
    @DisplayName("with little caster and much kingpin inclination the outer wheel's camber gain turns back")
    void gainTurnsBack() {
        assertEquals(-0.8613, Math.toDegrees(axis(3, 12).camber(Math.toRadians(-0.5), Math.toRadians(-15))), 1e-4);
    }

    // The factor 1 / (2 sin steer), computed: 2.8794 at 10°, 1.9319 at 15°, 1.4619 at 20°. The trade's "one and a
    // half times at 20°" is 2.6 % high.
    @ParameterizedTest
    @CsvSource({"10, 2.8794", "15, 1.9319", "20, 1.4619"})
    void sweepFactor(double steer, double factor) {
        assertEquals(factor, SteeringAxis.casterFromSweep(1, 0, Math.toRadians(steer)), 5e-5);
    }

    @Test
    @DisplayName("a sweep of 20° each way finds 7° of caster again, to 7.003°")
    void sweepRoundTrip() {
        SteeringAxis axis = axis(7, 10);
        double steer = Math.toRadians(20);
        double camber = Math.toRadians(-2);
        double caster = SteeringAxis.casterFromSweep(axis.camber(camber, steer), axis.camber(camber, -steer), steer);
        assertEquals(7.003, Math.toDegrees(caster), 5e-4);
    }

    // Hipparchus turns the wheel's spindle about the steering axis; heading and camber are read off the result.
    @Property
    void agreesWithARotationAboutTheSteeringAxis(@ForAll @DoubleRange(min = -5, max = 12) double caster,
            @ForAll @DoubleRange(min = 0, max = 15) double kingpin,
            @ForAll @DoubleRange(min = -5, max = 1) double camber,
            @ForAll @DoubleRange(min = -35, max = 35) double turn) {
        Vector3D up = new Vector3D(-Math.tan(Math.toRadians(caster)), -Math.tan(Math.toRadians(kingpin)), 1);
        double staticCamber = Math.toRadians(camber);
        Vector3D spindle = new Vector3D(0, Math.cos(staticCamber), -Math.sin(staticCamber));
        Vector3D turned = new Rotation(up, Math.toRadians(turn), RotationConvention.VECTOR_OPERATOR).applyTo(spindle);
        double steer = Math.atan2(-turned.getX(), turned.getY());
        double expected = Math.asin(-turned.getZ());
        assertEquals(expected, axis(caster, kingpin).camber(staticCamber, steer), 1e-12);
    }

    @Property
    void zeroCasterIsSymmetric(@ForAll @DoubleRange(min = 0, max = 15) double kingpin,
            @ForAll @DoubleRange(min = -4, max = 0) double camber,
            @ForAll @DoubleRange(min = 0, max = 30) double steer) {
        SteeringAxis axis = axis(0, kingpin);
        double camberRad = Math.toRadians(camber);
        double in = axis.camber(camberRad, Math.toRadians(steer));
        assertEquals(in, axis.camber(camberRad, Math.toRadians(-steer)), 1e-12);
        assertTrue(in >= camberRad - 1e-12, "kingpin inclination only ever leans the top out");
    }

    @Property
    void moreCasterLeansTheOuterWheelFurtherIn(@ForAll @DoubleRange(min = 0, max = 10) double caster,
            @ForAll @DoubleRange(min = 1, max = 25) double steer) {
        double outer = Math.toRadians(-steer);
        assertTrue(axis(caster + 1, 8).camber(-0.03, outer) < axis(caster, 8).camber(-0.03, outer));
    }

    @Test
    void refusesNonsense() {
        assertThrows(IllegalArgumentException.class, () -> new SteeringAxis(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> SteeringAxis.casterFromSweep(0.1, 0, 0));
    }

    private static SteeringAxis axis(double casterDegrees, double kingpinDegrees) {
        return new SteeringAxis(Math.toRadians(casterDegrees), Math.toRadians(kingpinDegrees));
    }
}
