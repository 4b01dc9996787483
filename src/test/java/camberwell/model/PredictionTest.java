package camberwell.model;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import camberwell.car.Car;
import camberwell.model.Prediction.Way;
import camberwell.physics.AxleEnd;
import camberwell.physics.CornerPhase;
import camberwell.physics.CornerSpeed;
import camberwell.physics.HandlingModel;
import camberwell.physics.Wheels;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Surface;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class PredictionTest {

    private static Optional<Prediction> predict(Car car, String change, int steps, CornerPhase phase,
            CornerSpeed speed) {
        return new Bench(CarModel.of(car, Surface.DRY).orElseThrow()).predict(Change.parse(change).orElseThrow(),
                steps, phase, speed.metresPerSecond());
    }

    // The signs are those that independent models agree on (more front roll stiffness and less front downforce:
    // understeer; see W. F. and D. L. Milliken, Race Car Vehicle Dynamics, SAE, 1995, ch. 5 and 18, from memory) and
    // those that the notes on the adjusters give as rationale.
    @ParameterizedTest(name = "{0} goes towards {3} at {1} in {2} corners")
    @CsvSource({
        "front-anti-roll-bar softer, MID_CORNER, MEDIUM, OVERSTEER",
        "front-springs stiffer, MID_CORNER, MEDIUM, UNDERSTEER",
        "rear-anti-roll-bar softer, MID_CORNER, SLOW, UNDERSTEER",
        "rear-springs stiffer, EXIT, MEDIUM, OVERSTEER",
        "rear-wing more, MID_CORNER, FAST, UNDERSTEER",
        "front-wing more, MID_CORNER, FAST, OVERSTEER",
        "brake-bias forward, ENTRY, MEDIUM, UNDERSTEER",
        "differential-coast less, ENTRY, SLOW, OVERSTEER",
        "rear-toe toe-in, EXIT, SLOW, UNDERSTEER",
        "front-toe toe-out, MID_CORNER, MEDIUM, UNDERSTEER",
        "front-camber more-negative, MID_CORNER, MEDIUM, OVERSTEER",
        "rear-camber more-negative, MID_CORNER, MEDIUM, UNDERSTEER",
        "caster more, MID_CORNER, SLOW, OVERSTEER"})
    void signs(String change, CornerPhase phase, CornerSpeed speed, Way way) {
        Change parsed = Change.parse(change).orElseThrow();
        int shown = 0;
        for (Car car : DemoCars.ALL) {
            boolean room = car.setting(parsed.adjuster()).filter(it -> it.stepsLeft(parsed.direction()) >= 2)
                    .isPresent();
            Optional<Prediction> prediction = room ? predict(car, change, 2, phase, speed) : Optional.empty();
            if (prediction.isPresent()) {
                assertEquals(way, prediction.get().way(), car.name());
                shown++;
            }
        }
        assertTrue(shown > 0, "no car shows it");
    }

    static List<Change> represented() {
        return Change.all().stream().filter(change -> CarModel.represents(change.adjuster())).toList();
    }

    @ParameterizedTest
    @MethodSource("represented")
    @DisplayName("a change and its opposite move the balance opposite ways, on every car and in every phase")
    void mirrored(Change change) {
        for (Car car : DemoCars.ALL) {
            for (CornerPhase phase : CornerPhase.values()) {
                List<Way> ways = new ArrayList<>();
                for (Change way : List.of(change, change.opposite())) {
                    if (car.setting(way.adjuster()).filter(it -> it.stepsLeft(way.direction()) > 0).isPresent()) {
                        predict(car, way.id(), 1, phase, CornerSpeed.MEDIUM).map(Prediction::way)
                                .filter(it -> it == Way.UNDERSTEER || it == Way.OVERSTEER).ifPresent(ways::add);
                    }
                }
                assertTrue(ways.size() < 2 || ways.get(0) != ways.get(1), car.name() + " at " + phase);
            }
        }
    }

    @ParameterizedTest
    @MethodSource("represented")
    @DisplayName("a change that is taken back leaves nothing behind")
    void takenBack(Change change) {
        for (Car car : DemoCars.ALL) {
            car.setting(change.adjuster()).filter(it -> it.stepsLeft(change.direction()) > 0).ifPresent(setting -> {
                Bench bench = new Bench(CarModel.of(car, Surface.DRY).orElseThrow());
                CarModel back = bench.car().with(change, 1).orElseThrow()
                        .with(change.adjuster(), setting.now()).orElseThrow();
                Prediction prediction = bench.predict(change.adjuster(), back, CornerPhase.MID_CORNER, 30)
                        .orElseThrow();
                assertEquals(0, prediction.limitBalanceShift(), 1e-9, car.name());
                assertEquals(0, prediction.understeerGradientShift(), 1e-6, car.name());
            });
        }
    }

    @Test
    @DisplayName("a bar only moves load across the car: what one tyre gains another loses")
    void loadIsConserved() {
        Wheels shift = predict(DemoCars.CORVANE, "rear-anti-roll-bar stiffer", 1, CornerPhase.MID_CORNER,
                CornerSpeed.MEDIUM).orElseThrow().loadShift();
        assertEquals(0, shift.sum(AxleEnd.FRONT), 1e-6);
        assertEquals(0, shift.sum(AxleEnd.REAR), 1e-6);
        assertTrue(shift.rearRight() > 0 && shift.frontRight() < 0);
    }

    @Test
    @DisplayName("toe-in that grows drags more on the straight")
    void toeDrag() {
        Prediction more = predict(DemoCars.CORVANE, "rear-toe toe-in", 2, CornerPhase.MID_CORNER, CornerSpeed.MEDIUM)
                .orElseThrow();
        assertTrue(more.toeDragShift() > 0);
    }

    @Test
    @DisplayName("what is not in the model gets no figure: dampers, pressures, ride heights")
    void notRepresented() {
        for (String change : List.of("front-bump softer", "rear-pressure lower", "rear-ride-height lower")) {
            assertTrue(predict(DemoCars.CORVANE, change, 1, CornerPhase.MID_CORNER, CornerSpeed.MEDIUM).isEmpty());
        }
    }

    @ParameterizedTest
    @MethodSource("cars")
    @DisplayName("the quick estimate of the cornering limit is within five percent of the exact one")
    void estimate(Car car) {
        CarModel model = CarModel.of(car, Surface.DRY).orElseThrow();
        for (CornerSpeed speed : CornerSpeed.values()) {
            double exact = HandlingModel.maxLateralAcceleration(model.vehicle(CornerPhase.MID_CORNER),
                    speed.metresPerSecond(), 0);
            double estimate = HandlingModel.estimateLimit(model.vehicle(CornerPhase.MID_CORNER),
                    speed.metresPerSecond(), 0, 5);
            assertEquals(1, estimate / exact, 0.05, speed.name());
        }
    }

    static Stream<Car> cars() {
        return DemoCars.ALL.stream();
    }

    @ParameterizedTest
    @MethodSource("cars")
    @DisplayName("every demo car has a behaviour in every part of slow, medium and fast corners")
    void answers(Car car) {
        Bench bench = new Bench(CarModel.of(car, Surface.DRY).orElseThrow());
        for (CornerPhase phase : CornerPhase.values()) {
            for (CornerSpeed speed : CornerSpeed.values()) {
                assertTrue(bench.behaviour(phase, speed.metresPerSecond()).isPresent(), phase + " " + speed);
            }
        }
    }
}
