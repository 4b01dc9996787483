package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.report.Words;
import java.nio.file.Path;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A single-seater with far too much rear wing and the front wing raised after it: the middle of the fast corners is right again
 * or a little loose, and on the way out, quicker and against more drag, it still pushes. That both wings then go down together
 * is common practice, no source; drag and load of wings: J. Katz, Race Car Aerodynamics, Bentley, 1995, from memory.
 */
@DisplayName("Where one wing alone has put right one part of fast corners and not another, both go together")
class BothWingsTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/tessel-single-seater.yaml");
    private static final String ALONE = "  - {change: front-wing more, steps: 2, from: 14 deg, to: 16 deg, run: 2, outcome: %s, "
            + "on: %s, phase: %s, speed: fast}\n";
    private static final String TRIED = ALONE.formatted("better", "understeer", "lift-off")
            + ALONE.formatted("same", "understeer", "exit") + ALONE.formatted("worse", "oversteer", "mid-corner");
    private static final String PUSHES_OUT = told("clear understeer exit") + told("slight oversteer mid-corner");

    private static String told(String words) {
        String[] each = words.split(" ");
        return "  - {severity: %s, symptom: %s, phase: %s, speed: fast, occurrence: every-lap}\n".formatted(each[0], each[1],
                each[2]);
    }

    private static Advice advise(String wings, String reports, String tried) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + CAR + "\nsetup: {" + wings + "}\nreports:\n" + reports
                + (tried.isEmpty() ? "" : "tried:\n" + tried)));
    }

    private static String pair(String way, String front, String rear, String outcome, String on) {
        String each = "  - {change: %s-wing %s, from: %s, to: %s, steps: %d, run: 3, together: 2, outcome: %s, on: %s, speed: fast}\n";
        return each.formatted("rear", way, rear.split(" -> ")[0], rear.split(" -> ")[1], 3, outcome, on)
                + each.formatted("front", way, front.split(" -> ")[0], front.split(" -> ")[1], 1, outcome, on);
    }

    @Test
    @DisplayName("less of both, told as one change, the rear wing at least as far as the front")
    void bothGoDown() {
        RankedChange first = advise("front-wing: 16 deg, rear-wing: 18 deg", PUSHES_OUT, TRIED).changes().get(0);
        assertEquals("rear-wing less", first.change().id());
        assertEquals("front-wing less", first.beside().orElseThrow().change().id());
        assertTrue(first.size().steps() >= first.beside().get().size().steps(), first.toString());
        assertTrue(first.ofModelAlone());
        assertTrue(Words.move(first).contains("; with it front wing: "), Words.move(first));
    }

    @Test
    @DisplayName("one wing is tried alone first: nothing is moved in pairs before")
    void oneFirst() {
        Advice advice = advise("front-wing: 14 deg, rear-wing: 18 deg", told("strong understeer exit") + told("clear understeer "
                + "lift-off"), "");
        assertEquals("front-wing more", advice.changes().get(0).change().id());
        assertTrue(advice.changes().stream().allMatch(change -> change.beside().isEmpty()));
    }

    @Test
    @DisplayName("where slow corners alone are complained of, no wing is moved")
    void notForSlowCorners() {
        Advice advice = advise("front-wing: 16 deg, rear-wing: 18 deg", told("clear understeer exit").replace("fast", "slow"),
                TRIED);
        assertTrue(advice.changes().stream().allMatch(change -> change.beside().isEmpty()));
    }

    @Test
    @DisplayName("two wings that helped go on as two; two that made it worse go back as two, in one go")
    void afterThePair() {
        RankedChange on = advise("front-wing: 15 deg, rear-wing: 15 deg", told("clear understeer exit"), TRIED
                + pair("less", "16 deg -> 15 deg", "18 deg -> 15 deg", "better", "oversteer")).changes().get(0);
        assertEquals("rear-wing less", on.change().id());
        assertTrue(on.beside().isPresent());
        RankedChange back = advise("front-wing: 15 deg, rear-wing: 15 deg", told("strong oversteer mid-corner"), TRIED
                + pair("less", "16 deg -> 15 deg", "18 deg -> 15 deg", "worse", "oversteer")).changes().get(0);
        assertEquals("front-wing more", back.change().id());
        assertEquals("16 deg", back.size().to().orElseThrow().toString());
        assertEquals("18 deg", back.beside().orElseThrow().size().to().orElseThrow().toString());
        assertFalse(back.ofModelAlone());
    }

    private static final String TOO_FAR = ALONE.formatted("better", "understeer", "lift-off")
            + "  - {change: front-wing more, steps: 2, from: 16 deg, to: 18 deg, run: 3, outcome: worse, on: oversteer, phase: "
            + "mid-corner, speed: fast}\n";
    private static final String LOOSE_AND_PUSHES = told("strong understeer exit") + told("clear oversteer mid-corner");

    @Test
    @DisplayName("a front wing that loosened the middle while the way out still pushes is not put back alone: both go down")
    void beforeBack() {
        Advice advice = advise("front-wing: 18 deg, rear-wing: 18 deg", LOOSE_AND_PUSHES, TOO_FAR);
        RankedChange first = advice.changes().get(0);
        assertEquals("rear-wing less", first.change().id());
        assertEquals("front-wing less", first.beside().orElseThrow().change().id());
        assertTrue(advice.changes().stream().skip(1).noneMatch(it -> it.change().id().startsWith("front-wing")), "not both ways");
        assertEquals("front-wing less", advise("front-wing: 18 deg, rear-wing: 18 deg", told("clear oversteer mid-corner"),
                TOO_FAR).changes().get(0).change().id(), "where nothing pushes any more, back it goes");
    }

    @Test
    @DisplayName("a rear wing that was moved once in vain, for two complaints, was not moved in vain twice")
    void onceInVain() {
        String rear = "  - {change: rear-wing less, steps: 2, from: 20 deg, to: 18 deg, run: 4, outcome: same, on: %s, speed: fast}\n";
        Advice advice = advise("front-wing: 16 deg, rear-wing: 18 deg", PUSHES_OUT, TRIED + rear.formatted("understeer, phase: "
                + "exit") + rear.formatted("oversteer, phase: mid-corner"));
        assertTrue(advice.changes().get(0).beside().isPresent(), advice.changes().get(0).toString());
    }
}
