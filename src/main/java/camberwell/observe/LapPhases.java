package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import java.util.Arrays;

/**
 * Corner and phase of each sample of a lap.
 *
 * @param way where on the circuit each sample is
 * @param corners the corner of each sample, counted from 0; of a braked one before a corner, the corner it is braked for; -1
 *     where there is none
 * @param phases the phase of each
 */
record LapPhases(LapWay way, int[] corners, Phase[] phases) {

    /** @param struck samples of the log at which a kerb is struck */
    static LapPhases of(Trace trace, LapWay way, CornerMap map, boolean[] struck, Limits limits) {
        int n = way.metres().length;
        int from = way.lap().from();
        int[] corners = new int[n];
        Phase[] phases = new Phase[n];
        double brake = limits.of("phases.brake");
        double throttle = limits.of("phases.throttle");
        double gaining = limits.of("phases.gaining");
        for (int i = 0; i < n; i++) {
            double metres = way.metres()[i];
            boolean braked = trace.brake(from + i) > brake;
            corners[i] = map.at(metres);
            if (corners[i] < 0) {
                phases[i] = braked ? Phase.BRAKING : Phase.STRAIGHT;
                corners[i] = braked ? map.next(metres) : -1;
                continue;
            }
            Corner corner = map.corners().get(corners[i]);
            boolean power = trace.throttle(from + i) >= throttle && trace.gain(from + i) > gaining && !braked;
            phases[i] = metres < corner.apexFrom() ? Phase.ENTRY : metres > corner.apexTo() ? Phase.EXIT
                    : power ? Phase.EXIT : braked ? Phase.ENTRY : Phase.MID_CORNER;
        }
        if (trace.hasThrottle()) {
            lifts(trace, from, corners, phases, limits);
        }
        kerbs(trace, from, corners, phases, struck, limits, map, way);
        return new LapPhases(way, corners, phases);
    }

    /** Where the throttle is let go in a corner and neither touched again nor followed by the brake. */
    private static void lifts(Trace trace, int from, int[] corners, Phase[] phases, Limits limits) {
        int within = trace.samples(limits.of("phases.lift-within"));
        int lasts = trace.samples(limits.of("phases.lift-lasts"));
        double points = limits.of("phases.lift");
        double throttle = limits.of("phases.throttle");
        double brake = limits.of("phases.brake");
        for (int i = within; i < phases.length; i++) {
            int began = i - within;
            boolean inside = phases[i] != Phase.BRAKING && corners[i] >= 0 && corners[began] == corners[i]
                    && phases[began] != Phase.BRAKING && phases[began] != Phase.STRAIGHT;
            boolean fell = trace.throttle(from + began) - trace.throttle(from + i) >= points
                    && trace.throttle(from + i) < throttle;
            if (!inside || !fell) {
                continue;
            }
            int end = i;
            while (end + 1 < phases.length && end + 1 - began < lasts && corners[end + 1] == corners[i]
                    && phases[end + 1] != Phase.BRAKING && phases[end + 1] != Phase.STRAIGHT
                    && trace.throttle(from + end + 1) < throttle && trace.brake(from + end + 1) <= brake) {
                end++;
            }
            // A cut for a change of gear is over at once, and a lift before the brakes is no lift-off.
            boolean brakes = end + 1 < phases.length && trace.brake(from + end + 1) > brake;
            if (end - i >= within && !brakes) {
                Arrays.fill(phases, began, end + 1, Phase.LIFT_OFF);
            }
            i = end;
        }
    }

    private static void kerbs(Trace trace, int from, int[] corners, Phase[] phases, boolean[] struck, Limits limits,
            CornerMap map, LapWay way) {
        int lasts = trace.samples(limits.of("phases.kerb"));
        for (int i = 0; i < phases.length; i++) {
            if (struck.length > 0 && struck[from + i]) {
                int end = Math.min(phases.length, i + lasts);
                for (int k = i; k < end; k++) {
                    phases[k] = Phase.KERBS;
                    corners[k] = corners[k] < 0 ? map.next(way.metres()[k]) : corners[k];
                }
            }
        }
    }

    Lap lap() {
        return way.lap();
    }
}
