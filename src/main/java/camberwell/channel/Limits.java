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

    private final Map<String, Double> values;

    private Limits(Map<String, Double> values) {
        this.values = Map.copyOf(values);
    }

    /**
     * Reads the file.
     *
     * @throws ProblemsException if it holds something that is no number
     */
    public static Limits read(Path file) {
        Problems problems = new Problems();
        Map<String, Double> values = new HashMap<>();
        Document.load(file, problems).ifPresent(document -> {
            Fields groups = document.fields("group");
            for (String group : groups.keys()) {
                groups.map(group, "limit").ifPresent(limits -> {
                    for (String limit : limits.keys()) {
                        limits.number(limit, 0, MOST).ifPresent(value -> values.put(group + "." + limit, value));
                    }
                });
            }
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
