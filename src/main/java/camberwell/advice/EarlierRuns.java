package camberwell.advice;

import camberwell.car.Car;
import camberwell.car.Setting;
import camberwell.model.CarModel;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The earlier runs that tell of a car as it stands: here, on the same tyres, and not before it was rebuilt. */
final class EarlierRuns {

    /** Settings nearer than this part of a step are the same. */
    private static final double SAME = 0.25;

    private EarlierRuns() {
    }

    /**
     * What was told of a car and how it was set then, this run last.
     *
     * @param now the car as it stands
     */
    static List<HowFarOff.Run> of(Case run, CarModel now) {
        List<HowFarOff.Run> runs = new ArrayList<>();
        for (int i = run.earlier().size() - 1; i >= 0; i--) {
            Case then = run.earlier().get(i);
            if (bears(then, run)) {
                set(now, then.car()).ifPresent(car -> runs.add(0, new HowFarOff.Run(car, then.reports())));
            }
            if (then.driven().sheet().rebuilt()) {
                break;
            }
        }
        if (run.driven().sheet().rebuilt()) {
            runs.clear();
        }
        runs.add(new HowFarOff.Run(now, run.reports()));
        return runs;
    }

    /** Where nothing is reported nobody was asked. */
    private static boolean bears(Case then, Case run) {
        Driven.Sheet sheet = run.driven().sheet();
        return !then.reports().isEmpty() && then.conditions().surface() == run.conditions().surface()
                && agree(then.driven().sheet().track(), sheet.track())
                && agree(then.driven().sheet().tyreSet(), sheet.tyreSet());
    }

    private static <T> boolean agree(Optional<T> one, Optional<T> other) {
        return one.isEmpty() || other.isEmpty() || one.equals(other);
    }

    /** The car set as another one; empty where the model does not know of something that differs. */
    private static Optional<CarModel> set(CarModel now, Car then) {
        Optional<CarModel> car = Optional.of(now);
        for (Map.Entry<Adjuster, Setting> each : now.car().adjusters().entrySet()) {
            Adjuster adjuster = each.getKey();
            Optional<Quantity> was = then.setting(adjuster).map(Setting::now)
                    .filter(it -> it.unit().dimension() == each.getValue().now().unit().dimension())
                    .filter(it -> Math.abs(each.getValue().stepsUp(it)) >= SAME);
            if (was.isPresent()) {
                car = car.flatMap(it -> CarModel.representsInMotion(adjuster) ? it.withInMotion(adjuster, was.get())
                        : Optional.empty());
            }
        }
        return car;
    }
}
