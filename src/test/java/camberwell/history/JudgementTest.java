package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.run.Case;
import camberwell.run.Report;
import camberwell.run.Tried;
import camberwell.statistics.Verdict;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Outcome;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Witness;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("What came of a change")
class JudgementTest {

    private static final double[] A = {92.52, 92.51, 92.38, 92.32, 92.20, 92.37, 92.26, 92.23};
    private static final double[] B = {92.35, 92.45, 92.39, 92.27, 92.20, 92.18, 92.10, 92.12};
    private static final Report STRONG = Runs.understeer(Severity.STRONG);
    private static final Report SLIGHT = Runs.understeer(Severity.SLIGHT);

    private static Judgement judge(Case before, Case after) {
        return Judgement.of(Optional.empty(), before, after, Optional.empty(), Optional.empty());
    }

    @Test
    @DisplayName("a change is read off the settings, with its steps")
    void changes() {
        Judgement judgement = judge(Runs.run(1, Runs.car(4, 4, 4), List.of()), Runs.run(2, Runs.car(4, 2, 5), List.of()));
        assertEquals(List.of("rear-anti-roll-bar softer", "rear-bump stiffer"),
                judgement.changes().stream().map(it -> it.change().id()).toList());
        assertEquals(List.of(Optional.of(2), Optional.of(1)),
                judgement.changes().stream().map(it -> it.moved().steps()).toList());
        assertEquals(2, judgement.outcomes().get(0).trial().together());
    }

