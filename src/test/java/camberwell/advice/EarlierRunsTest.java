package camberwell.advice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import camberwell.Trackside;
import camberwell.model.CarModel;
import camberwell.run.Case;
import camberwell.run.Driven;
import camberwell.vocabulary.Adjuster;
import camberwell.vocabulary.Direction;
import camberwell.vocabulary.Surface;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

@DisplayName("Earlier runs that tell of a car as it stands")
class EarlierRunsTest {

    private static final Path TOURER = Path.of(System.getProperty("camberwell.home"), "demo-cases/cars/sandling-tourer.yaml");
    private static final Case NOW = Trackside.yaml("title: a\ncar: " + TOURER + "\nconditions: {surface: dry}\nreports:\n"
            + "  - {symptom: understeer, phase: mid-corner, speed: medium, severity: clear, occurrence: every-lap}\n");
    private static final CarModel CAR = CarModel.of(NOW.car(), Surface.DRY).orElseThrow();

    private static Case moved(Adjuster adjuster, Direction way) {
        return NOW.withSetup(Map.of(adjuster, NOW.car().setting(adjuster).orElseThrow().moved(way, 1)));
    }

    private static List<HowFarOff.Run> of(Case... earlier) {
        return EarlierRuns.of(NOW.withEarlier(List.of(earlier)), CAR);
    }

    @Test
    @DisplayName("each is the same car as it was set then; this run is the last")
    void set() {
        Case softer = moved(Adjuster.FRONT_ANTI_ROLL_BAR, Direction.SOFTER);
        List<HowFarOff.Run> runs = of(softer);
        assertEquals(2, runs.size());
        assertSame(CAR, runs.get(1).car());
        assertEquals(softer.car().setting(Adjuster.FRONT_ANTI_ROLL_BAR).orElseThrow().now(),
                runs.get(0).car().car().setting(Adjuster.FRONT_ANTI_ROLL_BAR).orElseThrow().now());
    }

    @Test
    @DisplayName("with the same settings it is the same car, and says more of it")
    void same() {
        assertSame(CAR, of(NOW).get(0).car());
    }

    @Test
    @DisplayName("not in the wet, nor on another track, nor where nobody was asked")
    void elsewhere() {
        Case bar = moved(Adjuster.FRONT_ANTI_ROLL_BAR, Direction.SOFTER);
        assertEquals(1, of(bar.withConditions(bar.conditions().withSurface(Surface.WET))).size());
        assertEquals(1, of(bar.withReports(List.of())).size());
        Case here = NOW.withDriven(on("here", false)).withEarlier(List.of(bar.withDriven(on("there", false))));
        assertEquals(1, EarlierRuns.of(here, CAR).size());
    }

    @Test
    @DisplayName("a car that was rebuilt is another one than before")
    void rebuilt() {
        Case bar = moved(Adjuster.FRONT_ANTI_ROLL_BAR, Direction.SOFTER);
        assertEquals(2, of(bar, bar.withDriven(on("here", true))).size());
    }

    private static Driven on(String track, boolean rebuilt) {
        return Driven.UNKNOWN.on(new Driven.Sheet(Optional.of(1), Optional.empty(), Optional.empty(), Optional.of(track),
                Optional.empty(), rebuilt));
    }
}
