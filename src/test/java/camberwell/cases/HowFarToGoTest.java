package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.Trackside;
import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.run.Case;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A car whose rear gives up first, one bar of which turns it round. Common practice, no source, but for the doubling, which is
 * how a minimum is bracketed (W. H. Press et al., Numerical Recipes, ch. 10.1, cited from memory).
 */
@DisplayName("How far to go by what came of the last change")
class HowFarToGoTest {

    private static final Path CAR = Path.of(System.getProperty("camberwell.home"), "rules/reference-cars/loose-rear-drive.yaml");

    private static Case run(String setup, String tried, String... told) {
        StringBuilder text = new StringBuilder("title: a\ncar: " + CAR + "\nsetup: {" + setup + "}\nreports:\n");
        for (String each : told) {
            String[] words = each.split(" ");
            text.append("  - {severity: %s, symptom: %s, phase: %s, speed: fast, occurrence: every-lap}\n"
                    .formatted(words[0], words[1], words[2]));
        }
        return Trackside.yaml(text + (tried.isEmpty() ? "" : "tried:\n" + tried));
    }

    private static String tried(String change, String from, String to, int run, String outcome, String on) {
        return "  - {change: %s, steps: 1, from: %s, to: %s, run: %d, outcome: %s, on: %s}\n".formatted(change, from, to, run,
                outcome, on);
    }

    private static final String TURNED = tried("front-anti-roll-bar softer", "4", "3", 2, "better", "understeer")
            + tried("front-anti-roll-bar softer", "4", "3", 2, "worse", "oversteer");
    private static final String PUT_BACK = tried("front-anti-roll-bar stiffer", "3", "4", 3, "better", "oversteer")
            + tried("front-anti-roll-bar stiffer", "3", "4", 3, "worse", "understeer");
    private static final String[] PUSHES =
            {"strong understeer lift-off", "strong understeer exit", "strong understeer mid-corner"};

    private static List<String> changes(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).toList();
    }

    @Test
    @DisplayName("where a step of the front bar turned it round, a step of the front springs, which do more, is not the next")
    void nothingAsCoarse() {
        assertTrue(changes(Paddock.advise(run("", "", PUSHES))).contains("front-springs softer"));
        Advice advice = Paddock.advise(run("", TURNED + PUT_BACK, PUSHES));
        assertFalse(changes(advice).contains("front-springs softer"), changes(advice).toString());
        assertTrue(advice.withheld().stream().anyMatch(it -> it.change().id().equals("front-springs softer")
                && it.reason().contains("turned the car round before")));
        RankedChange rear = advice.changes().stream().filter(it -> it.change().id().equals("rear-anti-roll-bar stiffer"))
                .findFirst().orElseThrow();
        assertEquals(1, rear.size().steps(), "a step moves it half as much, and what is right lies between; two would be as far");
    }

    @Test
    @DisplayName("a step that took most of three strong complaints is kept, though it brought a slide where there was none")
    void mostIsGone() {
        Case then = run("", "", PUSHES);
        Case now = run("front-anti-roll-bar: 3", TURNED, "strong oversteer lift-off");
        assertEquals("front-anti-roll-bar stiffer", changes(Paddock.advise(now)).get(0));
        assertFalse(changes(Paddock.advise(now.withEarlier(List.of(then)))).get(0).equals("front-anti-roll-bar stiffer"));
    }

    @Test
    @DisplayName("where all stays strong one way after a change, the next lever goes twice as far; where some went, as usual")
    void twiceAsFar() {
        String spring = "  - {change: front-springs softer, steps: 1, run: 2, outcome: same, on: understeer}\n";
        Case now = run("front-springs: 100 N/mm", spring, PUSHES);
        RankedChange usual = Paddock.advise(now.withEarlier(List.of(run("", "", "strong understeer lift-off",
                "strong understeer exit", "strong understeer mid-corner", "strong understeer entry")))).changes().get(0);
        RankedChange far = Paddock.advise(now.withEarlier(List.of(run("front-springs: 110 N/mm", "", PUSHES)))).changes().get(0);
        assertEquals(usual.change(), far.change());
        assertEquals(Math.min(2 * usual.size().steps(), now.car().setting(far.change().adjuster()).orElseThrow()
                .stepsLeft(far.change().direction())), far.size().steps());
        assertTrue(far.size().steps() > usual.size().steps(), far.size().toString());
        String usually = usual.size().computation().get(0);
        assertTrue(usually.endsWith("since the complaint is strong") || usually.startsWith("one step of the car's own"), usually);
        assertFalse(far.size().computation().contains(usually), far.size().toString());
        assertTrue(far.size().computation().get(0).startsWith(far.size().steps() + " steps: all is as strong"),
                far.size().toString());
    }

    /** The rear bar by two steps moves this car as much as the front bar by one, which had just turned it round. */
    @Test
    @DisplayName("what one step has turned round is not far off, though strong: what would turn it back is not the next")
    void notBackAgain() {
        Case then = run("rear-ride-height: 80 mm", "", PUSHES);
        Case now = run("rear-ride-height: 80 mm, front-anti-roll-bar: 3", TURNED, "strong oversteer lift-off",
                "clear oversteer exit");
        RankedChange first = Paddock.advise(now.withEarlier(List.of(then))).changes().get(0);
        assertFalse(first.change().id().equals("rear-anti-roll-bar softer") && first.size().steps() > 1, first.size().toString());
    }

    /** With hardly any lock left the unloaded rear wheel spins, and the car no longer turns under power. */
    @Test
    @DisplayName("one step after which clearly more is wrong than before goes back, though what it was made for has gone")
    void worseOnTheWhole() {
        String lock = "differential-power less";
        String tried = tried(lock, "2", "1", 2, "better", "snap-oversteer") + tried(lock, "2", "1", 2, "worse", "understeer");
        Case then = run("differential-power: 2", "", "strong snap-oversteer exit");
        Case worse = run("differential-power: 1", tried, "strong understeer exit", "strong understeer lift-off");
        RankedChange back = Paddock.advise(worse.withEarlier(List.of(then))).changes().get(0);
        assertEquals("differential-power more", back.change().id());
        assertEquals("2", back.size().to().orElseThrow().toString());
        assertTrue(back.why().contains("on the whole more is wrong than before"), back.why());
        Case less = run("differential-power: 1", tried, "clear understeer exit");
        assertFalse(Paddock.advise(less.withEarlier(List.of(then))).changes().get(0).change().id()
                .equals("differential-power more"));
    }

    /** The bars at their stops have brought the car to where one step of the springs lets go of it. */
    @Test
    @DisplayName("a spring that was not felt is not tried once more where by the model it would turn the car round")
    void notOnceMore() {
        String spring = tried("front-springs softer", "110 N/mm", "100 N/mm", 2, "same", "understeer");
        String camber = tried("front-camber more-negative", "-3 deg", "-3.2 deg", 6, "better", "understeer");
        Advice advice = Paddock.advise(run("front-springs: 100 N/mm, front-anti-roll-bar: 1, rear-anti-roll-bar: 7, "
                + "front-camber: -3.2 deg", spring + camber, "slight understeer lift-off"));
        assertFalse(changes(advice).contains("front-springs softer"), changes(advice).toString());
    }
}