    @Test
    @DisplayName("a complaint a grade down is better by the driver's word, and by the laps too where they say so")
    void witnesses() {
        Tried word = judge(Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG)),
                Runs.run(2, Runs.car(3, 4, 4), List.of(SLIGHT))).outcomes().get(0);
        assertEquals(Outcome.BETTER, word.outcome());
        assertEquals(Optional.of(Symptom.UNDERSTEER), word.on().symptom());
        assertEquals(Optional.of(Witness.DRIVER), word.trial().witness());
        Judgement timed = judge(Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG), A),
                Runs.run(2, Runs.car(3, 4, 4), List.of(SLIGHT), B));
        assertEquals(Verdict.PERHAPS_FASTER, timed.laps().orElseThrow().verdict());
        assertEquals(Optional.of(Witness.LAPS), timed.outcomes().get(0).trial().witness());
        assertEquals(Optional.of(8), timed.outcomes().get(0).trial().laps());
    }

    @Test
    @DisplayName("what goes away with the change, and comes back without it, is sure")
    void confirmed() {
        Judgement judgement = Judgement.of(Optional.empty(), Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG)),
                Runs.run(2, Runs.car(3, 4, 4), List.of(SLIGHT)),
                Optional.of(Runs.run(3, Runs.car(4, 4, 4), List.of(STRONG))), Optional.empty());
        assertEquals(Optional.of(Witness.COMPLAINTS), judgement.outcomes().get(0).trial().witness());
    }

    @Test
    @DisplayName("putting back what did nothing, while the next thing is tried, is no second change")
    void putBackBesideATrial() {
        Case first = Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG));
        Case second = Runs.run(2, Runs.car(3, 4, 4), List.of(STRONG));
        Case third = Runs.run(3, Runs.car(4, 4, 3), List.of(SLIGHT));
        List<Tried> outcomes = Judgement.of(Optional.of(first), second, third, Optional.empty(), Optional.empty())
                .outcomes();
        assertEquals(List.of("rear-bump softer"), outcomes.stream().map(it -> it.change().id()).toList());
        assertEquals(1, outcomes.get(0).trial().together());
    }

    @Test
    @DisplayName("told of all corners, a complaint takes in those of some: nothing is new, and nothing gone")
    void generalAndParticular() {
        Report all = new Report(Symptom.UNDERSTEER, Optional.empty(), Optional.of(Phase.MID_CORNER), Optional.empty(),
                Severity.STRONG, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
        Report medium = new Report(Symptom.UNDERSTEER, Optional.empty(), Optional.of(Phase.MID_CORNER),
                Optional.of(CornerSpeed.MEDIUM), Severity.STRONG, Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
        List<Outcome> none = List.of(Outcome.SAME, Outcome.SAME);
        assertEquals(none, ComplaintShift.between(List.of(all), List.of(STRONG, medium)).stream()
                .map(ComplaintShift::outcome).toList());
        assertEquals(none, ComplaintShift.between(List.of(STRONG, medium), List.of(all)).stream()
                .map(ComplaintShift::outcome).toList());
        assertEquals(List.of(Outcome.SAME, Outcome.BETTER), ComplaintShift.between(List.of(STRONG, medium),
                List.of(STRONG)).stream().map(ComplaintShift::outcome).toList());
    }

    @Test
    @DisplayName("a new complaint is worse, a complaint gone is better, where anything was asked at all")
    void comingAndGoing() {
        Report oversteer = Runs.report(Symptom.OVERSTEER, Phase.ENTRY, Severity.CLEAR);
        Judgement judgement = judge(Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG)),
                Runs.run(2, Runs.car(3, 4, 4), List.of(oversteer)));
        assertEquals(List.of(Outcome.BETTER, Outcome.WORSE),
                judgement.shifts().stream().map(ComplaintShift::outcome).toList());
        assertEquals(List.of(), judge(Runs.run(1, Runs.car(4, 4, 4), List.of(STRONG)),
                Runs.run(2, Runs.car(3, 4, 4), List.of())).shifts());
    }

    @Test
    @DisplayName("without complaints the laps decide, and too few of them decide nothing")
    void lapsAlone() {
        Judgement judgement = judge(Runs.run(1, Runs.car(4, 4, 4), List.of(), A), Runs.run(2, Runs.car(3, 4, 4),
                List.of(), B));
        assertEquals(Outcome.BETTER, judgement.outcomes().get(0).outcome());
        assertEquals(Tried.On.ALL, judgement.outcomes().get(0).on());
        assertEquals(Outcome.UNCLEAR, judge(Runs.run(1, Runs.car(4, 4, 4), List.of(), A),
                Runs.run(2, Runs.car(3, 4, 4), List.of(), 91, 91)).outcomes().get(0).outcome());
    }

    @Test
    @DisplayName("three laps each cannot tell 0.2 s, and it is said how many could")
    void tooFew() {
        LapComparison laps = LapComparison.of(List.of(Runs.run(1, Runs.car(4, 4, 4), List.of(), 92.3, 92.5, 92.2, 92.45),
                Runs.run(2, Runs.car(3, 4, 4), List.of(), 92.1, 92.3, 92.0, 92.25)), Optional.of(0.2));
        assertEquals(Verdict.CANNOT_TELL, laps.verdict());
        assertTrue(laps.seen().orElseThrow() > 0.2);
        assertTrue(laps.lapsFor(0.2).orElseThrow() > 4);
    }

    @Test
    @DisplayName("a drifting track is taken out by going back to the start")
    void drift() {
        double[][] stints = new double[3][6];
        for (int lap = 0; lap < 18; lap++) {
            stints[lap / 6][lap % 6] = 90 - 0.02 * lap + 0.01 * (lap * 7 % 3 - 1);
        }
        List<Case> runs = List.of(Runs.run(1, Runs.car(4, 4, 4), List.of(), stints[0]),
                Runs.run(2, Runs.car(3, 4, 4), List.of(), stints[1]), Runs.run(3, Runs.car(4, 4, 4), List.of(), stints[2]));
        assertEquals(Verdict.FASTER, LapComparison.of(runs.subList(0, 2), Optional.of(0.05)).verdict());
        assertEquals(Verdict.NO_DIFFERENCE, LapComparison.of(runs, Optional.of(0.05)).verdict());
    }
}
