package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Looks for slides of the front and of the rear: what the understeer angle has beyond the car's own line. */
final class Slides {

    /** What a phase shows near another one is its own only if the other shows less than this share of it. */
    private static final double SHARED = 0.6;
    private static final double ALIKE = 0.95;

    /** Phases that are no part of a turn, and the moment over a kerb, of which {@link Dampers} tells. */
    private static final Set<Phase> ELSEWHERE = EnumSet.of(Phase.BRAKING, Phase.STRAIGHT, Phase.KERBS);

    private final Trace trace;
    private final Optional<ReferenceLine> line;
    private final List<LapPhases> laps;
    private final CornerMap map;
    private final Limits limits;
    private final double starts;
    private final Map<Symptom, List<Sighting>> seen = new HashMap<>();
    private final float[] beyond;

    Slides(Trace trace, Optional<ReferenceLine> line, List<LapPhases> laps, CornerMap map, Limits limits) {
        this.trace = trace;
        this.line = line;
        this.laps = laps;
        this.map = map;
        this.limits = limits;
        this.starts = Math.max(limits.of("slides.starts"), limits.of("slides.starts-scatter")
                * line.map(it -> Math.toDegrees(it.scatter())).orElse(0.0));
        this.beyond = new float[line.isPresent() ? trace.size() : 0];
        for (int i = 0; i < beyond.length; i++) {
            beyond[i] = (float) Math.toDegrees(line.get().beyond(trace, i));
        }
        for (Symptom symptom : List.of(Symptom.UNDERSTEER, Symptom.OVERSTEER, Symptom.SNAP_OVERSTEER)) {
            seen.put(symptom, new ArrayList<>());
        }
        for (int lap = 0; lap < laps.size(); lap++) {
            look(lap);
        }
    }

    /** Understeer angle beyond the line at each sample, degrees; positive where the front slides. */
    float[] beyond() {
        return beyond;
    }

    List<Sighting> of(Symptom symptom) {
        return seen.get(symptom);
    }

    /** What is measured for understeer, oversteer or snap oversteer. */
    Measure measure(Symptom symptom) {
        return symptom == Symptom.SNAP_OVERSTEER
                ? new Measure(symptom, Optional.empty(), limits.of("slides.snap-starts"), limits.of("slides.snap-clear"),
                        "deg/s", "rate at which the tail comes round", 0)
                : new Measure(symptom, Optional.empty(), starts, starts + limits.of("slides.clear-after"), "deg",
                        symptom == Symptom.UNDERSTEER ? "slip angle of the front beyond the car's own moderate running"
                                : "slip angle of the rear beyond the car's own moderate running", 1);
    }

    /** One mean over a fifth of a second. */
    private record Window(int sample, Phase phase, double under, double over) {

        double figure(boolean front) {
            return front ? under : over;
        }
    }

    private void look(int lapIndex) {
        LapPhases lap = laps.get(lapIndex);
        boolean slid = false;
        int lastCorner = -1;
        for (int from = 0; from < lap.corners().length;) {
            int corner = lap.corners()[from];
            int to = from;
            while (to < lap.corners().length && lap.corners()[to] == corner) {
                to++;
            }
            if (corner >= 0) {
                boolean quiet = slid && map.corners().get(corner).linked() && corner == lastCorner + 1;
                slid = corner(lapIndex, lap, corner, from, to, quiet);
                lastCorner = corner;
            }
            from = to;
        }
    }

    /** Whether the car slid there. */
    private boolean corner(int lapIndex, LapPhases lap, int corner, int from, int to, boolean quietEntry) {
        List<Window> windows = line.isPresent() ? windows(lap, from, to) : List.of();
        double most = 0;
        for (Phase phase : Phase.values()) {
            if (ELSEWHERE.contains(phase) || quietEntry && phase == Phase.ENTRY) {
                continue;
            }
            most = Math.max(most, note(Symptom.UNDERSTEER, lapIndex, corner, phase, windows, true));
            most = Math.max(most, note(Symptom.OVERSTEER, lapIndex, corner, phase, windows, false));
            snap(lapIndex, lap, corner, phase, from, to);
        }
        return most > starts;
    }

