package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.cases.Paddock;
import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Severity;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("A plan for the laps at hand")
class PlanTest {

    private static final double[] SOFT = {92.52, 92.51, 92.38, 92.32, 92.20, 92.37, 92.26, 92.23};
    private static final double[] MIDDLE = {92.25, 92.35, 92.29, 92.17, 92.10, 92.08, 92.00, 92.02};
    private static final double[] STIFF = {92.41, 92.44, 92.37, 92.28, 92.30, 92.19, 92.20, 92.12};

    private static History bracketed(Severity severity, double... middle) {
        List<Report> complaint = List.of(Runs.understeer(severity));
        return new History(List.of(Runs.run(1, Runs.car(3, 4, 4), complaint, SOFT),
                Runs.run(2, Runs.car(4, 4, 4), complaint, middle), Runs.run(3, Runs.car(5, 4, 4), complaint, STIFF)));
    }

    private static Plan plan(History history, int laps, Optional<Gain> gain) {
        Advice advice = Paddock.advise(history.inform(history.last().orElseThrow()));
        return Plan.of(advice, history, history.runs().size() + 1, laps, Optional.empty(), gain);
    }

    /** The same laps in numpy 2.4 and scipy 1.17: positions 3, 4, 5 give 4.0930, with 95 % from 4.0060 to 4.1986. */
    @Test
    @DisplayName("three settings of a bar, the middle one quickest: the best lies between, and the plan goes there first")
    void best() {
        History history = bracketed(Severity.CLEAR, MIDDLE);
        Optimum best = Optimum.of(history).get(0);
        assertEquals(Adjuster.FRONT_ANTI_ROLL_BAR, best.adjuster());
        assertEquals(List.of("3", "4", "5"), best.tried().stream().map(it -> it.setting().toString()).toList());
        assertEquals("4.1", best.at().toString());
        assertEquals("4", best.from().orElseThrow().toString());
        assertEquals("4.2", best.to().orElseThrow().toString());
        assertEquals("4", best.nearest().toString());
        assertEquals(1, best.stepsAway(), "it stands on 5");
        Plan plan = plan(history, 40, Optional.empty());
        assertEquals(Plan.Kind.BEST, plan.steps().get(0).kind());
        assertTrue(plan.steps().stream().flatMap(step -> step.change().stream())
                .noneMatch(change -> change.change().adjuster() == Adjuster.FRONT_ANTI_ROLL_BAR), "it is settled");
    }

    @Test
    @DisplayName("where three settings differ by less than the laps can show, nothing is said to be the best")
    void cannotTell() {
        double[] hardly = Arrays.stream(STIFF).map(seconds -> seconds - 0.01).toArray();
        Optimum best = Optimum.of(bracketed(Severity.CLEAR, hardly)).get(0);
        assertFalse(best.told());
        assertTrue(plan(bracketed(Severity.CLEAR, hardly), 40, Optional.empty()).steps().stream()
                .noneMatch(step -> step.kind() == Plan.Kind.BEST));
    }

    @Test
    @DisplayName("no bracket where something else was moved too, or the best is at an end")
    void noBracket() {
        List<Report> none = List.of();
        assertEquals(List.of(), Optimum.of(new History(List.of(Runs.run(1, Runs.car(3, 4, 4), none, SOFT),
                Runs.run(2, Runs.car(4, 3, 4), none, MIDDLE), Runs.run(3, Runs.car(5, 4, 4), none, STIFF)))));
        assertEquals(List.of(), Optimum.of(new History(List.of(Runs.run(1, Runs.car(3, 4, 4), none, SOFT),
                Runs.run(2, Runs.car(4, 4, 4), none, STIFF), Runs.run(3, Runs.car(5, 4, 4), none, MIDDLE)))));
    }

    /** s 0.15 s, 8 laps before and 8 after, with the laps out and in: 0.226 s (scipy.stats.nct), and 0.55 x 0.2 s is 0.11 s. */
    @Test
    @DisplayName("a gain that cannot be seen cannot be kept: its chance times what it brings, against what the laps show")
    void stop() {
        assertEquals(0.226, Gain.seen(20, 0.15), 0.02 * 0.226);
        assertEquals(0.11, Gain.said(0.2).worth(0.55), 1e-12);
        assertTrue(Gain.said(0.2).worth(0.55) < Gain.seen(20, 0.15));
        assertTrue(Gain.seen(8, 0.15) > 60, "two laps each tell nothing");
        Plan plan = plan(bracketed(Severity.SLIGHT, MIDDLE), 40, Optional.of(Gain.said(0.01)));
        assertTrue(plan.steps().stream().noneMatch(step -> step.kind() == Plan.Kind.CHANGE), plan.steps().toString());
        assertTrue(plan.left().stream().anyMatch(left -> left.reason().contains("less than the")), plan.left().toString());
    }

    @Test
    @DisplayName("a clear complaint is worked on all the same: it can be felt where the clock is blind")
    void felt() {
        Plan plan = plan(bracketed(Severity.CLEAR, MIDDLE), 40, Optional.of(Gain.said(0.01)));
        Plan.Step change = plan.steps().stream().filter(step -> step.kind() == Plan.Kind.CHANGE).findFirst().orElseThrow();
        assertEquals(Optional.of(false), plan.clockTells(change));
        Plan large = plan(bracketed(Severity.CLEAR, MIDDLE), 40, Optional.of(Gain.said(1)));
        assertEquals(Optional.of(true), large.clockTells(large.steps().stream()
                .filter(step -> step.kind() == Plan.Kind.CHANGE).findFirst().orElseThrow()));
    }

    @Test
    @DisplayName("what a change that helps brings is read off the book: the mean of those that helped, and of no others")
    void gainOfTheBook() {
        assertEquals(Optional.empty(), Gain.of(bracketed(Severity.CLEAR, MIDDLE)), "nobody said that one helped");
        Case before = Runs.run(1, Runs.car(3, 4, 4), List.of(Runs.understeer(Severity.STRONG)), SOFT);
        Case after = Runs.run(2, Runs.car(4, 4, 4), List.of(Runs.understeer(Severity.SLIGHT)), MIDDLE);
        Gain gain = Gain.of(new History(List.of(before, after))).orElseThrow();
        assertEquals(1, gain.changes());
        assertEquals(0.19125, gain.seconds(), 1e-9);
    }
}
