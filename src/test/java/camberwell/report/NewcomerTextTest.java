package camberwell.report;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.explain.DemoCases;
import camberwell.explain.Reasoning;
import camberwell.vocabulary.Occurrence;
import java.util.List;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** What a newcomer does next: a habit, a change with the run that judges it, or a look at the car. */
class NewcomerTextTest {

    private static final String ALIKE = "Drive it again, the same way, before anything is changed.";
    private static final String NEXT_RUN = "How to do the next run";

    private final List<Reasoning> reasoned = DemoCases.reasoned().toList();

    @Test
    @DisplayName("A fault of every lap with a change for it: no lap is driven again first, and the run is told that "
            + "judges the change")
    void everyLap() {
        List<Reasoning> cases = reasoned.stream().filter(it -> it.advice().driving().isEmpty()
                && it.advice().halt().isEmpty() && !it.advice().changes().isEmpty() && always(it.advice())).toList();
        assertTrue(cases.size() >= 10, "cases: " + cases.size());
        assertAll(cases.stream().map(it -> () -> {
            String text = text(it);
            assertFalse(text.contains(ALIKE), it.run().title());
            assertTrue(text.indexOf("One thing to change on the car") < text.indexOf(NEXT_RUN), it.run().title());
            assertTrue(text.contains("Make this one change and no other."), it.run().title());
        }));
    }

    @Test
    @DisplayName("A car that pulls or loses air is looked at before it is driven again")
    void damage() {
        List<Reasoning> cases = reasoned.stream().filter(it -> it.advice().halt().isPresent()).toList();
        assertTrue(cases.size() >= 5, "cases: " + cases.size());
        assertAll(cases.stream().map(it -> () -> {
            String text = text(it);
            assertFalse(text.contains(ALIKE), it.run().title());
            assertTrue(text.contains("look for damage"), it.run().title());
            int look = text.indexOf("Stop: look at the car first");
            assertTrue(look > 0 && look < text.indexOf("What the car did"), it.run().title());
            assertFalse(text.contains(NEXT_RUN), it.run().title());
            boolean air = text.contains("why a tyre loses air");
            assertEquals(it.advice().halt().orElseThrow().name().equals("check-for-damage"), air, it.run().title());
        }));
    }

    @Test
    @DisplayName("Whoever is given a habit to try is given that one, and no run for a change beside it")
    void habit() {
        assertAll(reasoned.stream().filter(it -> !it.advice().driving().isEmpty()).map(it -> () -> {
            String text = text(it);
            assertTrue(text.contains(it.advice().driving().get(0).note().statement()), it.run().title());
            assertFalse(text.contains(NEXT_RUN), it.run().title());
        }));
    }

    private static boolean always(Advice advice) {
        return advice.run().reports().stream().allMatch(report -> report.occurrence() == Occurrence.EVERY_LAP);
    }

    private static String text(Reasoning reasoning) {
        Page page = new Page(100_000, false);
        new NewcomerText(DemoCases.NOTES, DemoCases.TERMS).write(reasoning.advice(), page);
        return page.toString();
    }
}
