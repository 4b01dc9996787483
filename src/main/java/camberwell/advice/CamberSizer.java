package camberwell.advice;

import camberwell.car.Setting;
import camberwell.physics.TreadRead;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Sizes a change of camber from the spread between the edges of the loaded tyres, at most half a degree at a time.
 * Degrees per kelvin come from the car's own runs where two of them differ in that camber alone, else from the tyre's
 * file, else from a default that is common practice, no source.
 */
final class CamberSizer {

    private static final double DEFAULT_DEGREES_PER_KELVIN = 0.07;
    private static final double LEAST_DEGREES = 0.2;
    private static final double MOST_DEGREES = 0.5;
    private static final double BLIND_DEGREES = 0.25;
    /** The inner edge this much hotter is what one aims for: a few kelvin, heated on the straights. */
    private static final double HEALTHY_KELVIN = 5;
    /** Two runs whose spreads differ by less teach nothing. */
    private static final double LEAST_LESSON_KELVIN = 2;
    private static final double LEAST_LESSON_DEGREES = 0.15;

    private final Case run;
    private final TyreReadings tyres;

    CamberSizer(Case run, TyreReadings tyres) {
        this.run = run;
        this.tyres = tyres;
    }

    Size size(Change change, Setting setting) {
        Axle axle = change.adjuster().axle().orElseThrow();
        List<String> computation = new ArrayList<>();
        double aim = BLIND_DEGREES;
        OptionalDouble spread = innerMinusOuter(tyres, axle);
        if (spread.isPresent()) {
            double excess = spread.getAsDouble() - HEALTHY_KELVIN;
            double rate = rate(axle, computation);
            double computed = Math.abs(excess) * rate;
            aim = Math.max(LEAST_DEGREES, Math.min(MOST_DEGREES, computed));
            computation.add(0, String.format(Locale.ROOT, "loaded %s tyres: inner less outer %.0f K, %.0f K is healthy; "
                    + "%.0f K x %.3f °/K = %.2f°%s", axle.id(), spread.getAsDouble(), HEALTHY_KELVIN, Math.abs(excess),
                    rate, computed, computed > MOST_DEGREES ? ", of which half a degree at a time"
                            : computed < LEAST_DEGREES ? ", less than a person can feel: 0.2°" : ""));
        } else {
            computation.add("no tread temperatures to compute from: a quarter of a degree, then read the tread");
        }
        int steps = (int) Math.max(1, Math.round(aim / setting.step().in(Unit.DEGREE)));
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        computation.add("in the car's steps of " + setting.step() + ": " + steps);
        return new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(), steps)), steps,
                List.of(), List.copyOf(computation));
    }

    private double rate(Axle axle, List<String> computation) {
        Optional<Lesson> lesson = lesson(axle);
        if (lesson.isPresent()) {
            computation.add(String.format(Locale.ROOT, "%.3f °/K from this car's own runs: %.1f° of camber alone moved "
                    + "the spread by %.0f K", lesson.get().rate(), lesson.get().degrees(), lesson.get().kelvin()));
            return lesson.get().rate();
        }
        Optional<Quantity> given = run.car().tyres(axle).camberPerKelvin();
        computation.add(given.isPresent() ? "degrees per kelvin from the tyre's entry in the car's file"
                : "0.070 °/K where nothing better is known: common practice, no source");
        return given.map(quantity -> quantity.in(Unit.DEGREE)).orElse(DEFAULT_DEGREES_PER_KELVIN);
    }

    private record Lesson(double degrees, double kelvin) {
        double rate() {
            return degrees / kelvin;
        }
    }

    /** The newest pair of runs that differ in this camber alone and whose spreads followed. */
    private Optional<Lesson> lesson(Axle axle) {
        List<Case> runs = new ArrayList<>(run.earlier());
        runs.add(run);
        for (int newer = runs.size() - 1; newer > 0; newer--) {
            for (int older = newer - 1; older >= 0; older--) {
                Optional<Lesson> lesson = lesson(axle, runs.get(older), runs.get(newer));
                if (lesson.isPresent()) {
                    return lesson;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Lesson> lesson(Axle axle, Case older, Case newer) {
        Adjuster camber = Adjuster.camberOf(axle);
        Map<Adjuster, Setting> before = new HashMap<>(older.car().adjusters());
        Map<Adjuster, Setting> after = new HashMap<>(newer.car().adjusters());
        Setting from = before.remove(camber);
        Setting to = after.remove(camber);
        OptionalDouble spreadBefore = innerMinusOuter(TyreReader.read(older), axle);
        OptionalDouble spreadAfter = innerMinusOuter(TyreReader.read(newer), axle);
        if (from == null || to == null || !before.equals(after) || spreadBefore.isEmpty() || spreadAfter.isEmpty()) {
            return Optional.empty();
        }
        double moreNegative = from.now().in(Unit.DEGREE) - to.now().in(Unit.DEGREE);
        double hotterInside = spreadAfter.getAsDouble() - spreadBefore.getAsDouble();
        boolean followed = moreNegative * hotterInside > 0 && Math.abs(moreNegative) >= LEAST_LESSON_DEGREES
                && Math.abs(hotterInside) >= LEAST_LESSON_KELVIN;
        return followed ? Optional.of(new Lesson(Math.abs(moreNegative), Math.abs(hotterInside))) : Optional.empty();
    }

    private static OptionalDouble innerMinusOuter(TyreReadings tyres, Axle axle) {
        return tyres.wheels(axle).stream().filter(WheelFigures::loaded).flatMap(wheel -> wheel.tread().stream())
                .mapToDouble(TreadRead::innerMinusOuter).average();
    }
}
