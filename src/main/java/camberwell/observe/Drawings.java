package camberwell.observe;

import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Picks the corner and lap that show the surest slide most clearly. */
final class Drawings {

    private static final double STEP = 2;
    private static final double AROUND = 40;

    private Drawings() {
    }

    static Optional<CornerDrawing> of(List<Report> reports, Slides slides, List<LapPhases> phases, CornerMap map,
            Trace trace, List<Lap> laps) {
        if (slides.beyond().length == 0) {
            return Optional.empty();
        }
        for (Report report : reports) {
            boolean slide = report.symptom() == Symptom.UNDERSTEER || report.symptom() == Symptom.OVERSTEER
                    || report.symptom() == Symptom.SNAP_OVERSTEER;
            Optional<Measured.Place> place = report.measured().orElseThrow().evidence().stream()
                    .filter(it -> it.corner().isPresent() && it.lap().isPresent())
                    .max(Comparator.comparingDouble(Measured.Place::figure));
            if (slide && place.isPresent()) {
                return Optional.of(draw(report, place.get(), slides, phases, map, trace, laps));
            }
        }
        return Optional.empty();
    }

    private static CornerDrawing draw(Report report, Measured.Place place, Slides slides, List<LapPhases> phases,
            CornerMap map, Trace trace, List<Lap> laps) {
        Corner corner = map.corners().get(place.corner().getAsInt() - 1);
        int shown = 0;
        while (laps.get(shown).number() != place.lap().getAsInt()) {
            shown++;
        }
        int points = (int) (map.length() / STEP);
        List<double[]> angles = new ArrayList<>();
        for (LapPhases lap : phases) {
            angles.add(lap.way().onGrid(STEP, points, i -> slides.beyond()[i]));
        }
        double[] speed = phases.get(shown).way().onGrid(STEP, points, i -> trace.speed(i) * 3.6);
        List<Double> metres = new ArrayList<>();
        List<Double> of = new ArrayList<>();
        List<Double> usual = new ArrayList<>();
        List<Double> speeds = new ArrayList<>();
        for (int i = Math.max(0, (int) ((corner.from() - AROUND) / STEP)); i < points
                && i * STEP <= corner.to() + AROUND; i++) {
            int at = i;
            metres.add(i * STEP);
            of.add(angles.get(shown)[i]);
            usual.add(Robust.median(angles.stream().mapToDouble(it -> it[at]).toArray()));
            speeds.add(speed[i]);
        }
        double[] ends = ends(phases.get(shown), place.corner().getAsInt() - 1, report.phase(), corner);
        return new CornerDrawing(corner.number(), place.lap().getAsInt(), report.text(), metres, of, usual, speeds,
                slides.measure(Symptom.UNDERSTEER).starts(), ends[0], ends[1]);
    }

    private static double[] ends(LapPhases lap, int corner, Optional<Phase> phase, Corner whole) {
        double from = Double.NaN;
        double to = Double.NaN;
        for (int i = 0; i < lap.phases().length; i++) {
            if (lap.corners()[i] == corner && phase.isPresent() && phase.get() == lap.phases()[i]) {
                from = Double.isNaN(from) ? lap.way().metres()[i] : from;
                to = lap.way().metres()[i];
            }
        }
        return Double.isNaN(from) ? new double[] {whole.from(), whole.to()} : new double[] {from, to};
    }
}
