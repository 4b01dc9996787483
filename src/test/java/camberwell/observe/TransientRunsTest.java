package camberwell.observe;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.input.CaseReader;
import camberwell.model.CarModel;
import camberwell.physics.HandlingModel;
import camberwell.physics.motion.MovingCar;
import camberwell.physics.motion.Pace;
import camberwell.physics.motion.Relaxation;
import camberwell.run.Report;
import camberwell.vocabulary.Surface;
import camberwell.vocabulary.Symptom;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Here nothing obeys a line: the tyres saturate, the body rolls, a driver steers. What slides is read off their slip. */
@DisplayName("Runs of the transient model")
class TransientRunsTest {

    private static final Car CAR = new CaseReader().readCar(Path.of("demo-cases", "cars", "corvane-coupe.yaml"));
    private static final MovingCar COUPE = CarModel.of(CAR, Surface.DRY).orElseThrow().inMotion();

    private static TransientRun drive(MovingCar car, double effort) {
        double grip = effort * HandlingModel.maxLateralAcceleration(COUPE.vehicle(), 25, 0);
        TransientRun run = new TransientRun(car, 3, new Pace.Demand(grip, 0.65 * grip, 0.3 * grip, 150));
        assertFalse(run.lost, "the car stays on the road");
        return run;
    }

    private static Observed observe(TransientRun run) {
        return new KnownRun("transient", () -> LogText.plain().write(run.samples, 1, 1), Set.of())
                .observe(CAR, VectorsTest.limits());
    }

    @Test
    @DisplayName("a balanced car at nine tenths shows nothing to complain of")
    void balanced() {
        Observed observed = observe(drive(COUPE, 0.9));

        assertEquals(7, observed.corners().size());
        assertTrue(observed.reports().isEmpty(), () -> observed.reports().stream().map(Report::text).toList().toString());
    }

    @Test
    @DisplayName("one that the front bar makes push is seen to push in mid-corner, by as much as its tyres slip")
    void stiffFront() {
        MovingCar pushes = COUPE.withVehicle(car -> car.withFront(axle -> axle.withBarRate(2.5 * axle.barRate())));
        TransientRun run = drive(pushes, 0.93);
        Observed observed = observe(run);

        assertTrue(observed.reports().stream().anyMatch(report -> report.symptom() == Symptom.UNDERSTEER),
                () -> observed.cells().toString());
        double most = Math.toDegrees(run.understeer.stream().mapToDouble(it -> it).max().orElseThrow());
        double seen = observed.cells().stream().mapToDouble(Observed.Cell::front).max().orElseThrow();
        assertEquals(most, seen, 0.35 * most, "the log against the slip of the tyres, degrees");
    }

    @Test
    @DisplayName("tyres that build up their side force later are seen to turn in later than in the run before; the same ones "
            + "are not")
    void laterThanBefore() {
        String before = LogText.plain().write(drive(COUPE, 0.8).samples, 1, 1);
        String same = LogText.plain().write(drive(COUPE, 0.77).samples, 1, 2);
        String later = LogText.plain().write(drive(COUPE.withRelaxation(new Relaxation(1.6, 0.25)), 0.8).samples, 1, 3);

        assertEquals(Set.of(), symptoms(same, before));
        assertEquals(Set.of(Symptom.SLOW_TURN_IN), symptoms(later, before));
    }

    private static Set<Symptom> symptoms(String log, String before) {
        return new KnownRun("now", () -> log, Optional.of(() -> before), Set.of()).observe(CAR, VectorsTest.limits()).reports()
                .stream().map(Report::symptom).collect(Collectors.toSet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"Winged car, rear-drive, the rear bar too stiff",
        // Its rear comes round so far that speed times yaw rate is no lateral acceleration any more.
        "Winged car, all-wheel drive, the rear bar too stiff", "Harrow rally saloon, the front bar too stiff"})
    @DisplayName("what the tyres slide is told, where they do, and nothing else")
    void slides(String name) throws IOException {
        TransientRuns.Run asked = TransientRuns.all(Path.of("")).stream().filter(it -> it.name().equals(name)).findFirst()
                .orElseThrow();
        TransientRun run = asked.drive();
        assertFalse(run.lost);
        TransientTruth truth = new TransientTruth(run);
        Set<KnownRun.Truth> told = TransientRuns.slides(asked.observe(run, VectorsTest.limits()));

        assertFalse(truth.there.isEmpty());
        assertTrue(truth.mayBe.containsAll(told), () -> KnownRun.listed(told));
        assertTrue(TransientRuns.missed(truth, told).size() * 3 <= truth.there.size(), () -> KnownRun.listed(truth.there)
                + "; told " + KnownRun.listed(told));
    }
}
