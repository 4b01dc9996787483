package camberwell.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.fact.Certainty;
import net.jqwik.api.ForAll;
import net.jqwik.api.Label;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.hipparchus.distribution.continuous.BetaDistribution;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Figures by hand from the Beta-binomial model (A. Gelman et al., "Bayesian Data Analysis", 3rd ed., ch. 2) with the
 * certainty taken as log-odds (D. Heckerman, UAI 1985); the quantiles with SciPy 1.17.1, {@code scipy.stats.beta.ppf}.
 */
@Label("What came of a change moves the certainty that it helps")
class BeliefTest {

    private static final double RUNS = 4;

    @ParameterizedTest(name = "rules {0}, helped {1}, failed {2}: {3}")
    @CsvSource({"0.65, 0, 0, 0.65", "0.65, 1, 0, 0.738318", "0.65, 2, 0, 0.791", "0.65, 0, 1, 0.3125",
            "0.65, 0, 2, -0.024", "0.65, 1, 1, 0.486", "0.45, 0, 1, 0.0625", "0.65, 0.287175, 0.870551, 0.413075"})
    @DisplayName("a failure halves a good rule, two silence it, a success strengthens it")
    void outcomes(double prior, double helped, double failed, double after) {
        assertEquals(after, new Belief(prior, helped, failed, RUNS).certainty(), 5e-4);
    }

    @Test
    @DisplayName("as a witness beside the rules: 0.65 is 2.96 of 4 runs that helped")
    void evidence() {
        Belief better = new Belief(0.65, 1, 0, RUNS);
        assertEquals(2.962963, better.priorHelped(), 1e-6);
        assertEquals(1.037037, better.priorFailed(), 1e-6);
        assertEquals(0.252336, better.evidence(), 1e-6);
        assertEquals(-0.490909, new Belief(0.65, 0, 1, RUNS).evidence(), 1e-6);
    }

    @Test
    @DisplayName("helped 3 of 4 times: the Beta distribution and its 95 % interval")
    void interval() {
        Belief belief = new Belief(0.65, 3, 1, RUNS);
        assertEquals(0.745370, belief.chance(), 1e-6);
        BetaDistribution beta = new BetaDistribution(belief.priorHelped() + 3, belief.priorFailed() + 1);
        assertEquals(belief.chance(), beta.getNumericalMean(), 1e-12);
        assertEquals(0.473702, beta.inverseCumulativeProbability(0.05), 1e-5);
        assertEquals(0.944276, beta.inverseCumulativeProbability(0.95), 1e-5);
    }

    @Property
    @Label("combined with the rules' certainty, the evidence gives the certainty with the outcomes")
    void combines(@ForAll @DoubleRange(min = -0.99, max = 0.99) double prior,
            @ForAll @DoubleRange(min = 0, max = 50) double helped,
            @ForAll @DoubleRange(min = 0, max = 50) double failed) {
        Belief belief = new Belief(prior, helped, failed, RUNS);
        assertEquals(belief.certainty(), Certainty.combine(prior, belief.evidence()), 1e-9);
    }

    @Property
    @Label("a success never lowers it, a failure never raises it, nothing changes nothing")
    void monotone(@ForAll @DoubleRange(min = -1, max = 1) double prior,
            @ForAll @DoubleRange(min = 0, max = 20) double helped,
            @ForAll @DoubleRange(min = 0, max = 20) double failed) {
        double now = new Belief(prior, helped, failed, RUNS).certainty();
        assertTrue(new Belief(prior, helped + 1, failed, RUNS).certainty() >= now);
        assertTrue(new Belief(prior, helped, failed + 1, RUNS).certainty() <= now);
        assertEquals(0, new Belief(prior, 0, 0, RUNS).evidence());
        assertEquals(prior, Belief.certainty(Belief.chance(prior)), 1e-9);
    }
}
