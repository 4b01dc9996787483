package camberwell.advice;

import camberwell.car.Setting;
import camberwell.physics.GasLaw;
import camberwell.reading.HotCorner;
import camberwell.reading.ReadIn;
import camberwell.reading.TyreReader;
import camberwell.reading.TyreReadings;
import camberwell.reading.WheelFigures;
import camberwell.run.Case;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;

/**
 * Sizes a cold pressure by the gas law from the growth of the run, wheel by wheel; without a hot pressure or a target,
 * by half the trade's step of 2 psi (Northstar Motorsports tech tips). The tyre's minimum wins over everything.
 */
final class PressureSizer {

    /** About 1 psi, in Pa. */
    private static final double BLIND_STEP = 7000;
    private static final double HAIR = 0.02;
    /** A target this near is met, in Pa. */
    private static final double MET = 2000;
    /** Readings of two tyres this near are one to a gauge, in Pa: common practice, no source. */
    private static final double READ = 2000 + 1e-6;
    /**
     * More at once is too much on a wet track, where the target is that of the dry and the tread stays cold: the trade's step of
     * 2 psi (Northstar Motorsports tech tips), in Pa.
     */
    private static final double MOST_IN_THE_WET = Unit.PSI.toSi(2);
    /** More at once is a mistake or a leak, in Pa. */
    private static final double MOST = 50_000;

    private final Case run;
    private final TyreReadings tyres;
    private final ReadIn in;

    PressureSizer(Case run, TyreReadings tyres) {
        this.run = run;
        this.tyres = tyres;
        in = ReadIn.of(run);
    }

    Optional<Sized> size(Change change) {
        List<Wheel> wheels = wheels(change.adjuster());
        Optional<Setting> setting = run.car().setting(change.adjuster()).or(() -> run.car()
                .pressureSetting(wheels.get(0)));
        if (setting.isEmpty()) {
            return Optional.empty();
        }
        if (run.car().generic()) {
            return Optional.of(new Sized.Possible(new Size(Optional.empty(), Optional.empty(), 1, List.of(),
                    List.of(change.adjuster().adjustment().commonStep()))));
        }
        if (setting.get().now().unit().dimension() == Unit.Dimension.COUNT) {
            return Optional.of(counted(change, setting.get()));
        }
        if (setting.get().step().si() > 2 * BLIND_STEP * (1 + HAIR)) {
            return Optional.of(new Sized.Impossible("one step of " + setting.get().step() + " is more than 2 psi, by which the "
                    + "trade moves a pressure: check the step in the car's file, or set it by a finer gauge"));
        }
        Optional<Wheel> held = tyres.held().map(HotCorner::wheel).filter(wheels::contains);
        if (held.isPresent() && change.adjuster().wheel().isPresent()) {
            return Optional.of(new Sized.Impossible("what its gauge reads is what heats that corner: its pressure is held until "
                    + "the cause is found and the tyre has been read again"));
        }
        List<WheelFigures> measured = wheels.stream().filter(wheel -> !held.equals(Optional.of(wheel)))
                .map(tyres.wheels()::get).filter(figures -> figures != null
                && figures.cold().isPresent() && figures.overTargetBar().isPresent()).toList();
        Optional<WheelFigures> lost = wheels.stream().map(tyres.wheels()::get).filter(figures -> figures != null
                && figures.hot().isPresent() && figures.warm().isEmpty()).findFirst();
        if (lost.isPresent()) {
            return Optional.of(new Sized.Impossible("the " + lost.get().wheel().id() + " tyre reads no higher hot than "
                    + "cold: look for a leak, and measure again before any pressure is set"));
        }
        return Optional.of(measured.isEmpty() ? blind(change, asMeasured(setting.get(), wheels)) : byGasLaw(change, setting.get(),
                measured));
    }

    private static List<Wheel> wheels(Adjuster adjuster) {
        return adjuster.wheel().map(List::of).orElseGet(() -> Arrays.stream(Wheel.values())
                .filter(wheel -> wheel.axle() == adjuster.axle().orElseThrow()).toList());
    }

