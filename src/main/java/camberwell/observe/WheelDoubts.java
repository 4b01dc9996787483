package camberwell.observe;

import camberwell.car.Car;
import camberwell.channel.Limits;
import camberwell.units.Figures;
import camberwell.vocabulary.Axle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Wheel speeds held against the car's speed and its drive: whether what they show can be slip at all. */
final class WheelDoubts {

    /** Share of the way from the undriven wheels' speed to the driven ones' from which on the car's speed is the latter. */
    private static final double THEIRS = 0.7;

    /** So long before and after braking a wheel may not roll, s: a locked one takes its time to come up to the road again. */
    private static final double AROUND = 0.3;

    private final Trace trace;
    private final WheelSlip slip;
    private final Limits limits;
    private final List<String> doubts = new ArrayList<>();
    private boolean late;
    private boolean spinHidden;

    WheelDoubts(Trace trace, WheelSlip slip, Car car, Limits limits) {
        this.trace = trace;
        this.slip = slip;
        this.limits = limits;
        Optional<float[]> front = slip.mean(Axle.FRONT);
        Optional<float[]> rear = slip.mean(Axle.REAR);
        boolean frontDrives = car.drive().map(drive -> drive.drives(Axle.FRONT)).orElse(true);
        boolean rearDrives = car.drive().map(drive -> drive.drives(Axle.REAR)).orElse(true);
        clock(frontDrives && rearDrives ? Stream.of(front, rear) : Stream.of(frontDrives ? rear.or(() -> front)
                : front.or(() -> rear)));
        boolean one = car.drive().map(drive -> drive.drives(Axle.FRONT) != drive.drives(Axle.REAR)).orElse(false);
        if (!late && one && front.isPresent() && rear.isPresent()) {
            drive(rearDrives ? rear.get() : front.get(), rearDrives ? front.get() : rear.get(), rearDrives);
        }
    }

    /** What is doubtful. */
    List<String> doubts() {
        return doubts;
    }

    /** Whether the wheels are not on the speed's clock, so that each change of speed would be slip. */
    boolean late() {
        return late;
    }

    /** Whether the driven wheels may spin and nobody could see it. */
    boolean spinHidden() {
        return spinHidden;
    }

    /** Their speed where they roll: while nobody brakes, nor has just braked or is about to. */
    private float[] rolling(float[] wheels) {
        float[] rolling = wheels.clone();
        int around = trace.samples(AROUND);
        for (int i = 0; i < rolling.length; i++) {
            if (trace.brake(i) > 0.05) {
                Arrays.fill(rolling, Math.max(0, i - around), Math.min(rolling.length, i + around + 1), Float.NaN);
            }
        }
        return rolling;
    }

    /** @param axles mean speed of an undriven axle; of both where both may spin, as a late speed is late against either */
    private void clock(Stream<Optional<float[]>> axles) {
        double[] lateness = axles.flatMap(Optional::stream).map(this::rolling)
                .mapToDouble(new ChannelDoubts(trace, limits)::lateSpeed).toArray();
        double seconds = DoubleStream.of(lateness).allMatch(it -> it * lateness[0] > 0) && lateness.length > 0 ? lateness[0] : 0;
        late = seconds != 0;
        if (late) {
            doubts.add("the speed comes " + Figures.fixed(Math.abs(seconds), 1) + " s " + (seconds > 0 ? "later" : "sooner")
                    + " than the wheel speeds: the two are not on one clock, so that nothing is said of wheelspin and locking");
        }
    }

    /** On the power the driven wheels may turn faster than the others, never slower; the car goes by the others. */
    private void drive(float[] driven, float[] other, boolean rearDrives) {
        double starts = limits.of("wheels.spin-starts");
        double power = limits.of("phases.throttle");
        List<Double> shares = new ArrayList<>();
        int against = 0;
        for (int i = 0; i < trace.size(); i++) {
            double ahead = (driven[i] - other[i]) / trace.speed(i);
            if (trace.speed(i) < limits.of("signs.moving") || trace.throttle(i) < power || trace.brake(i) > 0.05) {
                continue;
            }
            if (ahead > starts) {
                shares.add((trace.speed(i) - other[i]) / (driven[i] - other[i]));
            }
            against += ahead < -starts ? 1 : 0;
        }
        String drivers = rearDrives ? "rear" : "front";
        String others = rearDrives ? "front" : "rear";
        if (against > trace.samples(1)) {
            spinHidden = true;
            doubts.add("on the power the " + others + " wheels turn faster than the " + drivers + " ones, which drive the car: "
                    + "are the columns of front and rear swapped, or the drive in the car's file?");
        }
        if (shares.size() > trace.samples(1) && Robust.median(shares) > THEIRS) {
            spinHidden = true;
            doubts.add("where the " + drivers + " wheels turn faster than the " + others + " ones on the power, the speed goes "
                    + "with the " + drivers + " wheels: it seems to be taken from them, so that wheelspin does not show");
        }
    }
}
