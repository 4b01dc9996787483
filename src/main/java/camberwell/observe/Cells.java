package camberwell.observe;

import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.List;

/** The figures by corner and phase: the median of the laps of the most that each axle slid. */
final class Cells {

    private Cells() {
    }

    static List<Observed.Cell> of(Slides slides, CornerMap map, int laps) {
        List<Observed.Cell> cells = new ArrayList<>();
        for (Corner corner : map.corners()) {
            for (Phase phase : Phase.values()) {
                double front = median(slides.of(Symptom.UNDERSTEER), corner.number() - 1, phase, laps);
                double rear = median(slides.of(Symptom.OVERSTEER), corner.number() - 1, phase, laps);
                if (!Double.isNaN(front) || !Double.isNaN(rear)) {
                    cells.add(new Observed.Cell(corner.number(), phase, front, rear));
                }
            }
        }
        return cells;
    }

    /** Of laps enough: a phase that comes once in a corner is told with its complaint, if there is one. */
    private static double median(List<Sighting> sightings, int corner, Phase phase, int laps) {
        List<Double> figures = sightings.stream().filter(it -> it.corner() == corner && it.phase() == phase)
                .map(it -> Math.max(0, it.figure())).toList();
        return figures.size() * 2 < laps ? Double.NaN : Robust.median(figures);
    }
}
