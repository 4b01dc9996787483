package camberwell.cases;

import static camberwell.cases.PanelCase.advise;
import static camberwell.cases.PanelCase.change;
import static camberwell.cases.PanelCase.changes;
import static camberwell.cases.PanelCase.moved;
import static camberwell.cases.PanelCase.told;
import static camberwell.cases.PanelCase.tyres;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.Answer;
import camberwell.advice.RankedChange;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What an engineer expects of one case each, written down before the program was asked. Common practice, no source. */
@DisplayName("A race engineer's panel")
class PanelTest {

    @Test
    @DisplayName("brake balance moves by one per cent at most, either way, wet or dry, however strong the complaint")
    void brakeBalanceIsCapped() {
        for (String surface : List.of("dry", "wet")) {
            String day = "conditions: {surface: " + surface + "}\n";
            assertTrue(moved(change(advise("corvane-coupe", day + told("rear-locking, phase: braking, severity: strong")),
                    "brake-bias forward")) <= 1 + 1e-9);
            Advice fronts = advise("corvane-coupe", day + "setup: {brake-bias: 69 %}\n"
                    + told("front-locking, phase: braking, severity: strong"));
            assertTrue(moved(change(fronts, "brake-bias rearward")) <= 1 + 1e-9);
        }
    }

    @Test
    @DisplayName("a bar goes one step for a clear complaint, two for a strong one, and one in the wet")
    void bars() {
        String strong = told("understeer, phase: mid-corner, severity: strong", "understeer, phase: entry, severity: strong");
        assertEquals(1, moved(change(advise("corvane-coupe", "conditions: {surface: dry}\n"
                + told("understeer, phase: mid-corner, severity: clear")), "front-anti-roll-bar softer")));
        assertEquals(2, moved(change(advise("corvane-coupe", "conditions: {surface: dry}\n" + strong),
                "front-anti-roll-bar softer")));
        assertEquals(1, moved(change(advise("corvane-coupe", "conditions: {surface: wet}\n" + strong),
                "front-anti-roll-bar softer")));
    }

    @Test
    @DisplayName("a wing for a fast complaint is sized in a fast corner")
    void wingWhereItActs() {
        RankedChange wing = change(advise("tessel-single-seater", "conditions: {surface: dry}\n"
                + told("understeer, phase: mid-corner, speed: fast, severity: clear")), "front-wing more");
        assertTrue(wing.size().computation().stream().anyMatch(line -> line.contains("170 km/h")),
                wing.size().computation().toString());
    }

    @Test
    @DisplayName("clicks are counted as the knob counts them: a step of two is two clicks")
    void clicks() {
        RankedChange rebound = change(advise("harrow-rally-saloon", "conditions: {surface: dry}\n"
                + told("kerb-instability, phase: kerbs, where: rear, severity: clear")), "rear-rebound softer");
        assertEquals(2, moved(rebound));
        assertTrue(camberwell.report.Words.move(rebound).contains("2 clicks softer, 12 -> 10"),
                camberwell.report.Words.move(rebound));
    }

    @Test
    @DisplayName("overheated rears and a loose tail: the softer rear bar unloads them and is not held back")
    void unloadsTheHotEnd() {
        Advice advice = advise("corvane-coupe", "conditions: {surface: dry, air: 24 °C, track: 38 °C}\n"
                + tyres("92 90 88 1.85", "92 90 88 1.85", "112 110 108 1.85", "113 111 108 1.85")
                + told("oversteer, phase: mid-corner, severity: clear"));
        assertTrue(changes(advice).contains("rear-anti-roll-bar softer"), changes(advice).toString());
        assertFalse(changes(advice).contains("rear-toe toe-in"), changes(advice).toString());
        assertFalse(changes(advice).contains("front-anti-roll-bar softer"), changes(advice).toString());
    }

    @Test
    @DisplayName("0.20 bar over target with a neutral tread, or a middle that is hotter: let air out")
    void gaugeAgainstTread() {
        for (String tread : List.of("91 89 87", "90 92 87")) {
            Advice advice = advise("corvane-coupe", "conditions: {surface: dry, air: 20 °C, track: 30 °C}\n"
                    + tyres(tread + " 2.05", tread + " 2.05", "91 89 87 1.85", "91 89 87 1.85")
                    + told("understeer, phase: mid-corner, severity: clear"));
            assertEquals("front-pressure lower", changes(advice).get(0), tread + ": " + changes(advice));
        }
    }

