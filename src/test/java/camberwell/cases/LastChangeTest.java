package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What an engineer does after a change, by what came of it. Common practice, no source. */
@DisplayName("After a change, what came of it leads")
class LastChangeTest {

    private static final String CAR = "car: {name: a, drive: rear, adjusters: {front-anti-roll-bar: {now: %s, min: 1, max: "
            + "9, step: 1}, rear-anti-roll-bar: {now: 4, min: 1, max: 9, step: 1}, front-springs: {now: 90 N/mm, min: 60 "
            + "N/mm, max: 120 N/mm, step: 5 N/mm}, front-camber: {now: -2.5 deg, min: -4 deg, max: -1 deg, step: 0.1 deg}, "
            + "rear-toe: {now: 0.20 deg, min: 0 deg, max: 0.4 deg, step: 0.05 deg}, brake-bias: {now: 60 %%, min: 50 %%, "
            + "max: 70 %%, step: 0.5 %%}}}\n";

    private static Advice advise(String frontBar, String reports, String tried) {
        return Paddock.advise(Trackside.yaml("title: a\n" + CAR.formatted(frontBar) + "reports:\n" + reports + "tried:\n"
                + tried));
    }

    private static String told(String symptom, String phase, String severity) {
        return "  - {symptom: %s, phase: %s, severity: %s, occurrence: every-lap}\n".formatted(symptom, phase, severity);
    }

    private static String first(Advice advice) {
        RankedChange change = advice.changes().get(0);
        return change.change().id() + " " + change.size().from().orElseThrow() + " -> " + change.size().to().orElseThrow();
    }

