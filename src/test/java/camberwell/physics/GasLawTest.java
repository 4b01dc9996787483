package camberwell.physics;

import static camberwell.physics.GasLaw.STANDARD_ATMOSPHERE;
import static camberwell.physics.GasLaw.ZERO_CELSIUS;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GasLawTest {

    private static final double PSI = 6894.757;
    private static final double BAR = 1e5;

    // OpenStax, University Physics vol. 2, Example 2.1: 7.00e5 Pa absolute at 18.0 °C, at 35.0 °C 7.41e5 Pa.
    @Test
    @DisplayName("an absolute pressure is a gauge pressure in a vacuum: the textbook tyre warms from 18 to 35 °C")
    void openStaxWarming() {
        assertEquals(7.41e5, GasLaw.pressureAt(7.00e5, celsius(18.0), celsius(35.0), 0.0), 500.0);
        assertEquals(740_872, GasLaw.pressureAt(7.00e5, celsius(18.0), celsius(35.0), 0.0), 0.5);
    }

    // OpenStax, College Physics, ch. 13, problem 22: 2.50e5 Pa gauge at 35.0 °C, at -40.0 °C 1.62 atm gauge.
    @Test
    @DisplayName("a gauge pressure falls in the cold by the absolute ratio")
    void openStaxCooling() {
        double cooled = GasLaw.pressureAt(2.50e5, celsius(35.0), celsius(-40.0), STANDARD_ATMOSPHERE);
        assertEquals(1.62, cooled / STANDARD_ATMOSPHERE, 0.005);
        assertEquals(164_492, cooled, 0.5);
    }

    // P. W. Atkins, Physical Chemistry, exercise to ch. 1: 24 lb/in2 at -5 °C, at 35 °C 30 lb/in2 (1 atm = 14.7).
    @Test
    @DisplayName("taking gauge for absolute is the classic mistake, and is not made")
    void gaugeTrap() {
        double psi = GasLaw.pressureAt(24.0, celsius(-5.0), celsius(35.0), 14.7);
        assertEquals(29.773, psi, 0.005);
        assertEquals(30.0, psi, 0.5);
    }

    // The rule of thumb "1 psi per 10 °F" (Tire Rack, "As Temperatures Fluctuate") against the exact law at 68 °F.
    @ParameterizedTest
    @CsvSource({"20, 0.658", "26, 0.771", "30, 0.847", "32, 0.885", "36, 0.961", "40, 1.037"})
    @DisplayName("10 °F are worth less than 1 psi below 38 psi")
    void ruleOfThumb(double psi, double change) {
        double perKelvin = GasLaw.sensitivity(psi * PSI, celsius(20.0), STANDARD_ATMOSPHERE);
        assertEquals(change, perKelvin * 10.0 / 1.8 / PSI, 0.0006);
    }

    // The same law in metric units, computed: bar per 10 K at 20 °C.
    @ParameterizedTest
    @CsvSource({"1.6, 0.0891", "1.8, 0.0960", "2.0, 0.1028", "2.2, 0.1096"})
    void sensitivityInBarPerTenKelvin(double bar, double change) {
        assertEquals(change, GasLaw.sensitivity(bar * BAR, celsius(20.0), STANDARD_ATMOSPHERE) * 10.0 / BAR, 6e-5);
    }

    // Computed from the law: hot 2.0 bar at 85 °C; hot 30 psi at 180 °F, set at 68 °F.
    @Test
    @DisplayName("the cold setting is the hot target cooled down")
    void coldFromHot() {
        assertEquals(1.4531, GasLaw.coldSetting(2.0 * BAR, celsius(85), celsius(20), STANDARD_ATMOSPHERE) / BAR, 5e-5);
        double psi = GasLaw.coldSetting(30 * PSI, celsius((180 - 32) / 1.8), celsius(20), STANDARD_ATMOSPHERE) / PSI;
        assertEquals(22.174, psi, 5e-4);
    }

    // Lemmon et al., J. Phys. Chem. Ref. Data 29 (2000), and Span et al., same volume, evaluated with CoolProp at
    // constant density from 300 kPa absolute, 20 to 90 °C: nitrogen 372.139 kPa, air 372.144 kPa.
    @Test
    @DisplayName("real nitrogen and real air stay within 0.2 % of the ideal gas")
    void realGas() {
        double ideal = GasLaw.pressureAt(300e3, celsius(20), celsius(90), 0.0);
        assertEquals(371_636, ideal, 0.5);
        assertEquals(372_139, ideal, 0.002 * ideal);
        assertEquals(372_144, ideal, 0.002 * ideal);
    }

    @Test
    @DisplayName("cold 1.70, hot 2.05, wanted 1.90 bar: set 1.57 bar")
    void growthOfTheSameDay() {
        double cold = GasLaw.coldSettingFromGrowth(1.70 * BAR, 2.05 * BAR, 1.90 * BAR, STANDARD_ATMOSPHERE);
        assertEquals(1.57, cold / BAR, 0.005);
    }

    // Sea level is the definition of ISO 2533:1975; 1000 m (898.75 hPa) and 11 000 m (226.32 hPa) from memory of
    // its table.
    @ParameterizedTest
    @CsvSource({"0, 101325", "1000, 89875", "11000, 22632"})
    void standardAtmosphere(double altitude, double pressure) {
        assertEquals(pressure, GasLaw.standardPressure(altitude), 2.0);
    }

    @Test
    @DisplayName("a hotter track alone already asks for a lower cold setting")
    void anotherDay() {
        double reached = celsius(80);
        assertEquals(celsius(90), GasLaw.temperatureOnAnotherDay(reached, 10, 10, 0.5), 1e-9);
        assertEquals(celsius(86), GasLaw.temperatureOnAnotherDay(reached, 0, 20, 0.3), 1e-9);
        double same = GasLaw.coldSetting(1.9 * BAR, reached, celsius(20), STANDARD_ATMOSPHERE);
        double hotTrack = GasLaw.temperatureOnAnotherDay(reached, 0, 20, 0.5);
        assertTrue(GasLaw.coldSetting(1.9 * BAR, hotTrack, celsius(20), STANDARD_ATMOSPHERE) < same);
    }

    @Test
    void refusesWhatCannotBe() {
        assertThrows(IllegalArgumentException.class, () -> GasLaw.pressureAt(1e5, 0.0, 300, 1e5));
        assertThrows(IllegalArgumentException.class, () -> GasLaw.pressureAt(-2e5, 300, 300, 1e5));
        assertThrows(IllegalArgumentException.class, () -> GasLaw.pressureAt(Double.NaN, 300, 300, 1e5));
        assertThrows(IllegalArgumentException.class, () -> GasLaw.standardPressure(20_000));
    }

    @Property
    void impliedTemperatureUndoesPressureAt(@ForAll @DoubleRange(min = 0.8e5, max = 3e5) double cold,
            @ForAll @DoubleRange(min = 270, max = 310) double coldTemperature,
            @ForAll @DoubleRange(min = 311, max = 390) double hotTemperature,
            @ForAll @DoubleRange(min = 7e4, max = 1.05e5) double ambient) {
        double hot = GasLaw.pressureAt(cold, coldTemperature, hotTemperature, ambient);
        assertTrue(hot > cold);
        assertEquals(hotTemperature, GasLaw.impliedTemperature(cold, coldTemperature, hot, ambient), 1e-9);
        assertEquals(cold, GasLaw.coldSetting(hot, hotTemperature, coldTemperature, ambient), 1e-6);
        assertEquals(cold, GasLaw.coldSettingFromGrowth(cold, hot, hot, ambient), 1e-6);
    }

    private static double celsius(double degrees) {
        return degrees + ZERO_CELSIUS;
    }
}
