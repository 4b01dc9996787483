package camberwell.benchmark;

import camberwell.physics.AxleModel;
import camberwell.physics.CornerPhase;
import camberwell.physics.CornerSpeed;
import camberwell.physics.HandlingModel;
import camberwell.physics.LinearBicycle;
import camberwell.physics.OperatingPoint;
import camberwell.physics.Pac2002;
import camberwell.physics.Solution;
import camberwell.physics.SteeringAxis;
import camberwell.physics.VehicleModel;
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

/** How long one operating point takes on four tyres, beside the understeer gradient of a bare bicycle. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class HandlingModelBenchmark {

    private VehicleModel car;
    private OperatingPoint point;

    @Setup
    public void car() {
        // CommonRoad vehicle 2 (TUM, BSD 3-clause) on the 245/40R18 tyre (Project Chrono, BSD 3-clause).
        car = new VehicleModel(1093.3, 2.579, 0.546, 0.575, 0.3, new SteeringAxis(0, 0), 0, 0.7,
                axle(1.387, 24_453, 6_915), axle(1.364, 19_636, 2_644));
        point = CornerPhase.ENTRY.at(car, CornerSpeed.MEDIUM.metresPerSecond(), 0.9);
    }

    private static AxleModel axle(double track, double wheelRate, double bar) {
        return new AxleModel(track, 0, wheelRate, bar, 63.8, 0, Math.toRadians(-1), 0.3, 0, 0, Pac2002.ROAD_245_40R18);
    }

    @Benchmark
    public Solution point() {
        return HandlingModel.solve(car, point);
    }

    @Benchmark
    public Solution pointWithoutGradient() {
        return HandlingModel.solveQuickly(car, point);
    }

    @Benchmark
    public double bicycle() {
        LinearBicycle bicycle = car.bicycle();
        return bicycle.understeerGradient();
    }
}
