package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import java.util.ArrayList;
import java.util.List;

/**
 * A piece of a lap that goes straight on: braked throughout or not braked at all. What follows a corner at once is no part
 * of it, nor is what comes before the next, where the driver turns in.
 *
 * @param lap place among the laps that count, from 0
 * @param corner the next one, from 0
 * @param from its first sample in the log
 * @param to the sample after its last
 */
record StraightPiece(int lap, int corner, Phase phase, int from, int to) {

    static List<StraightPiece> of(MappedRun run) {
        List<StraightPiece> pieces = new ArrayList<>();
        for (int lap = 0; lap < run.phases().size(); lap++) {
            LapPhases phases = run.phases().get(lap);
            for (int from = 0; from < phases.phases().length;) {
                int to = from + 1;
                while (to < phases.phases().length && phases.phases()[to] == phases.phases()[from]) {
                    to++;
                }
                if (phases.phases()[from] == Phase.BRAKING || phases.phases()[from] == Phase.STRAIGHT) {
                    piece(run, lap, phases, from, to, pieces);
                }
                from = to;
            }
        }
        return pieces;
    }

    private static void piece(MappedRun run, int lap, LapPhases phases, int from, int to, List<StraightPiece> pieces) {
        Limits limits = run.limits();
        Trace trace = run.trace();
        Phase phase = phases.phases()[from];
        int log = phases.lap().from();
        boolean afterCorner = from == 0 || phases.phases()[from - 1] != Phase.BRAKING
                && phases.phases()[from - 1] != Phase.STRAIGHT;
        boolean beforeCorner = to == phases.phases().length || phases.phases()[to] != Phase.BRAKING
                && phases.phases()[to] != Phase.STRAIGHT;
        int first = from + (afterCorner ? trace.samples(limits.of("straights.after-corner")) : 0);
        int end = to - (beforeCorner ? trace.samples(limits.of("straights.before-corner")) : 0);
        double slowest = limits.of("straights.slowest");
        double brake = phase == Phase.BRAKING ? limits.of("straights.brake") : -1;
        // The longest stretch of it that tells something.
        int best = first;
        int bestEnd = first;
        int begun = first;
        for (int i = first; i <= end; i++) {
            boolean tells = i < end && trace.speed(log + i) > slowest && trace.brake(log + i) > brake
                    && !Double.isNaN(trace.yaw(log + i));
            if (!tells) {
                if (i - begun > bestEnd - best) {
                    best = begun;
                    bestEnd = i;
                }
                begun = i + 1;
            }
        }
        double least = limits.of(phase == Phase.BRAKING ? "straights.braked" : "straights.least");
        if (bestEnd - best >= trace.samples(least) && Math.abs(sideways(trace, log + best, log + bestEnd))
                < limits.of("straights.sideways")) {
            int corner = run.map().next(phases.way().metres()[Math.min(bestEnd, phases.phases().length - 1)]);
            pieces.add(new StraightPiece(lap, corner, phase, log + best, log + bestEnd));
        }
    }

    /** A bend that is no corner yet shows in the mean; a car that weaves does not. */
    private static double sideways(Trace trace, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += trace.side(i);
        }
        return sum / (to - from);
    }

    boolean braked() {
        return phase == Phase.BRAKING;
    }

    /** Its three parts, one after the other. */
    List<StraightPiece> thirds() {
        int length = to - from;
        return List.of(new StraightPiece(lap, corner, phase, from, from + length / 3),
                new StraightPiece(lap, corner, phase, from + length / 3, from + 2 * length / 3),
                new StraightPiece(lap, corner, phase, from + 2 * length / 3, to));
    }

    int middle() {
        return (from + to) / 2;
    }
}
