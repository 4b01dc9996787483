package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.Learned;
import camberwell.advice.RankedChange;
import camberwell.history.Changes;
import camberwell.history.History;
import camberwell.history.Plan;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * A day of twelve runs with a car of which it is settled beforehand what helps it: the rear toe takes the snap away, a grade
 * for every change; the brake bias takes the push away; of the others the best-ranked brings the snap back; nothing else
 * does anything. The driver follows the advice to the letter and puts back what did nothing.
 */
@DisplayName("Twelve runs after the advice")
class TwelveRunsTest {

    private static final Case START = Paddock.run("pushes-in-snaps-out");
    /** The best-ranked change on another adjuster than the two that help: on this car it does harm. */
    private static final RankedChange HARMFUL = Paddock.advise(START).changes().stream()
            .filter(change -> change.change().adjuster() != Adjuster.REAR_TOE
                    && change.change().adjuster() != Adjuster.BRAKE_BIAS).findFirst().orElseThrow();

    private static boolean harmed(Case run) {
        Quantity from = START.car().setting(HARMFUL.change().adjuster()).orElseThrow().now();
        Quantity now = run.car().setting(HARMFUL.change().adjuster()).orElseThrow().now();
        Quantity to = HARMFUL.size().to().orElseThrow();
        return (now.value() - from.value()) * (to.value() - from.value()) > 0;
    }

    /** How often the driver has to have moved that adjuster that way from where it stood at the start. */
    private static int moves(Case run, Adjuster adjuster, boolean up, double each) {
        double from = START.car().setting(adjuster).orElseThrow().now().value();
        double now = run.car().setting(adjuster).orElseThrow().now().value();
        return (int) Math.max(0, Math.floor((up ? now - from : from - now) / each + 1e-6));
    }

    private static List<Report> felt(Case run) {
        int snap = 3 - moves(run, Adjuster.REAR_TOE, true, 0.05) + (harmed(run) ? 1 : 0);
        int push = 2 - moves(run, Adjuster.BRAKE_BIAS, false, 0.5);
        List<Report> felt = new ArrayList<>();
        for (Report report : START.reports()) {
            int grade = Math.min(3, report.symptom() == Symptom.UNDERSTEER ? push : snap);
            if (grade > 0) {
                felt.add(new Report(report.symptom(), report.where(), report.phase(), report.speed(),
                        Severity.values()[grade - 1], report.occurrence(), report.since(), report.turn()));
            }
        }
        return felt;
    }

    private static Case driven(Case car, int number) {
        Case run = car.withDriven(Driven.UNKNOWN.on(Driven.Sheet.UNKNOWN.numbered(number)));
        return run.withReports(felt(run));
    }

    @Test
    @DisplayName("no useless change comes twice, what harms is put back in the next run, what helps goes on, and the car is "
            + "cured")
    void noUselessChangeTwice() {
        List<Case> runs = new ArrayList<>(List.of(driven(START, 1)));
        Set<Change> inVain = new HashSet<>();
        List<String> told = new ArrayList<>();
        while (runs.size() < 12) {
            Case last = runs.get(runs.size() - 1);
            Advice advice = Paddock.advise(new History(runs).inform(last));
            if (advice.changes().isEmpty() || last.reports().isEmpty()) {
                break;
            }
            RankedChange first = advice.changes().get(0);
            boolean undo = advice.experience().of(first.change()).filter(Learned::undo).isPresent();
            told.add((undo ? "back: " : "") + first.change().id() + " " + first.size().steps());
            assertFalse(inVain.contains(first.change()), told.toString());
            Case next = last.withSetup(Map.of(first.change().adjuster(), first.size().to().orElseThrow()));
            Case run = driven(next, runs.size() + 1);
            int before = grades(last);
            int after = grades(run);
            if (!undo && after == before) {
                inVain.add(first.change());
                Quantity old = last.car().setting(first.change().adjuster()).orElseThrow().now();
                runs.add(run);
                // It goes back with the next change.
                Case back = run.withSetup(Map.of(first.change().adjuster(), old));
                Advice then = Paddock.advise(new History(runs).inform(run));
                if (then.changes().isEmpty() || runs.size() == 12) {
                    break;
                }
                RankedChange second = then.changes().get(0);
                assertFalse(inVain.contains(second.change()), told + " then " + second.change().id());
                told.add("with it " + second.change().id() + " " + second.size().steps());
                Quantity to = second.size().to().orElseThrow();
                Case both = driven(back.withSetup(Map.of(second.change().adjuster(), to)), runs.size() + 1);
                if (grades(both) == grades(run)) {
                    inVain.add(second.change());
                }
                runs.add(both);
            } else {
                runs.add(run);
                if (after > before) {
                    Advice then = Paddock.advise(new History(runs).inform(run));
                    assertEquals(first.change().opposite(), then.changes().get(0).change(), told.toString());
                    assertTrue(Changes.none(last.car(), run.withSetup(Map.of(first.change().adjuster(),
                            then.changes().get(0).size().to().orElseThrow())).car()), "to the exact old value");
                }
            }
        }
        Case end = runs.get(runs.size() - 1);
        assertEquals(List.of(), end.reports(), told.toString());
        assertTrue(told.stream().anyMatch(line -> line.startsWith("back: " + HARMFUL.change().opposite().id())), told.toString());
    }

