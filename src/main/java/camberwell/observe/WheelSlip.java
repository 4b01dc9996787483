package camberwell.observe;

import camberwell.channel.Channel;
import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Longitudinal slip of each wheel, {@code (ωR - v)/v} (H. B. Pacejka, Tyre and Vehicle Dynamics), against the speed of the
 * road under that wheel: {@code v - r y}, and at the front turned by the steer angle. Wheels are calibrated against the
 * car's speed on the straights, so that neither their unit nor their radius matters.
 */
final class WheelSlip {

    private final Trace trace;
    private final Limits limits;
    private final Map<Wheel, float[]> slips = new EnumMap<>(Wheel.class);
    private final Map<Wheel, Double> scales = new EnumMap<>(Wheel.class);

    /**
     * @param ratio angle of the steering wheel for one of the road wheels, where it is known
     * @param toFront from the centre of gravity to the front axle, m
     * @param track m
     */
    WheelSlip(Trace trace, List<LapPhases> laps, Optional<ReferenceLine> line, double toFront, double track,
            Limits limits) {
        this.trace = trace;
        this.limits = limits;
        for (Wheel wheel : Wheel.values()) {
            Channel channel = Channel.of(Kind.WHEEL_SPEED, Word.of(Place.class, wheel.id()));
            if (trace.log().has(channel)) {
                float[] read = trace.log().samples(channel);
                double scale = calibration(read, laps);
                if (!Double.isNaN(scale)) {
                    scales.put(wheel, scale);
                    slips.put(wheel, slip(wheel, read, scale, line, toFront, track));
                }
            }
        }
    }

    /** The car's speed over the wheel's on straights, pedals up if there is enough of that. */
    private double calibration(float[] wheel, List<LapPhases> laps) {
        List<Double> up = new ArrayList<>();
        List<Double> any = new ArrayList<>();
        for (LapPhases lap : laps) {
            for (int i = 0; i < lap.phases().length; i += 2) {
                int at = lap.lap().from() + i;
                double ratio = trace.speed(at) / wheel[at];
                if (lap.phases()[i] == Phase.STRAIGHT && trace.speed(at) > 15 && wheel[at] > 0
                        && Math.abs(trace.yaw(at)) < 0.05) {
                    any.add(ratio);
                    if (trace.throttle(at) < 0.3 && Math.abs(trace.gain(at)) < 1.5) {
                        up.add(ratio);
                    }
                }
            }
        }
        return Robust.median(up.size() > 100 ? up : any);
    }

    private float[] slip(Wheel wheel, float[] read, double scale, Optional<ReferenceLine> line, double toFront,
            double track) {
        float[] slip = new float[trace.size()];
        double aside = wheel.left() ? track / 2 : -track / 2;
        boolean front = wheel.axle() == Axle.FRONT;
        for (int i = 0; i < slip.length; i++) {
            double steer = front && line.isPresent() ? (trace.steering(i) - line.get().offset()) / line.get().ratio() : 0;
            steer = Double.isNaN(steer) ? 0 : steer;
            double road = road(trace.speed(i), trace.yaw(i), aside, front ? toFront : 0, steer);
            slip[i] = trace.speed(i) < limits.of("wheels.slowest") ? Float.NaN
                    : (float) ((read[i] * scale - road) / Math.max(1, road));
        }
        return slip;
    }

    /** Speed of the road under a wheel along it, m/s. */
    static double road(double speed, double yaw, double aside, double toFront, double steer) {
        return (speed - yaw * aside) * Math.cos(steer) + toFront * yaw * Math.sin(steer);
    }

    /** Mean speed of an axle's wheels at each sample, m/s, as calibrated; empty unless both were logged. */
    Optional<float[]> mean(Axle axle) {
        List<Wheel> wheels = wheels().stream().filter(it -> it.axle() == axle).toList();
        if (wheels.size() < 2) {
            return Optional.empty();
        }
        float[] mean = new float[trace.size()];
        for (Wheel wheel : wheels) {
            float[] read = trace.log().samples(Channel.of(Kind.WHEEL_SPEED, Word.of(Place.class, wheel.id())));
            for (int i = 0; i < mean.length; i++) {
                mean[i] += (float) (read[i] * scales.get(wheel) / wheels.size());
            }
        }
        return Optional.of(mean);
    }

    /** The wheels whose speed was logged. */
    List<Wheel> wheels() {
        return List.copyOf(slips.keySet());
    }

    /**
     * The most slip of a wheel in each phase of each corner and lap.
     *
     * @param spinning faster than the road on the power, or else slower on the brakes; figures are positive in either case
     */
    List<Sighting> sightings(Wheel wheel, boolean spinning, List<LapPhases> laps) {
        List<Sighting> seen = new ArrayList<>();
        float[] slip = slips.get(wheel);
        int width = trace.samples(limits.of("wheels.over"));
        double pedal = limits.of(spinning ? "phases.throttle" : "phases.brake");
        for (int lap = 0; lap < laps.size(); lap++) {
            LapPhases here = laps.get(lap);
            int from = here.lap().from();
            // A phase of a corner is one stretch, or a few: the most of each is noted where it ends.
            Sighting most = null;
            for (int i = 0; i + width <= here.phases().length; i++) {
                int middle = i + width / 2;
                Phase phase = here.phases()[middle];
                boolean pressed = (spinning ? trace.throttle(from + middle) : trace.brake(from + middle)) > pedal;
                boolean braked = phase == Phase.BRAKING || phase == Phase.ENTRY;
                if (spinning == braked || !spinning && phase != Phase.BRAKING && phase != Phase.ENTRY || !pressed
                        || here.corners()[middle] < 0) {
                    continue;
                }
                double sum = 0;
                for (int k = i; k < i + width; k++) {
                    sum += slip[from + k];
                }
                double mean = spinning ? sum / width : -sum / width;
                boolean same = most != null && most.corner() == here.corners()[middle] && most.phase() == phase;
                if (!Double.isNaN(mean) && (!same || mean > most.figure())) {
                    if (!same && most != null) {
                        seen.add(most);
                    }
                    most = new Sighting(lap, here.corners()[middle], phase, mean, from + middle);
                }
            }
            if (most != null) {
                seen.add(most);
            }
        }
        return seen;
    }
}
