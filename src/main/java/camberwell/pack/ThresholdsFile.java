package camberwell.pack;

import camberwell.fact.Thresholds;
import camberwell.problem.ProblemsException;
import camberwell.units.Measure;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.yaml.Document;
import camberwell.yaml.Fields;
import camberwell.yaml.Problems;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads thresholds that a pack states otherwise, and names them as they stand. */
public final class ThresholdsFile {

    private static final int MOST_LAPS = 9999;

    private ThresholdsFile() {
    }

    /**
     * {@code before} with what {@code text} states otherwise.
     *
     * @throws ProblemsException with everything that is wrong with it
     */
    static Thresholds read(String file, String text, Thresholds before, Problems problems) {
        return Document.parse(file, text, problems).map(document -> {
            Fields fields = document.fields("threshold");
            Thresholds read = read(fields, before);
            fields.done();
            return read;
        }).orElse(before);
    }

    private static Thresholds read(Fields fields, Thresholds before) {
        double cold = celsius(fields, "cold-track").orElse(before.coldTrack());
        double hot = celsius(fields, "hot-track").orElse(before.hotTrack());
        if (cold >= hot && (fields.has("cold-track") || fields.has("hot-track"))) {
            fields.error(fields.has("cold-track") ? "cold-track" : "hot-track",
                    "a track that is cold would be hot as well: " + shown(cold) + " and " + shown(hot));
        }
        return new Thresholds(cold, hot, laps(fields, "long-run").orElse(before.longRun()),
                laps(fields, "old-tyres").orElse(before.oldTyres()));
    }

    /** Those of {@code fields}, which has to have them all, that are not as they are built in: each with what it is. */
    public static Map<String, String> notBuiltIn(Fields fields) {
        Map<String, String> builtIn = shown(Thresholds.BUILT_IN);
        builtIn.keySet().forEach(fields::require);
        Map<String, String> read = shown(read(fields, Thresholds.BUILT_IN));
        builtIn.entrySet().removeIf(entry -> entry.getValue().equals(read.get(entry.getKey())));
        return builtIn;
    }

    private static Optional<Double> celsius(Fields fields, String key) {
        return fields.quantity(key, Measure.TRACK).map(quantity -> quantity.in(Unit.CELSIUS));
    }

    /** So many laps, with the word behind the number or without. */
    private static Optional<Integer> laps(Fields fields, String key) {
        return fields.count(key, 1, MOST_LAPS, "laps");
    }

    private static String shown(double celsius) {
        return new Quantity(celsius, Unit.CELSIUS).toString();
    }

    /** Each by its name, as it is shown. */
    public static Map<String, String> shown(Thresholds thresholds) {
        Map<String, String> shown = new LinkedHashMap<>();
        shown.put("cold-track", shown(thresholds.coldTrack()));
        shown.put("hot-track", shown(thresholds.hotTrack()));
        shown.put("long-run", thresholds.longRun() + " laps");
        shown.put("old-tyres", thresholds.oldTyres() + " laps");
        return shown;
    }

    /** What {@code pack} states otherwise than {@code before}: {@code cold-track 12 °C instead of 15 °C}. */
    public static List<String> otherwise(RulePack pack, Thresholds before) {
        Map<String, String> then = shown(before);
        return shown(pack.thresholds(before)).entrySet().stream()
                .filter(entry -> !entry.getValue().equals(then.get(entry.getKey())))
                .map(entry -> entry.getKey() + " " + entry.getValue() + " instead of " + then.get(entry.getKey())).toList();
    }
}
