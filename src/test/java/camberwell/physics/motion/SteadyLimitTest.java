package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import camberwell.physics.Equilibrium;
import camberwell.physics.HandlingModel;
import camberwell.physics.OperatingPoint;
import camberwell.physics.Pac2002;
import camberwell.physics.VehicleModel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SteadyLimitTest {

    private static MovingCar car(int number, Differential rear) {
        MovingCar open = OpenCars.leaning(OpenCars.car(number, Pac2002.ROAD_245_40R18), -0.02, -0.02, -0.394, -0.906);
        VehicleModel vehicle = open.vehicle()
                .withFront(axle -> axle.withRollCentreHeight(0.10).withToe(-0.002).withDownforce(0.2))
                .withRear(axle -> axle.withRollCentreHeight(0.15).withToe(0.002).withDownforce(0.4)
                        .withLockingTorque(rear.preload()));
        return MovingCar.of(vehicle, open.inertia(), open.front(), open.rear(),
                new MovingCar.Differentials(Differential.OPEN, Differential.OPEN, rear), Relaxation.USUAL);
    }

    private static Motion settled(MovingCar car, double lateral) {
        Course course = new Course(new double[] {20, 60}, new double[] {0, lateral / 400});
        Motion motion = new Motion(car, course, 20, new Driver(car, Pace.steady(20)));
        while (motion.time() < 20) {
            motion.step();
        }
        motion.look();
        return motion;
    }

    private static Equilibrium equilibrium(Motion motion) {
        double speed = motion.speed() / Math.cos(motion.sideslip());
        return assertInstanceOf(Equilibrium.class, HandlingModel.solve(motion.car().vehicle(),
                new OperatingPoint(speed, motion.lateral(), motion.longitudinal())));
    }

    @ParameterizedTest(name = "car {0} at {1} m/s²")
    @CsvSource({"1, 3", "1, 6", "2, 3", "2, 6.5", "3, 3", "3, 5"})
    @DisplayName("a steady turn of the moving car is the equilibrium of the steady model")
    void agrees(int number, double lateral) {
        Motion motion = settled(car(number, Differential.OPEN), lateral);
        Equilibrium steady = equilibrium(motion);
        // The steady model takes yaw rate for lateral acceleration over speed, the moving car's yaws by a cosine more.
        assertEquals(steady.steer(), motion.steer(), 5e-4 * steady.steer());
        assertEquals(steady.sideslip(), motion.sideslip(), 1e-4);
        assertEquals(steady.roll(), motion.roll(), 1e-5);
        assertEquals(steady.load().frontLeft(), motion.load(0), 0.05);
        assertEquals(steady.load().frontRight(), motion.load(1), 0.05);
        assertEquals(steady.load().rearLeft(), motion.load(2), 0.05);
        assertEquals(steady.load().rearRight(), motion.load(3), 0.05);
        assertEquals(steady.lateralForce().frontRight(), motion.across(1), 1e-3 * motion.across(1));
        assertEquals(steady.lateralForce().rearRight(), motion.across(3), 1e-3 * motion.across(3));
    }

    @Test
    @DisplayName("with 100 N m of lock the rear wheels' forces agree within 3 %")
    void locked() {
        Motion motion = settled(car(2, new Differential(100, 0, 0)), 5);
        Equilibrium steady = equilibrium(motion);
        double asked = steady.longitudinalForce().rearLeft() - steady.longitudinalForce().rearRight();
        assertEquals(asked, motion.along(2) - motion.along(3), 0.03 * Math.abs(asked));
        assertEquals(steady.steer(), motion.steer(), 2e-3 * steady.steer());
    }
}
