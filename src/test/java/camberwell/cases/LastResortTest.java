package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * An all-wheel-drive car that stands nose-high spins its wheels. The front bar, softened to its stop, has put the balance
 * right; the springs would only upset it again, and the preload is at its most. Common practice, no source.
 */
@DisplayName("When all that rules propose is used up")
class LastResortTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/harrow-rally-saloon.yaml");

    private static Advice advise(String tried) {
        return Paddock.advise(Trackside.yaml("title: a\ncar: " + CAR
                + "\nsetup: {front-ride-height: 145 mm, front-anti-roll-bar: 1, differential-preload: 100 Nm}\nreports:\n"
                + "  - {symptom: wheelspin, phase: exit, speed: medium, severity: clear, occurrence: every-lap}\n" + tried));
    }

    private static final String BAR = "tried:\n"
            + "  - {change: front-anti-roll-bar softer, steps: 1, outcome: better, on: understeer, phase: mid-corner, run: 2}\n"
            + "  - {change: front-anti-roll-bar softer, steps: 1, outcome: same, on: wheelspin, phase: exit, run: 2}\n";

    @Test
    @DisplayName("bars and springs that put the balance right are left alone for what is no matter of balance")
    void balanceIsLeft() {
        assertTrue(changes(advise("")).contains("front-springs softer"));
        Advice advice = advise(BAR);
        assertTrue(changes(advice).stream().noneMatch(change -> change.startsWith("front-springs")));
        assertTrue(advice.withheld().stream().anyMatch(it -> it.change().id().equals("front-springs softer")
                && it.reason().startsWith("bars and springs have put the balance right")));
        assertTrue(advice.withheld().stream().noneMatch(it -> it.change().id().equals("front-anti-roll-bar softer")
                && it.reason().contains("put it back")), "what helped the push stays on");
    }

    @Test
    @DisplayName("then the model of the car is asked, which sees the nose too high, and says that nothing else speaks for it")
    void model() {
        RankedChange change = advise(BAR).changes().get(0);
        assertEquals("front-ride-height lower", change.change().id());
        assertTrue(change.why().contains("nothing but that model speaks for it"));
        assertTrue(change.score().certainty() <= 0.2);
        assertTrue(change.ofModelAlone());
        assertTrue(change.way().watch().contains("wheelspin at exit"), "it is judged by what was told, not by what the note "
                + "of the ride height speaks of: " + change.way().watch());
    }

    @Test
    @DisplayName("what only the model named goes on where it helped, and is not named again where nothing came of it or harm")
    void goesOn() {
        String lower = "  - {change: front-ride-height lower, steps: 1, on: wheelspin, phase: exit, run: 3, outcome: ";
        RankedChange again = advise(BAR + lower + "better}\n").changes().get(0);
        assertEquals("front-ride-height lower", again.change().id());
        assertTrue(again.why().contains("helped in the last run"), again.why());
        assertTrue(!changes(advise(BAR + lower + "same}\n")).contains("front-ride-height lower"));
        assertTrue(!changes(advise(BAR + lower + "worse}\n")).contains("front-ride-height lower"));
    }

    /** A preloaded differential drags both rear wheels along at one speed, which turns the car out of a slow corner. */
    @Test
    @DisplayName("where by the model nothing that rules still propose would be felt, what the model does most with comes before it")
    void nothingHelps() {
        String single = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/tessel-single-seater.yaml").toString();
        Advice advice = Paddock.advise(Trackside.yaml("title: a\ncar: " + single
                + "\nsetup: {differential-preload: 70 Nm, front-anti-roll-bar: 1}\nreports:\n"
                + "  - {symptom: understeer, phase: mid-corner, speed: medium, severity: slight, occurrence: every-lap}\n"
                + "  - {symptom: understeer, phase: mid-corner, speed: slow, severity: slight, occurrence: every-lap}\n"
                + "  - {symptom: oversteer, phase: exit, speed: fast, severity: slight, occurrence: every-lap}\n"
                + "tried:\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, outcome: better, on: understeer, phase: mid-corner, run: 2}\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, outcome: same, on: understeer, phase: mid-corner, run: 3}\n"));
        RankedChange first = advice.changes().get(0);
        assertEquals("differential-preload less", first.change().id());
        assertTrue(first.ofModelAlone());
        assertTrue(first.why().startsWith("What rules still propose for this would hardly be felt"), first.why());
        assertTrue(advice.changes().size() > 1, "what the rules propose stays below it");
    }

    @Test
    @DisplayName("a bar that did nothing for a clear push: not the springs, which do the same work, but the camber")
    void otherMechanism() {
        String coupe = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/corvane-coupe.yaml").toString();
        String push = "title: a\ncar: " + coupe + "\nreports:\n"
                + "  - {symptom: understeer, phase: mid-corner, speed: medium, severity: clear, occurrence: every-lap}\n";
        assertEquals("front-anti-roll-bar softer", changes(Paddock.advise(Trackside.yaml(push))).get(0));
        assertEquals("front-camber more-negative", changes(Paddock.advise(Trackside.yaml(push + "tried:\n"
                + "  - {change: front-anti-roll-bar softer, steps: 1, outcome: same, on: understeer, phase: mid-corner, run: "
                        + "2}\n")))
                .get(0));
    }

    private static List<String> changes(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).toList();
    }
}
