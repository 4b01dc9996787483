package camberwell.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.audit.Judgement.Verdict;
import camberwell.car.Car;
import camberwell.engine.RuleBase;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Names;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class AuditTest {

    @TempDir
    private static Path scratch;
    private static Notes notes;
    private static List<Car> cars;
    private static List<Judgement> judgements;

    @BeforeAll
    static void judge() throws IOException {
        notes = Notes.in(List.of(Path.of("knowledge-notes")));
        cars = new ArrayList<>();
        for (String folder : List.of("demo-cases/cars", "rules/reference-cars")) {
            try (Stream<Path> files = Files.list(Path.of(folder))) {
                files.sorted().forEach(file -> cars.add(new CaseReader().readCar(file)));
            }
        }
        Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
        findings.addAll(notes.names(Note.Kind.CAUSE));
        RuleBase rules = RuleBase.open(Path.of(""), new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION))), scratch);
        judgements = new Audit(notes, cars).judge(rules.rules().values());
    }

    @Test
    @DisplayName("no rule and no note says the opposite of the model without saying why")
    void nothingDiffersUnexplained() {
        assertEquals(List.of(), judgements.stream().filter(it -> it.verdict() == Verdict.DIFFERS).toList());
    }

    @Test
    @DisplayName("the audit is no formality: hundreds of claims are confirmed, on every sort of car")
    void manyAgree() {
        assertTrue(judgements.stream().filter(it -> it.verdict() == Verdict.AGREES).count() > 250);
        Set<String> confirming = judgements.stream().flatMap(it -> it.agreeing().stream()).collect(Collectors.toSet());
        assertEquals(cars.stream().map(Car::name).collect(Collectors.toSet()), confirming);
    }

    @Test
    @DisplayName("every reason that a note gives for a difference still has a difference to explain")
    void noReasonIsLeftOver() {
        Set<String> used = judgements.stream().filter(it -> it.verdict() == Verdict.EXPLAINED)
                .flatMap(it -> it.reason().stream()).collect(Collectors.toSet());
        for (String name : notes.names(Note.Kind.ADJUSTMENT)) {
            for (Note.Difference difference : notes.get(name).differences()) {
                assertTrue(used.contains(difference.because()), name + ": " + difference);
            }
        }
    }

    @Test
    @DisplayName("a note that praises a stiffer front bar against understeer is found out")
    void aWrongNoteIsFound() throws IOException {
        Path wrong = Files.createDirectories(scratch.resolve("notes/adjustments")).resolve("front-anti-roll-bar.md");
        String right = Files.readString(Path.of("knowledge-notes/adjustments/front-anti-roll-bar.md"));
        String swapped = right.replace("    mirrored-except:\n",
                "    mirrored-except:\n      - {on: understeer, phase: mid-corner, effect: +2}\n");
        assertTrue(!swapped.equals(right), "the note has changed, and so must this test");
        Files.writeString(wrong, swapped);
        List<Judgement> found = new Audit(Notes.in(List.of(scratch.resolve("notes"))), cars).judge(List.of());
        List<String> differing = found.stream().filter(it -> it.verdict() == Verdict.DIFFERS)
                .map(it -> it.change() + " " + it.claim()).toList();
        assertEquals(List.of("front-anti-roll-bar stiffer against understeer at mid-corner"), differing);
    }
}