    private Sized byGasLaw(Change change, Setting setting, List<WheelFigures> measured) {
        double ambient = TyreReader.ambient(run);
        Unit unit = setting.now().unit();
        int decimals = Math.max(setting.decimals(), ColdSetting.decimals(unit));
        Quantity least = least(change, setting);
        List<Size.WheelSize> each = new ArrayList<>();
        List<String> computation = new ArrayList<>();
        double total = 0;
        for (WheelFigures wheel : measured) {
            Quantity cold = wheel.cold().orElseThrow().to(unit);
            Quantity hot = wheel.warm().orElseThrow();
            Quantity target = wheel.target().orElseThrow();
            ColdSetting wanted = ColdSetting.fromGrowth(cold, hot, target, ambient, unit, decimals);
            double pascal = inTheWet(wanted.pascal(), cold, setting.step());
            total += pascal / measured.size();
            boolean read = run.tyres().get(wheel.wheel()).coldPressure().isPresent();
            computation.add(wheel.wheel().id() + (read ? ": cold " : ": set to ") + cold.text(decimals)
                    + (read ? " grew to " : " cold, grew to ") + wheel.hot().orElseThrow().to(unit).text(decimals) + " hot"
                    + (hot.equals(wheel.hot().orElseThrow()) ? "" : " with its tread below the window, "
                    + hot.to(unit).text(decimals) + " at the lower end of it")
                    + wheel.gas().map(gas -> ", gas at " + in.temperature(gas.in(Unit.CELSIUS))).orElse("") + "; for "
                    + target.to(unit).text(decimals) + " hot: " + wanted.computation() + " cold");
            if (pascal != wanted.pascal()) {
                computation.add("the target is that of a dry track, and in the wet the tread stays cold: no more than the "
                        + "trade's step of 2 psi at once, " + Quantity.ofSi(pascal, unit).text(decimals) + " cold, and the "
                        + "next run tells");
            }
            each.add(new Size.WheelSize(wheel.wheel(), cold, ColdSetting.toStep(pascal, setting.step())));
        }
        if (alike(measured, each)) {
            Quantity both = ColdSetting.toStep(total, setting.step());
            each.replaceAll(size -> new Size.WheelSize(size.wheel(), size.from(), both));
        }
        Quantity from = mean(each.stream().map(Size.WheelSize::from).toList(), unit);
        if (change.direction().raises() ? total < from.si() - MET : total > from.si() + MET) {
            return new Sized.Impossible("the gauge says the opposite: " + computation.get(0)
                    + "; measure again before you change anything");
        }
        if (Math.abs(total - from.si()) > MOST) {
            return new Sized.Impossible("the gas law asks for more than half a bar at once: " + computation.get(0)
                    + "; look for a leak, and measure again");
        }
        Optional<Wheel> tooLow = each.stream().filter(size -> size.to().compareTo(least) < 0)
                .map(Size.WheelSize::wheel).findFirst();
        tooLow.map(tyres.wheels()::get).ifPresent(wheel -> computation.add("the least cold pressure is "
                + least.text(decimals) + ", and the minimum wins: hot it will be "
                + hotAt(least, wheel, ambient, unit).text(decimals) + ", above the target"));
        if (each.stream().anyMatch(size -> size.to().compareTo(setting.max()) > 0)) {
            computation.add("the most that the car's file allows is " + setting.max().text(decimals));
        }
        each.replaceAll(size -> new Size.WheelSize(size.wheel(), size.from(), within(size.to(), least, setting.max())));
        Quantity to = within(ColdSetting.toStep(total, setting.step()), least, setting.max());
        int steps = Math.abs((int) Math.round((to.value() - from.value()) / setting.step().value()));
        if (steps == 0 || change.direction().raises() != to.value() > from.value()) {
            return new Sized.Impossible(tooLow.isPresent() ? "the cold pressure stands at its minimum, "
                    + least.text(decimals)
                    : to.value() == setting.max().value() ? "the cold pressure stands at the most that the car's file "
                    + "allows, " + setting.max().text(decimals)
                    : "the gas law asks for " + Quantity.ofSi(total, unit).text(decimals) + " cold, within a step of "
                    + "what is set: the gauge sees nothing to change");
        }
        computation.addAll(notes(change, measured, to, tooLow.isPresent(), decimals));
        return new Sized.Possible(new Size(Optional.of(from), Optional.of(to), steps,
                differ(each) ? List.copyOf(each) : List.of(), List.copyOf(computation)));
    }

    /** As far as a cold pressure goes at once: on a wet track no further than so many whole steps as the trade's step holds. */
    private double inTheWet(double wanted, Quantity cold, Quantity step) {
        double most = Math.max(1, Math.floor(MOST_IN_THE_WET / step.si())) * step.si();
        return run.conditions().surface() != Surface.WET ? wanted
                : Math.max(cold.si() - most, Math.min(cold.si() + most, wanted));
    }

    /** Whether the two sides read and stand alike to the gauge, so that only the rounding to a step tells them apart. */
    private static boolean alike(List<WheelFigures> measured, List<Size.WheelSize> each) {
        return spread(measured.stream().map(wheel -> wheel.warm().orElseThrow()).toList()) <= READ
                && spread(each.stream().map(Size.WheelSize::from).toList()) <= READ;
    }

