package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Common practice, no source: what a tank weighs goes in the course of a run, and so does what it does to the balance. */
@DisplayName("A heavy load of fuel")
class FuelLoadTest {

    @ParameterizedTest
    @CsvSource({"85, 24, first-laps, true", "85, 24, late-run, true", "85, 24, whole-run, false", "10, 24, late-run, false",
        "85, 4, first-laps, false"})
    @DisplayName("is a cause to be told from the tyres where half of a long run is wrong; no spring is set for that half")
    void cause(int fuel, int laps, String since, boolean fuelled) {
        Advice advice = PanelCase.advise("tessel-single-seater", "stint: {laps: " + laps + ", fuel: " + fuel + " kg}\n"
                + PanelCase.said("occurrence: every-lap, since: " + since, "understeer, phase: mid-corner, speed: medium"));
        assertEquals(fuelled, PanelCase.likely(advice, "fuel-load-moves-balance"));
        assertEquals(fuelled, PanelCase.habits(advice).contains("compare-full-and-light"));
        assertTrue(!fuelled || PanelCase.changes(advice).stream().noneMatch(it -> it.contains("springs")
                || it.contains("ride-height")), PanelCase.changes(advice).toString());
    }
}
