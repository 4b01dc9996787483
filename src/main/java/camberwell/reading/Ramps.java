package camberwell.reading;

import camberwell.physics.TreadRead;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** From what on a reading counts and from what on it is beyond doubt, as {@code rules/thresholds.yaml} shows it. */
public final class Ramps {

    private Ramps() {
    }

    /** Both figures of each, with their unit, by its name in that file. */
    public static Map<String, List<String>> shown() {
        Map<String, List<String>> shown = new LinkedHashMap<>();
        shown.put("outside-window", shown("K", 0, TreadReader.WINDOW_FULL));
        shown.put("hotter-axle", shown("K", TreadReader.HOTTER_AXLE_STARTS, TreadReader.HOTTER_AXLE_FULL));
        shown.put("inner-edge", shown("K", TreadRead.INNER_HOT_STARTS, TreadRead.INNER_HOT_FULL));
        shown.put("outer-edge", shown("K", TreadRead.OUTER_HOT_STARTS, TreadRead.OUTER_HOT_FULL));
        shown.put("middle", shown("K", TreadRead.MIDDLE_STARTS, TreadRead.MIDDLE_FULL));
        shown.put("sides", shown("K", TreadReader.SIDES_STARTS, TreadReader.SIDES_FULL));
        shown.put("target", shown("bar", AxlePressures.STARTS, AxlePressures.FULL));
        shown.put("alone", shown("bar", GaugeReader.ALONE_STARTS, GaugeReader.ALONE_FULL));
        return shown;
    }

    private static List<String> shown(String unit, double starts, double full) {
        return List.of(figure(starts) + " " + unit, figure(full) + " " + unit);
    }

    private static String figure(double value) {
        return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
    }
}
