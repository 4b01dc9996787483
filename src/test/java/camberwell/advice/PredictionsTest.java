package camberwell.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.car.Dimension;
import camberwell.engine.RuleBase;
import camberwell.input.CaseReader;
import camberwell.knowledge.Note;
import camberwell.knowledge.Notes;
import camberwell.language.Names;
import camberwell.run.Case;
import camberwell.run.Conditions;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.units.Unit;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Occurrence;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Symptom;
import java.io.IOException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class PredictionsTest {

    @TempDir
    private static Path cache;
    private static Advisor advisor;

    @BeforeAll
    static void open() throws IOException {
        Notes notes = Notes.in(List.of(Path.of("knowledge-notes")));
        Set<String> findings = new TreeSet<>(notes.names(Note.Kind.READING));
        findings.addAll(notes.names(Note.Kind.CAUSE));
        RuleBase rules = RuleBase.open(Path.of(""), new Names(Set.copyOf(notes.names(Note.Kind.ADJUSTMENT)), findings,
                Set.copyOf(notes.names(Note.Kind.DRIVING)), Set.copyOf(notes.names(Note.Kind.CAUTION))), cache);
        advisor = new Advisor(rules, notes, Weights.read(Path.of("rules/weights.yaml")));
    }

    private static Case run(Car car, Symptom symptom, Phase phase, CornerSpeed speed) {
        Report report = new Report(symptom, Optional.empty(), Optional.of(phase), Optional.of(speed), Severity.CLEAR,
                Occurrence.EVERY_LAP, Optional.empty(), Optional.empty());
        return new Case("a case", "-", car, Conditions.UNKNOWN, Map.of(), List.of(report), List.of());
    }

    private static Car car(String file) {
        return new CaseReader().readCar(Path.of("demo-cases/cars", file));
    }

    @Test
    @DisplayName("what is advised against a steady push or slide is what the model shows to help")
    void predictionsAgreeWithTheAdvice() {
        int shown = 0;
        for (String file : List.of("corvane-coupe.yaml", "larkspur-hatch.yaml", "harrow-rally-saloon.yaml",
                "tessel-single-seater.yaml", "bramble-roadster.yaml")) {
            for (Symptom symptom : List.of(Symptom.UNDERSTEER, Symptom.OVERSTEER)) {
                for (CornerSpeed speed : CornerSpeed.values()) {
                    Advice advice = advisor.advise(run(car(file), symptom, Phase.MID_CORNER, speed));
                    Predictions predictions = advice.predictions();
                    for (RankedChange change : advice.changes()) {
                        Optional<Boolean> agrees = predictions.of(change).flatMap(Predicted::agrees);
                        assertTrue(agrees.orElse(true), file + ": " + change.change() + " against " + symptom);
                        shown += agrees.isPresent() ? 1 : 0;
                    }
                }
            }
        }
        assertTrue(shown > 20, "only " + shown + " predictions were made");
    }

    @Test
    @DisplayName("a clear complaint moves a bar by one click, whether the click does much on this car or little")
    void oneClickAtATime() {
        Car coupe = car("corvane-coupe.yaml");
        Map<Dimension, Quantity> fine = new EnumMap<>(coupe.dimensions());
        fine.put(Dimension.FRONT_BAR_STEP, new Quantity(40, Unit.NEWTON_METRE_PER_DEGREE));
        assertEquals(1, softerFrontBar(coupe).size().steps());
        assertEquals(1, softerFrontBar(coupe.withDimensions(fine)).size().steps());
    }

    @Test
    @DisplayName("a car's file without dimensions is advised on all the same, one step at a time and without a figure")
    void withoutDimensions() {
        Car bare = car("corvane-coupe.yaml").withDimensions(Map.of());
        Advice advice = advisor.advise(run(bare, Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.SLOW));
        RankedChange bar = softerFrontBar(bare);
        assertEquals(1, bar.size().steps());
        assertTrue(advice.predictions().of(bar).isEmpty());
    }

    @Test
    @DisplayName("a car with half its dimensions is predicted with those of a class, and is told so")
    void withDimensionsOfAClass() {
        Car coupe = car("corvane-coupe.yaml");
        Map<Dimension, Quantity> few = new EnumMap<>(coupe.dimensions());
        few.remove(Dimension.CG_HEIGHT);
        Car lacking = coupe.withDimensions(few);
        Advice advice = advisor.advise(run(lacking, Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.SLOW));
        Predicted predicted = advice.predictions().of(softerFrontBar(lacking)).orElseThrow();
        assertEquals("rear-drive competition car", predicted.prediction().lent().orElseThrow().by());
    }

    private static RankedChange softerFrontBar(Car car) {
        return advisor.advise(run(car, Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.SLOW)).changes().stream()
                .filter(change -> change.change().id().equals("front-anti-roll-bar softer")).findFirst().orElseThrow();
    }
}
