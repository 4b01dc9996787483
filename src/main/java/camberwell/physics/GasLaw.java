package camberwell.physics;

/**
 * Tyre pressure by the ideal gas law at constant volume: {@code (p2 + ambient) / (p1 + ambient) = T2 / T1}.
 *
 * <p>Pressures are gauge pressures in pascal, as the gauge in the paddock shows them; the ambient pressure is added
 * inside. Temperatures are in kelvin and are those of the gas, which is cooler than the tread. Against reference
 * equations of state for air and nitrogen the ideal gas is good to 0.2 % between 20 and 90 °C; what differs at the
 * track comes from moisture and from the growth of the carcass.
 *
 * <p>Every method throws {@link IllegalArgumentException} for a temperature or an absolute pressure that is not
 * positive and finite.
 */
public final class GasLaw {

    /** Standard atmosphere at sea level, Pa (ISO 2533:1975). */
    public static final double STANDARD_ATMOSPHERE = 101_325.0;

    /** 0 °C in kelvin. */
    public static final double ZERO_CELSIUS = 273.15;

    private static final double ISA_TEMPERATURE = 288.15;
    private static final double ISA_LAPSE_RATE = 0.0065;
    /** g·M / (R·lapse rate) with the constants of ISO 2533:1975. */
    private static final double ISA_EXPONENT = 5.255_88;
    private static final double TROPOPAUSE = 11_000.0;

    private GasLaw() {
    }

    /**
     * Ambient pressure of the standard atmosphere: {@code p0 (1 - 0.0065 h / 288.15)^5.25588} (ISO 2533:1975,
     * troposphere).
     *
     * @param altitude geopotential altitude, m, from -1000 to 11 000
     * @return pressure, Pa
     */
    public static double standardPressure(double altitude) {
        if (!(altitude >= -1000.0 && altitude <= TROPOPAUSE)) {
            throw new IllegalArgumentException("altitude must be between -1000 and 11000 m, is " + altitude);
        }
        return STANDARD_ATMOSPHERE * Math.pow(1.0 - ISA_LAPSE_RATE * altitude / ISA_TEMPERATURE, ISA_EXPONENT);
    }

    /**
     * The pressure of the same gas at another temperature.
     *
     * @param pressure gauge pressure at {@code temperature}, Pa
     * @param temperature gas temperature, K
     * @param otherTemperature gas temperature asked for, K
     * @param ambient ambient pressure, Pa
     * @return gauge pressure, Pa
     */
    public static double pressureAt(double pressure, double temperature, double otherTemperature, double ambient) {
        double ratio = temperature(otherTemperature) / temperature(temperature);
        return absolute(pressure, ambient) * ratio - ambient;
    }

    /**
     * The gas temperature that a growth in pressure implies.
     *
     * @param cold gauge pressure at {@code coldTemperature}, Pa
     * @param coldTemperature gas temperature when the cold pressure was set, K
     * @param hot gauge pressure now, Pa
     * @param ambient ambient pressure, Pa
     * @return gas temperature, K
     */
    public static double impliedTemperature(double cold, double coldTemperature, double hot, double ambient) {
        return temperature(coldTemperature) * absolute(hot, ambient) / absolute(cold, ambient);
    }

    /**
     * The cold setting that reaches a hot target, when the gas temperature of the hot tyre is known.
     *
     * @param hotTarget gauge pressure wanted hot, Pa
     * @param gasTemperature gas temperature that the tyre reaches, K
     * @param coldTemperature temperature at which the cold pressure will be set, K
     * @param ambient ambient pressure, Pa
     * @return gauge pressure to set cold, Pa
     */
    public static double coldSetting(double hotTarget, double gasTemperature, double coldTemperature,
            double ambient) {
        return pressureAt(hotTarget, gasTemperature, coldTemperature, ambient);
    }

    /**
     * The cold setting that reaches a hot target, from a run on the same day: the temperatures cancel, and only the
     * growth of the absolute pressure counts.
     *
     * @param cold gauge pressure set cold before the run, Pa
     * @param hot gauge pressure measured hot, Pa
     * @param hotTarget gauge pressure wanted hot, Pa
     * @param ambient ambient pressure, Pa
     * @return gauge pressure to set cold, Pa
     */
    public static double coldSettingFromGrowth(double cold, double hot, double hotTarget, double ambient) {
        return absolute(hotTarget, ambient) * absolute(cold, ambient) / absolute(hot, ambient) - ambient;
    }

    /**
     * The gas temperature that the same driving reaches on another day. The tyre keeps its rise above its
     * surroundings, and the surroundings are a mean of the air that cools it and the track that heats it (common
     * practice, no source; a share of one half where nothing better is known).
     *
     * @param gasTemperature gas temperature reached that day, K
     * @param airChange air temperature now less that day's, K
     * @param trackChange track temperature now less that day's, K
     * @param trackShare weight of the track in the surroundings, from 0 (air alone) to 1 (track alone)
     * @return gas temperature to expect, K
     */
    public static double temperatureOnAnotherDay(double gasTemperature, double airChange, double trackChange,
            double trackShare) {
        if (!(trackShare >= 0.0 && trackShare <= 1.0)) {
            throw new IllegalArgumentException("share of the track must be between 0 and 1, is " + trackShare);
        }
        return temperature(temperature(gasTemperature)
                + (1.0 - trackShare) * airChange + trackShare * trackChange);
    }

    /**
     * How much the pressure changes with the gas temperature: {@code dp/dT = (p + ambient) / T}.
     *
     * @param pressure gauge pressure, Pa
     * @param temperature gas temperature, K
     * @param ambient ambient pressure, Pa
     * @return Pa/K
     */
    public static double sensitivity(double pressure, double temperature, double ambient) {
        return absolute(pressure, ambient) / temperature(temperature);
    }

    private static double absolute(double gauge, double ambient) {
        double absolute = gauge + ambient;
        if (!(absolute > 0.0 && absolute < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("absolute pressure must be positive, is " + absolute + " Pa");
        }
        return absolute;
    }

    private static double temperature(double kelvin) {
        if (!(kelvin > 0.0 && kelvin < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("temperature must be positive, is " + kelvin + " K");
        }
        return kelvin;
    }
}