    private static List<String> changes(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).toList();
    }

    @Test
    @DisplayName("a softer front bar that helped goes on while the car still pushes")
    void goesOn() {
        assertEquals("front-anti-roll-bar softer 4 -> 3", first(advise("4", told("understeer", "mid-corner", "clear"),
                "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: understeer}\n")));
    }

    @Test
    @DisplayName("two steps that turned a push into a slide go back by one")
    void halfBack() {
        Advice advice = advise("3", told("oversteer", "mid-corner", "clear"),
                "  - {change: front-anti-roll-bar softer, steps: 2, from: 5, to: 3, outcome: better, on: understeer}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 2, from: 5, to: 3, outcome: worse, on: oversteer}\n");
        assertEquals("front-anti-roll-bar stiffer 3 -> 4", first(advice));
        assertTrue(advice.changes().get(0).why().contains("went too far"), advice.changes().get(0).why());
    }

    @Test
    @DisplayName("steps that cured a push where it slides now go half back, though nobody wrote that it got worse")
    void halfBackUnwritten() {
        String tried = "  - {change: front-anti-roll-bar softer, steps: 3, from: 6, to: 3, outcome: better, on: understeer, "
                + "phase: mid-corner, speed: medium}\n";
        assertEquals("front-anti-roll-bar stiffer 3 -> 4", first(advise("3", told("oversteer", "mid-corner", "clear"), tried)));
        assertEquals("front-anti-roll-bar stiffer 3 -> 4",
                first(advise("3", told("snap-oversteer", "mid-corner", "clear"), tried)));
        // It may have been loose on the way out all along.
        assertNotEquals("front-anti-roll-bar stiffer 3 -> 4", first(advise("3", told("oversteer", "exit", "clear"), tried)));
        String rear = "  - {change: rear-anti-roll-bar stiffer, steps: 2, from: 2, to: 4, outcome: better, on: understeer}\n";
        assertEquals("rear-anti-roll-bar softer 4 -> 3", first(advise("5", told("oversteer", "mid-corner", "clear"), rear)));
    }

    @Test
    @DisplayName("one step that turned a push into a slight slide stays, and a finer lever does the rest")
    void finer() {
        Advice advice = advise("4", told("oversteer", "exit", "slight"),
                "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: understeer}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: worse, on: oversteer}\n");
        assertEquals("rear-toe toe-in 0.2 deg -> 0.25 deg", first(advice));
        assertTrue(changes(advice).stream().noneMatch(change -> change.equals("front-anti-roll-bar stiffer")),
                changes(advice).toString());
    }

    @Test
    @DisplayName("one step that made a strong slide of a push is put back whole")
    void wholeBack() {
        assertEquals("front-anti-roll-bar stiffer 4 -> 5", first(advise("4", told("oversteer", "mid-corner", "strong"),
                "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: understeer}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: worse, on: oversteer}\n")));
    }

    @Test
    @DisplayName("it never goes to and fro between two settings")
    void noToAndFro() {
        Advice advice = advise("4", told("understeer", "mid-corner", "clear"),
                "  - {change: front-anti-roll-bar softer, steps: 2, from: 5, to: 3, outcome: better, on: understeer}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 2, from: 5, to: 3, outcome: worse, on: oversteer}\n"
                + "  - {change: front-anti-roll-bar stiffer, steps: 1, from: 3, to: 4, outcome: better, on: oversteer}\n"
                + "  - {change: front-anti-roll-bar stiffer, steps: 1, from: 3, to: 4, outcome: worse, on: understeer}\n");
        assertTrue(changes(advice).stream().noneMatch(change -> change.startsWith("front-anti-roll-bar")),
                changes(advice).toString());
        assertNotEquals(0, advice.changes().size());
    }

    @Test
    @DisplayName("brakes that were moved forward are not blamed for a push on the way out")
    void brakesElsewhere() {
        Advice advice = advise("4", told("rear-locking", "braking", "clear"),
                "  - {change: brake-bias forward, steps: 2, outcome: better, on: rear-locking, phase: braking}\n"
                + "  - {change: brake-bias forward, steps: 2, outcome: worse, on: understeer, phase: exit}\n");
        assertEquals("brake-bias forward 60 % -> 61 %", first(advice));
    }

    @Test
    @DisplayName("half a per cent of brake balance that was not felt is followed by more: it is what locking asks for")
    void brakeBalanceGoesOn() {
        String same = "  - {change: brake-bias forward, steps: 1, outcome: same, on: rear-locking, phase: braking}\n";
        assertEquals("brake-bias forward 60 % -> 61 %", first(advise("4", told("rear-locking", "braking", "slight"), same)));
        assertTrue(changes(advise("4", told("rear-locking", "braking", "slight"), same.repeat(3).replaceFirst("same",
                "same, runs-ago: 2").replaceFirst("outcome: same, on", "outcome: same, runs-ago: 1, on"))).stream()
                .noneMatch("brake-bias forward"::equals));
    }

    @Test
    @DisplayName("one step that traded a slight push for a clear slide in two phases goes back; for one it stays")
    void worthGoingBack() {
        String cured = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: understeer, "
                + "phase: mid-corner}\n";
        String brought = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: worse, on: oversteer, "
                + "phase: %s}\n";
        String slides = told("oversteer", "mid-corner", "clear");
        assertEquals("front-anti-roll-bar stiffer 4 -> 5", first(advise("4", slides + told("oversteer", "exit", "slight"),
                cured + brought.formatted("mid-corner") + brought.formatted("exit"))));
        assertNotEquals("front-anti-roll-bar stiffer 4 -> 5", first(advise("4", slides,
                cured + brought.formatted("mid-corner"))));
    }

    @Test
    @DisplayName("after a bar turned the car round in one step, no spring is tried for what is left, unless it is strong")
    void nothingAsCoarse() {
        String tried = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: understeer}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: worse, on: oversteer}\n";
        List<String> springs = List.of("rear-springs softer", "front-springs stiffer", "rear-anti-roll-bar softer");
        assertTrue(changes(advise("4", told("oversteer", "exit", "clear"), tried)).stream().noneMatch(springs::contains));
        assertTrue(changes(advise("4", told("oversteer", "exit", "strong"), tried)).stream().anyMatch(springs::contains));
    }

    private static final String TRACTION = "title: a\ncar: {name: a, drive: rear, adjusters: {rear-anti-roll-bar: {now: 3, "
            + "min: 1, max: 9, step: 1}, front-anti-roll-bar: {now: 4, min: 1, max: 9, step: 1}, rear-springs: {now: 90 N/mm, "
            + "min: 60 N/mm, max: 120 N/mm, step: 5 N/mm}, differential-preload: {now: 60 Nm, min: 20 Nm, max: 120 Nm, step: "
            + "10 Nm}}}\nreports:\n";
    private static final String BAR = "  - {change: rear-anti-roll-bar softer, steps: 1, from: 4, to: 3, outcome: %s, on: %s, "
            + "phase: exit}\n";

    /** Bars and springs share out one load transfer; which of the driven wheels gets the torque is another matter. */
    @Test
    @DisplayName("a bar that did nothing for wheelspin gives way to the differential, strong or not, whatever else it helped")
    void otherMechanism() {
        for (String severity : List.of("clear", "strong")) {
            String spins = TRACTION + told("wheelspin", "exit", severity);
            assertEquals("differential-preload more", changes(Paddock.advise(Trackside.yaml(spins + "tried:\n"
                    + BAR.formatted("same", "wheelspin")))).get(0));
            String pulls = (spins + told("understeer", "exit", "slight") + "tried:\n" + BAR.formatted("better", "understeer")
                    + BAR.formatted("same", "wheelspin")).replace("drive: rear", "drive: front")
                    .replace("rear-anti-roll-bar softer", "front-anti-roll-bar softer").replace("from: 4, to: 3", "from: 5, to: 4");
            assertEquals("differential-preload more", changes(Paddock.advise(Trackside.yaml(pulls))).get(0));
        }
    }

    @Test
    @DisplayName("toe that helped goes on by a step for a slight rest, though by its note that costs as much as it brings")
    void onForARest() {
        String tried = "  - {change: rear-toe toe-in, steps: 1, from: 0.15 deg, to: 0.20 deg, outcome: better}\n";
        assertEquals("rear-toe toe-in 0.2 deg -> 0.25 deg", first(advise("4", told("oversteer", "lift-off", "slight"), tried)));
        assertEquals("rear-toe toe-in 0.2 deg -> 0.25 deg", first(advise("4", told("oversteer", "exit", "slight"), tried)));
    }

    /** A step of a bar moves the balance several times as far as a twentieth of a degree of toe: too far for a rest. */
    @Test
    @DisplayName("once something has helped, a slight rest is trimmed with a fine lever, not with the next bar; a clear one not")
    void restIsTrimmed() {
        String brakes = "  - {change: brake-bias forward, steps: 2, outcome: better, on: rear-locking, phase: braking}\n";
        assertEquals("rear-toe toe-in 0.2 deg -> 0.25 deg", first(advise("4", told("oversteer", "exit", "slight"), brakes)));
        String clear = first(advise("4", told("oversteer", "exit", "clear"), brakes));
        assertEquals("rear-anti-roll-bar softer 4 -> 3", clear);
    }

    /** Wings and rake are one lever to the car: how its downforce is shared between front and rear. */
    @Test
    @DisplayName("a wing that cured nothing and upset the tail is not followed by rake, which does the same work")
    void noMoreAir() {
        String winged = CAR.formatted("4").replace("brake-bias: {", "front-wing: {now: 5, min: 1, max: 9, step: 1}, "
                + "front-ride-height: {now: 50 mm, min: 40 mm, max: 60 mm, step: 2 mm}, "
                + "rear-ride-height: {now: 60 mm, min: 50 mm, max: 70 mm, step: 2 mm}, brake-bias: {");
        String push = "reports:\n  - {symptom: understeer, phase: exit, speed: fast, severity: clear, occurrence: every-lap}\n";
        String tried = "tried:\n  - {change: front-wing more, steps: 1, run: 1, outcome: %s, on: understeer, phase: exit, "
                + "speed: fast}\n  - {change: front-wing more, steps: 1, run: 1, outcome: worse, on: oversteer, phase: mid-corner}\n"
                + "  - {change: front-wing less, steps: 1, run: 2, outcome: better, on: oversteer, phase: mid-corner}\n";
        String rake = "rear-ride-height higher";
        assertTrue(changes(Paddock.advise(Trackside.yaml("title: a\n" + winged + push))).contains(rake));
        Advice inVain = Paddock.advise(Trackside.yaml("title: a\n" + winged + push + tried.formatted("same")));
        assertTrue(!changes(inVain).contains(rake) && !inVain.changes().isEmpty(), changes(inVain).toString());
        assertTrue(inVain.withheld().stream().anyMatch(it -> it.change().id().equals(rake)
                && it.reason().contains("balance of the air")));
        // What did cure it, at a price, leaves a finer lever of the same kind its place.
        Advice price = Paddock.advise(Trackside.yaml("title: a\n" + winged + push + tried.formatted("better")));
        assertTrue(changes(price).contains(rake), changes(price).toString());
    }

    @Test
    @DisplayName("what made worse what it was made for goes back, though something else got better; for a mixed result it stays")
    void missedItsAim() {
        String worse = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: worse, on: %s}\n";
        String better = "  - {change: front-anti-roll-bar softer, steps: 1, from: 5, to: 4, outcome: better, on: %s}\n";
        // Less of the load transfer at the front is for a push, and costs a tail that is loose already.
        assertEquals("front-anti-roll-bar stiffer 4 -> 5", first(advise("4", told("understeer", "mid-corner", "clear"),
                worse.formatted("understeer") + better.formatted("oversteer"))));
        assertNotEquals("front-anti-roll-bar stiffer 4 -> 5", first(advise("4", told("oversteer", "mid-corner", "slight"),
                worse.formatted("oversteer") + better.formatted("understeer"))));
    }

    /** On a car with toe and pressures alone; that rear pressure acts on the grip under power is what its note says. */
    @Test
    @DisplayName("what was put back because it made the complaint worse may be tried the other way, where its note is for that")
    void theOtherWay() {
        String car = "title: a\ncar: {name: a, drive: rear, adjusters: {rear-toe: {now: 0.1 deg, min: 0 deg, max: 0.4 deg, step: "
                + "0.05 deg}, rear-pressure: {now: 1.9 bar, min: 1.6 bar, max: 2.5 bar, step: 0.05 bar}}}\nreports:\n"
                + told("oversteer", "exit", "clear");
        String tried = "tried:\n  - {change: rear-pressure higher, steps: 2, from: 1.9 bar, to: 2.0 bar, outcome: %s, "
                + "put-back: yes}\n";
        assertTrue(changes(Paddock.advise(Trackside.yaml(car))).stream().noneMatch("rear-pressure lower"::equals));
        assertTrue(changes(Paddock.advise(Trackside.yaml(car + tried.formatted("worse")))).contains("rear-pressure lower"));
        assertTrue(changes(Paddock.advise(Trackside.yaml(car + tried.formatted("same")))).stream()
                .noneMatch("rear-pressure lower"::equals));
    }

    @Test
    @DisplayName("where the front bar is used up, a rear-drive car that pushes on the way in gets a stiffer rear bar")
    void rearBarOnTheWayIn() {
        String tried = "  - {change: front-anti-roll-bar softer, steps: 1, from: 2, to: 1, outcome: same}\n"
                + "  - {change: front-camber more-negative, from: -2.3 deg, to: -2.5 deg, outcome: same}\n"
                + "  - {change: front-springs softer, from: 95 N/mm, to: 90 N/mm, outcome: same}\n";
        String push = told("understeer", "entry", "clear");
        assertTrue(changes(advise("1", push, tried)).contains("rear-anti-roll-bar stiffer"));
        // A tail that is light off the throttle would be lighter still.
        assertTrue(changes(advise("1", push + told("oversteer", "lift-off", "clear"), tried)).stream()
                .noneMatch("rear-anti-roll-bar stiffer"::equals));
    }

    @Test
    @DisplayName("brakes that were moved for locking, and helped, are no lever for what is left in the middle of the corner")
    void nothingToDoWithTheRest() {
        String tried = "  - {change: brake-bias forward, steps: 2, outcome: better, on: rear-locking, phase: braking}\n"
                + "  - {change: brake-bias forward, steps: 2, outcome: same, on: oversteer, phase: mid-corner}\n";
        Advice advice = advise("4", told("oversteer", "mid-corner", "slight"), tried);
        assertTrue(changes(advice).stream().noneMatch("brake-bias forward"::equals), changes(advice).toString());
    }
}
