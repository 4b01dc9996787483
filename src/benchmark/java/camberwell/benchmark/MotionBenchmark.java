package camberwell.benchmark;

import camberwell.physics.AxleModel;
import camberwell.physics.Pac2002;
import camberwell.physics.SteeringAxis;
import camberwell.physics.VehicleModel;
import camberwell.physics.motion.Damper;
import camberwell.physics.motion.Differential;
import camberwell.physics.motion.Driver;
import camberwell.physics.motion.Course;
import camberwell.physics.motion.Inertia;
import camberwell.physics.motion.Motion;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Pace;
import camberwell.physics.motion.Relaxation;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** How long six seconds of a corner with a driver take. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class MotionBenchmark {

    private MovingCar car;
    private Course course;
    private Pace pace;

    @Setup
    public void car() {
        // CommonRoad vehicle 2 (TUM, BSD 3-clause) on the 245/40R18 tyre (Project Chrono, BSD 3-clause).
        VehicleModel vehicle = new VehicleModel(1093.3, 2.579, 0.546, 0.575, 0.3, new SteeringAxis(0.1, 0.2), 0, 0.7,
                axle(1.387, 24_453, 6_915), axle(1.364, 19_636, 2_644));
        car = MovingCar.of(vehicle, new Inertia(1792, 207, 1566, 1.7), new Damper(1786, 1786), new Damper(1434, 1434),
                new MovingCar.Differentials(Differential.OPEN, Differential.OPEN, new Differential(60, 0.2, 0.3)),
                Relaxation.USUAL);
        course = new Course(new double[] {30, 55, 95, 115}, new double[] {0, 0.015, 0.015, 0});
        pace = Pace.of(course, new Pace.Demand(7, 6, 4, 150), 28, 60);
    }

    private static AxleModel axle(double track, double wheelRate, double bar) {
        return new AxleModel(track, 0, wheelRate, bar, 63.8, 0, Math.toRadians(-1), 0.3, 0, 0, Pac2002.ROAD_245_40R18,
                158_294);
    }

    @Benchmark
    public double corner() {
        Motion motion = new Motion(car, course, 28, new Driver(car, pace));
        while (motion.time() < 6) {
            motion.step();
        }
        return motion.distance();
    }
}
