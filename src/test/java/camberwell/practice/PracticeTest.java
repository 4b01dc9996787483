package camberwell.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.model.CarModel;
import camberwell.run.Report;
import camberwell.units.Quantity;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.CornerSpeed;
import camberwell.vocabulary.Phase;
import camberwell.vocabulary.Severity;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import camberwell.vocabulary.Wheel;
import camberwell.vocabulary.Word;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class PracticeTest {

    private static final Car COUPE = new CaseReader().readCar(Path.of("demo-cases/cars/corvane-coupe.yaml"));
    private static final CarModel GOOD = CarModel.of(COUPE, Surface.DRY).orElseThrow();

    private static List<Felt> with(String adjuster, String setting) {
        Fault fault = new Fault(Map.of(Word.of(Adjuster.class, adjuster),
                Quantity.parse(setting).orElseThrow()));
        return new TestDriver(GOOD).feels(Fault.with(GOOD, fault.set()).orElseThrow());
    }

    private static boolean feels(List<Felt> felt, Symptom symptom, Phase phase) {
        return felt.stream().anyMatch(it -> it.symptom() == symptom && it.phase() == phase);
    }

    @Test
    @DisplayName("of a car as it should be there is nothing to tell")
    void good() {
        assertEquals(List.of(), new TestDriver(GOOD).feels(GOOD));
    }

    // What an engineer would expect of each, before any of it was run.
    @Test
    @DisplayName("the front bar at its stiff end pushes in mid-corner, at its soft end the tail slides there")
    void bar() {
        List<Felt> stiff = with("front-anti-roll-bar", "7");
        assertTrue(feels(stiff, Symptom.UNDERSTEER, Phase.MID_CORNER), stiff.toString());
        assertFalse(feels(stiff, Symptom.OVERSTEER, Phase.MID_CORNER), stiff.toString());
        List<Felt> soft = with("front-anti-roll-bar", "1");
        assertTrue(feels(soft, Symptom.OVERSTEER, Phase.MID_CORNER), soft.toString());
    }

    @Test
    @DisplayName("a wing that is turned down slides in fast corners more than in slow ones")
    void wing() {
        List<Felt> felt = with("rear-wing", "1");
        double fast = felt.stream().filter(it -> it.speed() == CornerSpeed.FAST && it.phase() != Phase.BRAKING)
                .mapToDouble(Felt::excess).sum();
        double slow = felt.stream().filter(it -> it.speed() == CornerSpeed.SLOW && it.phase() != Phase.BRAKING)
                .mapToDouble(Felt::excess).sum();
        assertTrue(fast > 2 * slow && fast > 2, felt.toString());
    }

    @Test
    @DisplayName("brakes that are turned to the rear are told as rears that lock")
    void brakes() {
        List<Felt> felt = with("brake-bias", "55 %");
        assertTrue(feels(felt, Symptom.REAR_LOCKING, Phase.BRAKING), felt.toString());
    }

    @Test
    @DisplayName("what is felt at every speed is told once, the worst first, and four things at most")
    void told() {
        List<Report> reports = Told.of(with("front-anti-roll-bar", "7"));
        assertTrue(reports.size() <= 4 && !reports.isEmpty());
        assertTrue(reports.get(0).severity().compareTo(Severity.SLIGHT) >= 0);
        List<Felt> everywhere = List.of(new Felt(Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.SLOW, 3),
                new Felt(Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.MEDIUM, 2),
                new Felt(Symptom.UNDERSTEER, Phase.MID_CORNER, CornerSpeed.FAST, 1));
        assertEquals(1, Told.of(everywhere).size());
        assertTrue(Told.of(everywhere).get(0).speed().isEmpty());
        assertEquals(Severity.CLEAR, Told.of(everywhere).get(0).severity());
    }

    @Test
    @DisplayName("too little negative camber shows at the outer edge")
    void gauges() {
        Car upright = COUPE.with(Map.of(Adjuster.FRONT_CAMBER, Quantity.parse("-1.8 deg").orElseThrow()));
        var before = Gauges.read(COUPE, COUPE).get(Wheel.FRONT_LEFT);
        var after = Gauges.read(COUPE, upright).get(Wheel.FRONT_LEFT);
        assertTrue(after.outer().orElseThrow().value() > before.outer().orElseThrow().value());
        assertTrue(after.inner().orElseThrow().value() < before.inner().orElseThrow().value());
        assertEquals(before, Gauges.read(COUPE, upright).get(Wheel.REAR_LEFT));
    }

    @Test
    @DisplayName("the same seed draws the same fault, within the car's range")
    void seeded() {
        for (int seed = 0; seed < 20; seed++) {
            Fault fault = Fault.draw(COUPE, 2, new Random(seed));
            assertEquals(fault, Fault.draw(COUPE, 2, new Random(seed)));
            assertEquals(2, fault.set().size());
            fault.set().forEach((adjuster, to) -> {
                var setting = COUPE.setting(adjuster).orElseThrow();
                assertTrue(to.value() >= setting.min().value() - 1e-9 && to.value() <= setting.max().value() + 1e-9);
                assertTrue(!to.equals(setting.now()));
            });
        }
    }
}
