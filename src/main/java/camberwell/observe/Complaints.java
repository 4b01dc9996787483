package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.run.Measured;
import camberwell.run.Report;
import camberwell.units.Figures;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Turn;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** Makes reports of what was seen: one for each phase and speed of corner, over the corners in which it shows. */
final class Complaints {

    private static final int MOST_PLACES = 12;
    /** Phases in which the speed of the corner is no matter of course. */
    private static final Set<Phase> OUTSIDE = EnumSet.of(Phase.BRAKING, Phase.STRAIGHT, Phase.KERBS);

    private final List<Lap> laps;
    private final CornerMap map;
    private final boolean sidesKnown;
    private final Limits limits;
    private final Habits habits;
    private final Coverage coverage;

    Complaints(List<Lap> laps, CornerMap map, boolean sidesKnown, Limits limits, Habits habits, Coverage coverage) {
        this.laps = laps;
        this.map = map;
        this.sidesKnown = sidesKnown;
        this.limits = limits;
        this.habits = habits;
        this.coverage = coverage;
    }

    /** What shows of one measure. */
    List<Report> of(Measure measure, List<Sighting> sightings) {
        List<Report> reports = new ArrayList<>();
        boolean[] measured = coverage.laps(measure.symptom(), measure.where());
        for (Phase phase : Phase.values()) {
            double[][] figures = new double[map.corners().size()][laps.size()];
            for (double[] row : figures) {
                Arrays.fill(row, Double.NaN);
            }
            boolean any = false;
            for (Sighting sighting : sightings) {
                if (sighting.phase() == phase && measured[sighting.lap()]) {
                    double before = figures[sighting.corner()][sighting.lap()];
                    figures[sighting.corner()][sighting.lap()] = Double.isNaN(before) ? sighting.figure()
                            : Math.max(before, sighting.figure());
                    any = true;
                }
            }
            if (any) {
                phase(measure, phase, figures, measured, reports);
            }
        }
        return reports;
    }

    private void phase(Measure measure, Phase phase, double[][] figures, boolean[] measured, List<Report> reports) {
        List<Integer> looked = new ArrayList<>();
        List<Integer> showing = new ArrayList<>();
        for (int corner = 0; corner < figures.length; corner++) {
            if (Arrays.stream(figures[corner]).anyMatch(it -> !Double.isNaN(it))) {
                looked.add(corner);
                if (Grade.of(figures[corner], measured, measure.starts(), measure.clear(), limits).laps()
                        >= limits.of("grades.shows")) {
                    showing.add(corner);
                }
            }
        }
        Optional<Turn> turn = turn(looked, showing);
        if (OUTSIDE.contains(phase)) {
            report(measure, phase, figures, measured, showing, oneSpeed(looked, showing), turn, reports);
            return;
        }
        for (CornerSpeed speed : CornerSpeed.values()) {
            List<Integer> here = showing.stream().filter(it -> map.corners().get(it).speed() == speed).toList();
            boolean firm = here.stream().anyMatch(it -> map.corners().get(it).firm());
            report(measure, phase, figures, measured, here, firm ? Optional.of(speed) : Optional.empty(), turn, reports);
        }
    }

    /** The one speed of all corners in which it shows, where there are corners of another in which it does not. */
    private Optional<CornerSpeed> oneSpeed(List<Integer> looked, List<Integer> showing) {
        Set<CornerSpeed> shows = showing.stream().map(it -> map.corners().get(it).speed()).collect(Collectors.toSet());
        boolean others = looked.stream().anyMatch(it -> !shows.contains(map.corners().get(it).speed()));
        return shows.size() == 1 && others ? Optional.of(shows.iterator().next()) : Optional.empty();
    }

    /** The one direction in which it shows: in most corners that turn so, and in several that turn the other way not. */
    private Optional<Turn> turn(List<Integer> looked, List<Integer> showing) {
        if (!sidesKnown || showing.size() < 2) {
            return Optional.empty();
        }
        Turn turn = map.corners().get(showing.get(0)).turn();
        long same = looked.stream().filter(it -> map.corners().get(it).turn() == turn).count();
        boolean all = showing.stream().allMatch(it -> map.corners().get(it).turn() == turn);
        return all && looked.size() - same >= 2 && showing.size() * 3 >= same * 2 ? Optional.of(turn) : Optional.empty();
    }

