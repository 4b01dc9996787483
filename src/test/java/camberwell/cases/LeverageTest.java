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
 * A bar shifts load transfer by its share of its axle's roll stiffness (T. D. Gillespie, Fundamentals of Vehicle Dynamics,
 * SAE, 1992, ch. 6, from memory); what an engineer makes of it is common practice, no source.
 */
@DisplayName("How much a bar or spring does on this very car")
class LeverageTest {

    /** The rear bar of this car is a small part of the rear's roll stiffness, the front bar a large one of the front's. */
    private static final Path LOOSE = Path.of(System.getProperty("camberwell.home"), "rules/reference-cars",
            "loose-rear-drive.yaml");

    private static Advice advise(String car, String... reports) {
        StringBuilder text = new StringBuilder("title: a\ncar: " + car + "\nreports:\n");
        for (String report : reports) {
            text.append("  - {symptom: ").append(report).append(", occurrence: every-lap}\n");
        }
        return Paddock.advise(Trackside.yaml(text.toString()));
    }

    private static List<String> changes(Advice advice) {
        return advice.changes().stream().map(change -> change.change().id()).toList();
    }

    @Test
    @DisplayName("a strong slide everywhere: the bar that acts on this car comes before the one that hardly does")
    void strong() {
        Advice advice = advise(LOOSE + "\nsetup: {front-springs: 50 N/mm}", "oversteer, phase: lift-off, severity: strong",
                "oversteer, phase: mid-corner, severity: strong", "snap-oversteer, phase: exit, severity: strong");
        RankedChange first = advice.changes().get(0);
        assertEquals("front-anti-roll-bar stiffer", first.change().id());
        assertEquals(1, first.rank());
        assertTrue(first.size().computation().stream().anyMatch(line -> line.matches(
                "by the model it moves the balance of this car \\d times as much as rear anti-roll bar would")),
                first.size().computation().toString());
        assertTrue(changes(advice).contains("rear-anti-roll-bar softer"));
    }

    @Test
    @DisplayName("a clear push of a car beyond neutral: the gentlest of the levers, since a step may turn it round")
    void beyondNeutral() {
        Advice advice = advise(LOOSE.toString(), "understeer, phase: mid-corner, severity: clear",
                "understeer, phase: exit, severity: clear");
        assertEquals("rear-anti-roll-bar stiffer", changes(advice).get(0));
    }

    @Test
    @DisplayName("a car that is limited by its front keeps the order of the rules")
    void ordinary() {
        String car = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/sandling-tourer.yaml").toString();
        assertEquals("front-anti-roll-bar softer", changes(advise(car, "understeer, phase: mid-corner, severity: clear"))
                .get(0));
    }
}
