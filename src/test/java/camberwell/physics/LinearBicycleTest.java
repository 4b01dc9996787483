package camberwell.physics;

import static camberwell.physics.LinearBicycle.GRAVITY;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.LinearBicycle.Balance;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class LinearBicycleTest {

    // J. Y. Wong, Theory of Ground Vehicles, Example 5.1 (from memory, recomputed): 20.105 kN, 2.8 m, 53.5 % front,
    // rear tyres 38.25 kN/rad each; front tyres 38.92 or 47.82 kN/rad each.
    @Test
    @DisplayName("textbook car on soft front tyres understeers: 0.016 rad/g, characteristic speed 149 km/h")
    void wongUndersteer() {
        LinearBicycle car = wong(38.92e3);
        assertEquals(0.016, car.understeerGradient() * GRAVITY, 5e-5);
        assertEquals(0.915373, car.understeerGradientDegreesPerG(), 1e-5);
        assertEquals(41.4644, car.characteristicSpeed().orElseThrow(), 1e-3);
        assertTrue(car.criticalSpeed().isEmpty());
        assertEquals(7.03282, car.yawRateGain(30), 1e-4);
        assertEquals(21.5071, car.lateralAccelerationGain(30) / GRAVITY, 1e-3);
        assertEquals(2.44407, Math.toDegrees(car.steer(100, 30)), 1e-4);
        assertEquals(0.0306589, car.staticMargin(), 1e-6);
        assertEquals(Balance.UNDERSTEER, car.balance(1e-4));
    }

    @Test
    @DisplayName("the same car on stiff front tyres oversteers: -0.0097 rad/g, critical speed 191 km/h")
    void wongOversteer() {
        LinearBicycle car = wong(47.82e3);
        assertEquals(-0.0097, car.understeerGradient() * GRAVITY, 5e-5);
        assertEquals(-0.558154, car.understeerGradientDegreesPerG(), 1e-5);
        assertEquals(53.1004, car.criticalSpeed().orElseThrow(), 1e-3);
        assertTrue(car.characteristicSpeed().isEmpty());
        assertEquals(15.7375, car.yawRateGain(30), 1e-3);
        assertEquals(48.1270, car.lateralAccelerationGain(30) / GRAVITY, 2e-3);
        assertEquals(1.09221, Math.toDegrees(car.steer(100, 30)), 1e-4);
        assertEquals(-0.0205943, car.staticMargin(), 1e-6);
        assertEquals(Balance.OVERSTEER, car.balance(1e-4));
    }

    // A lecture exercise that is in circulation (inputs seen, no printed result); values computed.
    @Test
    @DisplayName("a nearly neutral car is called neutral, whatever the sign of a tiny gradient")
    void nearlyNeutral() {
        LinearBicycle car = new LinearBicycle(1008, 1.2, 1.0, 117e3, 145e3);
        double radius = 10 * 10 / (0.5 * GRAVITY);
        assertEquals(1.24234e-4, car.understeerGradient(), 1e-9);
        assertEquals(0.0698286, car.understeerGradientDegreesPerG(), 1e-6);
        assertEquals(6.21770, Math.toDegrees(car.steer(radius, 10)), 1e-4);
        assertEquals(133.07, car.characteristicSpeed().orElseThrow(), 0.01);
        assertEquals(1.7447, Math.toDegrees(car.sideslip(radius, 10)), 1e-4);
        assertEquals(Balance.NEUTRAL, car.balance(Math.toRadians(0.1) / GRAVITY));
    }

    // Geometry row of T. D. Gillespie, Fundamentals of Vehicle Dynamics, ch. 6, example car: wheelbase 100.6 in. The
    // stiffnesses (223.355 and 187.207 lb/deg a tyre) are from memory, so the rest is only computed.
    @Test
    @DisplayName("handbook passenger car: Ackermann angles, gradient, gains and sideslip")
    void gillespie() {
        double pound = 4.4482216;
        double foot = 0.3048;
        double g = 32.2 * foot;
        double wheelbase = 100.6 * foot / 12;
        double mass = (1901 + 1552) * pound / g;
        LinearBicycle car = new LinearBicycle(mass, wheelbase * 1552 / 3453, wheelbase * 1901 / 3453,
                2 * 223.355 * pound * 180 / Math.PI, 2 * 187.207 * pound * 180 / Math.PI);
        double[] feet = {500, 200, 100, 50};
        double[] degrees = {0.9607, 2.4016, 4.8033, 9.6066};
        for (int i = 0; i < feet.length; i++) {
            assertEquals(degrees[i], Math.toDegrees(car.steer(feet[i] * foot, 0)), 1e-4);
        }
        assertEquals(0.110406, Math.toDegrees(car.understeerGradient() * g), 2e-5);
        double sixty = 88 * foot;
        assertEquals(9.9472, car.yawRateGain(sixty), 2e-3);
        assertEquals(0.47443, Math.toRadians(car.lateralAccelerationGain(sixty) / g), 1e-4);
        assertEquals(-0.9156, Math.toDegrees(car.sideslip(800 * foot, sixty)), 5e-4);
        assertEquals(0.0065, car.staticMargin(), 1e-4);
    }

    // Inputs of a standard car used with M. Abe, Vehicle Handling Dynamics, ch. 3 (per-tyre stiffness 55 and
    // 60 kN/rad, from public transcriptions); values computed from the book's stability factor.
    @Test
    void abe() {
        LinearBicycle car = new LinearBicycle(1500, 1.1, 1.6, 110e3, 120e3);
        assertEquals(1.106746e-3, car.understeerGradient() / car.wheelbase(), 1e-9);
        assertEquals(108.213, car.characteristicSpeed().orElseThrow() * 3.6, 1e-3);
        assertEquals(0.114332, car.staticMargin(), 1e-6);
        assertEquals(3.62053, car.yawRateGain(40 / 3.6), 1e-5);
        assertEquals(5.32184, car.yawRateGain(80 / 3.6), 1e-5);
        assertEquals(5.54921, car.yawRateGain(100 / 3.6), 1e-5);
    }

    @Property
    @Label("at the characteristic speed the yaw gain is half a neutral car's and highest")
    void limits(@ForAll @DoubleRange(min = 1.0, max = 1.2) double cgToFront,
            @ForAll @DoubleRange(min = 60e3, max = 100e3) double frontStiffness) {
        LinearBicycle car = new LinearBicycle(1200, cgToFront, 1.4, frontStiffness, 120e3);
        double speed = car.characteristicSpeed().orElseThrow();
        assertEquals(0.5 * speed / car.wheelbase(), car.yawRateGain(speed), 1e-9);
        assertTrue(car.yawRateGain(speed) > car.yawRateGain(1.05 * speed));
        assertTrue(car.yawRateGain(speed) > car.yawRateGain(0.95 * speed));
    }

    @Test
    @DisplayName("the gains grow without bound towards the critical speed")
    void divergence() {
        LinearBicycle car = wong(47.82e3);
        assertTrue(car.yawRateGain(0.9999 * car.criticalSpeed().orElseThrow()) > 1000);
    }

    private static LinearBicycle wong(double frontTyre) {
        double wheelbase = 2.8;
        return new LinearBicycle(20_105 / GRAVITY, 0.465 * wheelbase, 0.535 * wheelbase, 2 * frontTyre, 2 * 38.25e3);
    }
}
