package camberwell.channel;

import camberwell.problem.ProblemsException;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Set;

/** From what on something counts: {@code rules/observation.yaml}, where each is explained. */
public final class Limits {

    private static final double MOST = 1e6;
    /** Every limit that is asked for, by the group that it stands in. */
    private static final String KEYS = """
            clock: rate cut-off gap new-run pause seldom spike
            signs: fits alike moving
            stuck: least still moved margin tread
            noise: window crossings calm moved alike travel
            laps: slow slow-share short stopped
            corners: grid turn-on turn-off least-heading linked slow-below fast-above speed-open
            phases: brake throttle gaining apex lift lift-within lift-lasts kerb blur
            line: slowest from to steady bisquare
            slides: over starts starts-scatter clear-after catch catch-from snap-starts snap-clear severity-clear \
            severity-strong
            wheels: over spin-starts spin-clear lock-starts lock-clear slowest
            dampers: stop stop-samples spike-starts spike-clear strike strike-after
            tyres: clear warm-laps warm-laps-clear
            grades: told shows every-lap once since since-laps fewest-laps
            driver: lowers ends stab stab-within stab-back stabs-a-lap release release-within lock-held
            straights: after-corner before-corner sideways slowest brake braked least detrend weave-starts \
            weave-clear wander-starts wander-clear pull-scatter pull-starts pull-clear
            answer: before longest least alike yaw scatter later-starts later-clear more-starts more-clear
            doubts: ratio ratio-absurd ratio-tells steering-zero yaw-zero late
            """;

    private final Map<String, Double> values;

    private Limits(Map<String, Double> values) {
        this.values = Map.copyOf(values);
    }

    /**
     * Reads the file.
     *
     * @throws ProblemsException if one of them is missing or no number, or if there is something else in it
     */
    public static Limits read(Path file) {
        Problems problems = new Problems();
        Map<String, Double> values = new HashMap<>();
        Document.load(file, problems).ifPresent(document -> {
            Fields groups = document.fields("group");
            KEYS.lines().forEach(line -> {
                String group = line.substring(0, line.indexOf(':'));
                groups.require(group);
                groups.map(group, "limit").ifPresent(limits -> {
                    for (String limit : line.substring(group.length() + 2).split(" ")) {
                        limits.require(limit);
                        limits.number(limit, 0, MOST).ifPresent(value -> values.put(group + "." + limit, value));
                    }
                    limits.done();
                });
            });
            groups.done();
        });
        problems.warningsOrFail();
        return new Limits(values);
    }

    /**
     * The limit of that key with the one above it: {@code corners.turn-on}.
     *
     * @throws IllegalArgumentException if there is none
     */
    public double of(String key) {
        Double value = values.get(key);
        if (value == null) {
            throw new IllegalArgumentException("observation.yaml: " + key + " must be a number");
        }
        return value;
    }

    /** Every key. */
    public Set<String> keys() {
        return values.keySet();
    }

    /** How far {@code value} is on the way from where something begins to where it is clear, 0 to 1. */
    public static double ramp(double value, double starts, double clear) {
        return Double.isNaN(value) ? 0 : Math.max(0, Math.min(1, (value - starts) / (clear - starts)));
    }
}