    private void report(Measure measure, Phase phase, double[][] figures, boolean[] measured,
            List<Integer> corners, Optional<CornerSpeed> speed, Optional<Turn> turn, List<Report> reports) {
        if (corners.isEmpty()) {
            return;
        }
        double[] perLap = new double[laps.size()];
        for (int lap = 0; lap < perLap.length; lap++) {
            double sum = 0;
            int count = 0;
            for (int corner : corners) {
                if (!Double.isNaN(figures[corner][lap])) {
                    sum += figures[corner][lap];
                    count++;
                }
            }
            perLap[lap] = count == 0 ? Double.NaN : sum / count;
        }
        Grade grade = Grade.of(perLap, measured, measure.starts(), measure.clear(), limits);
        boolean seldom = grade.occurrence() != Occurrence.EVERY_LAP && grade.laps() <= measure.fewest();
        if (seldom || grade.certainty() < limits.of("grades.told")) {
            return;
        }
        boolean some = grade.laps() / count(measured) < limits.of("grades.every-lap");
        double drivers = some ? habits.share(corners, grade.clearness(), phase != Phase.EXIT) : 0;
        double past = 0;
        double weight = 0;
        for (int lap = 0; lap < perLap.length; lap++) {
            past += Double.isNaN(perLap[lap]) ? 0 : grade.clearness()[lap] * (perLap[lap] - measure.starts());
            weight += Double.isNaN(perLap[lap]) ? 0 : grade.clearness()[lap];
        }
        double size = past / Math.max(1e-9, weight) / (measure.clear() - measure.starts());
        double step = limits.of("slides.clear-after");
        Severity severity = size * step < limits.of("slides.severity-clear") ? Severity.SLIGHT
                : size * step < limits.of("slides.severity-strong") ? Severity.CLEAR : Severity.STRONG;
        Report report = new Report(measure.symptom(), measure.where(), Optional.of(phase), speed, severity,
                grade.occurrence(), grade.since(), turn);
        reports.add(report.withMeasured(new Measured(round(grade.strength()), round(drivers),
                how(measure, phase, corners, perLap, count(measured), grade, drivers),
                places(measure, figures, corners, grade))));
    }

    private String how(Measure measure, Phase phase, List<Integer> corners, double[] perLap, int measured,
            Grade grade, double drivers) {
        double[] shown = new double[perLap.length];
        double enough = Math.min(0.25, 0.5 * Arrays.stream(grade.clearness()).max().orElse(0));
        int laps = 0;
        for (int i = 0; i < perLap.length; i++) {
            shown[i] = grade.clearness()[i] >= enough ? perLap[i] : Double.NaN;
            laps += grade.clearness()[i] >= enough ? 1 : 0;
        }
        return measure.name() + ": " + Figures.fixed(Robust.median(shown), measure.decimals()) + " " + measure.unit()
                + " in " + laps + " of " + measured + (measured < perLap.length ? " measured" : "")
                + (measured == 1 ? " lap, " : " laps, ")
                + (phase == Phase.STRAIGHT || phase == Phase.BRAKING ? "before " : "")
                + (corners.size() == 1 ? "corner " : "corners ") + numbers(corners) + "; counts from "
                + Figures.fixed(measure.starts(), measure.decimals()) + " " + measure.unit()
                + (drivers > 0 ? "; " + (drivers > 0.99 ? "all" : Figures.fixed(drivers * 100, 0) + " %")
                        + " of it goes with how those laps were driven" : "");
    }

    private static int count(boolean[] measured) {
        int count = 0;
        for (boolean lap : measured) {
            count += lap ? 1 : 0;
        }
        return count;
    }

    private static String numbers(List<Integer> corners) {
        List<String> numbers = new TreeSet<>(corners).stream().map(it -> String.valueOf(it + 1)).toList();
        int last = numbers.size() - 1;
        return last == 0 ? numbers.get(0) : String.join(", ", numbers.subList(0, last)) + " and " + numbers.get(last);
    }

    /** The clearest places, at most three of a corner. */
    private List<Measured.Place> places(Measure measure, double[][] figures, List<Integer> corners, Grade grade) {
        List<Measured.Place> places = new ArrayList<>();
        int each = Math.max(1, Math.min(3, MOST_PLACES / corners.size()));
        for (int corner : corners) {
            List<Measured.Place> here = new ArrayList<>();
            for (int lap = 0; lap < laps.size(); lap++) {
                double figure = figures[corner][lap];
                if (figure > measure.starts()) {
                    here.add(new Measured.Place(OptionalInt.of(corner + 1), OptionalInt.of(laps.get(lap).number()),
                            round(figure), round(measure.starts()), measure.unit()));
                }
            }
            here.sort(Comparator.comparingDouble(Measured.Place::figure).reversed());
            places.addAll(here.subList(0, Math.min(each, here.size())));
        }
        return places.subList(0, Math.min(MOST_PLACES, places.size()));
    }

    private static double round(double figure) {
        return Math.rint(figure * 1000) / 1000;
    }
}
