package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.report.AdviceText;
import camberwell.report.Page;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Common practice, no source. Tyres that are cold on the first laps will come in; those of one axle that are cold after a run
 * which brought the others in lack work, and that is the car's set-up.
 */
@DisplayName("Tyres that stay cold")
class ColdTyresTest {

    private static final String FAST_PUSH = PanelCase.told("understeer, phase: mid-corner, speed: fast, severity: clear");
    private static final String COLD_FRONT = "tyres:\n"
            + "  front-left: {inner: 72 °C, middle: 70 °C, outer: 68 °C}\n"
            + "  front-right: {inner: 72 °C, middle: 70 °C, outer: 68 °C}\n";
    private static final String WARM_REAR = "  rear-left: {inner: 90 °C, middle: 88 °C, outer: 86 °C}\n"
            + "  rear-right: {inner: 90 °C, middle: 88 °C, outer: 86 °C}\n";

    private static Advice winged(String stint, String rear) {
        return PanelCase.advise("tessel-single-seater", "conditions: {surface: dry, air: 16 °C, track: 22 °C}\n" + stint
                + COLD_FRONT + rear + FAST_PUSH);
    }

    @Test
    @DisplayName("after a run in which the rears came in, what works the fronts harder is no longer held, nor more warming advised")
    void state() {
        Advice advice = winged("stint: {laps: 16}\n", WARM_REAR);
        assertTrue(PanelCase.changes(advice).contains("front-wing more"), PanelCase.changes(advice) + " " + advice.withheld());
        assertFalse(PanelCase.changes(advice).contains("front-anti-roll-bar softer"), PanelCase.changes(advice).toString());
        assertFalse(PanelCase.habits(advice).contains("warm-the-tyres"), PanelCase.habits(advice).toString());
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "stint: {laps: 4}\n"})
    @DisplayName("after a few laps, or as many as nobody said, the balance waits for them")
    void waits(String stint) {
        Advice advice = winged(stint, WARM_REAR);
        assertFalse(PanelCase.changes(advice).contains("front-wing more"), PanelCase.changes(advice).toString());
        assertTrue(PanelCase.habits(advice).contains("warm-the-tyres"), PanelCase.habits(advice).toString());
    }

    /** A damp road keeps a tread below the window of the dry for as long as it is damp: nothing would ever be judged. */
    @ParameterizedTest
    @CsvSource({"dry, true", "damp, false", "wet, false"})
    @DisplayName("on a dry track the balance waits for them; on a damp or wet one it is judged as it is")
    void damp(String surface, boolean waits) {
        Advice advice = PanelCase.advise("corvane-coupe", "conditions: {surface: " + surface + ", air: 10 °C, track: 12 °C}\n"
                + "stint: {laps: 6}\n" + (COLD_FRONT + WARM_REAR).replaceAll("\\{.*}", "{inner: 52 °C, middle: 50 °C, outer: 48 °C}")
                + PanelCase.told("understeer, phase: mid-corner, speed: medium, severity: clear"));
        assertEquals(!waits, PanelCase.changes(advice).contains("front-anti-roll-bar softer"),
                PanelCase.changes(advice) + " " + advice.withheld());
        assertTrue(PanelCase.changes(advice).stream().noneMatch(change -> change.endsWith("stiffer")),
                PanelCase.changes(advice).toString());
    }

    @Test
    @DisplayName("on a damp track that has the rears in their window the fronts can get there too: the balance waits")
    void dampButPossible() {
        Advice advice = PanelCase.advise("corvane-coupe", "conditions: {surface: damp, air: 10 °C, track: 12 °C}\n"
                + "stint: {laps: 6}\n" + COLD_FRONT.replace("7", "5") + WARM_REAR
                + PanelCase.told("understeer, phase: mid-corner, speed: medium, severity: clear"));
        assertFalse(PanelCase.changes(advice).contains("front-anti-roll-bar softer"), PanelCase.changes(advice).toString());
    }

    // The gas of 20 °C and 1.60 bar stands at 1.78 bar with the tread at 40 °C; at 75 °C it would read 2.12 bar, of 1.85 wanted.
    @ParameterizedTest
    @CsvSource({"40, 1.78, false", "70, 2.05, true"})
    @DisplayName("a tyre 35 K below its window is not bled by what it would read there; one 5 K below it is")
    void farBelow(int tread, String hot, boolean bled) {
        String tyre = "%d %d %d %s".formatted(tread, tread, tread, hot);
        Advice advice = PanelCase.advise("corvane-coupe", "conditions: {surface: dry, air: 20 °C, track: 27 °C}\n"
                + PanelCase.tyres(tyre, tyre, tyre, tyre).replace("hot-pressure", "cold-pressure: 1.60 bar, hot-pressure"));
        assertEquals(bled, PanelCase.changes(advice).contains("rear-pressure lower"), PanelCase.changes(advice).toString());
        assertFalse(PanelCase.changes(advice).contains("rear-pressure higher"), PanelCase.changes(advice).toString());
    }

    @Test
    @DisplayName("a bar that was moved to its stop in vain stands there: both are told")
    void atItsStop() {
        Advice advice = PanelCase.advise("larkspur-hatch", "setup: {rear-anti-roll-bar: 4}\ntried:\n"
                + "  - {change: rear-anti-roll-bar stiffer, from: 3, to: 4, outcome: same, run: 2}\n"
                + PanelCase.told("understeer, phase: mid-corner, speed: slow"));
        List<String> held = advice.withheld().stream().filter(it -> it.change().id().equals("rear-anti-roll-bar stiffer"))
                .map(it -> it.reason()).toList();
        Page page = new Page(100_000, false);
        new AdviceText(Paddock.notes(), 5, false).write(advice, page);
        assertEquals(advice.changes().isEmpty(), page.toString().contains("Read treads and pressures"), page.toString());
        assertTrue(held.size() == 1 && held.get(0).startsWith("tried") && held.get(0).contains("it stands at its stop, 4"),
                advice.withheld().toString());
    }
}
