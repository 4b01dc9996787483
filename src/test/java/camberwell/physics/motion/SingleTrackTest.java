package camberwell.physics.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.AxleModel;
import camberwell.physics.Pac2002;
import camberwell.physics.SteeringAxis;
import camberwell.physics.VehicleModel;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * At small angles the car in motion is the linear single-track model. Closed forms as in M. Abe, Vehicle Handling
 * Dynamics, ch. 3, and R. Rajamani, Vehicle Dynamics and Control, ch. 2 (from memory); the cars named after them have
 * figures of public transcriptions of those books, the others are open multi-body cars (CommonRoad vehicle models,
 * Technical University of Munich, BSD 3-clause).
 */
class SingleTrackTest {

    private static final double SMALL = 1e-4;

    private record Track(double mass, double yaw, double a, double b, double front, double rear) {

        static Track of(String car) {
            return switch (car) {
                case "abe" -> new Track(1500, 2500, 1.1, 1.6, 110_000, 120_000);
                case "rajamani" -> new Track(1573, 2873, 1.1, 1.58, 160_000, 160_000);
                case "v1" -> new Track(1225.887847, 1538.853371, 0.883920, 1.508760, 134_747.1568, 90_103.9265);
                case "v2" -> new Track(1093.295233, 1791.599530, 1.156196, 1.422717, 113_511.6794, 96_301.0950);
                case "v3" -> new Track(1478.897964, 2473.117692, 1.150792, 1.321136, 136_606.6042, 124_883.1608);
                default -> throw new IllegalArgumentException(car);
            };
        }

        MovingCar car() {
            double wheelbase = a + b;
            VehicleModel vehicle = new VehicleModel(mass, wheelbase, b / wheelbase, 0.3, 0.3, new SteeringAxis(0, 0),
                    0, 0.6, axle(front, b), axle(rear, a));
            // Wheels that turn with the car's yaw resist it as well, the outer ones being sped up.
            double wheels = 4 * 1 * (0.75 / 0.3) * (0.75 / 0.3);
            return MovingCar.of(vehicle, new Inertia(yaw - wheels, 400, 1500, 1), new Damper(3000, 3000),
                    new Damper(3000, 3000), MovingCar.Differentials.OPEN, Relaxation.NONE);
        }

        private AxleModel axle(double stiffness, double other) {
            double load = mass * VehicleModel.GRAVITY * other / (a + b);
            double part = stiffness / load;
            return new AxleModel(1.5, 0, 40_000, 10_000, 60, 0, 0, 0, 0, 0,
                    new Pac2002(3000, 1.35, 1.05, 0, 0, 0, -part * 5e5, 1e6, 0, 0, 0, 0, 1, 1), 200_000);
        }

        double gradient() {
            return mass / (a + b) * (b / front - a / rear);
        }
    }

    @ParameterizedTest(name = "{0} at {1} m/s")
    @CsvSource({"abe, 20", "abe, 30", "rajamani, 20", "rajamani, 30", "v1, 20", "v1, 30", "v2, 20", "v2, 30", "v3, 20",
        "v3, 30"})
    @DisplayName("a small step of steer gives the closed form's yaw rate, sideslip and lateral acceleration")
    void stepResponse(String name, double speed) {
        Reference closed = Reference.read("singletrack_" + name + "_" + (int) speed);
        double scale = SMALL / 0.02;
        Motion motion = new Motion(Track.of(name).car(), Course.STRAIGHT, speed, (time, into) -> into.steer = SMALL);
        for (int row = 1; row < closed.rows().size(); row++) {
            while (motion.time() < closed.at(row, "t_s") - 1e-9) {
                motion.step();
            }
            motion.look();
            assertEquals(scale * closed.at(row, "yaw_rate_radps"), motion.yawRate(),
                    2e-4 * scale * closed.largest("yaw_rate_radps"));
            assertEquals(scale * closed.at(row, "sideslip_rad"), motion.sideslip(),
                    1e-3 * scale * closed.largest("sideslip_rad"));
            assertEquals(scale * closed.at(row, "ay_mps2"), motion.lateral(),
                    4e-4 * scale * closed.largest("ay_mps2"));
        }
    }

    @ParameterizedTest(name = "{0}: overshoot {1} % at {2} s")
    @CsvSource({"abe, 12.299, 0.3425", "rajamani, 5.140, 0.3675", "v1, 1.988, 0.5005", "v2, 0.076, 0.9174"})
    @DisplayName("at 30 m/s the yaw rate overshoots as natural frequency and damping say, and when they say")
    void overshoot(String name, double percent, double peakAt) {
        double most = 0;
        double when = 0;
        Motion motion = new Motion(Track.of(name).car(), Course.STRAIGHT, 30, (time, into) -> into.steer = SMALL);
        while (motion.time() < 4) {
            motion.step();
            if (motion.yawRate() > most) {
                most = motion.yawRate();
                when = motion.time();
            }
        }
        assertEquals(percent / 100, most / motion.yawRate() - 1, 3e-4);
        assertEquals(peakAt, when, 0.02);
    }

    @ParameterizedTest(name = "{0}: {1} m/s")
    @CsvSource({"abe, 30.059", "rajamani, 39.013", "v1, 58.027", "v2, 107.377", "v3, 95.172"})
    @DisplayName("at the characteristic speed the yaw rate is half of a neutral car's")
    void characteristicSpeed(String name, double speed) {
        Track track = Track.of(name);
        Motion motion = new Motion(track.car(), Course.STRAIGHT, speed, (time, into) -> into.steer = SMALL);
        while (motion.time() < 6) {
            motion.step();
        }
        assertEquals(0.5 * speed / (track.a() + track.b()), motion.yawRate() / SMALL, 0.01 * speed);
    }

    @Test
    @DisplayName("an oversteering car spins from a touch of steer above its critical speed, and not below")
    void criticalSpeed() {
        Track turned = new Track(1500, 2500, 1.6, 1.1, 110_000, 120_000);
        assertTrue(turned.gradient() < 0);
        double critical = 38.184;
        assertTrue(Math.abs(after(turned, 0.9 * critical)) < 0.05);
        assertTrue(Math.abs(after(turned, 1.1 * critical)) > 0.1);
    }

    private static double after(Track track, double speed) {
        Motion motion = new Motion(track.car(), Course.STRAIGHT, speed, (time, into) -> into.steer = SMALL);
        while (motion.time() < 8) {
            motion.step();
        }
        return motion.yawRate();
    }
}