    @Test
    @DisplayName("one soft tyre with a cold middle gets its air as surely as one without a reading")
    void agreeingEvidence() {
        String day = "conditions: {surface: dry, air: 20 °C, track: 30 °C}\n";
        for (String tread : List.of("91 89 87", "93 85 90")) {
            Advice advice = advise("corvane-coupe", day + tyres("91 89 87 1.85", "91 89 87 1.85", "91 89 87 1.85",
                    tread + " 1.64") + told("oversteer, phase: exit, severity: clear"));
            assertTrue(changes(advice).contains("rear-right-pressure higher"), tread + ": " + changes(advice) + " "
                    + advice.halt().map(note -> note.name()) + " " + advice.withheld());
        }
    }

    @Test
    @DisplayName("the loaded front left is hot outside and the idle front right inside: more camber, not the mean of both")
    void loadedWheel() {
        Advice advice = advise("corvane-coupe", "conditions: {surface: dry, air: 20 °C, track: 30 °C, turns: right}\n"
                + tyres("80 88 94 1.85", "92 88 85 1.85", "91 89 87 1.85", "91 89 87 1.85")
                + told("understeer, phase: mid-corner, severity: clear"));
        assertTrue(changes(advice).indexOf("front-camber more-negative") >= 0, changes(advice) + " " + advice.withheld());
        assertFalse(changes(advice).contains("front-camber less-negative"));
    }

    @Test
    @DisplayName("heavy steering on a car that wanders: caster cannot serve both, and that is said")
    void nobodyIsPassedOver() {
        Advice advice = advise("corvane-coupe", "conditions: {surface: dry}\n" + told(
                "heavy-steering, phase: mid-corner, severity: clear", "wandering, phase: straight, severity: clear"));
        assertTrue(advice.answers().stream().noneMatch(Answer::nothing), advice.answers().toString());
        assertFalse(changes(advice).contains("caster less") && changes(advice).contains("caster more"));
        String said = advice.withheld() + " " + advice.conflicts() + " " + changes(advice);
        assertTrue(said.contains("caster") || said.contains("CASTER"), said);
    }

    @Test
    @DisplayName("in a simulator the force of the wheel is set before caster is")
    void simulator() {
        String heavy = told("heavy-steering, phase: mid-corner, severity: clear");
        Advice advice = Paddock.advise(Trackside.yaml("title: a\ncar:\n  name: a\n  drive: rear\n  simulator: yes\n"
                + "  adjusters: {caster: {now: 7.0 deg, min: 4.0 deg, max: 9.0 deg, step: 0.5 deg}}\n" + heavy));
        assertTrue(advice.drivingFirst(), "the force first: " + advice.driving());
        assertEquals("set-the-wheel-force", advice.driving().get(0).note().name());
        Advice real = Paddock.advise(Trackside.yaml("title: a\ncar:\n  name: a\n  drive: rear\n"
                + "  adjusters: {caster: {now: 7.0 deg, min: 4.0 deg, max: 9.0 deg, step: 0.5 deg}}\n" + heavy));
        assertTrue(real.driving().stream().noneMatch(it -> it.note().name().equals("set-the-wheel-force")));
    }

    @Test
    @DisplayName("a tyre that came back with less than it was read with cold stops everything, whatever the car's file says "
            + "was set")
    void losesAir() {
        Advice advice = advise("corvane-coupe", """
                conditions: {surface: dry, air: 18 °C}
                tyres:
                  rear-left: {inner: 88 °C, middle: 86 °C, outer: 84 °C, cold-pressure: 1.95 bar, hot-pressure: 1.70 bar}
                  rear-right: {inner: 88 °C, middle: 86 °C, outer: 84 °C, cold-pressure: 1.50 bar, hot-pressure: 1.85 bar}
                """ + told("oversteer, phase: exit, severity: clear"));
        assertTrue(advice.halt().isPresent());
        assertEquals(List.of(), changes(advice));
        assertTrue(advice.doubts().stream().anyMatch(doubt -> doubt.startsWith("rear-left tyre: hot 1.70 bar is not above cold "
                + "1.95 bar")), advice.doubts().toString());
    }
}
