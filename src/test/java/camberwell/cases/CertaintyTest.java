package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Certainty;
import camberwell.fact.Premise;
import camberwell.language.Statement;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.DoubleStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Certainties are combined as in EMYCIN. */
class CertaintyTest {

    private static final double TOLERANCE = 1e-12;

    // P. Norvig, "Paradigms of Artificial Intelligence Programming", Morgan Kaufmann, 1992, section 16.1: 0.60 with 0.40,
    // and 0.36 with a prior 0.76. G. S. Novak, lecture notes on expert systems, University of Texas: 0.5 with 0.6.
    // From memory: M. Negnevitsky, "Artificial Intelligence", Addison-Wesley, 2005, ch. 3 (0.8 with 0.6, -0.6, and -0.8
    // with -0.6). From memory: B. G. Buchanan, E. H. Shortliffe, "Rule-Based Expert Systems", 1984, ch. 10: one rule
    // against must not undo much evidence, 0.999 with -0.8. The last line is derived from the formula.
    @ParameterizedTest
    @CsvSource({"0.60, 0.40, 0.76, 1e-12", "0.36, 0.76, 0.8464, 1e-12", "0.5, 0.6, 0.8, 1e-12",
        "0.8, 0.6, 0.92, 1e-12", "0.8, -0.6, 0.5, 1e-12", "-0.8, -0.6, -0.92, 1e-12", "0.999, -0.8, 0.995, 1e-12",
        "0.6, -0.4, 0.333333, 5e-7"})
    @DisplayName("two certainties give the published number")
    void published(double x, double y, double together, double tolerance) {
        assertEquals(together, Certainty.combine(x, y), tolerance);
        assertEquals(together, Certainty.combine(y, x), tolerance);
    }

    // From memory: J. Giarratano, G. Riley, "Expert Systems", PWS, 1998, the chapter on uncertainty.
    @Test
    @DisplayName("a third word against two that agree: 0.28 and 0.5 give 0.64, and -0.2 leaves 0.55")
    void threeWords() {
        double two = Certainty.combine(0.28, 0.5);
        assertEquals(0.64, two, TOLERANCE);
        assertEquals(0.55, Certainty.combine(two, -0.2), TOLERANCE);
    }

    // Norvig, exercise 16.1: how many rules of 0.01 make 0.95? 1 - 0.99^298 = 0.94996, 1 - 0.99^299 = 0.9505.
    @Test
    @DisplayName("many faint hints add up, slowly: 298 of 0.01 stay below 0.95, 299 pass it")
    void manyHints() {
        double total = 0;
        for (int i = 0; i < 298; i++) {
            total = Certainty.combine(total, 0.01);
        }
        assertEquals(0.949963, total, 5e-7);
        assertTrue(Certainty.combine(total, 0.01) > 0.95);
    }

    @Property
    @Label("nothing said changes nothing, and a word with its contrary cancels (properties that Norvig lists)")
    void neutralAndContrary(@ForAll @DoubleRange(min = -0.99, max = 0.99) double x) {
        assertEquals(x, Certainty.combine(0, x), TOLERANCE);
        assertEquals(0, Certainty.combine(x, -x), TOLERANCE);
    }

    @Property
    @Label("the order in which rules speak does not matter")
    void orderDoesNotMatter(@ForAll @Size(min = 2, max = 7) List<@DoubleRange(min = -0.95, max = 0.95) Double> words,
            @ForAll long seed) {
        List<Double> shuffled = new ArrayList<>(words);
        Collections.shuffle(shuffled, new Random(seed));
        double one = words.stream().reduce(0.0, Certainty::combine);
        double other = shuffled.stream().reduce(0.0, Certainty::combine);
        assertEquals(one, other, 1e-9);
        assertTrue(Math.abs(one) <= 1);
    }

    // Derived: pairwise EMYCIN gives 0.7 in all six orders; the form of 1975 would give 0.28.
    @Test
    @DisplayName("0.8, 0.4 and -0.6 give 0.7 in every order")
    void sixOrders() {
        double[][] orders = {{0.8, 0.4, -0.6}, {0.8, -0.6, 0.4}, {0.4, 0.8, -0.6}, {0.4, -0.6, 0.8}, {-0.6, 0.8, 0.4},
            {-0.6, 0.4, 0.8}};
        for (double[] order : orders) {
            assertEquals(0.7, DoubleStream.of(order).reduce(0, Certainty::combine), TOLERANCE);
        }
    }

    @Test
    @DisplayName("certainly true and certainly false at once is refused, and so is what is no certainty")
    void contradiction() {
        assertThrows(IllegalArgumentException.class, () -> Certainty.combine(1, -1));
        assertThrows(IllegalArgumentException.class, () -> Certainty.combine(1.01, 0));
        assertThrows(IllegalArgumentException.class, () -> Certainty.combine(Double.NaN, 0));
    }

    // Norvig, section 16.1: premises of 0.6 and 0.4 under a rule of 0.9 give 0.36; Novak: 0.6, 0.3 and 0.4 under 0.7
    // give 0.21. So does every rule here: the strength that it is written with times its least certain premise.
    @Test
    @DisplayName("a conclusion is as certain as the least certain premise times the strength of the rule")
    void strengthTimesLeastPremise() {
        assertEquals(0.36, 0.9 * Math.min(0.6, 0.4), TOLERANCE);
        assertEquals(0.21, 0.7 * Math.min(0.6, Math.min(0.3, 0.4)), TOLERANCE);
        List<String> wrong = new ArrayList<>();
        Paddock.cases().values().forEach(run -> Paddock.all(Paddock.conclude(Paddock.premises(run))).forEach(it -> {
            double least = it.premises().stream().mapToDouble(Premise::certainty).min().orElseThrow();
            boolean written = Paddock.rules().rules().get(it.rule()).statements().stream()
                    .mapToDouble(Statement::certainty)
                    .anyMatch(strength -> Math.abs(strength * least - Math.abs(it.certainty())) < TOLERANCE);
            if (!written) {
                wrong.add(it.rule() + " concludes " + it.certainty() + " from " + least);
            }
        }));
        assertEquals(List.of(), wrong);
    }
}