    private static int grades(Case run) {
        return run.reports().stream().collect(Collectors.summingInt(report -> report.severity().ordinal() + 1));
    }

    @Test
    @DisplayName("the plan tries one change a run, the surest first, never two that pull apart, and goes back to the start")
    void plan() {
        History history = new History(List.of(driven(START, 1)));
        Advice advice = Paddock.advise(history.inform(history.last().orElseThrow()));
        Plan plan = Plan.of(advice, history, 2, 60, Optional.empty(), Optional.empty());
        assertEquals(Plan.Kind.BASELINE, plan.steps().get(0).kind());
        assertEquals(advice.changes().get(0).change(), plan.steps().get(1).change().orElseThrow().change());
        assertEquals(6, plan.steps().size());
        assertEquals(60, plan.lapsInAll());
        assertEquals(Plan.Kind.BACK, plan.steps().get(3).kind());
        Set<Change> planned = new HashSet<>();
        plan.steps().forEach(step -> step.change().ifPresent(change -> assertTrue(planned.add(change.change()))));
        assertEquals(advice.changes().size(), planned.size() + plan.left().size());
        assertEquals(List.of(), Plan.of(advice, history, 2, 5, Optional.empty(), Optional.empty()).steps());
    }

    @Test
    @DisplayName("after three changes in a row that did nothing the plan says that the cause lies elsewhere")
    void stop() {
        List<Case> runs = new ArrayList<>();
        int[][] settings = {{4, 8}, {5, 8}, {5, 7}, {6, 7}};
        for (int[] setting : settings) {
            runs.add(driven(START.withSetup(Map.of(Adjuster.REAR_WING,
                    START.car().setting(Adjuster.REAR_WING).orElseThrow().now().withValue(setting[0]), Adjuster.FRONT_BUMP,
                    START.car().setting(Adjuster.FRONT_BUMP).orElseThrow().now().withValue(setting[1]))), runs.size() + 1));
        }
        History history = new History(runs);
        Advice advice = Paddock.advise(history.inform(history.last().orElseThrow()));
        String reason = Plan.of(advice, history, 5, 60, Optional.empty(), Optional.empty()).stop().orElseThrow();
        assertTrue(reason.startsWith("the last three changes did nothing"), reason);
        Case mild = runs.get(3).withReports(runs.get(3).reports().stream().map(report -> new Report(report.symptom(),
                report.where(), report.phase(), report.speed(), Severity.SLIGHT, report.occurrence(), report.since(),
                report.turn())).toList());
        assertTrue(Plan.of(Paddock.advise(mild), new History(List.of(mild)), 2, 60, Optional.empty(), Optional.empty()).stop()
                .orElseThrow()
                .startsWith("what is left is slight"));
    }
}
