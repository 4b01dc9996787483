package camberwell.advice;

import camberwell.physics.GasLaw;
import camberwell.units.Figures;
import camberwell.units.Quantity;
import camberwell.units.Unit;

/**
 * The cold pressure that reaches a hot target on the same day, with the line that computes it.
 *
 * @param pascal gauge pressure to set cold, Pa
 * @param computation in the unit of the question
 */
record ColdSetting(double pascal, String computation) {

    /**
     * From the growth of a run; the temperatures cancel.
     *
     * @param unit of the computation
     * @param decimals digits that the pressures are read to
     * @param ambient ambient pressure, Pa
     */
    static ColdSetting fromGrowth(Quantity cold, Quantity hot, Quantity target, double ambient, Unit unit,
            int decimals) {
        double wanted = GasLaw.coldSettingFromGrowth(cold.si(), hot.si(), target.si(), ambient);
        String air = ambient(ambient, unit);
        return new ColdSetting(wanted, Figures.fill("(%s + %s) x (%s + %s) / (%s + %s) - %s = %s",
                number(target, unit, decimals), air, number(cold, unit, decimals), air, number(hot, unit, decimals),
                air,
                air, Quantity.ofSi(wanted, unit).text(decimals + 1)));
    }

    /** Digits that a pressure in that unit is read to. */
    static int decimals(Unit unit) {
        return unit == Unit.BAR ? 2 : 1;
    }

    /** The ambient pressure as it stands in a computation. */
    static String ambient(double pascal, Unit unit) {
        return Worked.number(unit.fromSi(pascal), decimals(unit) + 1);
    }

    static String number(Quantity pressure, Unit unit, int decimals) {
        return Worked.number(pressure.in(unit), decimals);
    }

    /** To the nearest step, counted from zero as gauges are read. */
    static Quantity toStep(double pascal, Quantity step) {
        double value = Math.rint(step.unit().fromSi(pascal) / step.value()) * step.value();
        return step.withValue(Math.rint(value * 1e6) / 1e6);
    }
}
