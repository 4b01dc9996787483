package camberwell.history;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.cases.Paddock;
import camberwell.input.CaseReader;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Driven;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

@DisplayName("Twelve runs on a car of which one lever alone does anything, and the book remembers")
class TwelveRunsTest {

    private static final int RUNS = 12;

    private static Report push(Severity severity) {
        return new Report(Symptom.UNDERSTEER, Optional.empty(), Optional.of(Phase.MID_CORNER), Optional.empty(), severity,
                Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
    }

    /** How it pushes: a grade less for each step that the lever has moved, whatever else was changed. */
    private static List<Report> felt(Case first, Case now, Adjuster lever) {
        double steps = Math.abs(first.car().setting(lever).orElseThrow().stepsUp(now.car().setting(lever).orElseThrow().now()));
        int grade = Severity.STRONG.ordinal() - (int) Math.round(steps);
        return grade < 0 ? List.of() : List.of(push(Severity.values()[grade]));
    }

    private static Case numbered(Case run, int number) {
        return run.withDriven(Driven.UNKNOWN.on(Driven.Sheet.UNKNOWN.numbered(number)));
    }

    @ParameterizedTest(name = "{0}")
    @EnumSource(value = Adjuster.class, names = {"FRONT_ANTI_ROLL_BAR", "REAR_ANTI_ROLL_BAR", "FRONT_CAMBER", "FRONT_SPRINGS"})
    @DisplayName("what did nothing is not tried again, and the lever that helps goes on")
    void noUselessChangeTwice(Adjuster lever) {
        Case first = numbered(new Case("Run", "-", new CaseReader().readCar(Path.of("demo-cases/cars/corvane-coupe.yaml")),
                Conditions.UNKNOWN, Map.of(), List.of(push(Severity.STRONG)), List.of()), 1);
        List<Case> runs = new ArrayList<>(List.of(first));
        Set<String> inVain = new HashSet<>();
        List<String> again = new ArrayList<>();
        List<String> made = new ArrayList<>();
        for (int number = 2; number <= RUNS + 1; number++) {
            Case last = runs.get(runs.size() - 1);
            Advice advice = Paddock.advise(new History(runs).inform(last));
            if (last.reports().isEmpty() || advice.changes().isEmpty()) {
                break;
            }
            RankedChange change = advice.changes().get(0);
            Quantity to = change.size().to().orElseThrow();
            String setting = change.change().id() + " to " + to;
            made.add(setting);
            if (inVain.contains(setting)) {
                again.add("run " + number + ": " + setting);
            }
            Case next = last.withSetup(Map.of(change.change().adjuster(), to));
            next = numbered(next.withReports(felt(first, next, lever)), number);
            if (change.change().adjuster() != lever && next.reports().equals(last.reports())) {
                inVain.add(setting);
            }
            runs.add(next);
        }
        assertEquals(List.of(), again, made.toString());
        assertTrue(made.stream().distinct().count() == made.size(), made.toString());
    }
}
