package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Against histories of an open multi-body model of 29 states (CommonRoad vehicle models, Technical University of
 * Munich, BSD 3-clause; see the heads of the files). It steers through compliant suspensions and pulls the road up
 * with a wheel in the air, which this model does not; the dampers of cars 1 and 3 are from memory. Hence the bounds:
 * yaw rate and lateral acceleration within 5 % of their peaks, sideslip 0.0025 rad, roll 0.005 rad, loads 400 N. A body
 * that gives sideways on its axles moves its weight outwards: where that is taken out of the reference, roll is within
 * 0.0035 rad.
 */
class ReferenceHistoriesTest {

    private static final String[] LOADS = {"fz_fl_N", "fz_fr_N", "fz_rl_N", "fz_rr_N"};

    @ParameterizedTest(name = "car {0} at {1} m/s, {2} rad")
    @CsvSource({"1, 15, 0.03", "1, 25, 0.02", "2, 15, 0.03", "2, 25, 0.02", "3, 15, 0.03", "3, 25, 0.02"})
    @DisplayName("step steer")
    void stepSteer(int number, int speed, double steer) {
        Motion motion = new Motion(OpenCars.car(number, OpenCars.PROPORTIONAL), Course.STRAIGHT, speed,
                (time, into) -> into.steer = steer * Math.min(1, time / 0.1));
        compare(motion, Reference.read("step_v" + number + "_" + speed + "_symmetric"), 0.005);
    }

    @ParameterizedTest(name = "car {0} at {1} m/s, {2} rad")
    @CsvSource({"1, 15, 0.03", "1, 25, 0.02", "2, 15, 0.03", "2, 25, 0.02", "3, 15, 0.03", "3, 25, 0.02"})
    @DisplayName("step steer of cars that do not give sideways")
    void stepSteerOfRigidCars(int number, int speed, double steer) {
        Motion motion = new Motion(OpenCars.car(number, OpenCars.PROPORTIONAL), Course.STRAIGHT, speed,
                (time, into) -> into.steer = steer * Math.min(1, time / 0.1));
        compare(motion, Reference.read("step_v" + number + "_" + speed + "_rigid"), 0.0035);
    }

    @ParameterizedTest(name = "car {0}")
    @CsvSource({"1", "2", "3"})
    @DisplayName("sine with dwell")
    void sineWithDwell(int number) {
        double hold = 0.75 / 0.7;
        Motion motion = new Motion(OpenCars.car(number, OpenCars.PROPORTIONAL), Course.STRAIGHT, 80 / 3.6,
                (time, into) -> {
                    double sine = time < hold ? time : Math.max(hold, Math.min(time - 0.5, 1 / 0.7));
                    into.steer = 0.03 * Math.sin(2 * Math.PI * 0.7 * sine);
                });
        compare(motion, Reference.read("sinedwell_v" + number + "_symmetric"), 0.005);
    }

    @ParameterizedTest(name = "car {0}")
    @CsvSource({"1", "2", "3"})
    @DisplayName("braking in a turn of 100 m")
    void brakingInATurn(int number) {
        Reference reference = Reference.read("brake_v" + number + "_symmetric");
        compare(held(number, reference, -3, 0.2, true), reference, 0.005);
    }

    @ParameterizedTest(name = "car {0}")
    @CsvSource({"1", "2", "3"})
    @DisplayName("power off in a turn of 100 m")
    void powerOff(int number) {
        Reference reference = Reference.read("poweroff_v" + number + "_symmetric");
        compare(held(number, reference, -1, 0.1, false), reference, 0.005);
    }

    /** A car in the steady turn that the reference starts from, its steer held from then on. */
    private static Motion held(int number, Reference reference, double change, double ramp, boolean brakes) {
        MovingCar car = OpenCars.car(number, OpenCars.PROPORTIONAL);
        double speed = reference.at(0, "vx_mps");
        Motion motion = steady(car, speed, speed);
        motion = steady(car, speed, 2 * speed - motion.speed());
        assertEquals(reference.at(0, "steer_rad"), motion.steer(), 1e-4);
        double steer = motion.steer();
        double hold = motion.drive();
        double end = change * car.vehicle().wheelRadius() * car.vehicle().mass();
        motion.handTo((time, into) -> {
            into.steer = steer;
            double torque = hold + (end - hold) * Math.min(1, Math.max(0, time) / ramp);
            into.drive = brakes ? Math.max(0, torque) : torque;
            into.brake = brakes ? Math.max(0, -torque) : 0;
        });
        motion.follow(Course.STRAIGHT, 0, 0);
        motion.startAt(0);
        return motion;
    }

    private static Motion steady(MovingCar car, double speed, double aimed) {
        Course course = new Course(new double[] {0, 40, 80}, new double[] {0, 0, 0.01});
        Motion motion = new Motion(car, course, speed, new Driver(car, Pace.steady(aimed)));
        while (motion.time() < 15) {
            motion.step();
        }
        motion.look();
        return motion;
    }

    private static void compare(Motion motion, Reference reference, double roll) {
        double yaw = 0.05 * reference.largest("yaw_rate_radps");
        double lateral = 0.05 * reference.largest("ay_mps2");
        for (int row = 0; row < reference.rows().size(); row++) {
            while (motion.time() < reference.at(row, "t_s") - 1e-9) {
                motion.step();
            }
            motion.look();
            String when = reference.at(row, "t_s") + " s";
            assertEquals(reference.at(row, "yaw_rate_radps"), motion.yawRate(), yaw, when);
            assertEquals(reference.at(row, "ay_mps2"), motion.lateral(), lateral, when);
            assertEquals(reference.at(row, "sideslip_rad"), motion.sideslip(), 0.0025, when);
            assertEquals(reference.at(row, "roll_rad"), motion.roll(), roll, when);
            assertEquals(reference.at(row, "pitch_rad"), motion.pitch(), 0.006, when);
            for (int wheel = 0; wheel < 4; wheel++) {
                assertEquals(reference.at(row, LOADS[wheel]), motion.load(wheel), 400, when);
            }
        }
    }
}