    private double note(Symptom symptom, int lap, int corner, Phase phase, List<Window> windows, boolean front) {
        Window first = null;
        Window most = null;
        Window anywhere = null;
        boolean apart = false;
        double beside = 0;
        for (int i = 0; i < windows.size(); i++) {
            Window window = windows.get(i);
            if (window.phase != phase) {
                continue;
            }
            first = first == null ? window : first;
            anywhere = anywhere == null || window.figure(front) > anywhere.figure(front) ? window : anywhere;
            double other = beside(windows, i, front);
            apart |= Double.isNaN(other);
            beside = Double.isNaN(other) ? beside : Math.max(beside, other);
            if (!(other >= SHARED * window.figure(front))
                    && (most == null || window.figure(front) > most.figure(front))) {
                most = window;
            }
        }
        if (first == null) {
            return 0;
        }
        if (!apart) {
            // A phase as short as that counts if it shows no less than those beside it.
            most = anywhere.figure(front) >= ALIKE * beside ? anywhere : null;
        }
        double figure = most == null ? 0 : most.figure(front);
        seen.get(symptom).add(new Sighting(lap, corner, phase, figure, most == null ? first.sample : most.sample));
        return figure;
    }

    /** The most that other phases show so near that it may be the same; not a number where none is near. */
    private double beside(List<Window> windows, int at, boolean front) {
        int blur = trace.samples(limits.of("phases.blur"));
        Window window = windows.get(at);
        double most = Double.NaN;
        for (int step = -1; step <= 1; step += 2) {
            for (int i = at + step; i >= 0 && i < windows.size()
                    && Math.abs(windows.get(i).sample - window.sample) <= blur; i += step) {
                if (windows.get(i).phase != window.phase && !(windows.get(i).figure(front) <= most)) {
                    most = windows.get(i).figure(front);
                }
            }
        }
        return most;
    }

    private List<Window> windows(LapPhases lap, int from, int to) {
        int width = trace.samples(limits.of("slides.over"));
        int catchLasts = trace.samples(limits.of("slides.catch"));
        int first = lap.lap().from();
        List<Window> windows = new ArrayList<>();
        int caught = Integer.MIN_VALUE / 2;
        for (int i = from; i + width <= to; i++) {
            Phase phase = lap.phases()[i + width / 2];
            double sum = 0;
            boolean whole = true;
            for (int k = i; k < i + width; k++) {
                sum += beyond[first + k];
                whole &= lap.phases()[k] == phase;
            }
            double mean = sum / width;
            if (mean < -limits.of("slides.catch-from")) {
                caught = i;
            }
            if (whole && !Double.isNaN(mean) && phase != Phase.BRAKING && phase != Phase.STRAIGHT) {
                windows.add(new Window(first + i + width / 2, phase, i - caught < catchLasts ? Math.min(0, mean) : mean,
                        -mean));
            }
        }
        return windows;
    }

    /** The tail coming round: the sideslip that grows outwards, while the rear slides. */
    private void snap(int lapIndex, LapPhases lap, int corner, Phase phase, int from, int to) {
        if (!trace.hasSideslip()) {
            return;
        }
        int first = lap.lap().from();
        int near = trace.samples(limits.of("phases.blur"));
        double most = Double.NaN;
        int at = -1;
        for (int i = from; i < to; i++) {
            double rate = -Math.signum(trace.side(first + i)) * Math.toDegrees(trace.sideslipRate(first + i));
            if (lap.phases()[i] == phase && !(rate <= most) && !Double.isNaN(rate)) {
                most = rate;
                at = first + i;
            }
        }
        if (at < 0) {
            return;
        }
        boolean rear = line.isEmpty();
        for (int k = Math.max(0, at - near); k < Math.min(trace.size(), at + near) && !rear; k++) {
            rear = beyond[k] < -limits.of("slides.catch-from");
        }
        seen.get(Symptom.SNAP_OVERSTEER).add(new Sighting(lapIndex, corner, phase, rear ? most : 0, at));
    }

    /** Seconds around a sample in which the steering points out of the turn. */
    double countersteer(int sample) {
        if (line.isEmpty() || sample < 0) {
            return 0;
        }
        int reach = trace.samples(1);
        int count = 0;
        for (int i = Math.max(0, sample - reach); i < Math.min(trace.size(), sample + reach); i++) {
            double steering = trace.steering(i) - line.get().offset();
            if (steering * trace.side(i) < 0 && Math.abs(trace.side(i)) > limits.of("corners.turn-on")
                    && Math.abs(steering) > Math.toRadians(2)) {
                count++;
            }
        }
        return count / trace.rate();
    }
}
