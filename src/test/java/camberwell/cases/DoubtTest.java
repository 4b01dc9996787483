package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import camberwell.Trackside;
import camberwell.advice.Advice;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What one driver tells in one run, against what he told before. Common practice, no source. */
@DisplayName("What got worse by one driver's word is not always laid at the door of the change")
class DoubtTest {

    private static final String CAR = "car: {name: a, drive: rear, adjusters: {front-anti-roll-bar: {now: 4, min: 1, max: "
            + "9, step: 1}, rear-anti-roll-bar: {now: 4, min: 1, max: 9, step: 1}, front-springs: {now: 90 N/mm, min: 60 "
            + "N/mm, max: 120 N/mm, step: 5 N/mm}, front-toe: {now: 0.1 deg, min: -0.3 deg, max: 0.3 deg, step: 0.05 deg}}}\n";
    private static final String SOFTER = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, run: 3, ";

    /** Understeer in mid-corner is told now. */
    private static String first(String... tried) {
        Advice advice = Paddock.advise(Trackside.yaml("title: a\n" + CAR + "reports:\n  - {symptom: understeer, phase: "
                + "mid-corner, severity: clear, occurrence: every-lap}\ntried:\n" + String.join("", tried)));
        return advice.changes().isEmpty() ? "none" : advice.changes().get(0).change().id();
    }

    private static String entry(String outcome, String on, String witness) {
        return SOFTER + "outcome: " + outcome + ", on: " + on + ", judged-by: " + witness + "}\n";
    }

    @Test
    @DisplayName("something on which the change does not act is not put back for")
    void noMatterOfTheBar() {
        assertEquals("front-anti-roll-bar softer", first(entry("better", "understeer, phase: mid-corner", "driver"),
                entry("worse", "pulling", "driver")));
        assertNotEquals("front-anti-roll-bar stiffer", first(entry("worse", "pulling", "driver")));
    }

    @Test
    @DisplayName("what it acts on in another part of the corner is a word against it where it did nothing good")
    void anotherPart() {
        String locking = entry("worse", "front-locking, phase: braking", "driver");
        assertEquals("front-anti-roll-bar stiffer", first(locking));
        assertEquals("front-anti-roll-bar softer", first(entry("better", "understeer, phase: mid-corner", "driver"), locking));
    }

    @Test
    @DisplayName("what the bar makes worse by its note is put back for")
    void matterOfTheBar() {
        assertEquals("front-anti-roll-bar stiffer", first(entry("worse", "oversteer, phase: mid-corner", "driver")));
    }

    @Test
    @DisplayName("a push that was told, not told, and told again was forgotten: the bar that is for it stays")
    void toldAgain() {
        String before = "  - {change: front-toe toe-out, steps: 1, run: 2, outcome: better, on: understeer, phase: "
                + "mid-corner, judged-by: driver}\n";
        assertFalse(first(before, entry("worse", "understeer, phase: mid-corner", "driver"))
                .equals("front-anti-roll-bar stiffer"));
        assertEquals("front-anti-roll-bar stiffer", first(entry("worse", "understeer, phase: mid-corner", "driver")));
    }

    @Test
    @DisplayName("a push that was at entry and now is in mid-corner is the same push: no word against the bar")
    void moved() {
        assertEquals("front-anti-roll-bar softer", first(entry("better", "understeer, phase: entry", "driver"),
                entry("worse", "understeer, phase: mid-corner", "driver")));
    }

    @Test
    @DisplayName("lap times are beyond doubt")
    void laps() {
        assertEquals("front-anti-roll-bar stiffer", first(entry("worse", "pulling", "laps")));
    }
}
