package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.Pac2002;
import camberwell.physics.VehicleModel;
import java.util.function.Consumer;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class InvariantsTest {

    private static MovingCar car(int number) {
        MovingCar open = OpenCars.leaning(OpenCars.car(number, Pac2002.ROAD_245_40R18), -0.02, -0.015, -0.39, -0.6);
        return MovingCar.of(open.vehicle().withFront(axle -> axle.withToe(-0.002).withDownforce(0.3)
                .withRollCentreHeight(0.06)).withRear(axle -> axle.withToe(0.003).withDownforce(0.5)
                .withRollCentreHeight(0.1)), open.inertia(), new Damper(1500, 2600),
                new Damper(1400, 2200), new MovingCar.Differentials(new Differential(20, 0.2, 0.1),
                        new Differential(30, 0, 0), new Differential(60, 0.3, 0.4)), Relaxation.USUAL);
    }

    private static void run(Motion motion, double until, Consumer<Motion> check) {
        while (motion.time() < until) {
            motion.step();
            motion.look();
            check.accept(motion);
        }
    }

    @Property(tries = 20)
    @Label("a mirrored steer is a mirrored run")
    void mirror(@ForAll @IntRange(min = 1, max = 3) int number,
            @ForAll @DoubleRange(min = 0.01, max = 0.06) double steer,
            @ForAll @DoubleRange(min = 12, max = 40) double speed,
            @ForAll @DoubleRange(min = -1500, max = 1200) double torque) {
        Motion left = new Motion(car(number), Course.STRAIGHT, speed, input(steer, torque));
        Motion right = new Motion(car(number), Course.STRAIGHT, speed, input(-steer, torque));
        for (int i = 0; i < 1500; i++) {
            left.step();
            right.step();
        }
        assertEquals(left.yawRate(), -right.yawRate(), 1e-9);
        assertEquals(left.sideslip(), -right.sideslip(), 1e-9);
        assertEquals(left.roll(), -right.roll(), 1e-9);
        assertEquals(left.pitch(), right.pitch(), 1e-9);
        assertEquals(left.speed(), right.speed(), 1e-9);
    }

    private static Input input(double steer, double torque) {
        return (time, into) -> {
            into.steer = steer * Math.sin(3 * time);
            into.drive = Math.max(0, torque) * Math.min(1, time);
            into.brake = Math.max(0, -torque) * Math.min(1, time);
        };
    }

    @Property(tries = 10)
    @Label("without steer a car runs straight to the last bit, on the brakes and on the power")
    void straight(@ForAll @IntRange(min = 1, max = 3) int number,
            @ForAll @DoubleRange(min = -3000, max = 3000) double torque) {
        run(new Motion(car(number), Course.STRAIGHT, 25, input(0, torque)), 1.5, motion -> {
            assertEquals(0, motion.yawRate());
            assertEquals(0, motion.sideslip());
            assertEquals(0, motion.roll());
            assertEquals(0, motion.offset());
        });
    }

    @Test
    @DisplayName("at every instant the tyres carry the weight, the downforce and what is thrown upwards")
    void loads() {
        MovingCar car = car(2);
        VehicleModel vehicle = car.vehicle();
        double[] rates = new double[State.SIZE];
        Controls controls = new Controls();
        Dynamics dynamics = new Dynamics(car);
        Motion motion = new Motion(car, Course.STRAIGHT, 30, input(0.04, -1500));
        run(motion, 2, now -> {
            controls.steer = now.steer();
            controls.brake = now.brake();
            dynamics.rates(now.state(), controls, rates);
            double thrown = car.sprungMass() * dynamics.vertical;
            double sum = 0;
            for (int wheel = 0; wheel < 4; wheel++) {
                thrown += car.axle(wheel).unsprungMass() / 2 * rates[State.WHEEL_RATE + wheel];
                sum += dynamics.load[wheel];
            }
            double air = (vehicle.front().downforce() + vehicle.rear().downforce()) * now.speed() * now.speed();
            assertEquals(vehicle.mass() * VehicleModel.GRAVITY + air + thrown, sum, 1e-6);
        });
    }

    @Test
    @DisplayName("what motion in the plane and the wheels' spin gain is what the engine gives less what slip takes")
    void energy() {
        MovingCar car = car(2);
        VehicleModel vehicle = car.vehicle();
        Motion motion = new Motion(car, Course.STRAIGHT, 20, input(0.05, 900));
        double[] balance = new double[2];
        double before = energy(motion);
        double power = power(motion);
        while (motion.time() < 3) {
            motion.step();
            motion.look();
            double now = power(motion);
            balance[0] += Motion.STEP * (power + now) / 2;
            power = now;
        }
        double gained = energy(motion) - before;
        assertEquals(gained, balance[0], 1e-3 * vehicle.mass() * 200);
        assertTrue(gained > 20_000, "the engine drove the car");
    }

    private static double energy(Motion motion) {
        VehicleModel vehicle = motion.car().vehicle();
        double[] x = motion.state();
        double spins = 0;
        for (int wheel = 0; wheel < 4; wheel++) {
            spins += x[State.SPIN + wheel] * x[State.SPIN + wheel];
        }
        return 0.5 * vehicle.mass() * (x[State.SPEED] * x[State.SPEED] + x[State.SWAY] * x[State.SWAY])
                + 0.5 * motion.car().inertia().yaw() * x[State.YAW_RATE] * x[State.YAW_RATE]
                + 0.5 * motion.car().inertia().wheel() * spins;
    }

    /** Engine torque times spin, through differentials that only take; forces times the sliding of their patch. */
    private static double power(Motion motion) {
        MovingCar car = motion.car();
        double[] x = motion.state();
        double[] rates = new double[State.SIZE];
        Controls controls = new Controls();
        controls.steer = motion.steer();
        controls.drive = motion.drive();
        controls.brake = motion.brake();
        Dynamics dynamics = new Dynamics(car);
        dynamics.rates(x, controls, rates);
        double power = 0;
        for (int wheel = 0; wheel < 4; wheel++) {
            double torque = car.inertia().wheel() * rates[State.SPIN + wheel]
                    + car.vehicle().wheelRadius() * dynamics.along[wheel];
            power += torque * x[State.SPIN + wheel];
            double forward = car.vehicle().wheelRadius() * x[State.SPIN + wheel]
                    - dynamics.kappa[wheel] * Math.max(Dynamics.SLOWEST, forward(dynamics, x, wheel));
            double across = -Math.tan(dynamics.slip[wheel]) * forward;
            power += dynamics.along[wheel] * (forward - car.vehicle().wheelRadius() * x[State.SPIN + wheel])
                    + dynamics.across[wheel] * across;
        }
        return power;
    }

    private static double forward(Dynamics dynamics, double[] x, int wheel) {
        // kappa = (w R - V) / V, above the slowest speed.
        return dynamics.car.vehicle().wheelRadius() * x[State.SPIN + wheel] / (1 + dynamics.kappa[wheel]);
    }

    @Test
    @DisplayName("a step of a millisecond is within 1e-5 of a quarter of it")
    void stepSize() {
        for (int number = 1; number <= 3; number++) {
            Motion coarse = new Motion(car(number), Course.STRAIGHT, 25, input(0.04, 800));
            Motion fine = new Motion(car(number), Course.STRAIGHT, 25, input(0.04, 800));
            for (int i = 0; i < 2000; i++) {
                coarse.step();
                for (int k = 0; k < 4; k++) {
                    fine.step(Motion.STEP / 4);
                }
                coarse.look();
                fine.look();
                assertEquals(fine.lateral(), coarse.lateral(), 1e-4);
                assertEquals(fine.yawRate(), coarse.yawRate(), 1e-5);
                assertEquals(fine.load(1), coarse.load(1), 0.1);
            }
        }
    }
}
