package camberwell.observe;

import camberwell.channel.Channel;
import camberwell.channel.Kind;
import camberwell.channel.Limits;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Kerbs that are struck, stops that are met, and how the damper speeds are spread. */
final class Dampers {

    private static final double GRAVITY = 9.80665;

    private final Trace trace;
    private final Limits limits;
    private final Map<Wheel, Channel> channels = new EnumMap<>(Wheel.class);

    Dampers(Trace trace, Limits limits) {
        this.trace = trace;
        this.limits = limits;
        for (Wheel wheel : Wheel.values()) {
            Channel channel = Channel.of(Kind.DAMPER, Word.of(Place.class, wheel.id()));
            if (trace.log().has(channel)) {
                channels.put(wheel, channel);
            }
        }
    }

    boolean there() {
        return channels.size() == Wheel.values().length;
    }

    /** Samples at which one side's dampers are thrown in and the other's are not: a kerb; nothing without dampers. */
    boolean[] strikes() {
        if (!there()) {
            return new boolean[0];
        }
        boolean[] struck = new boolean[trace.size()];
        double strike = limits.of("dampers.strike") / 1000;
        for (int i = 0; i < struck.length; i++) {
            double left = 0;
            double right = 0;
            for (Map.Entry<Wheel, Channel> entry : channels.entrySet()) {
                double rate = Math.abs(trace.log().rates(entry.getValue())[i]);
                left = entry.getKey().left() ? Math.max(left, rate) : left;
                right = entry.getKey().left() ? right : Math.max(right, rate);
            }
            struck[i] = Math.max(left, right) > strike && Math.min(left, right) < strike / 2;
        }
        return struck;
    }

    /** Slides in the second after a strike, in the unit of their own measure. */
    static List<Sighting> afterStrikes(List<LapPhases> laps, Trace trace, float[] beyond, Limits limits) {
        List<Sighting> seen = new ArrayList<>();
        int after = trace.samples(limits.of("dampers.strike-after"));
        int width = trace.samples(limits.of("slides.over"));
        for (int lap = 0; lap < laps.size(); lap++) {
            LapPhases here = laps.get(lap);
            int from = here.lap().from();
            for (int i = 0; i < here.phases().length; i++) {
                boolean begins = here.phases()[i] == Phase.KERBS && (i == 0 || here.phases()[i - 1] != Phase.KERBS);
                if (!begins || here.corners()[i] < 0) {
                    continue;
                }
                double most = 0;
                for (int k = i; k + width <= Math.min(here.phases().length, i + after); k++) {
                    double sum = 0;
                    for (int w = k; w < k + width; w++) {
                        sum += beyond[from + w];
                    }
                    most = Math.max(most, Double.isNaN(sum) ? 0 : Math.abs(sum / width));
                }
                seen.add(new Sighting(lap, here.corners()[i], Phase.KERBS, most, from + i));
            }
        }
        return seen;
    }

    /**
     * Times at which an axle meets its stop: a few samples within half a millimetre of the farthest it ever goes, and the
     * blow of it in the vertical acceleration. The figure is the blow, in g.
     */
    List<Sighting> stops(Axle axle, List<LapPhases> laps) {
        List<Sighting> seen = new ArrayList<>();
        if (!trace.log().has(Kind.VERTICAL_ACCELERATION)) {
            return seen;
        }
        float[] vertical = trace.log().samples(Kind.VERTICAL_ACCELERATION);
        double rest = Robust.median(sample(vertical));
        for (Map.Entry<Wheel, Channel> entry : channels.entrySet()) {
            if (entry.getKey().axle() != axle) {
                continue;
            }
            float[] travel = trace.log().samples(entry.getValue());
            float stop = most(travel);
            for (int lap = 0; lap < laps.size(); lap++) {
                stops(laps.get(lap), lap, travel, stop, vertical, rest, seen);
            }
        }
        return seen;
    }

    private void stops(LapPhases here, int lap, float[] travel, float stop, float[] vertical, double rest,
            List<Sighting> seen) {
        int from = here.lap().from();
        int near = trace.samples(0.1);
        double reach = limits.of("dampers.stop") / 1000;
        int needed = Math.max(2, (int) Math.round(limits.of("dampers.stop-samples") * Math.min(1, trace.rate() / 100)));
        int met = 0;
        for (int i = 0; i < here.phases().length; i++) {
            met = travel[from + i] >= stop - reach ? met + 1 : 0;
            if (met != needed) {
                continue;
            }
            double blow = 0;
            for (int k = Math.max(0, i - near); k < Math.min(here.phases().length, i + near); k++) {
                blow = Math.max(blow, Math.abs(vertical[from + k] - rest) / GRAVITY);
            }
            int corner = here.corners()[i];
            seen.add(new Sighting(lap, Math.max(0, corner), here.phases()[i], blow, from + i));
        }
    }

    private double[] sample(float[] values) {
        int stride = Math.max(1, trace.size() / 10_000);
        double[] some = new double[trace.size() / stride];
        for (int i = 0; i < some.length; i++) {
            some[i] = values[i * stride];
        }
        return some;
    }

    private float most(float[] values) {
        float most = Float.NEGATIVE_INFINITY;
        for (int i = 0; i < trace.size(); i++) {
            most = values[i] > most ? values[i] : most;
        }
        return most;
    }

    /** What is measured for an axle that meets its stops. */
    Measure bottoming(Axle axle) {
        return new Measure(Symptom.BOTTOMING, Optional.of(Word.of(Place.class, axle.id())),
                limits.of("dampers.spike-starts"), limits.of("dampers.spike-clear"), "g",
                "blow as the dampers meet their stops", 1);
    }

    /** What is measured for slides after kerbs. */
    static Measure kerbs(Measure slide) {
        return new Measure(Symptom.KERB_INSTABILITY, Optional.empty(), slide.starts(), slide.clear(), slide.unit(),
                "slip angle beyond the car's own moderate running within a second of a kerb", slide.decimals());
    }
}
