package camberwell.observe;

import camberwell.channel.Limits;
import camberwell.run.Measured;
import camberwell.units.Figures;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;

/** What the driver does, by itself and in the laps in which a complaint shows. */
final class Habits {

    private static final int MOST_PLACES = 12;

    private final Driving driving;
    private final List<Lap> laps;
    private final CornerMap map;
    private final Limits limits;
    private final List<Habit> found = new ArrayList<>();

    Habits(Driving driving, List<Lap> laps, CornerMap map, Limits limits) {
        this.driving = driving;
        this.laps = laps;
        this.map = map;
        this.limits = limits;
        counted(1, "driver-early-on-throttle", "the throttle is stabbed: opened by 30 points at once and let go again",
                it -> it.stabs(), limits.of("driver.stabs-a-lap"), 2 * limits.of("driver.stabs-a-lap"), "stabs a lap", 0);
        counted(1, "driver-releases-brake-abruptly", "the brake is let go at once on the way in", it ->
                it.release() >= limits.of("driver.release") ? 1 : 0, 0.5, 1.5, "abrupt releases a lap", 0);
        // A car that pushes makes any driver hold the lock: half of it at most is the driver's.
        counted(0.5, "driver-holds-steering-lock", "the lock is held on the power while the front slides", it -> it.lockHeld(),
                limits.of("driver.lock-held"), 2 * limits.of("driver.lock-held"), "s a lap", 1);
    }

    List<Habit> found() {
        return List.copyOf(found);
    }

    private void counted(double most, String note, String text, ToDoubleFunction<DrivenCorner> measure, double starts,
            double clear,
            String unit, int decimals) {
        double[] perLap = new double[laps.size()];
        List<Measured.Place> places = new ArrayList<>();
        for (int lap = 0; lap < laps.size(); lap++) {
            for (int corner = 0; corner < map.corners().size(); corner++) {
                double figure = measure.applyAsDouble(driving.of(lap, corner));
                perLap[lap] += Double.isNaN(figure) ? 0 : figure;
                if (figure > 0) {
                    places.add(new Measured.Place(OptionalInt.of(corner + 1), OptionalInt.of(laps.get(lap).number()), figure,
                            0, unit.replace(" a lap", "")));
                }
            }
        }
        Grade grade = Grade.of(perLap, starts - 0.5 * (clear - starts), clear, limits);
        double certainty = most * grade.strength();
        if (certainty >= limits.of("grades.told")) {
            places.sort(Comparator.comparingDouble(Measured.Place::figure).reversed());
            found.add(new Habit(note, certainty, text + ", " + Figures.fixed(Robust.median(perLap), decimals) + " "
                    + unit, places.subList(0, Math.min(MOST_PLACES, places.size()))));
        }
    }

    /**
     * How far the laps in which something shows were driven otherwise than the rest: from 0, where they were not, to 1,
     * where nothing is left for the car to explain.
     *
     * @param corners in which it shows, from 0
     * @param clearness of each lap
     * @param onEntry whether it shows on the way in or at the apex
     */
    double share(List<Integer> corners, double[] clearness, boolean onEntry) {
        double most = 0;
        if (onEntry) {
            most = Math.max(most, compared("driver-enters-too-fast", corners, clearness, it -> it.entrySpeed() * 3.6, 0.25,
                    2, "km/h", "comes with a faster entry"));
            most = Math.max(most, compared("driver-releases-brake-abruptly", corners, clearness,
                    it -> it.release() * 100, 3, 15, "%", "comes with a brake that is let go at once"));
        } else {
            most = Math.max(most, compared("driver-early-on-throttle", corners, clearness, it -> -it.throttleAt(), 1, 6,
                    "m", "comes with an earlier throttle"));
            most = Math.max(most, compared("driver-early-on-throttle", corners, clearness, DrivenCorner::stabs, 0.2, 0.6,
                    "stabs", "comes with a stabbed throttle"));
        }
        return most;
    }

    private double compared(String note, List<Integer> corners, double[] clearness,
            ToDoubleFunction<DrivenCorner> measure, double leastDeviation, double leastDifference, String unit,
            String text) {
        double most = 0;
        Habit told = null;
        for (int corner : corners) {
            List<Double> with = new ArrayList<>();
            List<Double> rest = new ArrayList<>();
            for (int lap = 0; lap < clearness.length; lap++) {
                double value = measure.applyAsDouble(driving.of(lap, corner));
                if (!Double.isNaN(value)) {
                    (clearness[lap] >= 0.5 ? with : rest).add(value);
                }
            }
            if (with.isEmpty() || rest.size() < 3) {
                continue;
            }
            double usual = Robust.median(rest);
            double difference = Robust.median(with) - usual;
            double deviation = Math.max(leastDeviation, Robust.deviation(
                    rest.stream().mapToDouble(Double::doubleValue).toArray()));
            double share = difference < leastDifference ? 0
                    : Limits.ramp(difference / deviation, limits.of("driver.lowers"), limits.of("driver.ends"));
            if (share > most) {
                most = share;
                List<Measured.Place> places = new ArrayList<>();
                for (int lap = 0; lap < clearness.length; lap++) {
                    if (clearness[lap] >= 0.5) {
                        places.add(new Measured.Place(OptionalInt.of(corner + 1), OptionalInt.of(laps.get(lap).number()),
                                measure.applyAsDouble(driving.of(lap, corner)), usual, unit));
                    }
                }
                told = new Habit(note, share, "in corner " + (corner + 1) + " it " + text + ": "
                        + Figures.fill("%+.1f ", difference) + unit + " against the other laps", places);
            }
        }
        if (told != null) {
            found.add(told);
        }
        return most;
    }
}
