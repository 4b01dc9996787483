package camberwell.advice;

import camberwell.car.Setting;
import camberwell.physics.TreadRead;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.run.Case;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Axle;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
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
    /** A lesson outside these, in degrees per kelvin, is chance: common practice, no source. */
    private static final double LEAST_RATE = 0.02;
    private static final double MOST_RATE = 0.3;
    /** A tread that asks for the opposite this clearly forbids the change. */
    private static final double CLEAR = 0.5;

    private final Case run;
    private final TyreReadings tyres;

    CamberSizer(Case run, TyreReadings tyres) {
        this.run = run;
        this.tyres = tyres;
    }

    Sized size(Change change, Setting setting) {
        Adjuster camber = change.adjuster();
        OptionalDouble read = spread(tyres, camber);
        if (read.isEmpty()) {
            return inSteps(change, setting, BLIND_DEGREES, List.of("no tread temperatures of the loaded tyres to "
                    + "compute from: a quarter of a degree, then read the tread"));
        }
        double spread = read.getAsDouble();
        boolean less = change.direction() == Direction.LESS_NEGATIVE;
        TreadRead typical = new TreadRead(spread, 0, 0);
        String shown = Figures.fill("%s: inner less outer %s K, %.0f K is healthy",
                camber.wheel().isPresent() ? camber.wheel().get().id() + " tyre"
                        : "loaded " + camber.axle().orElseThrow().id() + " tyres", kelvin(spread), HEALTHY_KELVIN);
        if ((less ? typical.outerHotClearness() : typical.innerHotClearness()) >= CLEAR) {
            return new Sized.Impossible("the tread asks for the opposite; " + shown);
        }
        double towards = less ? spread - HEALTHY_KELVIN : HEALTHY_KELVIN - spread;
        if (towards <= 0) {
            return inSteps(change, setting, LEAST_DEGREES, List.of(shown + ": the tread does not ask for it, so the "
                    + "smallest change that can be felt, 0.2°, and the tread read again"));
        }
        Rate rate = rate(camber);
        double computed = towards * rate.degreesPerKelvin();
        return inSteps(change, setting, Math.max(LEAST_DEGREES, Math.min(MOST_DEGREES, computed)), List.of(
                Figures.fill("%s; %s K x %.3f °/K = %.2f°%s", shown, kelvin(towards),
                        rate.degreesPerKelvin(), computed, computed > MOST_DEGREES ? ", of which half a degree at "
                        + "a time"
                                : computed < LEAST_DEGREES ? ", less than a person can feel: 0.2°" : ""),
                rate.source()));
    }

    /** Inner less outer edge of the tyre that the camber is of, or of the loaded tyres of its axle, K. */
    private static OptionalDouble spread(TyreReadings tyres, Adjuster camber) {
        return camber.wheel().isEmpty() ? tyres.innerMinusOuter(camber.axle().orElseThrow())
                : tyres.innerMinusOuter(camber.wheel().get());
    }

    /** With a digit after the point where it has one: the line must add up. */
    private static String kelvin(double difference) {
        double tenths = Math.rint(10 * difference) / 10;
        return Worked.number(tenths, tenths == Math.rint(tenths) ? 0 : 1);
    }

    private static Sized inSteps(Change change, Setting setting, double degrees, List<String> why) {
        double step = setting.step().in(Unit.DEGREE);
        int most = (int) Math.max(1, Math.floor(MOST_DEGREES / step + 1e-9));
        int steps = (int) Math.max(1, Math.min(most, Math.round(degrees / step)));
        steps = Math.min(steps, setting.stepsLeft(change.direction()));
        List<String> computation = new ArrayList<>(why);
        String extent = "in the car's steps of " + setting.step() + ": " + steps;
        computation.add(extent);
        return new Sized.Possible(new Size(Optional.of(setting.now()),
                Optional.of(setting.moved(change.direction(), steps)), steps, List.of(), List.copyOf(computation),
                List.of(extent)));
    }

    /** Degrees of camber that move the spread by one kelvin, and where that is known from. */
    private record Rate(double degreesPerKelvin, String source) {
    }

    private Rate rate(Adjuster camber) {
        Optional<Quantity> given = run.car().tyres(camber.axle().orElseThrow()).camberPerKelvin();
        return lesson(camber).orElseGet(() -> given.map(rate -> new Rate(rate.in(Unit.DEGREE),
                "degrees per kelvin from the tyre's entry in the car's file"))
                .orElseGet(() -> new Rate(DEFAULT_DEGREES_PER_KELVIN,
                Figures.fill("%.3f °/K where nothing better is known: common practice, no source",
                        DEFAULT_DEGREES_PER_KELVIN))));
    }

    /** The newest pair of runs that differ in this camber alone and whose spreads followed. */
    private Optional<Rate> lesson(Adjuster camber) {
        List<Case> runs = new ArrayList<>(run.earlier());
        runs.add(run);
        for (int newer = runs.size() - 1; newer > 0; newer--) {
            for (int older = newer - 1; older >= 0; older--) {
                Optional<Rate> lesson = lesson(camber, runs.get(older), runs.get(newer));
                if (lesson.isPresent()) {
                    return lesson;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Rate> lesson(Adjuster camber, Case older, Case newer) {
        Axle axle = camber.axle().orElseThrow();
        Map<Adjuster, Setting> before = new HashMap<>(older.car().adjusters());
        Map<Adjuster, Setting> after = new HashMap<>(newer.car().adjusters());
        Setting from = before.remove(camber);
        Setting to = after.remove(camber);
        // Of one wheel: what is told of both is the loaded wheel's once more.
        before.remove(camber.ofBothWheels());
        after.remove(camber.ofBothWheels());
        TyreReadings then = TyreReader.read(older);
        TyreReadings now = TyreReader.read(newer);
        OptionalDouble spreadThen = spread(then, camber);
        OptionalDouble spreadNow = spread(now, camber);
        boolean alike = from != null && to != null && from.now().unit().dimension() == Unit.Dimension.ANGLE
                && before.equals(after) && spreadThen.isPresent()
                && spreadNow.isPresent() && then.side().turns() == now.side().turns()
                && older.conditions().surface() == newer.conditions().surface()
                && older.car().tyres(axle).equals(newer.car().tyres(axle));
        if (!alike) {
            return Optional.empty();
        }
        double moreNegative = from.now().in(Unit.DEGREE) - to.now().in(Unit.DEGREE);
        double hotterInside = spreadNow.getAsDouble() - spreadThen.getAsDouble();
        double rate = moreNegative / hotterInside;
        boolean teaches = Math.abs(moreNegative) >= LEAST_LESSON_DEGREES
                && Math.abs(hotterInside) >= LEAST_LESSON_KELVIN && rate >= LEAST_RATE && rate <= MOST_RATE;
        return teaches ? Optional.of(new Rate(rate,
                Figures.fill("%.3f °/K from this car's own runs: %.1f° of camber alone moved the spread by %.0f K between "
                + "\"%s\" and \"%s\"", rate, Math.abs(moreNegative), Math.abs(hotterInside), older.title(),
                newer.title()))) : Optional.empty();
    }
}
