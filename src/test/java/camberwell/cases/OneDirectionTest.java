package camberwell.cases;

import static camberwell.cases.PanelCase.advise;
import static camberwell.cases.PanelCase.changes;
import static camberwell.cases.PanelCase.likely;
import static camberwell.cases.PanelCase.told;
import static camberwell.cases.PanelCase.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Common practice, no source: a circuit has its long corners mostly one way round, so a complaint of one direction is that of
 * those corners until something else says that the two sides of the car differ.
 */
@DisplayName("A complaint of turns of one direction")
class OneDirectionTest {

    private static final String DRY = "conditions: {surface: dry, air: 20 °C, track: 30 °C%s}\n";
    private static final String FINE = "91 89 87 1.85";

    private static Advice on(String turns, String rest) {
        return advise("corvane-coupe", DRY.formatted(turns) + rest);
    }

    private static boolean compares(Advice advice) {
        return advice.cautions().stream().anyMatch(caution -> caution.name().equals("compare-both-directions"));
    }

    @ParameterizedTest
    @CsvSource({"understeer, mid-corner, front-anti-roll-bar softer", "understeer, entry, front-anti-roll-bar softer",
        "oversteer, mid-corner, rear-anti-roll-bar softer"})
    @DisplayName("alone: the ordinary change, and first a like corner the other way")
    void alone(String symptom, String phase, String change) {
        for (String turn : new String[] {"left", "right"}) {
            Advice advice = on("", told(symptom + ", phase: " + phase + ", speed: medium, turn: " + turn));
            assertTrue(advice.halt().isEmpty(), advice.halt().toString());
            assertTrue(changes(advice).contains(change), changes(advice).toString());
            assertFalse(likely(advice, "car-not-symmetrical"));
            assertTrue(compares(advice));
            assertTrue(advice.findings().stream().filter(it -> it.id().equals("one-sided-behaviour"))
                    .allMatch(it -> it.certainty() <= 0.5), "one corner of a circuit is a weak sign of a car's two sides");
            assertEquals(changes(on("", told(symptom + ", phase: " + phase + ", speed: medium"))), changes(advice));
        }
    }

    @Test
    @DisplayName("two complaints of the same corners are no second sign")
    void sameCorners() {
        Advice advice = on("", told("understeer, phase: entry, turn: right", "understeer, phase: mid-corner, turn: right",
                "slow-turn-in, phase: entry, turn: right"));
        assertTrue(advice.halt().isEmpty(), advice.halt().toString());
        assertFalse(likely(advice, "car-not-symmetrical"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"understeer", "oversteer", "snap-oversteer", "slow-turn-in", "nervous-turn-in"})
    @DisplayName("with a pull, or with one tyre hotter than the circuit explains: look for what differs")
    void secondSign(String symptom) {
        String complaint = symptom + ", phase: entry, turn: right";
        assertEquals("check-for-damage", on("", told(complaint, "pulling, phase: straight")).halt().orElseThrow().name());
        assertEquals("check-for-damage", on("", tyres("100 98 96 1.85", "80 78 76 1.85", FINE, FINE) + told(complaint)).halt()
                .orElseThrow().name());
    }

    @Test
    @DisplayName("and one tyre that is fuller than its partner: the air is set right before any bar")
    void oneTyre() {
        Advice advice = on("", tyres("92 90 88 2.10", FINE, FINE, FINE) + told("understeer, phase: mid-corner, turn: right"));
        assertEquals("front-left-pressure lower", changes(advice).get(0));
        assertFalse(changes(advice).contains("front-anti-roll-bar softer"), changes(advice).toString());
    }

    @ParameterizedTest
    @CsvSource({"1.50, 1.70, '', true", "1.50, 1.52, '', false", "1.50, 1.70, ', turns: right', false"})
    @DisplayName("and fronts that were filled unlike, of which nothing else was read: set alike first, and no search for damage")
    void filledUnlike(String left, String right, String turns, boolean told) {
        Advice advice = on(turns, "tyres:\n  front-left: {cold-pressure: " + left + " bar}\n  front-right: "
                + "{cold-pressure: " + right + " bar}\n" + told("understeer, phase: mid-corner, turn: right"));
        assertEquals(told, advice.doubts().stream().anyMatch(doubt -> doubt.contains("filled unlike")),
                advice.doubts().toString());
        assertTrue(advice.halt().isEmpty());
    }

    @Test
    @DisplayName("a push one way and a loose rear the other way: the corner weights are crossed")
    void crossed() {
        for (String way : new String[] {"left, right", "right, left"}) {
            String[] turns = way.split(", ");
            Advice advice = on("", told("understeer, phase: mid-corner, turn: " + turns[0],
                    "oversteer, phase: mid-corner, turn: " + turns[1]));
            assertEquals("check-for-damage", advice.halt().orElseThrow().name());
            assertFalse(compares(advice), "nobody is asked to compare what he has compared");
        }
    }

    @Test
    @DisplayName("on a circuit of left turns it is a complaint like another, and nothing is compared")
    void oval() {
        Advice advice = on(", turns: left", told("understeer, phase: mid-corner, speed: medium, turn: left"));
        assertTrue(advice.halt().isEmpty());
        assertFalse(compares(advice));
        assertEquals("front-anti-roll-bar softer", changes(advice).get(0));
    }
}
