package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.AxleModel;
import camberwell.physics.SteeringAxis;
import camberwell.physics.VehicleModel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A car of four equal corners that heaves alone is one corner: a body of 266.3784 kg, a wheel of 31.9 kg, a spring of
 * 24 453 N/m, a damper and a tyre of 158 294 N/m (the front corner of CommonRoad vehicle 2). Transmissibility of two
 * masses in closed form, bumps by an own integration with a tenth of the step.
 */
class OneCornerTest {

    private static MovingCar corner(double bump, double rebound) {
        AxleModel axle = new AxleModel(1.387, 0, 24_453, 0, 63.8, 0, 0, 0, 0, 0, OpenCars.PROPORTIONAL, 158_294);
        VehicleModel vehicle = new VehicleModel(4 * (266.3784 + 31.9), 2.5, 0.5, 0.5, 0.344, new SteeringAxis(0, 0), 0,
                0.5, axle, axle);
        Damper damper = new Damper(bump, rebound);
        return MovingCar.of(vehicle, new Inertia(1800, 200, 1500, 1.7), damper, damper, MovingCar.Differentials.OPEN,
                Relaxation.NONE);
    }

    @ParameterizedTest(name = "{0} Hz: {1}")
    @CsvSource({"1, 1.679013", "5, 0.258704", "10, 0.141288"})
    @DisplayName("the body follows a sine in the road by the closed form of two masses")
    void transmissibility(double hertz, double expected) {
        double height = 0.002;
        Motion motion = new Motion(corner(1786.2, 1786.2), Course.STRAIGHT, 20, (time, into) -> {
            for (int wheel = 0; wheel < 4; wheel++) {
                into.road[wheel] = height * Math.sin(2 * Math.PI * hertz * time);
            }
        });
        double most = 0;
        while (motion.time() < 8) {
            motion.step();
            if (motion.time() > 8 - 1.5 / hertz) {
                most = Math.max(most, motion.state()[State.HEAVE]);
            }
        }
        assertEquals(expected, most / height, 0.002 * expected);
    }

    @ParameterizedTest(name = "{0}: least load {3} N, body {4} m/s²")
    @CsvSource({"linear, 1786.2, 1786.2, 374.5, 5.458", "rebound_twice_bump, 1190.8, 2381.6, 49.5, 4.534",
        "bump_twice_rebound, 2381.6, 1190.8, 616.9, 6.108"})
    @DisplayName("over a bump of 20 mm rebound takes load off the tyre, and bump throws the body up")
    void bump(String name, double bump, double rebound, double least, double thrown) {
        Reference reference = Reference.read("bump_corner_" + name);
        Motion motion = new Motion(corner(bump, rebound), Course.STRAIGHT, 20, (time, into) -> {
            double part = time / 0.05;
            double road = part > 0 && part < 1 ? 0.01 * (1 - Math.cos(2 * Math.PI * part)) : 0;
            for (int wheel = 0; wheel < 4; wheel++) {
                into.road[wheel] = road;
            }
        });
        double lightest = Double.MAX_VALUE;
        double hardest = 0;
        // The reference was made with 9.81 m/s².
        double heavier = (266.3784 + 31.9) * (9.81 - VehicleModel.GRAVITY);
        for (int row = 0; row < reference.rows().size(); row++) {
            while (motion.time() < reference.at(row, "t_s") - 1e-9) {
                motion.step();
                motion.look();
                lightest = Math.min(lightest, motion.load(0));
                hardest = Math.max(hardest, motion.vertical());
            }
            motion.look();
            assertEquals(reference.at(row, "body_acc_mps2"), motion.vertical(), 0.05);
            assertEquals(reference.at(row, "body_m"), motion.state()[State.HEAVE], 2e-5);
            assertEquals(reference.at(row, "wheel_m"), motion.state()[State.WHEEL], 2e-5);
            assertEquals(reference.at(row, "tyre_load_N"), motion.load(0) + heavier, 5);
        }
        assertEquals(least, lightest + heavier, 3);
        assertEquals(thrown, hardest, 0.04);
    }

    @ParameterizedTest(name = "bump {0}, rebound {1}")
    @CsvSource({"1200, 2400, -0.0049", "2400, 1200, 0.0049"})
    @DisplayName("unequal bump and rebound jack the body over a washboard: more rebound pulls it down")
    void jacking(double bump, double rebound, double expected) {
        MovingCar stiffTyre = corner(bump, rebound).withVehicle(vehicle -> vehicle
                .withFront(axle -> axle.withTyreRate(600_000)).withRear(axle -> axle.withTyreRate(600_000)));
        Motion motion = new Motion(stiffTyre, Course.STRAIGHT, 20, (time, into) -> {
            for (int wheel = 0; wheel < 4; wheel++) {
                into.road[wheel] = 0.005 * Math.sin(2 * Math.PI * 10 * time);
            }
        });
        double sum = 0;
        int count = 0;
        while (motion.time() < 6) {
            motion.step();
            if (motion.time() > 4) {
                sum += motion.state()[State.HEAVE];
                count++;
            }
        }
        // (cr - cb) V0 / (pi k), the tyre taken as rigid.
        assertEquals(expected, sum / count, 0.25 * Math.abs(expected));
        assertTrue(Math.signum(sum) == Math.signum(expected));
    }
}
