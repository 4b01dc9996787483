package camberwell.cases;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.advice.Advice;
import camberwell.advice.RankedChange;
import camberwell.fact.Finding;
import camberwell.fact.Withholding;
import camberwell.knowledge.Note;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Drive;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Word;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

@DisplayName("The demo cases get the advice that a race engineer would insist on")
class DemoCasesTest {

    static Stream<String> names() {
        return Paddock.cases().keySet().stream();
    }

    @ParameterizedTest
    @MethodSource("names")
    @DisplayName("each case: what must be near the top, and what must never be advised")
    void caseByCase(String name) throws IOException {
        Expectation expected = Expectation.of(name);
        Advice advice = Paddock.advise(Paddock.run(name));
        List<String> ranked = advice.changes().stream().map(change -> text(change.change())).toList();
        List<String> wrong = new ArrayList<>();
        for (Expectation.Top top : expected.top()) {
            int rank = ranked.indexOf(known(top.change())) + 1;
            if (rank == 0 || rank > top.among()) {
                wrong.add(top.change() + " should be among the first " + top.among());
            }
        }
        expected.never().stream().filter(change -> ranked.contains(known(change)))
                .forEach(change -> wrong.add(change + " should never be advised"));
        expected.changes().ifPresent(none -> {
            assertEquals("none", none);
            if (!ranked.isEmpty() || !advice.withheld().isEmpty()) {
                wrong.add("the car should be left alone");
            }
        });
        Set<String> likely = advice.findings().stream().map(Finding::id).collect(Collectors.toSet());
        expected.likely().stream().filter(finding -> !likely.contains(note(finding)))
                .forEach(finding -> wrong.add(finding + " should be likely"));
        expected.unlikely().stream().filter(finding -> likely.contains(note(finding)))
                .forEach(finding -> wrong.add(finding + " should not be likely"));
        boolean waits = Paddock.conclude(Paddock.premises(Paddock.run(name))).withholdings().stream()
                .anyMatch(withholding -> withholding.change().isEmpty() && withholding.loading().isEmpty()
                        && withholding.certainty() >= Paddock.weights().leastCertainty());
        if (waits != expected.withholdsBalance()) {
            wrong.add("balance changes should " + (waits ? "not " : "") + "wait");
        }
        if (waits) {
            advice.changes().stream().filter(change -> Withholding.isBalance(change.change().adjuster()))
                    .forEach(change -> wrong.add(text(change.change()) + " should wait"));
        }
        expected.drivingFirst().filter(first -> first != advice.drivingFirst())
                .ifPresent(first -> wrong.add("the driver should " + (first ? "" : "not ") + "come first"));
        Set<String> cautions = advice.cautions().stream().map(Note::name).collect(Collectors.toSet());
        expected.cautions().stream().filter(caution -> !cautions.contains(note(caution)))
                .forEach(caution -> wrong.add("the caution " + caution + " is missing"));
        Set<String> driving = advice.driving().stream().map(it -> it.note().name()).collect(Collectors.toSet());
        expected.driving().stream().filter(habit -> !driving.contains(note(habit)))
                .forEach(habit -> wrong.add("the driver should be told: " + habit));
        expected.notDriving().stream().filter(habit -> driving.contains(note(habit)))
                .forEach(habit -> wrong.add("the driver should not be told: " + habit));
        assertTrue(wrong.isEmpty(), () -> name + ": " + String.join("\n", wrong) + "\n\nranked: " + ranked + "\nfindings: "
                + advice.findings().stream().map(it -> it.id() + " " + it.certainty()).toList());
    }

    @Test
    @DisplayName("every case says what is expected of it, and every expectation has its case")
    void sidecars() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("src/test/resources/cases"))) {
            assertEquals(new TreeSet<>(Paddock.cases().keySet()), files.map(file ->
                    file.getFileName().toString().replace(".yaml", "")).collect(Collectors.toCollection(TreeSet::new)));
        }
    }

    @Test
    @DisplayName("no case is advised both directions of one adjuster")
    void oneDirection() {
        List<String> offenders = new ArrayList<>();
        Paddock.cases().forEach((name, run) -> {
            Set<Adjuster> seen = new HashSet<>();
            for (RankedChange change : Paddock.advise(run).changes()) {
                if (!seen.add(change.change().adjuster())) {
                    offenders.add(name + ": " + change.change().adjuster().id());
                }
            }
        });
        assertEquals(List.of(), offenders);
    }

    @Test
    @DisplayName("rear toe-out is never set: toe-in is only ever taken back")
    void rearToeOut() {
        List<String> offenders = new ArrayList<>();
        Paddock.cases().forEach((name, run) -> Paddock.advise(run).changes().stream()
                .filter(change -> text(change.change()).equals("rear-toe toe-out"))
                .filter(change -> change.size().to().orElseThrow().value() < 0)
                .forEach(change -> offenders.add(name)));
        assertEquals(List.of(), offenders);
    }

    @Test
    @DisplayName("the paddock has every symptom, and the four starting ones on every driven axle")
    void symptoms() {
        Set<Symptom> missing = new TreeSet<>(List.of(Symptom.values()));
        Set<String> starting = new TreeSet<>();
        Paddock.cases().values().forEach(run -> run.reports().forEach(report -> {
            missing.remove(report.symptom());
            starting.add(run.car().drive().orElseThrow().id() + " " + report.symptom().id());
        }));
        assertEquals(Set.of(), missing);
        Set<String> wanted = new TreeSet<>();
        for (Drive drive : Drive.values()) {
            Stream.of("understeer", "snap-oversteer", "hot-inner-edge", "slow-warm-up")
                    .forEach(symptom -> wanted.add(drive.id() + " " + symptom));
        }
        wanted.removeAll(starting);
        assertEquals(Set.of(), wanted);
    }

    private static String text(Change change) {
        return change.adjuster().id() + " " + change.direction().id();
    }

    /** A misspelt expectation would hold for ever. */
    private static String known(String change) {
        String[] words = change.split(" ");
        return text(new Change(Word.of(Adjuster.class, words[0]), Word.of(Direction.class, words[1])));
    }

    private static String note(String name) {
        return Paddock.notes().get(name).name();
    }
}