    private static double spread(List<Quantity> pressures) {
        DoubleSummaryStatistics pascal = pressures.stream().mapToDouble(Quantity::si).summaryStatistics();
        return pascal.getMax() - pascal.getMin();
    }

    /** What the person at the valve needs beside the number. */
    private List<String> notes(Change change, List<WheelFigures> measured, Quantity to, boolean tooLow,
            int decimals) {
        List<String> notes = new ArrayList<>();
        if (!change.direction().raises() && !tooLow) {
            notes.add("on the hot tyre the same is reached by letting air out down to "
                    + measured.get(0).target().orElseThrow().to(to.unit()).text(decimals));
        }
        TyreReader.coldTemperature(run).ifPresent(at -> notes.add("set it in tyres at " + at + ", as before the run; "
                + "in tyres " + in.difference(10) + " warmer set " + Quantity.ofSi(10 * GasLaw.sensitivity(to.si(), at.si(),
                        TyreReader.ambient(run)), to.unit()).text(decimals) + " more, in colder ones as much less"));
        return notes;
    }

    /** The hot pressure that a cold setting grows to, by the growth that the tyre showed. */
    private static Quantity hotAt(Quantity cold, WheelFigures wheel, double ambient, Unit unit) {
        return Quantity.ofSi(GasLaw.coldSettingFromGrowth(wheel.warm().orElseThrow().si(),
                wheel.cold().orElseThrow().si(), cold.si(), ambient), unit);
    }

    private Quantity least(Change change, Setting setting) {
        return run.car().tyres(change.adjuster().axle().orElseThrow()).coldMinimum()
                .map(least -> least.to(setting.now().unit()))
                .filter(least -> least.compareTo(setting.min()) > 0).orElse(setting.min());
    }

    private static Quantity within(Quantity pressure, Quantity least, Quantity most) {
        return pressure.compareTo(least) < 0 ? least : pressure.compareTo(most) > 0 ? most : pressure;
    }

    private static boolean differ(List<Size.WheelSize> each) {
        return each.stream().map(Size.WheelSize::to).distinct().count() > 1
                || each.stream().map(Size.WheelSize::from).distinct().count() > 1;
    }

    private static Quantity mean(List<Quantity> quantities, Unit unit) {
        double mean = quantities.stream().mapToDouble(Quantity::value).average().orElseThrow();
        return new Quantity(Math.rint(mean * 1e4) / 1e4, unit);
    }

    /** The setting from where the gauge found the cold tyres, where it was held to all of them, and not from the car's file. */
    private Setting asMeasured(Setting setting, List<Wheel> wheels) {
        List<Quantity> cold = wheels.stream().map(tyres.wheels()::get).filter(figures -> figures != null)
                .flatMap(figures -> figures.cold().stream()).map(read -> read.to(setting.now().unit())).toList();
        return cold.size() < wheels.size() ? setting : setting.withNow(mean(cold, setting.now().unit()));
    }

    /** What is counted in clicks cannot be computed. */
    private static Sized counted(Change change, Setting setting) {
        return setting.stepsLeft(change.direction()) == 0
                ? new Sized.Impossible("it stands at its stop, " + setting.now())
                : new Sized.Possible(new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(), 1)),
                        1, List.of(), List.of("one step of the car's own, then measure hot and cold")));
    }

    private Sized blind(Change change, Setting setting) {
        Quantity low = least(change, setting);
        int steps = (int) Math.max(1, Math.round(setting.now().unit().fromSi(BLIND_STEP) / setting.step().value()));
        int left = change.direction().raises() ? setting.stepsLeft(change.direction())
                : (int) Math.max(0, Math.floor((setting.now().value() - low.value()) / setting.step().value() + 1e-9));
        if (left == 0) {
            return new Sized.Impossible(change.direction().raises()
                    ? "the pressure stands at the most that the car's file allows, " + setting.max()
                    : "the cold pressure stands at its minimum, " + low);
        }
        if (change.direction().raises()) {
            // The minimum is not approached by half-steps.
            steps = (int) Math.max(steps, Math.ceil((low.value() - setting.now().value()) / setting.step().value() - 1e-9));
        }
        steps = Math.min(steps, left);
        return new Sized.Possible(new Size(Optional.of(setting.now()), Optional.of(setting.moved(change.direction(),
                steps)), steps, List.of(), List.of("no hot pressure or no target to compute from: half the usual step "
                        + "of 2 psi, then measure hot and cold")));
    }
}
