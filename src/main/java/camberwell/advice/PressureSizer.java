package camberwell.advice;

import camberwell.car.Setting;
import camberwell.physics.GasLaw;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Sizes a cold pressure by the gas law from the growth of the run, wheel by wheel; without a hot pressure or a target,
 * by half the trade's step of 2 psi (Northstar Motorsports tech tips). The tyre's minimum wins over everything.
 */
final class PressureSizer {

    /** About 1 psi, in Pa. */
    private static final double BLIND_STEP = 7000;
    /** A target this near is met, in Pa. */
    private static final double MET = 2000;

    private final Case run;
    private final TyreReadings tyres;

    PressureSizer(Case run, TyreReadings tyres) {
        this.run = run;
        this.tyres = tyres;
    }

    Optional<Sized> size(Change change) {
        List<Wheel> wheels = wheels(change.adjuster());
        Optional<Setting> setting = run.car().setting(change.adjuster()).or(() -> run.car().pressureSetting(wheels.get(0)));
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        if (run.car().generic()) {
            return Optional.of(new Sized.Possible(new Size(Optional.empty(), Optional.empty(), 1, List.of(),
                    List.of(CommonStep.of(change.adjuster())))));
        }
        List<WheelFigures> measured = wheels.stream().map(tyres.wheels()::get).filter(figures -> figures != null
                && figures.cold().isPresent() && figures.overTargetBar().isPresent()).toList();
        return Optional.of(measured.isEmpty() ? blind(change, setting.get()) : byGasLaw(change, setting.get(), measured));
    }

    private static List<Wheel> wheels(Adjuster adjuster) {
        return adjuster.wheel().map(List::of).orElseGet(() -> Arrays.stream(Wheel.values())
                .filter(wheel -> wheel.axle() == adjuster.axle().orElseThrow()).toList());
    }

    /** Ambient pressure at the circuit, Pa. */
    static double ambient(Case run) {
        return run.conditions().altitude().map(altitude -> GasLaw.standardPressure(altitude.si()))
                .orElse(GasLaw.STANDARD_ATMOSPHERE);
    }

    private Sized byGasLaw(Change change, Setting setting, List<WheelFigures> measured) {
        double ambient = ambient(run);
        Unit unit = setting.now().unit();
        int decimals = Math.max(setting.decimals(), unit == Unit.BAR ? 2 : 1);
        List<Size.WheelSize> each = new ArrayList<>();
        List<String> computation = new ArrayList<>();
        double total = 0;
        for (WheelFigures wheel : measured) {
            Quantity cold = wheel.cold().orElseThrow().to(unit);
            Quantity hot = wheel.hot().orElseThrow().to(unit);
            Quantity target = wheel.target().orElseThrow().to(unit);
            double wanted = GasLaw.coldSettingFromGrowth(cold.si(), hot.si(), target.si(), ambient);
            total += wanted / measured.size();
            computation.add(String.format(Locale.ROOT,
                    "%s: cold %s grew to %s hot; for %s hot: (%s + %s) x (%s + %s) / (%s + %s) - %s = %s cold",
                    wheel.wheel().id(), cold.text(decimals), hot.text(decimals), target.text(decimals),
                    number(target, decimals), number(ambient, unit), number(cold, decimals), number(ambient, unit),
                    number(hot, decimals), number(ambient, unit), number(ambient, unit),
                    Quantity.ofSi(wanted, unit).text(decimals + 1)));
            each.add(new Size.WheelSize(wheel.wheel(), cold, round(wanted, setting)));
        }
        Quantity from = mean(each.stream().map(Size.WheelSize::from).toList(), unit);
        Quantity to = round(total, setting);
        boolean wrongWay = change.direction().raises() ? total < from.si() - MET : total > from.si() + MET;
        if (wrongWay) {
            return new Sized.Impossible("the gauge says the opposite: " + computation.get(0)
                    + "; measure again before you change anything");
        }
        Optional<Quantity> minimum = run.car().tyres(measured.get(0).wheel().axle()).coldMinimum()
                .map(least -> least.to(unit));
        Quantity least = minimum.filter(limit -> limit.compareTo(setting.min()) > 0).orElse(setting.min());
        if (to.compareTo(least) < 0) {
            computation.add("the least cold pressure is " + least.text(decimals) + ", and the minimum wins");
            to = least;
        }
        if (to.compareTo(setting.max()) > 0) {
            computation.add("the most that the car's file allows is " + setting.max().text(decimals));
            to = setting.max();
        }
        Quantity low = least;
        each.replaceAll(size -> size.to().compareTo(low) < 0
                ? new Size.WheelSize(size.wheel(), size.from(), low) : size);
        int steps = Math.abs((int) Math.round((to.value() - from.value()) / setting.step().value()));
        if (steps == 0 || change.direction().raises() != to.value() > from.value()) {
            return new Sized.Impossible(to.compareTo(least) <= 0
                    ? "the cold pressure stands at its minimum, " + least.text(decimals)
                    : "the pressure is within a step of what the gas law asks for");
        }
        return new Sized.Possible(new Size(Optional.of(from), Optional.of(to), steps,
                differ(each) ? List.copyOf(each) : List.of(), List.copyOf(computation)));
    }

    private static boolean differ(List<Size.WheelSize> each) {
        return each.stream().map(Size.WheelSize::to).distinct().count() > 1
                || each.stream().map(Size.WheelSize::from).distinct().count() > 1;
    }

    private static Quantity mean(List<Quantity> quantities, Unit unit) {
        double mean = quantities.stream().mapToDouble(Quantity::value).average().orElseThrow();
        return new Quantity(Math.rint(mean * 1e4) / 1e4, unit);
    }

    private Sized blind(Change change, Setting setting) {
        Quantity low = run.car().tyres(change.adjuster().axle().orElseThrow()).coldMinimum()
                .map(least -> least.to(setting.now().unit()))
                .filter(least -> least.compareTo(setting.min()) > 0).orElse(setting.min());
        int steps = (int) Math.max(1, Math.round(setting.now().unit().fromSi(BLIND_STEP) / setting.step().value()));
        int left = change.direction().raises() ? setting.stepsLeft(change.direction())
                : (int) Math.max(0, Math.floor((setting.now().value() - low.value()) / setting.step().value() + 1e-9));
        if (left == 0) {
            return new Sized.Impossible(change.direction().raises()
                    ? "the pressure stands at the most that the car's file allows, " + setting.max()
                    : "the cold pressure stands at its minimum, " + low);
        }
        steps = Math.min(steps, left);
        return new Sized.Possible(new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(),
                steps)), steps, List.of(), List.of("no hot pressure or no target to compute from: half the usual step "
                        + "of 2 psi, then measure hot and cold")));
    }

    /** To the car's step, counted from zero as gauges are read. */
    private static Quantity round(double pascal, Setting setting) {
        double step = setting.step().value();
        double value = Math.rint(setting.now().unit().fromSi(pascal) / step) * step;
        return setting.now().withValue(Math.rint(value * 1e6) / 1e6);
    }

    private static String number(Quantity quantity, int decimals) {
        return new Quantity(quantity.value(), Unit.POSITION).text(decimals);
    }

    private static String number(double pascal, Unit unit) {
        return new Quantity(unit.fromSi(pascal), Unit.POSITION).text(unit == Unit.BAR ? 3 : 2);
    }
}
