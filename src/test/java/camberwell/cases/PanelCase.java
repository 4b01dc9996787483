package camberwell.cases;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.units.Quantity;
import java.nio.file.Path;
import java.util.List;

/** A case of the panel in a few words, and what was advised on it. */
final class PanelCase {

    private PanelCase() {
    }

    /** The advice on a run of a demo car; {@code rest} is the rest of the case's file. */
    static Advice advise(String car, String rest) {
        Path file = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars", car + ".yaml");
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + file + "\n" + rest));
    }

    /** Complaints of every lap of the whole run. */
    static String told(String... reports) {
        return said("occurrence: every-lap, since: whole-run", reports);
    }

    /** Complaints that all come {@code when}. */
    static String said(String when, String... reports) {
        StringBuilder text = new StringBuilder("reports:\n");
        for (String report : reports) {
            text.append("  - {symptom: ").append(report).append(", ").append(when).append("}\n");
        }
        return text.toString();
    }

    static List<String> habits(Advice advice) {
        return advice.driving().stream().map(driving -> driving.note().name()).toList();
    }

    static boolean likely(Advice advice, String finding) {
        return advice.findings().stream().anyMatch(it -> it.id().equals(finding));
    }

    /** All four tyres of the coupe: inner, middle, outer in °C and the gauge in bar; window 75 to 100 °C, target 1.85 bar. */
    static String tyres(String frontLeft, String frontRight, String rearLeft, String rearRight) {
        StringBuilder text = new StringBuilder("tyres:\n");
        String[] names = {"front-left", "front-right", "rear-left", "rear-right"};
        String[] read = {frontLeft, frontRight, rearLeft, rearRight};
        for (int i = 0; i < names.length; i++) {
            String[] of = read[i].split(" ");
            text.append("  %s: {inner: %s °C, middle: %s °C, outer: %s °C, hot-pressure: %s bar}\n"
                    .formatted(names[i], of[0], of[1], of[2], of[3]));
        }
        return text.toString();
    }

    static List<String> changes(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).toList();
    }

    static RankedChange change(Advice advice, String id) {
        return advice.changes().stream().filter(it -> it.change().id().equals(id)).findFirst()
                .orElseThrow(() -> new AssertionError(id + " is not among " + changes(advice) + ", withheld: "
                        + advice.withheld()));
    }

    static double moved(RankedChange change) {
        Quantity from = change.size().from().orElseThrow();
        return Math.abs(change.size().to().orElseThrow().value() - from.value());
    }
}
