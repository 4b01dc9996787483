package camberwell.observe;

import camberwell.channel.Channel;
import camberwell.channel.Kind;
import camberwell.channel.Log;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Place;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * In which laps that count a channel was measured. A lap in which it was not shows nothing either way: it is no clean lap, and
 * counts in none of "so many of so many laps".
 */
final class Coverage {

    /** Of a lap's samples in corners: with less, the lap shows nothing. Judgement, no source. */
    private static final double ENOUGH = 0.5;

    private static final Set<Symptom> BALANCE = Set.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER,
            Symptom.SLOW_TURN_IN, Symptom.NERVOUS_TURN_IN);
    private static final Set<Kind> MOTION = Set.of(Kind.STEERING, Kind.YAW_RATE, Kind.LATERAL_ACCELERATION);

    private final Log log;
    private final List<LapPhases> laps;

    Coverage(Trace trace, List<LapPhases> laps) {
        this.log = trace.log();
        this.laps = laps;
    }

    /**
     * For each lap whether what a symptom is told by was measured in it.
     *
     * @param where the axle or the wheel, where there is more than one
     */
    boolean[] laps(Symptom symptom, Optional<Place> where) {
        if (BALANCE.contains(symptom)) {
            return laps(MOTION.stream().map(Channel::of).filter(log::has).toList());
        }
        if (symptom.equals(Symptom.FRONT_LOCKING)) {
            return wheels(Axle.FRONT);
        }
        if (symptom.equals(Symptom.REAR_LOCKING)) {
            return wheels(Axle.REAR);
        }
        Optional<Axle> spins = where.filter(it -> symptom.equals(Symptom.WHEELSPIN))
                .flatMap(it -> Word.find(Axle.class, it.id()));
        return spins.map(this::wheels).orElseGet(() -> laps(List.of()));
    }

    /** For each lap whether the speed of at least one wheel of an axle was measured in it. */
    private boolean[] wheels(Axle axle) {
        boolean[] any = new boolean[laps.size()];
        for (Wheel wheel : Wheel.values()) {
            Channel channel = Channel.of(Kind.WHEEL_SPEED, Word.of(Place.class, wheel.id()));
            boolean[] measured = wheel.axle() == axle && log.has(channel) ? laps(List.of(channel)) : new boolean[laps.size()];
            for (int lap = 0; lap < any.length; lap++) {
                any[lap] |= measured[lap];
            }
        }
        return any;
    }

    private boolean[] laps(List<Channel> needed) {
        boolean[] measured = new boolean[laps.size()];
        if (needed.isEmpty()) {
            Arrays.fill(measured, true);
            return measured;
        }
        float[][] samples = needed.stream().map(log::samples).toArray(float[][]::new);
        for (int lap = 0; lap < measured.length; lap++) {
            LapPhases here = laps.get(lap);
            int turning = 0;
            int seen = 0;
            for (int i = 0; i < here.corners().length; i++) {
                if (here.corners()[i] >= 0) {
                    turning++;
                    float sum = 0;
                    for (float[] channel : samples) {
                        sum += channel[here.lap().from() + i];
                    }
                    seen += Float.isNaN(sum) ? 0 : 1;
                }
            }
            measured[lap] = seen >= ENOUGH * turning;
        }
        return measured;
    }

    /** In how many laps what a symptom is told by was measured. */
    int count(Symptom symptom) {
        int count = 0;
        for (boolean lap : laps(symptom, Optional.empty())) {
            count += lap ? 1 : 0;
        }
        return count;
    }

    /** What was not measured when, and what that costs. */
    List<String> doubts() {
        List<String> doubts = new ArrayList<>();
        for (Channel channel : log.bindings().keySet()) {
            String cost = switch (channel.kind()) {
                case STEERING, YAW_RATE, LATERAL_ACCELERATION -> "nothing is said there of understeer and oversteer";
                case THROTTLE, BRAKE -> "phases go there by the gain and loss of speed";
                case WHEEL_SPEED -> "wheelspin and locking of that wheel are not seen there";
                default -> "";
            };
            if (!cost.isEmpty()) {
                without(channel).ifPresent(when -> doubts.add("the " + channel.spoken() + " is not measured in " + when + ": "
                        + cost));
            }
        }
        return doubts;
    }

    /** Laps in which a channel that the log has was not measured, in words: {@code laps 4, 5 and 6}. */
    private Optional<String> without(Channel channel) {
        if (!log.has(channel)) {
            return Optional.empty();
        }
        boolean[] measured = laps(List.of(channel));
        List<String> numbers = new ArrayList<>();
        for (int lap = 0; lap < measured.length; lap++) {
            if (!measured[lap]) {
                numbers.add(String.valueOf(laps.get(lap).lap().number()));
            }
        }
        int last = numbers.size() - 1;
        return last < 0 ? Optional.empty() : Optional.of(last == 0 ? "lap " + numbers.get(0)
                : "laps " + String.join(", ", numbers.subList(0, last)) + " and " + numbers.get(last));
    }
}
