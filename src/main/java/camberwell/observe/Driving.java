package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import java.util.List;

/** How each corner was driven in each lap. */
final class Driving {

    private final Trace trace;
    private final CornerMap map;
    private final Limits limits;
    private final DrivenCorner[][] driven;

    /** @param beyond understeer angle beyond the line, degrees; empty where there is no line */
    Driving(Trace trace, List<LapPhases> laps, CornerMap map, float[] beyond, Limits limits) {
        this.trace = trace;
        this.map = map;
        this.limits = limits;
        driven = new DrivenCorner[laps.size()][map.corners().size()];
        for (int lap = 0; lap < laps.size(); lap++) {
            for (int corner = 0; corner < map.corners().size(); corner++) {
                driven[lap][corner] = read(laps.get(lap), corner, beyond);
            }
        }
    }

    DrivenCorner of(int lap, int corner) {
        return driven[lap][corner];
    }

    private DrivenCorner read(LapPhases lap, int corner, float[] beyond) {
        int from = lap.lap().from();
        int first = -1;
        int last = -1;
        double middle = (map.corners().get(corner).apexFrom() + map.corners().get(corner).apexTo()) / 2;
        for (int i = 0; i < lap.corners().length; i++) {
            if (lap.corners()[i] == corner && lap.phases()[i] != Phase.BRAKING) {
                first = first < 0 ? i : first;
                last = i;
            }
        }
        if (first < 0) {
            return new DrivenCorner(Double.NaN, Double.NaN, Double.NaN, 0, 0);
        }
        double throttleAt = Double.NaN;
        boolean measured = trace.throttleMeasured(from + first, from + last);
        double opened = limits.of("phases.throttle");
        for (int i = last; i >= first && measured && trace.throttle(from + i) >= opened; i--) {
            throttleAt = lap.way().metres()[i] - middle;
        }
        return new DrivenCorner(trace.speed(from + first), throttleAt, release(from + first, from + last),
                stabs(from + first, from + last), lockHeld(from + first, from + last, beyond));
    }

    /** The largest share of the brake let go within a moment, from half a second before the corner on. */
    private double release(int from, int to) {
        int within = trace.samples(limits.of("driver.release-within"));
        int first = Math.max(within, from - trace.samples(0.5));
        if (!trace.brakeMeasured(first - within, to)) {
            return Double.NaN;
        }
        double most = 0;
        for (int i = first; i <= to; i++) {
            most = Math.max(most, trace.brake(i - within) - trace.brake(i));
        }
        return most;
    }

    private int stabs(int from, int to) {
        if (!trace.throttleMeasured(from, to)) {
            return 0;
        }
        double share = limits.of("driver.stab");
        int within = trace.samples(limits.of("driver.stab-within"));
        int back = trace.samples(limits.of("driver.stab-back"));
        int stabs = 0;
        for (int i = from + within; i <= to; i++) {
            double peak = trace.throttle(i);
            if (peak - trace.throttle(i - within) < share) {
                continue;
            }
            int end = Math.min(to, i + back);
            for (int k = i; k <= end; k++) {
                peak = Math.max(peak, trace.throttle(k));
                // Let go by as much as it was opened: a change of gear is over before that counts.
                if (peak - trace.throttle(k) >= share && peak - trace.throttle(Math.min(to, k + within / 2)) >= share) {
                    stabs++;
                    i = k;
                    break;
                }
            }
        }
        return stabs;
    }

    private double lockHeld(int from, int to, float[] beyond) {
        if (beyond.length == 0 || !trace.throttleMeasured(from, to)) {
            return 0;
        }
        double most = 0;
        int held = 0;
        int longest = 0;
        for (int i = from; i <= to; i++) {
            double steering = Math.abs(trace.steering(i));
            most = Math.max(most, steering);
            boolean power = trace.throttle(i) > 0.5;
            held = power && steering > 0.9 * most && beyond[i] > limits.of("slides.starts") ? held + 1 : 0;
            longest = Math.max(longest, held);
        }
        return longest / trace.rate();
    }
}
