package camberwell.advice;

import camberwell.physics.GasLaw;
import camberwell.reading.TyreReader;
import camberwell.run.Case;
import camberwell.run.TyreReading;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.Wheel;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is known of one tyre's pressure, and what the gas law makes of it. Pressures are gauge pressures. What is not
 * known stays open, and what cannot be computed without it is left out.
 *
 * @param cold pressure set cold
 * @param hot pressure read hot
 * @param target pressure wanted hot
 * @param setAt temperature of the tyre when the cold pressure was set
 * @param gas temperature of the gas in the hot tyre, where no hot pressure tells it
 * @param air air temperature of the run
 * @param track track temperature of the run
 * @param next the other day
 * @param ambient ambient pressure, Pa
 * @param minimum least cold pressure allowed
 * @param step the smallest change that is set, and the unit of the answer
 */
public record PressureQuestion(Optional<Quantity> cold, Optional<Quantity> hot, Optional<Quantity> target,
        Optional<Quantity> setAt, Optional<Quantity> gas, Optional<Quantity> air, Optional<Quantity> track,
        OtherDay next, double ambient, Optional<Quantity> minimum, Quantity step) {

    /** Weight of the track in what surrounds a tyre; see {@link GasLaw#temperatureOnAnotherDay}. */
    private static final double TRACK_SHARE = 0.5;

    /** Another day's temperatures; {@code setAt} of the tyres when the cold pressure is set then. */
    public record OtherDay(Optional<Quantity> air, Optional<Quantity> track, Optional<Quantity> setAt) {

        /** Nothing is asked about another day. */
        public static final OtherDay NONE = new OtherDay(Optional.empty(), Optional.empty(), Optional.empty());

        boolean asked() {
            return air.isPresent() || track.isPresent() || setAt.isPresent();
        }
    }

    /**
     * The answers.
     *
     * @param figures in the order in which a person asks for them
     * @param belowMinimum whether a setting was refused because the minimum wins
     */
    public record Answer(List<Worked> figures, boolean belowMinimum) {
    }

    /** One tyre of a case. */
    public static PressureQuestion of(Case run, Wheel wheel, Quantity commonStep, OtherDay next) {
        Optional<TyreReading> tyre = Optional.ofNullable(run.tyres().get(wheel));
        boolean known = !run.car().generic();
        Optional<Quantity> set = run.car().pressureSetting(wheel).filter(setting -> known)
                .map(setting -> setting.now());
        Quantity step = run.car().pressureSetting(wheel).filter(setting -> known).map(setting -> setting.step())
                .orElse(commonStep);
        return new PressureQuestion(tyre.flatMap(TyreReading::coldPressure).or(() -> set),
                tyre.flatMap(TyreReading::hotPressure), run.hotTarget(wheel.axle()),
                TyreReader.coldTemperature(run), Optional.empty(), run.conditions().air(), run.conditions().track(),
                next,
                TyreReader.ambient(run), run.car().tyres(wheel.axle()).coldMinimum(), step);
    }

    /**
     * Everything that follows.
     *
     * @throws IllegalArgumentException if another day is asked about that cannot be compared with this one, or a
     *     pressure or temperature is impossible; the message is for the user
     */
    public Answer answer() {
        return new Working().answer();
    }

    /** One answer in the making. */
    private final class Working {
        private final Unit unit = step.unit();
        private final int decimals = Math.max(ColdSetting.decimals(unit), Quantity.decimalsOf(step.value()));
        private final String surroundings = ColdSetting.ambient(ambient, unit);
        private final List<Worked> figures = new ArrayList<>();
        private boolean belowMinimum;

        Answer answer() {
            growth();
            Optional<Double> gasKelvin = gasKelvin();
            hotPressure(gasKelvin);
            Optional<ColdSetting> setting = setting(gasKelvin);
            setting.ifPresent(computed -> figures.add(settle("cold-setting", "Cold setting", computed)));
            letOut();
            setting.ifPresent(this::perTenKelvin);
            if (next.asked()) {
                otherDay(gasKelvin);
            }
            return new Answer(List.copyOf(figures), belowMinimum);
        }

        private void growth() {
            if (cold.isPresent() && hot.isPresent()) {
                double grown = hot.get().si() - cold.get().si();
                figures.add(Worked.of("growth", "Growth", Quantity.ofSi(grown, unit), decimals, number(hot.get())
                        + " - " + number(cold.get()) + " " + unit.symbol() + ", "
                        + Worked.number(100 * grown / (cold.get().si() + ambient), 1) + " % of the absolute pressure "
                        + "(ambient " + surroundings + " " + unit.symbol() + ")"));
            }
        }

        /** The gas temperature as given, or as the growth implies. */
        private Optional<Double> gasKelvin() {
            if (gas.isPresent()) {
                return gas.map(Quantity::si);
            }
            if (cold.isEmpty() || hot.isEmpty() || setAt.isEmpty()) {
                return Optional.empty();
            }
            double kelvin = GasLaw.impliedTemperature(cold.get().si(), setAt.get().si(), hot.get().si(), ambient);
            figures.add(Worked.of("gas-temperature", "Gas temperature", temperature(kelvin), 1, kelvin(setAt.get().si())
                    + " x (" + number(hot.get()) + " + " + surroundings + ") / (" + number(cold.get()) + " + "
                    + surroundings + ") = " + kelvin(kelvin) + "; the gas is cooler than the tread"));
            return Optional.of(kelvin);
        }

        private void hotPressure(Optional<Double> gasKelvin) {
            if (hot.isEmpty() && cold.isPresent() && setAt.isPresent() && gasKelvin.isPresent()) {
                double pascal = GasLaw.pressureAt(cold.get().si(), setAt.get().si(), gasKelvin.get(), ambient);
                figures.add(Worked.of("hot-pressure", "Hot pressure", Quantity.ofSi(pascal, unit), decimals,
                        "(" + number(cold.get()) + " + " + surroundings + ") x " + kelvin(gasKelvin.get()) + " / "
                                + kelvin(setAt.get().si()) + " - " + surroundings + " " + unit.symbol()));
            }
        }

        private Optional<ColdSetting> setting(Optional<Double> gasKelvin) {
            if (target.isPresent() && cold.isPresent() && hot.isPresent()) {
                return Optional.of(ColdSetting.fromGrowth(cold.get(), hot.get(), target.get(), ambient, unit,
                        decimals));
            }
            return target.flatMap(wanted -> setAt.flatMap(at -> gasKelvin.map(kelvin ->
                    atTemperatures(kelvin, at.si()))));
        }

        private ColdSetting atTemperatures(double gasKelvin, double coldKelvin) {
            double pascal = GasLaw.coldSetting(target.orElseThrow().si(), gasKelvin, coldKelvin, ambient);
            return new ColdSetting(pascal, "(" + number(target.get()) + " + " + surroundings + ") x "
                    + kelvin(coldKelvin) + " / " + kelvin(gasKelvin) + " - " + surroundings + " = "
                    + Quantity.ofSi(pascal, unit).text(decimals + 1));
        }

        /** To the step, and never below the minimum. */
        private Worked settle(String id, String name, ColdSetting computed) {
            Quantity setting = ColdSetting.toStep(computed.pascal(), step);
            String computation = computed.computation() + ", in steps of " + step;
            if (minimum.isPresent() && setting.compareTo(minimum.get()) < 0) {
                belowMinimum = true;
                Quantity least = minimum.get().to(unit);
                double ratio = (target.orElseThrow().si() + ambient) / (computed.pascal() + ambient);
                double hotThen = (least.si() + ambient) * ratio - ambient;
                computation += "; refused: that is below the minimum of " + least.text(decimals) + ", and the minimum "
                        + "wins. Hot it will be " + Quantity.ofSi(hotThen, unit).text(decimals);
                setting = least;
            }
            return Worked.of(id, name, setting, decimals, computation);
        }

        /** Bleed to the hot target after four or five laps, then re-check: Michelin UK, track-driving FAQ. */
        private void letOut() {
            if (hot.isEmpty() || target.isEmpty()) {
                return;
            }
            double over = hot.get().si() - target.get().si();
            String now = number(hot.get()) + " - " + number(target.get()) + " " + unit.symbol();
            if (over <= 0) {
                figures.add(Worked.of("let-in", "Let in now, hot", Quantity.ofSi(-over, unit), decimals,
                        number(target.get()) + " - " + number(hot.get()) + " " + unit.symbol()
                                + "; once it has stopped rising"));
                return;
            }
            if (cold.isEmpty()) {
                figures.add(Worked.of("let-out", "Let out now, hot", Quantity.ofSi(over, unit), decimals, now));
                return;
            }
            double left = GasLaw.coldSettingFromGrowth(cold.get().si(), hot.get().si(), target.get().si(), ambient);
            double least = minimum.map(Quantity::si).orElse(Double.NEGATIVE_INFINITY);
            String leaves = "; when it has cooled it will read ";
            if (left < least) {
                belowMinimum = true;
                double floor = GasLaw.coldSettingFromGrowth(hot.get().si(), cold.get().si(), least, ambient);
                over = Math.max(0, hot.get().si() - floor);
                now = "down to " + Quantity.ofSi(hot.get().si() - over, unit).text(decimals) + " and no further";
                left = Math.min(least, cold.get().si());
                leaves += "the minimum, ";
            }
            figures.add(Worked.of("let-out", "Let out now, hot", Quantity.ofSi(over, unit), decimals, now + leaves
                    + Quantity.ofSi(left, unit).text(decimals) + ". Do it when the pressure has stopped rising, after "
                    + "some four or five laps, and read again after the next run"));
        }

        private void perTenKelvin(ColdSetting setting) {
            setAt.ifPresent(at -> figures.add(Worked.of("ten-kelvin-warmer", "In tyres 10 K warmer set more by",
                    Quantity.ofSi(10 * GasLaw.sensitivity(setting.pascal(), at.si(), ambient), unit), decimals + 1,
                    "10 K x (" + Worked.number(unit.fromSi(setting.pascal()), decimals + 1) + " + " + surroundings
                            + ") / " + kelvin(at.si()) + "; as much less in tyres 10 K colder. The run stays the same, "
                            + "only the gauge reads otherwise")));
        }

        private void otherDay(Optional<Double> gasKelvin) {
            if (target.isEmpty() || gasKelvin.isEmpty() || setAt.isEmpty()) {
                throw new IllegalArgumentException("another day's setting needs the target, the temperature that the "
                        + "cold pressure was set at, and what the run grew to (cold and hot, or the gas temperature)");
            }
            double airChange = change("air", air, next.air());
            double trackChange = next.track().isEmpty() ? airChange : change("track", track, next.track());
            double gasThen = GasLaw.temperatureOnAnotherDay(gasKelvin.get(), airChange, trackChange, TRACK_SHARE);
            figures.add(Worked.of("next-gas-temperature", "Gas temperature that day", temperature(gasThen), 1,
                    temperature(gasKelvin.get()).text(1) + " + half of "
                            + Worked.number(airChange, 1) + " K of air and " + Worked.number(trackChange, 1)
                            + " K of track" + (next.track().isEmpty() ? ", taken to change as the air does" : "")
                            + " (common practice, no source)"));
            double setThen = next.setAt().map(Quantity::si).orElse(setAt.get().si() + airChange);
            ColdSetting then = atTemperatures(gasThen, setThen);
            figures.add(settle("next-cold-setting", "Cold setting that day", new ColdSetting(then.pascal(),
                    then.computation() + ", set in tyres at " + temperature(setThen).text(0)
                            + (next.setAt().isPresent() ? "" : ", which follow the air"))));
        }

        private double change(String what, Optional<Quantity> then, Optional<Quantity> later) {
            if (later.isPresent() && then.isEmpty()) {
                throw new IllegalArgumentException("the next " + what + " temperature says nothing without the " + what
                        + " temperature of the run");
            }
            return later.map(quantity -> quantity.si() - then.orElseThrow().si()).orElse(0.0);
        }

        private Quantity temperature(double kelvin) {
            Unit scale = setAt.map(Quantity::unit).or(() -> gas.map(Quantity::unit)).orElse(Unit.CELSIUS);
            return Quantity.ofSi(kelvin, scale);
        }

        private String number(Quantity pressure) {
            return ColdSetting.number(pressure, unit, decimals);
        }

        private static String kelvin(double kelvin) {
            return Worked.number(kelvin, 2) + " K";
        }
    }
}
