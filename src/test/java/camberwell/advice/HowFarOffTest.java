package camberwell.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.physics.CornerSpeed;
import camberwell.run.Report;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/** That witnesses count whatever order they are heard in is Bayes' rule; what a grade means is common practice, no source. */
@Label("How far off a car is by all that was told")
class HowFarOffTest {

    private static final HowFarOff.Place APEX = new HowFarOff.Place(Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.MEDIUM);

    private static Report told(Symptom symptom, Severity severity) {
        return new Report(symptom, Optional.empty(), Optional.of(Phase.MID_CORNER),
                Optional.of(camberwell.vocabulary.CornerSpeed.MEDIUM), severity, Occurrence.EVERY_LAP, Optional.empty(),
                        Optional.empty());
    }

    private static HowFarOff far(Report... told) {
        HowFarOff far = new HowFarOff(APEX, 3);
        far.heard(List.of(told), 0);
        return far;
    }

    @Test
    @DisplayName("a push is taken from by what moves the car towards oversteer, and a slide by the other way as much")
    void ways() {
        HowFarOff push = far(told(Symptom.UNDERSTEER, Severity.CLEAR));
        HowFarOff slide = far(told(Symptom.OVERSTEER, Severity.CLEAR));
        assertTrue(push.after(-2) < push.after(0) && push.after(0) < push.after(2));
        assertEquals(push.after(-2), slide.after(2), 1e-9);
    }

    @Test
    @DisplayName("the stronger it is told, the more of a change it takes")
    void grades() {
        HowFarOff slight = far(told(Symptom.UNDERSTEER, Severity.SLIGHT));
        HowFarOff strong = far(told(Symptom.UNDERSTEER, Severity.STRONG));
        assertTrue(slight.after(-5) > slight.after(-1.5));
        assertTrue(strong.after(-5) < strong.after(-1.5));
    }

    @Test
    @DisplayName("clear before a change that took two words and clear after it: it was much then, and is little now")
    void twoRuns() {
        HowFarOff once = far(told(Symptom.UNDERSTEER, Severity.CLEAR));
        HowFarOff twice = far(told(Symptom.UNDERSTEER, Severity.CLEAR));
        twice.heard(List.of(told(Symptom.UNDERSTEER, Severity.CLEAR)), -2);
        assertTrue(twice.after(0) < once.after(0));
        assertTrue(twice.after(-4) - twice.after(-2) > once.after(-4) - once.after(-2), "two words more are sooner too many");
    }

    @Test
    @DisplayName("who tells four strong things may have left out a fifth; who tells one has not")
    void silence() {
        Report elsewhere = new Report(Symptom.WHEELSPIN, Optional.empty(), Optional.of(Phase.EXIT), Optional.empty(),
                Severity.STRONG, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
        assertTrue(far(elsewhere, elsewhere, elsewhere, elsewhere).after(0) > 2 * far(elsewhere).after(0));
    }

    @Property(tries = 2000)
    @Label("what runs told counts the same in whatever order they are heard, and nothing is worse than a lost car")
    void order(@ForAll @Size(min = 1, max = 5) List<Severity> grades, @ForAll @DoubleRange(min = -8, max = 8) double shift) {
        List<Severity> back = new ArrayList<>(grades);
        Collections.reverse(back);
        double one = heard(grades, shift, false);
        assertEquals(one, heard(back, shift, true), 1e-6);
        assertTrue(one >= 0 && one <= HowFarOff.LOST);
    }

    private static double heard(List<Severity> grades, double shift, boolean back) {
        HowFarOff far = new HowFarOff(APEX, 3);
        for (int i = 0; i < grades.size(); i++) {
            far.heard(List.of(told(Symptom.UNDERSTEER, grades.get(i))), shift * (back ? grades.size() - 1 - i : i) / 4);
        }
        return far.after(shift);
    }
}
