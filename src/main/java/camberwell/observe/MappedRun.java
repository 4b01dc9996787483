package camberwell.observe;

import camberwell.channel.Limits;
import java.util.List;
import java.util.Optional;

/**
 * A run whose laps, corners and phases are found.
 *
 * @param trace its motion
 * @param laps those that count
 * @param map the corners of the circuit
 * @param phases of each of those laps
 * @param line the car's own line; empty without steering, or where nothing could be fitted
 * @param limits from what on something counts
 */
record MappedRun(Trace trace, List<Lap> laps, CornerMap map, List<LapPhases> phases, Optional<ReferenceLine> line,
        Limits limits) {

    /** Yaw rate that the car would have in that turn of the steering if nothing else turned it, rad/s. */
    double asked(int sample) {
        return asked(sample, line.orElseThrow());
    }

    /** The same by another run's line; where the steering points straight ahead this run knows best. */
    double asked(int sample, ReferenceLine other) {
        double speed = trace.speed(sample);
        return (trace.steering(sample) - line.orElseThrow().offset()) / other.ratio() * speed / turning(other, speed);
    }

    /** {@code L + K v²}, kept from nought where a car that oversteers nears its critical speed. */
    private static double turning(ReferenceLine own, double speed) {
        return Math.max(0.3 * own.wheelbase(), own.wheelbase() + own.gradient() * speed * speed);
    }

    /**
     * Angle of the steering wheel beyond what the path takes, rad; positive to the left. On a straight it is what the
     * driver holds against a pull.
     */
    double held(int sample) {
        ReferenceLine own = line.orElseThrow();
        return trace.steering(sample) - own.offset() - own.ratio() * (own.wheelbase() * trace.yaw(sample)
                / trace.speed(sample) + own.gradient() * trace.side(sample) + own.yawDelay() * trace.yawChange(sample));
    }
}
