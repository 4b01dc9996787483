package camberwell.audit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import camberwell.car.Setting;
import camberwell.fact.Reading.State;
import camberwell.input.CaseReader;
import camberwell.model.Bench.Relief;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Change;
import camberwell.vocabulary.Direction;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class GaugeTest {

    private static final Setting PRESSURE = new CaseReader()
            .readCar(Path.of("demo-cases", "cars", "corvane-coupe.yaml")).setting(Adjuster.FRONT_PRESSURE).orElseThrow();

    private static Optional<Relief> of(Direction direction, State reading) {
        return Gauge.relief(PRESSURE, new Change(Adjuster.FRONT_PRESSURE, direction), reading);
    }

    @Test
    @DisplayName("air let out cold is air less hot: it helps a reading above target, and hurts one below")
    void follows() {
        assertEquals(Optional.of(Relief.BETTER), of(Direction.LOWER, State.ABOVE_TARGET));
        assertEquals(Optional.of(Relief.WORSE), of(Direction.HIGHER, State.ABOVE_TARGET_ALONE));
        assertEquals(Optional.of(Relief.BETTER), of(Direction.HIGHER, State.BELOW_MINIMUM));
        assertEquals(Optional.of(Relief.WORSE), of(Direction.LOWER, State.BELOW_TARGET));
    }

    @Test
    @DisplayName("of temperatures the gas law says nothing")
    void silent() {
        assertEquals(Optional.empty(), of(Direction.LOWER, State.MIDDLE_HOT));
    }
}
